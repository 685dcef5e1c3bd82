import { calendarDay, dayIndexOf, type Range } from '@eavewell/engine';
import { dateParts, dayFigure, enoughLitres, exactFigure, figure, fixedFigure, wholeFigure } from '../numbers.ts';
import type { NumberWords } from '../numberWords.ts';

const monthNames = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** How the engine's units are spoken: after one, after many. */
const unitWords: Readonly<Record<string, readonly [one: string, many: string]>> = {
  L: ['L', 'L'],
  L_per_day: ['L a day', 'L a day'],
  L_per_year: ['L a year', 'L a year'],
  L_per_person_per_day: ['L a person a day', 'L a person a day'],
  litres_per_person_per_day: ['L a person a day', 'L a person a day'],
  mm: ['mm', 'mm'],
  mm_per_year: ['mm a year', 'mm a year'],
  m: ['m', 'm'],
  m2: ['m²', 'm²'],
  day: ['day', 'days'],
  days: ['day', 'days'],
  day_per_year: ['day a year', 'days a year'],
  days_per_year: ['day a year', 'days a year'],
  dryDay_per_year: ['dry day a year', 'dry days a year'],
  year: ['year', 'years'],
  years: ['year', 'years'],
  people: ['person', 'people'],
  person: ['person', 'people'],
  household: ['household', 'households'],
  draws: ['draw', 'draws'],
  number: ['', ''],
  count: ['', ''],
  date: ['', ''],
  '': ['', ''],
  text: ['', ''],
};

function withUnit(amount: string, unit: string): string {
  const words = unitWords[unit] ?? unitWords[unit.replaceAll('/', '_per_').replaceAll(' ', '_')];
  const word = words ? words[amount === '1' ? 0 : 1] : unit.replaceAll('_', ' ');
  return word === '' ? amount : `${amount} ${word}`;
}

/** No record and no plan has a day before this year; made-up rain has no other. */
const firstRealYear = 1001;

function date(day: number | string): string {
  const parts = dateParts(day);
  if (!parts) return String(day);
  // Made-up rain has years of its own, counted from 1.
  const year = parts.year < firstRealYear ? `of made-up year ${parts.year}` : String(parts.year);
  return `${parts.day} ${monthNames[parts.month - 1] ?? '?'} ${year}`;
}

function percent(value_fraction: number): string {
  if (!Number.isFinite(value_fraction)) return 'a share not known';
  const value = value_fraction * 100;
  // 99.96 % must not read 100 %: only what is whole is called whole.
  const cut = value > 99 && value < 100 ? Math.floor(value * 10) / 10 : value;
  return `${figure(cut)} %`;
}

/** A calendar day of a year without 29 February. */
function dayOfYear(value: number): string {
  const { month, day } = calendarDay(dayIndexOf(2001, 1, 1) + value - 1);
  return `${day} ${monthNames[month - 1] ?? '?'}`;
}

function quantity(value: number | string | Range | null, unit: string, exactly: boolean): string {
  if (value === null) return 'none';
  if (typeof value === 'object') {
    if (unit === 'fraction') return `${percent(value.low)} to ${percent(value.high)}`;
    const [low, high] = ends(value.low, value.high);
    return `${low} to ${withUnit(high, unit)}`;
  }
  if (typeof value === 'string') return dateParts(value) ? date(value) : value;
  if (unit === 'fraction') return percent(value);
  if (unit === 'dayOfYear') return dayOfYear(value);
  if (unit === 'month') return monthNames[value - 1] ?? String(value);
  if (exactly) return withUnit(exactFigure(value), unit);
  return withUnit(/^day/.test(unit) ? dayFigure(value) : figure(value), unit);
}

/** The two ends of a range to the same number of decimals, coarse enough to be believed. */
function ends(low: number, high: number): readonly [string, string] {
  const wide = Math.abs(high) >= 10;
  return wide
    ? [wholeFigure(low), wholeFigure(high)]
    : [figure(Math.round(low * 10) / 10), figure(Math.round(high * 10) / 10)];
}

function between([from, to]: readonly [string, string]): string {
  return from === to ? from : `${from} to ${to}`;
}

export const numbers: NumberWords = {
  litres: (value) => withUnit(figure(value), 'L'),
  tankLitres: (value) => withUnit(figure(enoughLitres(value)), 'L'),
  litresADay: (value) => withUnit(figure(value), 'L_per_day'),
  days: (value) => withUnit(dayFigure(value), 'day'),
  daysAYear: (value) => withUnit(dayFigure(value), 'day_per_year'),
  dryDaysAYear: (value) => withUnit(dayFigure(value), 'dryDay_per_year'),
  years: (count) => withUnit(wholeFigure(count), 'year'),
  people: (count) => withUnit(wholeFigure(count), 'person'),
  ofYears: (good, all) => `${wholeFigure(good)} of ${withUnit(wholeFigure(all), 'year')}`,
  money: (amount, currency) => `${figure(amount)} ${currency}`,
  percent,
  likely: (range) => `likely ${between(ends(range.low, range.high))}`,
  range: ({ low, high }) => between(ends(low, high)),
  rangeOfYears: ({ low, high }, coming) =>
    `${between([wholeFigure(low), wholeFigure(high)])} of ${wholeFigure(coming)}`,
  likelyNextYears: ({ low, high }, coming) => {
    const range = between([wholeFigure(low), wholeFigure(high)]);
    return coming === 1 ? `likely ${range} of the next year` : `likely ${range} of the next ${wholeFigure(coming)}`;
  },
  date,
  fixed: fixedFigure,
  quantity: (value, unit) => quantity(value, unit, false),
  given: (value, unit) => quantity(value, unit, true),
};
