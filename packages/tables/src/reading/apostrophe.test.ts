import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { guardText, readGuarded } from './apostrophe.ts';

describe('the apostrophe rule', () => {
  it.each([
    ['=1+1', "'=1+1"],
    ['+66 12', "'+66 12"],
    ['-plus', "'-plus"],
    ['@here', "'@here"],
    ['\tx', "'\tx"],
    ['\rx', "'\rx"],
    ["'=1", "''=1"],
    ['-3.25', '-3.25'],
    ['-1e5', '-1e5'],
    ["'Uta", "'Uta"],
    ['Tarn = water', 'Tarn = water'],
    ['', ''],
  ])('writes %j as %j and reads it back', (value, written) => {
    expect(guardText(value)).toBe(written);
    expect(readGuarded(written)).toBe(value);
  });

  it('loses nothing of any text', () => {
    const texts = fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom("'", '=', '-', '1', '\t', '.') }));
    fc.assert(
      fc.property(texts, (value) => {
        expect(readGuarded(guardText(value))).toBe(value);
        // What is written can begin a formula only where it is a number.
        expect(/^[=+\-@\t\r]/.test(guardText(value)) ? Number.isNaN(Number(value)) : false).toBe(false);
      }),
      { seed: 4 },
    );
  });
});
