import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { allTables } from '../contract/allTables.ts';
import { settingsColumns, targetColumns } from '../contract/settings.ts';
import { tablesPage } from './tablesPage.ts';

const page = tablesPage();

/** The lines under the heading of one section. */
function section(name: string): string {
  return page.split('\n## ').find((part) => part.startsWith(`${name}\n`))!;
}

describe('tablesPage', () => {
  it('is the page that is committed', () => {
    expect(readFileSync(new URL('../../../../docs/tables.md', import.meta.url), 'utf8')).toBe(page);
  });

  it('has a line for every column, with its unit', () => {
    for (const table of allTables)
      for (const [name, column] of Object.entries(table.columns))
        expect(section(table.name)).toContain(`| ${name} | ${column.kind} | ${column.unit} |`);
  });

  it('has a line for every setting', () => {
    for (const name of Object.keys(settingsColumns)) expect(section('settings')).toContain(`\n| ${name} |`);
    for (const name of Object.keys(targetColumns)) expect(section('settings')).toContain(`\n| target.${name} |`);
  });

  it('has as many cells in every line of a table as in its heading', () => {
    const blocks = page.split('\n\n').filter((block) => block.startsWith('| '));
    expect(blocks.length).toBe(allTables.length + 2);
    for (const block of blocks) {
      const marks = block
        .trimEnd()
        .split('\n')
        .map((line) => line.split('|').length);
      expect(new Set(marks).size).toBe(1);
    }
  });
});
