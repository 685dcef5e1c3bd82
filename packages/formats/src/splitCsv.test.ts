import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { splitCsv, splitLine } from './splitCsv.ts';

const cells = (text: string) => splitCsv(text, ',').rows.map((row) => row.cells);

describe('splitCsv', () => {
  it.each(['\n', '\r\n', '\r'])('splits lines that end in %j', (end) => {
    expect(splitCsv(['a,b', '1,2', ''].join(end), ',')).toEqual({
      rows: [
        { row: 1, cells: ['a', 'b'] },
        { row: 2, cells: ['1', '2'] },
      ],
      ended: true,
    });
  });

  it('keeps separators, quotes and line ends that stand in quotes', () => {
    expect(cells('a,b\n"1,""x""\r\ny",2\n')).toEqual([
      ['a', 'b'],
      ['1,"x"\r\ny', '2'],
    ]);
  });

  it('counts empty lines, so that rows keep their numbers', () => {
    expect(splitCsv('a\n\n\nb\n', ',').rows.map(({ row, cells: found }) => [row, ...found])).toEqual([
      [1, 'a'],
      [2, ''],
      [3, ''],
      [4, 'b'],
    ]);
  });

  it('marks the line whose quotes do not close and reads the others', () => {
    expect(splitCsv('a,b\n1,"2\n3,4\n5,"6"\n', ',').rows).toEqual([
      { row: 1, cells: ['a', 'b'] },
      { row: 2, cells: ['1', '2'], broken: true },
      { row: 3, cells: ['3', '4'] },
      { row: 4, cells: ['5', '6'] },
    ]);
  });

  it('says whether the last line ends', () => {
    expect([splitCsv('a\n1', ',').ended, splitCsv('a\n1\n', ',').ended]).toEqual([false, true]);
  });

  it('reads back whatever cells were written with quotes', () => {
    const cell = fc.string({ unit: fc.constantFrom('a', '"', ',', '\n', ' ', '1') });
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell), { minLength: 1 }), (rows) => {
        const text = rows
          .map((row) => `${row.map((value) => `"${value.replaceAll('"', '""')}"`).join(',')}\n`)
          .join('');
        expect(cells(text)).toEqual(rows);
      }),
      { seed: 6 },
    );
  });

  it('reads one line by itself as it reads it in a file', () => {
    const line = fc.string({ unit: fc.constantFrom('a', '"', ',', ';', ' ', '1', '""'), maxLength: 12 });
    let quoted = 0;
    fc.assert(
      fc.property(line, fc.constantFrom(',', ';'), (text, separator) => {
        // A line before and one behind, so that the line is neither the first nor the last.
        const { rows } = splitCsv(`x\n${text}\ny\n`, separator as ',' | ';');
        if (rows.length !== 3 || rows.some(({ broken }) => broken === true)) return;
        if (text.includes('"')) quoted++;
        expect(splitLine(text, 2, separator as ',' | ';')).toEqual(rows[1]);
      }),
      { seed: 9, numRuns: 3000 },
    );
    expect(quoted).toBeGreaterThan(200);
  });
});
