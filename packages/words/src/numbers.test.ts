import { dayIndexOf } from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import { english } from './index.ts';
import { enoughLitres } from './numbers.ts';

const { numbers } = english;

describe('numbers as people read them', () => {
  it('groups thousands, keeps the unit, and cuts no more than can be believed', () => {
    expect(numbers.litres(16400)).toBe('16,400 L');
    expect(numbers.litres(1234567.8)).toBe('1,234,568 L');
    expect(numbers.litres(7.5)).toBe('7.5 L');
    expect(numbers.litres(0)).toBe('0 L');
    expect(numbers.days(1)).toBe('1 day');
    expect(numbers.days(21.74)).toBe('21.7 days');
    expect(numbers.days(0.02)).toBe('under 0.1 days');
    expect(numbers.quantity(0.0432, 'mm')).toBe('0.0432 mm');
    expect(numbers.quantity(-3.25, 'm')).toBe('-3.25 m');
    expect(numbers.quantity(-0.0000000001, 'm')).toBe('0 m');
    expect(numbers.quantity(99.96, 'L')).toBe('100 L');
    expect(numbers.given(7.125, 'L_per_person_per_day')).toBe('7.125 L a person a day');
    expect(numbers.quantity(675, 'L/day')).toBe('675 L a day');
    expect([1234.5, 8.3, -0.004, Number.NaN].map((value) => numbers.fixed(value, 2))).toEqual([
      '1,234.50',
      '8.30',
      '0.00',
      'not known',
    ]);
  });

  it('never lets NaN through', () => {
    for (const text of [numbers.litres(Number.NaN), numbers.percent(Number.NaN), numbers.quantity(Number.NaN, 'mm')])
      expect(text).not.toMatch(/NaN/);
  });

  it('says shares as counts, and a whole only when it is whole', () => {
    expect(numbers.ofYears(28, 30)).toBe('28 of 30 years');
    expect(numbers.ofYears(1, 1)).toBe('1 of 1 year');
    expect(numbers.percent(0.95)).toBe('95 %');
    expect(numbers.percent(0.9998)).toBe('99.9 %');
    expect(numbers.percent(1)).toBe('100 %');
  });

  it('gives ranges in one voice', () => {
    expect(numbers.likely({ low: 12.6, high: 21.4 })).toBe('likely 13 to 21');
    expect(numbers.likely({ low: 0.31, high: 2.28 })).toBe('likely 0.3 to 2.3');
    expect(numbers.likely({ low: 30, high: 30 })).toBe('likely 30');
    expect(numbers.range({ low: 12.6, high: 21.4 })).toBe('13 to 21');
    expect(numbers.rangeOfYears({ low: 18, high: 28 }, 30)).toBe('18 to 28 of 30');
    expect(numbers.rangeOfYears({ low: 30, high: 30 }, 30)).toBe('30 of 30');
    expect(numbers.likelyNextYears({ low: 23, high: 30 }, 31)).toBe('likely 23 to 30 of the next 31');
    expect(numbers.likelyNextYears({ low: 1, high: 1 }, 1)).toBe('likely 1 of the next year');
    expect(numbers.quantity({ low: 0.8, high: 0.953 }, 'fraction')).toBe('80 % to 95.3 %');
    expect(numbers.quantity({ low: 14.6, high: 29.2 }, 'day/year')).toBe('15 to 29 days a year');
  });

  it('writes dates out', () => {
    expect(numbers.date('2010-07-20')).toBe('20 July 2010');
    expect(numbers.date(dayIndexOf(2000, 2, 29))).toBe('29 February 2000');
    expect(numbers.date('soon')).toBe('soon');
  });

  it('rounds a tank that is enough up, never down', () => {
    expect(numbers.tankLitres(16387.2)).toBe('16,400 L');
    expect(numbers.tankLitres(16400)).toBe('16,400 L');
    expect(numbers.tankLitres(16400.1)).toBe('16,500 L');
    expect(numbers.tankLitres(991)).toBe('1,000 L');
    for (let litres = 1; litres < 50_000; litres += 37.3) expect(enoughLitres(litres)).toBeGreaterThanOrEqual(litres);
  });
});
