import {
  type GaugeFacts,
  noRollout,
  type Problem,
  type ProgrammeFacts,
  type RainReading,
  type ReadyWanted,
  type ShortReading,
  type SiteFacts,
} from '@eavewell/engine';
import type { components } from '../api/apiTypes.ts';

/** The facts of one site, as the program answers with them. */
export type FactsAnswer = components['schemas']['siteFacts'];

/** The readings of one gauge, as the program answers with them. */
export type ReadingsAnswer = components['schemas']['gaugeReadings'];

/** A programme of one site, with the gauges its rain follows from: judged alone it gets what it gets among all. */
export interface OneSite {
  /** For `readyProgramme`, with `wanted`. */
  readonly facts: ProgrammeFacts;
  readonly wanted: ReadyWanted;
  readonly site: SiteFacts;
  /** The faults of the tables behind the site's doubts. */
  readonly faults: readonly Problem[];
  /** The version of the programme when it was asked for, and the one these facts are of. */
  readonly version: number;
  readonly designVersion: number;
}

/** A value whose named figures are numbers again. */
type Exact<T> = T extends { readonly figure: string }
  ? number
  : T extends readonly (infer One)[]
    ? readonly Exact<One>[]
    : T extends object
      ? { readonly [Key in keyof T]: Exact<T[Key]> }
      : T;

const named: Readonly<Record<string, number>> = {
  NaN: Number.NaN,
  Infinity: Number.POSITIVE_INFINITY,
  '-Infinity': Number.NEGATIVE_INFINITY,
  '-0': -0,
};

/** Numbers that JSON has no word for, such as -0, stand as `{"figure":"-0"}`. */
function exact<T>(value: T): Exact<T> {
  if (typeof value !== 'object' || value === null) return value as Exact<T>;
  if (Array.isArray(value)) return value.map(exact) as Exact<T>;
  if ('figure' in value && typeof value.figure === 'string') return named[value.figure] as Exact<T>;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, exact(one)])) as Exact<T>;
}

/** The numbers of stretches, one after the other: the first, how many, the step. */
function numbersOf(stretches: readonly (readonly number[])[]): readonly number[] {
  return stretches.flatMap(([first = 0, count = 0, step = 0]) =>
    Array.from({ length: count }, (_, i) => first + i * step),
  );
}

/**
 * The readings of a gauge, one by one and in their order.
 *
 * @param answer - as the program answers
 * @returns day [day], rain [mm] or null, and row of each
 */
export function readingsOfAnswer(answer: ReadingsAnswer): readonly RainReading[] {
  const { days, rows, rain_mm } = exact(answer);
  const [day, row] = [numbersOf(days), numbersOf(rows)];
  if (day.length !== rain_mm.length || row.length !== rain_mm.length)
    throw new Error(`the readings of ${answer.gaugeId} do not hold together`);
  return rain_mm.map((depth_mm, i) => ({ day: day[i]!, rain_mm: depth_mm, row: row[i]! }));
}

/** 24 hours of 60 minutes. */
const minutes_per_day = 1440;

/**
 * The rain of short intervals of a gauge, one by one and in their order.
 *
 * @param answer - as the program answers
 * @returns day [day], end of the interval [min], interval [min] and rain [mm] of each
 */
export function shortRainOfAnswer(answer: ReadingsAnswer): readonly ShortReading[] {
  const { minutes, intervals, rain_mm } = exact(answer.short);
  const [ends, lengths] = [numbersOf(minutes), numbersOf(intervals)];
  if (ends.length !== rain_mm.length || lengths.length !== rain_mm.length)
    throw new Error(`the short rain of ${answer.gaugeId} does not hold together`);
  return rain_mm.map((depth_mm, i) => {
    const day = Math.floor(ends[i]! / minutes_per_day);
    return { day, minuteOfDay: ends[i]! - day * minutes_per_day, interval_min: lengths[i]!, rain_mm: depth_mm };
  });
}

/**
 * What is the engine told of one site? All that its design and its remedies follow from, number by number as the program has it.
 *
 * @param answer - the facts as the program answers with them
 * @param readings - the readings by gaugeId, of every gauge whose `readings` is not null
 * @returns the programme of the one site, and which of its gauges are to be made ready
 */
export function factsOfAnswer(answer: FactsAnswer, readings: ReadonlyMap<string, ReadingsAnswer>): OneSite {
  const { version, designVersion, site, faults, settings, parts, prices, kit, gauges, wantedGauges } = exact(answer);
  const read = gauges.map(({ readings: at, ...head }): GaugeFacts => {
    const found = readings.get(head.gaugeId);
    if (at !== null && found === undefined) throw new Error(`the readings of ${head.gaugeId} are not there`);
    if (at === null || found === undefined) return { ...head, readings: [], shortRain: [] };
    return { ...head, readings: readingsOfAnswer(found), shortRain: shortRainOfAnswer(found) };
  });
  return {
    facts: { settings, sites: [site], gauges: read, parts, prices, kit, rollout: noRollout },
    ...{ wanted: { gauges: new Set(wantedGauges) }, site, faults, version, designVersion },
  };
}
