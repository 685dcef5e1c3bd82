import {
  calendarDay,
  type DayIndex,
  type DryRun,
  dryRuns,
  filledDay,
  madeDay,
  neighbourDay,
  type StorageSeries,
  unknownDay,
  type WaterYear,
} from '@eavewell/engine';

/** What the pictures of days are drawn from: a tank's days, and the record's water years. */
export interface RecordInput {
  readonly series: StorageSeries;
  readonly years: readonly WaterYear[];
  /** Usable volume of the tank [L], 0 or more. */
  readonly tankVolume_L: number;
  /** Longest dry run the target allows [day]. */
  readonly longestDryRun_days: number;
}

/** Days dry without a break, by their places in the record, end not in it; `days` is the whole run, across the record's seam too. */
export interface DryPiece {
  readonly from: number;
  readonly to: number;
  readonly days: number;
}

/** Every stretch of dry days, in the order of the record. The record is a loop: a run across its seam is two pieces of one length. */
export function dryPieces(dry: Uint8Array): readonly DryPiece[] {
  const pieces: { from: number; to: number; days: number }[] = [];
  for (let day = 0; day < dry.length; day++) {
    if (dry[day] !== 1) continue;
    const from = day;
    while (day < dry.length && dry[day] === 1) day++;
    pieces.push({ from, to: day, days: day - from });
  }
  const [first, last] = [pieces[0], pieces[pieces.length - 1]];
  if (first && last && first !== last && first.from === 0 && last.to === dry.length) {
    const days = first.days + last.days;
    first.days = days;
    last.days = days;
  }
  return pieces;
}

/** The dry runs that touch a judged year, longest first. */
export function runsOf({ series, years }: RecordInput): readonly DryRun[] {
  return dryRuns(series.dry, years, series.firstDay).runs;
}

/** How a day's rain came about, where it was not measured. */
export type DoubtKind = 'filled' | 'unknown' | 'made';

/** Why a day is in doubt; null where it was measured. */
export function doubtOf(state: number | undefined): DoubtKind | null {
  if (state === unknownDay) return 'unknown';
  if (state === madeDay) return 'made';
  return state === filledDay || state === neighbourDay ? 'filled' : null;
}

/** Stretches of days of one kind of doubt within [from, to), by their places in the record. */
export function doubtSpans(
  state: Uint8Array,
  from: number,
  to: number,
): readonly { readonly kind: DoubtKind; readonly from: number; readonly to: number }[] {
  const spans: { kind: DoubtKind; from: number; to: number }[] = [];
  for (let day = from; day < to; ) {
    const kind = doubtOf(state[day]);
    const start = day;
    do day++;
    while (day < to && doubtOf(state[day]) === kind);
    if (kind !== null) spans.push({ kind, from: start, to: day });
  }
  return spans;
}

/** The water year a place in the record is in; null outside the record. */
export function yearOf(years: readonly WaterYear[], place: number): WaterYear | null {
  let [below, above] = [0, years.length];
  while (below < above) {
    const middle = (below + above) >> 1;
    const year = years[middle]!;
    if (place < year.from) above = middle;
    else if (place >= year.to) below = middle + 1;
    else return year;
  }
  return null;
}

/** In which month does the water year begin? January where there is no year. */
export function startMonthOf({ series, years }: Pick<RecordInput, 'series' | 'years'>): number {
  return calendarDay(series.firstDay + (years[0]?.from ?? 0)).month;
}

/** What the title of the pictures of days can say. */
export interface RecordFacts {
  readonly days: number;
  readonly judgedYears: number;
  readonly firstDay: DayIndex | null;
  readonly lastDay: DayIndex | null;
  readonly dryDays: number;
  readonly longestRun: DryRun | null;
  /** Runs longer than the target allows. */
  readonly runsOver: number;
  readonly lowest_L: number | null;
  readonly filledDays: number;
  readonly unknownDays: number;
  readonly madeDays: number;
  /** Months of the calendar that hold dry days, most first, until nine in ten dry days are told. */
  readonly worstMonths: readonly number[];
}

/**
 * What do the days of this record come to?
 *
 * @param input - a tank's days and the record's years
 * @returns counts of days [day] and years [year], the longest dry run, the lowest level [L], months 1 to 12
 * @definition counts over the whole record, years not judged among them; runs as the engine counts them
 */
export function recordFacts(input: RecordInput): RecordFacts {
  const { series, years, longestDryRun_days } = input;
  const { state, dry, content_L, firstDay } = series;
  const days = dry.length;
  const counts = { filled: 0, unknown: 0, made: 0 };
  let lowest_L = Infinity;
  let dryDays = 0;
  for (let day = 0; day < days; day++) {
    const kind = doubtOf(state[day]);
    if (kind !== null) counts[kind]++;
    if (dry[day] === 1) dryDays++;
    lowest_L = Math.min(lowest_L, content_L[day]!);
  }
  const runs = runsOf(input);
  return {
    days,
    judgedYears: years.filter((year) => year.judged).length,
    firstDay: days === 0 ? null : firstDay,
    lastDay: days === 0 ? null : firstDay + days - 1,
    dryDays,
    longestRun: runs[0] ?? null,
    runsOver: runs.filter((run) => run.days > longestDryRun_days).length,
    lowest_L: days === 0 ? null : lowest_L,
    filledDays: counts.filled,
    unknownDays: counts.unknown,
    madeDays: counts.made,
    worstMonths: worstMonths(dry, firstDay, dryDays),
  };
}

/** Share of the dry days that the worst months together hold [fraction]. Ours. */
const worstShare_fraction = 0.9;

function worstMonths(dry: Uint8Array, firstDay: DayIndex, dryDays: number): readonly number[] {
  const byMonth = new Array<number>(12).fill(0);
  for (let day = 0; day < dry.length; day++) if (dry[day] === 1) byMonth[calendarDay(firstDay + day).month - 1]!++;
  const order = byMonth.map((count, index) => ({ month: index + 1, count })).sort((a, b) => b.count - a.count);
  const found: number[] = [];
  let told = 0;
  for (const { month, count } of order) {
    if (count === 0 || told >= worstShare_fraction * dryDays) break;
    found.push(month);
    told += count;
  }
  return found;
}
