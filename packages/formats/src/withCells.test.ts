import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { splitCsv } from './splitCsv.ts';
import { withCells, withColumns } from './withCells.ts';

const set = (text: string, row: number, column: number, value: string) =>
  withCells(text, ',', [{ row, column, value }]);

describe('withCells', () => {
  it('changes one cell and nothing else', () => {
    expect(set('a,b,c\n1,2,3\n4,5,6\n', 3, 1, '9')).toBe('a,b,c\n1,2,3\n4,9,6\n');
    expect(set('a,b\n1,2', 2, 1, '9')).toBe('a,b\n1,9');
    expect(set('a,b\n1,2', 2, 0, '')).toBe('a,b\n,2');
  });

  it('keeps line ends, quotes, spaces and the byte order mark as they are', () => {
    expect(set('\uFEFFa,b\r\n "x" ,"2, ""two"""\r\n3,4\r\n', 3, 0, '9')).toBe(
      '\uFEFFa,b\r\n "x" ,"2, ""two"""\r\n9,4\r\n',
    );
    expect(set('a,b\r1,2\r3,4\r', 2, 1, '9')).toBe('a,b\r1,9\r3,4\r');
    expect(set('\uFEFFa,b\n1,2\n', 1, 0, 'z')).toBe('\uFEFFz,b\n1,2\n');
  });

  it('counts rows past line ends inside quotes, and empty lines', () => {
    expect(set('a,b\n"1\n2",x\n\n3,y\n', 4, 1, 'z')).toBe('a,b\n"1\n2",x\n\n3,z\n');
    expect(set('a,b\n"1\r\n2",x\n3,y\n', 2, 1, 'z')).toBe('a,b\n"1\r\n2",z\n3,y\n');
  });

  it('replaces a quoted cell, and quotes where it must', () => {
    expect(set('a,b\n"1,5",2\n', 2, 0, '9')).toBe('a,b\n9,2\n');
    expect(set('a,b\n1,2\n', 2, 0, 'x, "y"')).toBe('a,b\n"x, ""y""",2\n');
    expect(withCells('a;b\n1;2\n', ';', [{ row: 2, column: 1, value: '-8,5' }])).toBe('a;b\n1;-8,5\n');
  });

  it('lengthens a row that is too short', () => {
    expect(set('a,b,c\n1\n', 2, 2, '9')).toBe('a,b,c\n1,,9\n');
    expect(
      withCells('a,b,c\n1\n2,3,4\n', ',', [
        { row: 2, column: 2, value: '9' },
        { row: 2, column: 1, value: '8' },
      ]),
    ).toBe('a,b,c\n1,8,9\n2,3,4\n');
    expect(set('a,b\n1,', 2, 1, '9')).toBe('a,b\n1,9');
  });

  it('gives nothing where quotes do not close or the row is not there', () => {
    expect(set('a,b\n"1,2\n3,4\n', 3, 0, '9')).toBeNull();
    expect(set('a,b\n1,2\n', 7, 0, '9')).toBeNull();
  });

  it('changes only what it was told to, in any table', () => {
    const cell = fc.oneof(
      fc.string({ maxLength: 6 }),
      fc.constantFrom('', ' ', '"', 'a"b', '1,2', 'x\ny', 'ü', '\r\n'),
    );
    const table = fc.array(fc.array(cell, { minLength: 3, maxLength: 3 }), { minLength: 2, maxLength: 6 });
    const quote = (text: string) => `"${text.replaceAll('"', '""')}"`;
    fc.assert(
      fc.property(table, fc.nat(), fc.nat(2), cell, fc.constantFrom('\n', '\r\n'), (cells, at, column, value, end) => {
        const text = cells.map((row) => row.map(quote).join(',')).join(end) + end;
        const row = 1 + (at % cells.length);
        const changed = withCells(text, ',', [{ row, column, value }]);
        const expected = cells.map((own, i) => own.map((old, j) => (i + 1 === row && j === column ? value : old)));
        expect(changed).not.toBeNull();
        expect(splitCsv(changed!, ',').rows.map((own) => own.cells)).toEqual(expected);
      }),
      { seed: 11, numRuns: 500 },
    );
  });
});

describe('withColumns', () => {
  it('adds columns at the right of every filled row', () => {
    expect(withColumns('a,b\r\n1,2\r\n\r\n3,4', ',', ['x', 'y'])).toBe('a,b,x,y\r\n1,2,,\r\n\r\n3,4,,');
  });

  it('fills up rows that were too short already', () => {
    expect(withColumns('a,b\n1\n', ',', ['x'])).toBe('a,b,x\n1,,\n');
  });
});
