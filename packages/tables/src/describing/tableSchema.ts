import { isoDay } from '@eavewell/engine';
import { idForm, longestText } from '../contract/columns.ts';
import type { Column, Table } from '../contract/table.ts';

/** A JSON value. */
export type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };

/** The profiles of the Data Package standard that these descriptors follow. Source: datapackage.org, standard v2.0. */
export const profiles = {
  package: 'https://datapackage.org/profiles/2.0/datapackage.json',
  resource: 'https://datapackage.org/profiles/2.0/dataresource.json',
  schema: 'https://datapackage.org/profiles/2.0/tableschema.json',
} as const;

const types: Readonly<Record<Column<unknown>['kind'], string>> = {
  id: 'string',
  text: 'string',
  choice: 'string',
  quantity: 'number',
  fraction: 'number',
  whole: 'integer',
  date: 'date',
  time: 'time',
  monthDay: 'string',
  months: 'string',
  weekdays: 'string',
  yesNo: 'boolean',
};

function constraints(column: Column<unknown>): { readonly [key: string]: Json } {
  const limits = column.hard;
  const end = (value: number) => (column.kind === 'date' ? isoDay(value) : value);
  return {
    ...(column.required ? { required: true } : {}),
    ...(column.kind === 'id' ? { pattern: idForm.source } : {}),
    ...(column.kind === 'monthDay' ? { pattern: '^\\d{2}-\\d{2}$' } : {}),
    ...(column.kind === 'text' && column.unit === 'ISO 4217' ? { pattern: '^[A-Z]{3}$' } : {}),
    ...(column.kind === 'text' ? { maxLength: longestText } : {}),
    ...(column.kind === 'choice' ? { enum: column.choices } : {}),
    ...(limits ? { [limits.above ? 'exclusiveMinimum' : 'minimum']: end(limits.low), maximum: end(limits.high) } : {}),
  };
}

function field(name: string, column: Column<unknown>): Json {
  const rules = constraints(column);
  return {
    name,
    type: types[column.kind],
    description: column.emptyMeans === null ? column.about : `${column.about} Empty: ${column.emptyMeans}.`,
    ...(column.kind === 'time' ? { format: '%H:%M' } : {}),
    ...(column.kind === 'yesNo' ? { trueValues: ['yes'], falseValues: ['no'] } : {}),
    ...(column.unit ? { unit: column.unit } : {}),
    ...(Object.keys(rules).length > 0 ? { constraints: rules } : {}),
  };
}

/**
 * How does the open Table Schema standard describe this table? From the same columns that the reader uses.
 *
 * @param table - the table
 * @returns the schema, as it stands in datapackage.json
 * @source Data Package standard v2.0, Table Schema
 * @law a key with a column that may be empty is a unique key, never the primary key
 */
export function tableSchema(table: Table): { readonly [key: string]: Json } {
  const keyIsWhole = table.key.every((name) => table.columns[name]!.required);
  return {
    $schema: profiles.schema,
    fields: Object.entries(table.columns).map(([name, column]) => field(name, column)),
    missingValues: [''],
    ...(keyIsWhole ? { primaryKey: table.key } : { uniqueKeys: [table.key] }),
    ...(table.foreignKeys.length > 0
      ? {
          foreignKeys: table.foreignKeys.map((link) => ({
            fields: link.fields,
            reference: {
              ...(link.table === table.name ? {} : { resource: link.table }),
              fields: link.tableFields,
            },
          })),
        }
      : {}),
  };
}
