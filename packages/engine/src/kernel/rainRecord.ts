import type { DayIndex } from './days.ts';

/** How a day's rain is known. */
export const measured = 0;
export const unknownDay = 1;
/** Filled from the same days of other years. */
export const filledDay = 2;
/** Filled from neighbouring gauges. */
export const neighbourDay = 3;
/** Made up from what a month usually brings: nobody measured a day of this rain. */
export const madeDay = 4;

/** A gauge's days without a hole in the calendar: unknown days stand with state `unknownDay` and 0 mm that nobody may use. */
export interface RainRecord {
  readonly gaugeId: string;
  readonly firstDay: DayIndex;
  /** Rain by day [mm]. */
  readonly rain_mm: Float64Array;
  /** `measured`, `unknownDay`, `filledDay`, `neighbourDay` or `madeDay`, by day. */
  readonly state: Uint8Array;
}

/** One water year of a trimmed record. `label` is the calendar year it ends in; `from` and `to` are offsets, `to` not included. */
export interface WaterYear {
  readonly label: number;
  readonly from: number;
  readonly to: number;
  /** Days of a record that were not measured, whether or not they were filled; made-up rain has none. */
  readonly missing_days: number;
  readonly judged: boolean;
}

/** Rain ready for the balance: whole water years, gaps filled and marked. */
export interface JudgedRain {
  readonly record: RainRecord;
  readonly startMonth: number;
  readonly years: readonly WaterYear[];
  readonly judgedYears: number;
  readonly filledDays: number;
  /** Of the filled days, those filled from neighbouring gauges. */
  readonly neighbourDays: number;
  /** Days of made-up rain: all of them, or none. Its years count from 1, so that no day looks like one of the calendar. */
  readonly madeDays: number;
  /** Mean rain of a judged year [mm]. */
  readonly meanAnnualRain_mm: number;
  /** Longest run of days under 1 mm in the judged years [day]. */
  readonly longestRainlessRun_days: number;
  /** Part-years cut at both ends [day]. */
  readonly cutDays: number;
}
