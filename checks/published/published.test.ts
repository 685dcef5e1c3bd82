import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { everyFile } from './everyFile.ts';
import { type PublishedRow, rowFault, toleranceOf } from './published.ts';
import { everyRow, exportedNames, noMethods, publishedPage } from './table.ts';

describe.each(everyFile.map((file) => ({ file, name: `${file.source}, ${file.method}` })))('$name', ({ file }) => {
  it.each(file.rows.map((row) => ({ row, place: row.place })))('$place', ({ row }) => {
    expect(rowFault(row)).toBeNull();
  });
});

describe('the rows themselves', () => {
  test('check something the engine exports', () => {
    const names = exportedNames();
    expect(everyRow().filter(({ method }) => !names.has(method))).toEqual([]);
  });

  test('what is not counted as a method is still exported', () => {
    const names = exportedNames();
    expect(noMethods.filter((name) => !names.has(name))).toEqual([]);
  });

  test('name a source of docs/sources.json', () => {
    const sources = JSON.parse(readFileSync(new URL('../../docs/sources.json', import.meta.url), 'utf8')) as {
      id: string;
    }[];
    const ids = new Set(sources.map(({ id }) => id));
    expect(everyFile.map(({ source }) => source).filter((id) => !ids.has(id))).toEqual([]);
  });

  test('stand in everyFile, whichever file they are written in', () => {
    const folder = new URL('.', import.meta.url);
    const list = readFileSync(new URL('everyFile.ts', folder), 'utf8');
    const written = readdirSync(folder).filter(
      (name) => name.endsWith('.ts') && /: PublishedFile = \{/.test(readFileSync(new URL(name, folder), 'utf8')),
    );
    expect(written.length).toBeGreaterThan(3);
    expect(written.filter((name) => !list.includes(`'./${name}'`))).toEqual([]);
  });

  test('give the reason of a wider tolerance', () => {
    const wide = everyRow().filter(({ row }) => row.tolerance && row.tolerance.reason.length < 20);
    expect(wide).toEqual([]);
  });

  test('a wrong figure, NaN, a wrong word and a misprint that is met are faults', () => {
    const row = (printed: string, got: number | string, more: Partial<PublishedRow> = {}): PublishedRow => ({
      place: '',
      inputs: {},
      printed,
      got: () => got,
      ...more,
    });
    expect(toleranceOf(row('1.50', 0))).toBe(0.005);
    expect(rowFault(row('1.50', 1.504))).toBeNull();
    expect(rowFault(row('1.50', 1.506))).not.toBeNull();
    expect(rowFault(row('1.50', Number.NaN))).not.toBeNull();
    expect(rowFault(row('void', 'valid'))).not.toBeNull();
    const follows = { value: 2, tolerance: 0.01, reason: '' };
    expect(rowFault(row('1.50', 2, { follows }))).toBeNull();
    expect(rowFault(row('1.50', 1.5, { follows }))).not.toBeNull();
    expect(rowFault(row('1.50', 2.1, { follows }))).not.toBeNull();
  });
});

test('the page puts methods without a published figure first', () => {
  const page = publishedPage();
  expect(page.indexOf('## Without a published figure')).toBeLessThan(page.indexOf('## With published figures'));
  expect(page).not.toContain('(not met)');
});
