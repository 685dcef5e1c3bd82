import { ticksTo } from '@eavewell/drawing';
import type { RolloutSheet } from '@eavewell/tables';
import { dayOf, type WeekAxis, xOf } from './axis.ts';

/** A value from a day on: from the start of that day to the next such point. */
export interface StepPoint {
  readonly at: number;
  readonly value: number;
}

/** Where values stand: 0 at the foot, the most at the head of a band. */
export interface Rise {
  readonly most: number;
  readonly height_px: number;
  /** The lowest value that is drawn: 0, or under it where something is short. */
  readonly least: number;
}

const inTenths = (value: number) => String(Math.round(value * 10) / 10);

/** How far from the top a value stands. */
export const yOf = ({ most, least, height_px }: Rise, value: number): number =>
  most > least ? height_px * (1 - (value - least) / (most - least)) : height_px;

/** Steps from a first value on, as a path: level from day to day, straight up or down between, on to the end of the axis. */
export function stepsPath(points: readonly StepPoint[], before: number, axis: WeekAxis, rise: Rise): string {
  let path = `M0 ${inTenths(yOf(rise, before))}`;
  for (const { at, value } of points) path += `H${inTenths(xOf(axis, at))}V${inTenths(yOf(rise, value))}`;
  return `${path}H${inTenths(axis.width_px)}`;
}

/** The room between two lines of steps, as a path. */
export function bandPath(
  points: readonly { readonly at: number; readonly low: number; readonly high: number }[],
  before: number,
  axis: WeekAxis,
  rise: Rise,
): string {
  if (points.length === 0) return '';
  const high = stepsPath(
    points.map(({ at, high: value }) => ({ at, value })),
    before,
    axis,
    rise,
  );
  let back = `V${inTenths(yOf(rise, points.at(-1)!.low))}`;
  for (let i = points.length - 1; i >= 0; i--)
    back += `H${inTenths(xOf(axis, points[i]!.at))}V${inTenths(yOf(rise, i === 0 ? before : points[i - 1]!.low))}`;
  return `${high}${back}Z`;
}

/** What is drawn of the people who drink. */
export interface Drinking {
  readonly all: number;
  readonly before: number;
  readonly line: readonly StepPoint[];
  readonly band: readonly { readonly at: number; readonly low: number; readonly high: number }[];
  readonly isDrawn: boolean;
}

type OfDrinking = Pick<RolloutSheet, 'from' | 'served' | 'servedBefore_people' | 'servedByWeek' | 'people_count'>;

/** People who drink, from day to day: of the futures that were drawn, or else if all goes as likely. */
export function drinkingOf(sheet: OfDrinking): Drinking {
  const { from, served, servedBefore_people: before, servedByWeek, people_count } = sheet;
  const weeks = servedByWeek.flatMap(({ until, p10, p50, p90 }) => {
    const day = dayOf(until);
    // By the end of that day.
    return day === null ? [] : [{ at: day + 1, low: before + p10, likely: before + p50, high: before + p90 }];
  });
  const days = served.flatMap(({ day, people }) => {
    const at = dayOf(day);
    return at === null ? [] : [{ at, value: before + people }];
  });
  const isDrawn = weeks.length > 0;
  // What is past is known; no future is drawn of it.
  const past = days.filter(({ at }) => at < (dayOf(from) ?? Number.NEGATIVE_INFINITY));
  const line = isDrawn ? [...past, ...weeks.map(({ at, likely: value }) => ({ at, value }))] : days;
  const band = weeks.map(({ at, low, high }) => ({ at, low: Math.min(low, high), high: Math.max(low, high) }));
  const most = [...line.map(({ value }) => value), ...band.map(({ high }) => high)];
  const all = most.reduce((a, b) => Math.max(a, b), before + people_count);
  return { all, before, line, band, isDrawn };
}

/** A part in a store, as its curve is drawn. */
export interface StockLine {
  readonly key: string;
  readonly storeId: string;
  readonly partId: string;
  readonly part: string;
  readonly store: string;
  readonly points: readonly (StepPoint & { readonly in_count: number; readonly out_count: number })[];
  /** The least that is left on a day after something went; below 0 so much is short. */
  readonly least_count: number;
  /** The least against all that goes: what is tightest has the lowest. */
  readonly slack_fraction: number;
}

/** What lies in the stores, the tightest first. */
export function stockLines({ stock, places }: Pick<RolloutSheet, 'stock' | 'places'>): readonly StockLine[] {
  const nameOf = new Map(places.map(({ placeId, name }) => [placeId, name]));
  const lines = stock.map(({ store, partId, name, points }): StockLine => {
    const read = points.flatMap(({ day, in_count, out_count, left_count }) => {
      const at = dayOf(day);
      return at === null ? [] : [{ at, value: left_count, in_count, out_count }];
    });
    const out = read.filter(({ out_count }) => out_count > 0);
    const least_count = (out.length > 0 ? out : read).reduce((least, { value }) => Math.min(least, value), Infinity);
    const goes = read.reduce((sum, { out_count }) => sum + out_count, 0);
    return {
      ...{
        key: `${store} ${partId}`,
        storeId: store,
        partId,
        part: name,
        store: nameOf.get(store) ?? store,
        points: read,
      },
      least_count: Number.isFinite(least_count) ? least_count : 0,
      slack_fraction: goes > 0 && Number.isFinite(least_count) ? least_count / goes : Infinity,
    };
  });
  return lines.sort((a, b) => a.slack_fraction - b.slack_fraction || (a.key < b.key ? -1 : 1));
}

/** Round values to letter, from 0 to the most, and no more than so many steps. */
export const valuesTo = (most: number, steps: number): readonly number[] => (most > 0 ? ticksTo(most, steps) : [0]);
