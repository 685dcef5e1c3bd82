import { describe, expect, it } from 'vitest';
import { parseNumber } from './parseNumber.ts';

const point = { decimalMark: '.' };
const comma = { decimalMark: ',' };
const value = (text: string, form = point) => {
  const parsed = parseNumber(text, form);
  return parsed.kind === 'number' ? parsed.value : parsed.kind;
};

describe('a number as it was typed', () => {
  it('takes a comma and a point alike', () => {
    for (const form of [point, comma]) {
      expect(
        ['7.5', '7,5', '0.125', '0,125', '-3,25', '+3.5', '.5', ',5', '12.3456', '1234,567'].map((one) =>
          value(one, form),
        ),
      ).toEqual([7.5, 7.5, 0.125, 0.125, -3.25, 3.5, 0.5, 0.5, 12.3456, 1234.567]);
    }
  });

  it('asks where three figures follow one mark, and proposes first what the language would mean', () => {
    expect(parseNumber('1,234', point)).toEqual({ kind: 'ambiguous', readings: [1234, 1.234] });
    expect(parseNumber('1,234', comma)).toEqual({ kind: 'ambiguous', readings: [1.234, 1234] });
    expect(parseNumber('12.500', point)).toEqual({ kind: 'ambiguous', readings: [12.5, 12_500] });
    expect(parseNumber('-12.500', comma)).toEqual({ kind: 'ambiguous', readings: [-12_500, -12.5] });
  });

  it('is settled by a second mark, a space or a 0 before it', () => {
    expect(
      ['1,234.5', '1.234,5', '1,234,567', '1.234.567', '12 500', '12\u00a0500,25', "12'500", '0,500'].map((one) =>
        value(one),
      ),
    ).toEqual([1234.5, 1234.5, 1_234_567, 1_234_567, 12_500, 12_500.25, 12_500, 0.5]);
    expect(value('12,34,567')).toBe(1_234_567);
  });

  it('reads the figures of other scripts, and a true minus sign', () => {
    expect(['٣٫٥', '۱۲', '१२', '\u22123', '\u20683\u2069'].map((one) => value(one))).toEqual([3.5, 12, 12, -3, 3]);
  });

  it('says what is none', () => {
    expect(['', '  ', '\u00a0'].map((one) => value(one))).toEqual(['empty', 'empty', 'empty']);
    const none = [
      'abc',
      '1 2',
      '7 m',
      '1.2.3',
      '1,2,3',
      '--1',
      '1e5',
      '.',
      ',',
      '-',
      '12 50',
      '1.234.5',
      '1,234,5',
      'Infinity',
      '½',
      '1 234 56',
    ];
    expect(none.filter((one) => value(one) !== 'notANumber')).toEqual([]);
    expect(value('9'.repeat(400))).toBe('notANumber');
  });
});
