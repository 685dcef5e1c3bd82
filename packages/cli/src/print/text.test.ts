import picocolors from 'picocolors';
import { describe, expect, it } from 'vitest';
import { Sheet } from './sheet.ts';
import { columnsOf, plainText, printable, wrapped } from './text.ts';

describe('wrapped', () => {
  it('fits the width, whatever comes', () => {
    const texts = [
      'a'.repeat(300),
      `${'long '.repeat(60)}`,
      '村'.repeat(100),
      'x 12 L y',
      '',
      '1 of 2 years '.repeat(20),
    ];
    for (const text of texts)
      for (const width of [20, 40, 67, 80])
        for (const line of wrapped(text, width)) expect(columnsOf(line)).toBeLessThanOrEqual(width);
  });

  it('keeps every letter', () => {
    const text = `Ten ${'b'.repeat(95)} words and 1,080 L a day`;
    expect(wrapped(text, 40).join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
  });

  it('never parts a number from its unit, a share or a row', () => {
    expect(wrapped('it brings 16,400 L', 16)).toEqual(['it brings', '16,400 L']);
    expect(wrapped('water in 28 of 30 years', 18)).toEqual(['water in', '28 of 30 years']);
    expect(wrapped('roofs.csv, row 111', 16)).toEqual(['roofs.csv,', 'row 111']);
  });
});

describe('texts for the terminal', () => {
  it('counts columns as a terminal does', () => {
    expect(columnsOf('│█│')).toBe(3);
    expect(columnsOf('村')).toBe(2);
    expect(columnsOf('e\u0301')).toBe(1);
  });

  it('lets no name steer the terminal', () => {
    expect(printable('a\u001b[2Jb\u202ec\nd')).toBe('a [2Jb c d');
  });

  it('has an ASCII form for all it prints', () => {
    expect(plainText('Éloï: 12 m² × 3 ÷ 4 − 1 · 村')).toBe('Eloi: 12 m2 x 3 / 4 - 1 . ?');
  });

  it('cuts off nothing in a table that is too wide: the cell takes several lines', () => {
    const sheet = new Sheet({ width: 40, drawn: true, paint: picocolors.createColors(false) });
    const label = 'one more tank, fewer litres promised *';
    sheet.table(
      [
        { head: 'smallest change', align: 'left' },
        { head: 'sites', align: 'right' },
        { head: 'cost', align: 'right' },
      ],
      [[label, '1', '520 USD']],
    );
    const lines = sheet.text().trimEnd().split('\n');
    for (const line of lines) expect(columnsOf(line), line).toBeLessThanOrEqual(40);
    const cells = lines.map((line) => line.slice(2, 23).trim());
    expect(cells.join(' ')).toBe(`smallest change ${label}`);
    expect(lines[1]).toMatch(/ 1 {2}520 USD$/);
  });
});
