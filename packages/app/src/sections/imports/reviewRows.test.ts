import { expect, it } from 'vitest';
import { headerOf, problemsByFile, rowAt } from './reviewRows.ts';

const rowsShown = [
  {
    file: 'sites.csv',
    columns: [
      { header: 'Site', column: 'siteId' },
      { header: 'Headcount', column: 'people' },
      { header: 'Notes', column: null },
    ],
    rows: [{ row: 3, cells: ['S901', '1,5'] }],
  },
];

it('finds the row of a problem, its cells under the headers of the file', () => {
  const row = rowAt({ rowsShown }, { file: 'sites.csv', row: 3, column: 'people' })!;
  expect(row.cells.map(({ header, value }) => [header, value])).toEqual([
    ['Site', 'S901'],
    ['Headcount', '1,5'],
    ['Notes', ''],
  ]);
  expect([headerOf(row, 'people'), headerOf(row, 'Notes'), headerOf(row, 'none')]).toEqual([
    'Headcount',
    'Notes',
    null,
  ]);
  expect(rowAt({ rowsShown }, { file: 'sites.csv', row: 4 })).toBeNull();
  expect(rowAt({ rowsShown }, {})).toBeNull();
});

it('tells what cannot be used first, by file', () => {
  const problem = (severity: 'blocker' | 'warning' | 'note', file: string, row: number) => ({
    code: 'cell.unusual',
    severity,
    place: { file, row },
    facts: {},
    what: '',
    todo: '',
  });
  const sorted = problemsByFile([
    problem('note', 'a.csv', 2),
    problem('blocker', 'b.csv', 9),
    problem('blocker', 'a.csv', 5),
    problem('warning', 'a.csv', 3),
    problem('blocker', 'a.csv', 4),
  ]);
  expect(sorted.map(([file, own]) => [file, own.map(({ place }) => place.row)])).toEqual([
    ['a.csv', [4, 5, 3, 2]],
    ['b.csv', [9]],
  ]);
});
