import { isoDay, readIsoDay } from '@eavewell/engine';
import { z } from 'zod';
import type { Column, Limits, OtherUnit } from './table.ts';

/** What an id may be: it may become part of a path, so nothing else is let in. */
export const idForm = /^[A-Za-z0-9_-]{1,64}$/;
const timeForm = /^([01]\d|2[0-3]):[0-5]\d$/;

/** Longest text a cell may hold [character]; ours. */
export const longestText = 500;

interface Ranges {
  readonly hard?: Limits;
  readonly usual?: Limits;
  readonly otherUnit?: OtherUnit;
  readonly emptyMeans?: string;
}

const plain = {
  unit: '',
  required: false,
  hard: null,
  usual: null,
  otherUnit: null,
  choices: [],
  emptyMeans: null,
} as const;

/** A tank of so few litres is one entered in m³: nobody stores water for a village in less, and most tanks have fewer m³. Ours. */
export const cubicMetres: OtherUnit = { unit: 'm³', high: 50, factor: 1000 };

function numberWithin(base: z.ZodNumber, limits: Limits | undefined): z.ZodNumber {
  if (!limits) return base;
  const upper = base.max(limits.high);
  return limits.above ? upper.gt(limits.low) : upper.min(limits.low);
}

/** From a to b, both included. */
export function from(low: number, high: number): Limits {
  return { low, high };
}

/** Above a, up to b. */
export function above(low: number, high: number): Limits {
  return { low, high, above: true };
}

/** A name used to link rows: letters, digits, `_` and `-`, at most 64. */
export function id(about: string, emptyMeans: string | null = null): Column<string> {
  return { ...plain, kind: 'id', about, emptyMeans, schema: z.string().regex(idForm) };
}

/** Words for people. */
export function text(about: string): Column<string> {
  return { ...plain, kind: 'text', about, schema: z.string().min(1).max(longestText) };
}

/** Three capital letters. */
export function currency(about: string): Column<string> {
  return { ...plain, kind: 'text', about, unit: 'ISO 4217', schema: z.string().regex(/^[A-Z]{3}$/) };
}

/** A number with a unit. */
export function quantity(unit: string, about: string, ranges: Ranges = {}): Column<number> {
  return {
    ...plain,
    kind: 'quantity',
    unit,
    about,
    hard: ranges.hard ?? null,
    usual: ranges.usual ?? null,
    otherUnit: ranges.otherUnit ?? null,
    emptyMeans: ranges.emptyMeans ?? null,
    schema: numberWithin(z.number(), ranges.hard),
  };
}

/** A whole number with a unit. */
export function whole(unit: string, about: string, ranges: Ranges = {}): Column<number> {
  return { ...quantity(unit, about, ranges), kind: 'whole', schema: numberWithin(z.number().int(), ranges.hard) };
}

/** A share from 0 to 1. */
export function fraction(about: string, ranges: Ranges = {}): Column<number> {
  return { ...quantity('fraction', about, { ...ranges, hard: ranges.hard ?? from(0, 1) }), kind: 'fraction' };
}

/** A date, year-month-day, between two dates; read as a day index. */
export function date(about: string, first: string, last: string): Column<number> {
  const hard = from(readIsoDay(first)!, readIsoDay(last)!);
  return { ...plain, kind: 'date', about, hard, schema: numberWithin(z.number().int(), hard) };
}

/** A local time, `HH:MM`. */
export function time(about: string, emptyMeans: string | null = null): Column<string> {
  return { ...plain, kind: 'time', about, emptyMeans, schema: z.string().regex(timeForm) };
}

/** A day of every year, `MM-DD`; read as a day of a year without 29 February, 1 to 365. */
export function monthDay(about: string): Column<number> {
  return { ...plain, kind: 'monthDay', about, schema: z.number().int().min(1).max(365) };
}

/** Months by number, `6 to 9` or `6;7;8`; read as a list of numbers from 1 to 12. */
export function months(about: string, emptyMeans: string | null = null): Column<readonly number[]> {
  return { ...plain, kind: 'months', about, emptyMeans, schema: z.array(z.number().int().min(1).max(12)).min(1) };
}

/** Days of the week, `sat;sun`; read as a list of numbers from 0, Sunday, to 6. */
export function weekdays(about: string, emptyMeans: string | null = null): Column<readonly number[]> {
  return { ...plain, kind: 'weekdays', about, emptyMeans, schema: z.array(z.number().int().min(0).max(6)).min(1) };
}

/** One of a few words. */
export function choice<const T extends readonly [string, ...string[]]>(
  choices: T,
  about: string,
  emptyMeans: string | null = null,
): Column<T[number]> {
  return { ...plain, kind: 'choice', about, choices, emptyMeans, schema: z.enum(choices) as z.ZodType<T[number]> };
}

/** `yes` or `no`; read as true or false. */
export function yesNo(about: string, emptyMeans: string | null = null): Column<boolean> {
  return { ...plain, kind: 'yesNo', about, emptyMeans, choices: ['yes', 'no'], schema: z.boolean() };
}

/** The same column, which may not be empty. */
export function required<T>(column: Column<T>): Column<T> {
  return { ...column, required: true };
}

/**
 * How are the limits of a column written for a person?
 *
 * @param column - the column
 * @param limits - its hard or usual range [unit of the column]
 * @returns both ends, dates as dates [text]
 * @definition ours
 */
export function limitsText(column: Column<unknown>, limits: Limits): string {
  const written = (value: number) => (column.kind === 'date' ? isoDay(value) : String(value));
  return `${limits.above ? 'above ' : ''}${written(limits.low)} to ${written(limits.high)}`;
}

/**
 * What does a column ask for, in a few words?
 *
 * @param column - the column
 * @returns kind, form, range and unit [text]
 * @definition ours
 */
export function expectedText(column: Column<unknown>): string {
  const range = column.hard ? ` ${limitsText(column, column.hard)}` : '';
  const unit = column.unit ? ` [${column.unit}]` : '';
  switch (column.kind) {
    case 'id':
      return 'letters, digits, _ and -, at most 64';
    case 'text':
      return column.unit === 'ISO 4217' ? 'three capital letters [ISO 4217]' : 'text';
    case 'date':
      return `YYYY-MM-DD,${range}`;
    case 'time':
      return 'HH:MM, 00:00 to 23:59';
    case 'monthDay':
      return 'MM-DD, 01-01 to 12-31';
    case 'months':
      return 'months by number, as 6 to 9 or 6;7;8';
    case 'weekdays':
      return 'days of the week, as sat;sun';
    case 'choice':
    case 'yesNo':
      return column.choices.join(', ');
    case 'whole':
      return `whole number${range}${unit}`;
    default:
      return `number${range}${unit}`;
  }
}
