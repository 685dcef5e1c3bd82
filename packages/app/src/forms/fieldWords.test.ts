import { folderTableNames } from '@eavewell/tables';
import { type AppMessageKey, appLanguages, loadAppLanguage } from '@eavewell/words/app';
import { describe, expect, it } from 'vitest';
import { formTable } from './formTables.ts';

const tables = ['settings', ...folderTableNames].map((name) => formTable(name)!);
const languages = await Promise.all(appLanguages.map(({ code }) => loadAppLanguage(code)));
const english = languages.find(({ code }) => code === 'en')!;
const key = (table: string, column: string) => `fields.${table}_${column.replace('.', '_')}`;

describe('every column of every table', () => {
  it.each(languages.map(({ code, say }) => [code, say] as const))('has a name and a meaning in %s', (_, say) => {
    for (const { name, columns } of tables)
      for (const [column, { emptyMeans, choices }] of Object.entries(columns)) {
        expect(say(key(name, column) as AppMessageKey)).not.toBe('');
        expect(say(`${key(name, column)}_about` as AppMessageKey)).not.toBe('');
        if (emptyMeans !== null) expect(say(`${key(name, column)}_empty` as AppMessageKey)).not.toBe('');
        for (const choice of choices) expect(say(`choices.${choice}` as AppMessageKey)).not.toBe('');
      }
  });

  it('means in English what the tables say of it', () => {
    for (const { name, columns } of tables)
      for (const [column, { about }] of Object.entries(columns))
        expect(english.say(`${key(name, column)}_about` as AppMessageKey)).toBe(about.replace('null:', 'empty:'));
  });
});
