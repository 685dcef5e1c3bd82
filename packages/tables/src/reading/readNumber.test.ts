import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readNumber } from './readNumber.ts';

const commas = { decimalComma: false };
const semicolons = { decimalComma: true };

describe('readNumber', () => {
  it.each([
    ['12', 12],
    ['-3.25', -3.25],
    ['007', 7],
    ['1e3', 1000],
    ['2.5E-2', 0.025],
    ['-0', 0],
  ])('reads %s', (text, value) => {
    expect(readNumber(text, commas)).toStrictEqual({ value, comma: false });
  });

  it.each([
    ['+5', 'cell.not_a_number'],
    ['.5', 'cell.not_a_number'],
    ['5.', 'cell.not_a_number'],
    ['1.2.3', 'cell.not_a_number'],
    ['0x10', 'cell.unit_in_number'],
    ['12-13', 'cell.not_a_number'],
    ['--5', 'cell.not_a_number'],
    ['½', 'cell.not_a_number'],
    ['-Infinity', 'cell.not_finite'],
    ['1e309', 'cell.not_finite'],
    ['12 m', 'cell.unit_in_number'],
    ['85%', 'cell.unit_in_number'],
    ['7,5', 'cell.decimal_comma'],
    ['1,500', 'cell.comma_ambiguous'],
    ['-1,500', 'cell.comma_ambiguous'],
    ['0,125', 'cell.decimal_comma'],
    ['1234,567', 'cell.decimal_comma'],
    ['1 500', 'cell.thousands'],
    ['1\u00a0500', 'cell.thousands'],
    ['1_500', 'cell.thousands'],
    ['1.234.567', 'cell.thousands'],
    ['1.234,5', 'cell.thousands'],
    ['1,234.5', 'cell.thousands'],
  ])('refuses %s as %s', (text, code) => {
    expect(readNumber(text, commas)).toMatchObject({ code });
  });

  it('proposes the number without its thousands marks', () => {
    expect(readNumber('1.234,5', commas)).toEqual({ code: 'cell.thousands', facts: { likely: '1234.5' } });
    expect(readNumber('1,234.5', commas)).toEqual({ code: 'cell.thousands', facts: { likely: '1234.5' } });
  });

  it.each([
    ['7,5', 7.5],
    ['-8,55', -8.55],
    ['0,125', 0.125],
    ['1234,567', 1234.567],
  ])('reads the decimal comma of %s where cells are not separated by commas', (text, value) => {
    expect(readNumber(text, semicolons)).toEqual({ value, comma: true });
  });

  it('takes a point with three digits behind it for a decimal point until commas are seen to be one', () => {
    expect(readNumber('1.500', semicolons)).toEqual({ value: 1.5, comma: false });
    expect(readNumber('1.500', { decimalComma: true, commaSeen: true })).toMatchObject({
      code: 'cell.comma_ambiguous',
    });
    expect(readNumber('1.5', { decimalComma: true, commaSeen: true })).toEqual({ value: 1.5, comma: false });
  });

  it('gives a finite number or a fault for any text', () => {
    fc.assert(
      fc.property(fc.string(), fc.boolean(), (text, decimalComma) => {
        const reading = readNumber(text, { decimalComma });
        expect('value' in reading ? Number.isFinite(reading.value) : reading.code.startsWith('cell.')).toBe(true);
      }),
      { seed: 1 },
    );
  });

  it('reads back every number as it is written', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        const text = String(value).replace('e+', 'e');
        expect(readNumber(text, commas)).toEqual({ value: value === 0 ? 0 : value, comma: false });
      }),
      { seed: 2 },
    );
  });
});
