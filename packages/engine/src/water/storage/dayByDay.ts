import type { DayOrder, Ration } from '../../kernel/index.ts';
import { metSlack_fraction, reached_days } from './constants.ts';

/** What goes in and what is asked, day by day. All arrays have one length, a day each. */
export interface Balance {
  /** Water from the roof [L]. */
  readonly inflow_L: Float64Array;
  /** Asked for the judged purposes, served first [L]. */
  readonly judged_L: Float64Array;
  /** Asked for all other purposes, served after [L]. */
  readonly other_L: Float64Array;
  /** 1 on a day on which a second source gives what judged litres are missing: it is never dry. Left out: there is none. */
  readonly covered?: Uint8Array | undefined;
  /** The balance as it is, where this one is the net of it. Left out: this is the whole. */
  readonly whole?: Balance;
}

/** How a record is run through a tank. */
export interface RunRules {
  readonly order: DayOrder;
  /** 2: the record runs twice and the second run counts. */
  readonly passes: 1 | 2;
  readonly start: 'empty' | 'full';
  /** In place of `start`, where the first content is another: not above the tank's. */
  readonly startContent_L?: number;
  /** What is given while the morning's content is under a mark; null or left out: all that is asked. */
  readonly ration?: Ration | null;
}

/** Judged runs: the cautious order, run twice from an empty tank. */
export const judgedRules: RunRules = { order: 'drawFirst', passes: 2, start: 'empty' };

/** Day-by-day arrays of the counted pass, all as long as the balance [L]. */
export interface TankSeries {
  readonly content_L: Float64Array;
  readonly judgedTaken_L: Float64Array;
  readonly otherTaken_L: Float64Array;
  readonly spill_L: Float64Array;
  /** 1 on a day on which the tank was below its mark. */
  readonly rationed: Uint8Array;
}

/** What one tank does with a balance, counted over the last pass. */
export interface TankRun {
  /** 1 on a day whose judged litres were not wholly met, neither by the tank nor by a second source. */
  readonly dry: Uint8Array;
  /** Days on which the other purposes were not wholly met. */
  readonly otherShortDays: number;
  /** Days on which the ration was in force. */
  readonly rationedDays: number;
  /** Content before the counted pass and after it [L]. */
  readonly startContent_L: number;
  readonly endContent_L: number;
  readonly judgedTaken_L: number;
  readonly otherTaken_L: number;
  readonly spill_L: number;
  readonly series: TankSeries | null;
}

/** Where a pass stood on a morning. */
interface Reached {
  readonly content: number;
  /** Judged and other litres taken, litres spilled, days short of the other purposes and days rationed, so far. */
  readonly totals: readonly number[];
}

/**
 * What does a tank of this volume hold, give and spill, day by day? One plain pass over the days; the slow twin of
 * `allSizes`, and the only way for `yas` and for rules that look at the content.
 *
 * @param balance - inflow and demands by day [L], arrays of one length, values 0 or more
 * @param tankVolume_L - usable volume [L], 0 or more
 * @param rules - order of the day, passes, first content [L] and ration [fraction]; what a ration holds back of the judged litres makes a day dry
 * @param keepSeries - whether to keep content, taken and spill by day
 * @returns dry days, contents, litres taken and spilled [L] of the counted pass, and their series where asked
 * @law startContent + inflow = judgedTaken + otherTaken + spill + endContent, to 1e-9 of the inflow
 * @source jenkins-1978, yield after and before spill; fewkes-butler-2000, the same; drawFirst is ours (docs/decisions)
 */
