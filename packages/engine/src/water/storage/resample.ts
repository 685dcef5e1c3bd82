import { quantile, type Range, seededDice, type WaterYear } from '../../kernel/index.ts';
import type { Balance } from './dayByDay.ts';

/** Years drawn again and again from the judged ones, a row of `length` years a draw, as positions in the list of judged years. */
export interface DrawnYears {
  readonly draws: number;
  readonly length: number;
  readonly positions: Uint16Array;
}

/**
 * Draws records of as many years as were judged, in blocks of two years that follow each other, so that a tank that
 * carries one year's rain into the next is drawn as it is. The list of judged years is a loop.
 *
 * @param judgedYears - years judged [year], whole, 1 to 65,535
 * @param draws - how many records to draw [count], whole
 * @param seed - the seed [number], whole
 * @returns positions of the drawn years [count], draw after draw
 * @law the same arguments give the same draws
 * @source kuensch-1989, moving blocks; politis-romano-1992, circular blocks
 */
export function drawYears(judgedYears: number, draws: number, seed: number): DrawnYears {
  const dice = seededDice(seed);
  const positions = new Uint16Array(judgedYears * draws);
  for (let draw = 0; draw < draws; draw++) {
    const row = draw * judgedYears;
    for (let i = 0; i < judgedYears; i += 2) {
      const start = dice.next(judgedYears);
      positions[row + i] = start;
      if (i + 1 < judgedYears) positions[row + i + 1] = (start + 1) % judgedYears;
    }
  }
  return { draws, length: judgedYears, positions };
}

/** One year at one tank: what it does to the content, and how many of its days are dry for a content at its start. */
interface YearAtVolume {
  readonly days: number;
  /** The content at the end is start + shift, held between low and high [L]. */
  readonly shift_L: number;
  readonly low_L: number;
  readonly high_L: number;
  /** Days that are dry whatever the content at the start. */
  readonly always: number;
  /** Ascending: one more day is dry for each of these above the content at the start [L]. */
  readonly thresholds_L: Float64Array;
}

/**
 * How far would the dry days a year spread, had other years been drawn? Every drawn record is run through the tank again,
 * twice, the second run counted. Exact and quick, because a year at one volume can only shift the content and hold it
 * between two levels.
 *
 * @param balance - inflow and demands by day [L], drawFirst
 * @param years - the record's water years
 * @param tankVolume_L - usable volume [L]
 * @param drawn - the drawn years
 * @param range_fraction - how much of the draws the range holds [fraction]
 * @returns dry days a year [day/year] and share of days met [fraction], each as a range
 * @law equals `dayByDay` over the drawn years joined end to end
 * @definition ours: docs/methods/storage.md, how sure
 */
export function resampledDryDays(
  balance: Balance,
  years: readonly WaterYear[],
  tankVolume_L: number,
  drawn: DrawnYears,
  range_fraction: number,
): { readonly dryDays_per_year: Range; readonly daysMet_fraction: Range } {
  const table = years.filter((year) => year.judged).map((year) => yearAtVolume(balance, year, tankVolume_L));
  const perYear = new Float64Array(drawn.draws);
  const dryShare = new Float64Array(drawn.draws);
  for (let draw = 0; draw < drawn.draws; draw++) {
    const first = draw * drawn.length;
    let content = 0;
    for (let i = first; i < first + drawn.length; i++) content = contentAfter(table[drawn.positions[i]!]!, content);
    let dry = 0;
    let days = 0;
    for (let i = first; i < first + drawn.length; i++) {
      const year = table[drawn.positions[i]!]!;
      dry += year.always + above(year.thresholds_L, content);
      days += year.days;
      content = contentAfter(year, content);
    }
    perYear[draw] = dry / drawn.length;
    dryShare[draw] = dry / days;
  }
  perYear.sort();
  dryShare.sort();
  const tail = (1 - range_fraction) / 2;
  return {
    dryDays_per_year: { low: quantile(perYear, tail), high: quantile(perYear, 1 - tail) },
    daysMet_fraction: { low: 1 - quantile(dryShare, 1 - tail), high: 1 - quantile(dryShare, tail) },
  };
}

function contentAfter(year: YearAtVolume, content: number): number {
  return Math.min(year.high_L, Math.max(year.low_L, content + year.shift_L));
}

/** How many of these are above the content. */
function above(thresholds_L: Float64Array, content: number): number {
  let count = 0;
  for (let i = thresholds_L.length - 1; i >= 0 && thresholds_L[i]! > content; i--) count++;
  return count;
}

function yearAtVolume(balance: Balance, year: WaterYear, tankVolume_L: number): YearAtVolume {
  let [shift, low, high, always] = [0, 0, tankVolume_L, 0];
  const thresholds = new Float64Array(year.to - year.from);
  let count = 0;
  for (let day = year.from; day < year.to; day++) {
    const judged = balance.judged_L[day]!;
    if (judged > high) always++;
    else if (judged > low && judged > shift) thresholds[count++] = judged - shift;
    const out = judged + balance.other_L[day]!;
    const inflow = balance.inflow_L[day]!;
    shift += inflow - out;
    low = Math.min(tankVolume_L, Math.max(0, low - out) + inflow);
    high = Math.min(tankVolume_L, Math.max(0, high - out) + inflow);
  }
  const days = year.to - year.from;
  return {
    days,
    shift_L: shift,
    low_L: low,
    high_L: high,
    always,
    thresholds_L: thresholds.slice(0, count).sort(),
  };
}
