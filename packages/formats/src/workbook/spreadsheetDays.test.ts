import { isoDay, readIsoDay } from '@eavewell/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellFormat } from './numberFormats.ts';
import { plainText } from './sheetCells.ts';
import { dayOfSerial, serialOfDay, timeOfSerial } from './spreadsheetDays.ts';
import { xmlText } from './writtenCells.ts';

describe('days by their number', () => {
  // Common practice, no source: 1 is 1 January 1900, 36526 is 1 January 2000, 2958465 is 31 December 9999.
  it.each([
    [1, '1900-01-01'],
    [59, '1900-02-28'],
    [60, '1900-02-29'],
    [61, '1900-03-01'],
    [36526, '2000-01-01'],
    [2958465, '9999-12-31'],
    [0, '1900-01-00'],
    [36526.999, '2000-01-01'],
  ])('%d of 1900 is %s', (serial, day) => {
    expect(dayOfSerial(serial, '1900')).toBe(day);
  });

  it.each([
    [0, '1904-01-01'],
    [59, '1904-02-29'],
    [60, '1904-03-01'],
    [35064, '2000-01-01'],
  ])('%d of 1904 is %s', (serial, day) => {
    expect(dayOfSerial(serial, '1904')).toBe(day);
  });

  it.each([-1, -0.5, 2958466, 1e12, Number.NaN, Number.POSITIVE_INFINITY])('%d is no day', (serial) => {
    expect(dayOfSerial(serial, '1900')).toBeNull();
    expect(dayOfSerial(serial, '1904')).toBeNull();
  });

  it('every day from March 1900 on comes back, in both counts 1,462 apart', () => {
    const day = fc.integer({ min: readIsoDay('1904-01-01')!, max: readIsoDay('9999-12-31')! });
    fc.assert(
      fc.property(day, (index) => {
        const text = isoDay(index);
        const serial = serialOfDay(text)!;
        expect(dayOfSerial(serial, '1900')).toBe(text);
        expect(dayOfSerial(serial - 1462, '1904')).toBe(text);
      }),
      { numRuns: 500, seed: 1 },
    );
  });

  it('before March 1900, and for what is no day, there is no number', () => {
    expect(['1900-02-28', '1850-01-01', '2001-02-30', 'x', '1900-03-01'].map(serialOfDay)).toEqual([
      null,
      null,
      null,
      null,
      61,
    ]);
  });
});

describe('times by their number', () => {
  it.each([
    [0, '00:00'],
    [7 / 24, '07:00'],
    [0.375, '09:00'],
    [36526.5, '12:00'],
    [0.99999, '00:00'],
  ])('%d is %s', (serial, time) => {
    expect(timeOfSerial(serial)).toBe(time);
  });
});

describe('formats', () => {
  it.each([
    [0, undefined, 'plain'],
    [14, undefined, 'date'],
    [20, undefined, 'time'],
    [22, undefined, 'date'],
    [9, undefined, 'plain'],
    [49, undefined, 'plain'],
    [164, 'General', 'plain'],
    [164, 'yyyy\\-mm\\-dd;@', 'date'],
    [164, '[$-409]d-mmm-yy;@', 'date'],
    [164, 'mmm', 'date'],
    [164, '[h]:mm', 'time'],
    [164, 'hh:mm AM/PM', 'time'],
    [164, '0.0" days"', 'plain'],
    [164, '#,##0.00\\ "m³"', 'plain'],
    [164, '[Red]0.00', 'plain'],
    [164, '_-* #,##0_-', 'plain'],
    [164, '000', '000'],
    [164, '0', 'plain'],
  ])('%d %s shows a number as %s', (id, code, format) => {
    expect(cellFormat(id, code)).toBe(format);
  });
});

describe('letters by their number', () => {
  it('any text comes back', () => {
    const text = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.constantFrom('_x0041_', '_x005F_', '_x_x0041_', '\r\n', '\ud800'),
    );
    fc.assert(
      fc.property(text, (written) => {
        expect(plainText(xmlText(written))).toBe(written);
        // biome-ignore lint/suspicious/noControlCharactersInRegex: none may be left
        expect(xmlText(written)).not.toMatch(/[\u0000-\u0008\u000b-\u001f\ufffe\uffff]/);
      }),
      { numRuns: 1000, seed: 2 },
    );
  });
});
