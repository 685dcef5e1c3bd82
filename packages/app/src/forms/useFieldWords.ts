import type { Column } from '@eavewell/tables';
import type { AppMessageKey } from '@eavewell/words/app';
import { useMemo } from 'react';
import { useLanguage } from '../language/LanguageProvider.tsx';

/** The names of tables, columns and choices, in the language of the page. What has none stands as it is written in the tables. */
export interface FieldWords {
  label(table: string, column: string): string;
  about(table: string, column: string): string;
  /** What an empty cell stands for; null where that is simply "not known". */
  empty(table: string, column: string): string | null;
  choice(word: string): string;
  /** The unit that stands behind a field; empty where its name says it. */
  unit(column: Column<unknown>): string;
  /** The rows of a table together, such as "Roofs". */
  table(table: string): string;
  /** The rows of a table that are the whole programme's. */
  tableOfAll(table: string): string;
  /** One row of a table, such as "a roof". */
  one(table: string): string;
  /** So many rows of a table, such as "2 roofs". */
  rows(table: string, count: number): string;
}

/** Units that stand in the name of their field already. */
const inTheName = new Set(['', 'person', 'count', 'year', 'month', 'draw', 'number', 'piece', 'currency', 'ISO 4217']);

/** The names of tables and columns. */
export function useFieldWords(): FieldWords {
  const { say } = useLanguage();
  return useMemo(() => {
    const sayOr = (key: string, otherwise: string, values = {}) => {
      try {
        return say(key as AppMessageKey, values);
      } catch {
        return otherwise;
      }
    };
    const key = (table: string, column: string) => `fields.${table}_${column.replace('.', '_')}`;
    return {
      label: (table, column) => sayOr(key(table, column), column),
      about: (table, column) => sayOr(`${key(table, column)}_about`, ''),
      empty: (table, column) => sayOr(`${key(table, column)}_empty`, '') || null,
      unit: ({ kind, unit }) => {
        if (kind === 'fraction') return '%';
        if (inTheName.has(unit)) return '';
        return sayOr(`forms.unit_${unit.replaceAll('/', '_per_').replace(' ', '_')}`, unit);
      },
      choice: (word) => sayOr(`choices.${word}`, word),
      table: (table) => sayOr(`tableNames.${table}`, table),
      tableOfAll: (table) => sayOr(`tableNames.${table}OfAll`, sayOr(`tableNames.${table}`, table)),
      one: (table) => sayOr(`tableNames.${table}_one`, table),
      rows: (table, count) => sayOr(`tableNames.${table}_count`, `${table}: ${count}`, { count }),
    };
  }, [say]);
}