// long: the three orders share one loop, so that the arithmetic of a day stands in one place
export function dayByDay(balance: Balance, tankVolume_L: number, rules: RunRules, keepSeries = false): TankRun {
  const { inflow_L, judged_L, other_L, covered } = balance;
  const days = inflow_L.length;
  const passes = rules.passes;
  const isMet = 1 - metSlack_fraction;
  const rainFirst = rules.order === 'ybs' ? 1 : 0;
  const takenHoldsRoom = rules.order === 'yas' ? 1 : 0;
  const series = keepSeries ? emptySeries(days) : null;
  const dry = new Uint8Array(days);
  const { ration = null } = rules;
  const mark_L = ration === null ? 0 : ration.below_fraction * tankVolume_L;
  let content = rules.startContent_L ?? (rules.start === 'full' ? tankVolume_L : 0);
  let startContent = content;
  let endContent = content;
  let ends: readonly number[] = [];
  let [judgedTotal, otherTotal, spillTotal, otherShortDays, rationedDays] = [0, 0, 0, 0, 0];
  const before: Reached[] = [];
  const step = series === null && passes === 2 ? reached_days : days;
  for (let pass = 1; pass <= passes; pass++) {
    startContent = content;
    judgedTotal = otherTotal = spillTotal = otherShortDays = rationedDays = 0;
    for (let from = 0; from < days; from += step) {
      if (step < days) {
        const totals = [judgedTotal, otherTotal, spillTotal, otherShortDays, rationedDays];
        if (pass === 1) before.push({ content, totals });
        else if (content === before[from / step]!.content) {
          // From the same content on, the rest of this pass is that of the first one.
          const first = before[from / step]!.totals;
          [judgedTotal, otherTotal, spillTotal, otherShortDays, rationedDays] = totals.map(
            (total, which) => total + ends[which]! - first[which]!,
          ) as [number, number, number, number, number];
          content = endContent;
          break;
        }
      }
      const to = Math.min(days, from + step);
      for (let day = from; day < to; day++) {
        const inflow = inflow_L[day]!;
        const judged = judged_L[day]!;
        const available = content + rainFirst * inflow;
        const other = other_L[day]!;
        const isRationed = content < mark_L;
        const judgedGiven = isRationed ? judged * ration!.judged_fraction : judged;
        const otherGiven = isRationed ? other * ration!.other_fraction : other;
        const judgedTaken = Math.min(judgedGiven, available);
        const otherTaken = Math.min(otherGiven, available - judgedTaken);
        const taken = judgedTaken + otherTaken;
        const offered = available - taken + (1 - rainFirst) * inflow;
        content = Math.max(0, Math.min(offered, tankVolume_L - takenHoldsRoom * taken));
        dry[day] = judgedTaken < judged * isMet && covered?.[day] !== 1 ? 1 : 0;
        if (otherTaken < other * isMet) otherShortDays++;
        if (isRationed) rationedDays++;
        judgedTotal += judgedTaken;
        otherTotal += otherTaken;
        spillTotal += offered - content;
        if (series) {
          series.content_L[day] = content;
          series.judgedTaken_L[day] = judgedTaken;
          series.otherTaken_L[day] = otherTaken;
          series.spill_L[day] = offered - content;
          series.rationed[day] = isRationed ? 1 : 0;
        }
      }
    }
    if (pass === 1) {
      ends = [judgedTotal, otherTotal, spillTotal, otherShortDays, rationedDays];
      endContent = content;
    }
  }
  return {
    dry,
    otherShortDays,
    rationedDays,
    startContent_L: startContent,
    endContent_L: content,
    judgedTaken_L: judgedTotal,
    otherTaken_L: otherTotal,
    spill_L: spillTotal,
    series,
  };
}

/** Some days of a balance, as a balance. The arrays are views. */
export function daysOf({ inflow_L, judged_L, other_L, covered }: Balance, from: number, to: number): Balance {
  return {
    inflow_L: inflow_L.subarray(from, to),
    judged_L: judged_L.subarray(from, to),
    other_L: other_L.subarray(from, to),
    covered: covered?.subarray(from, to),
  };
}

/** A balance that begins on another day and ends on the day before it: the record is a loop. */
export function turnedTo({ inflow_L, judged_L, other_L, covered }: Balance, start: number): Balance {
  const turned = (values: Float64Array) => {
    const all = new Float64Array(values.length);
    all.set(values.subarray(start));
    all.set(values.subarray(0, start), values.length - start);
    return all;
  };
  const days = covered?.map((_, day) => covered[(start + day) % covered.length]!);
  return { inflow_L: turned(inflow_L), judged_L: turned(judged_L), other_L: turned(other_L), covered: days };
}

function emptySeries(days: number): TankSeries {
  const make = () => new Float64Array(days);
  const rationed = new Uint8Array(days);
  return { content_L: make(), judgedTaken_L: make(), otherTaken_L: make(), spill_L: make(), rationed };
}
