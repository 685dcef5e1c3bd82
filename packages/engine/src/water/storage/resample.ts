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

/**
 * The judged years at one tank: what each does to the content, and how many of its days are dry for a content at its
 * start. Flat arrays, a year each, because they are walked tens of thousands of times a site.
 */
interface YearsAtVolume {
  readonly days: Float64Array;
  /** The content at the end is start + shift, held between low and high [L]. */
  readonly shift_L: Float64Array;
  readonly low_L: Float64Array;
  readonly high_L: Float64Array;
  /** Days that are dry whatever the content at the start [day]. */
  readonly always: Float64Array;
  /** Ascending within a year: one more day is dry for each of these above the content at the start [L]. */
  readonly thresholds_L: Float64Array;
  /** Where a year's thresholds end; they begin where those of the year before end. */
  readonly ends: Int32Array;
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
  const table = yearsAtVolume(balance, years, tankVolume_L);
  const count = table.days.length;
  // After a year whose end does not depend on its beginning, the next year's dry days are one number: kept by pair.
  const dryAfter = new Float64Array(count * count).fill(-1);
  const perYear = new Float64Array(drawn.draws);
  const dryShare = new Float64Array(drawn.draws);
  for (let draw = 0; draw < drawn.draws; draw++) {
    const first = draw * drawn.length;
    const last = first + drawn.length;
    let content = contentAfterAll(table, drawn.positions, first, last);
    let before = drawn.positions[last - 1]!;
    let dry = 0;
    let days = 0;
    for (let i = first; i < last; i++) {
      const year = drawn.positions[i]!;
      const pair = before * count + year;
      let dryDays = dryAfter[pair]!;
      if (dryDays < 0) {
        dryDays = dryDaysFrom(table, year, content);
        if (table.low_L[before] === table.high_L[before]) dryAfter[pair] = dryDays;
      }
      dry += dryDays;
      days += table.days[year]!;
      content = contentAfter(table, year, content);
      before = year;
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

/**
 * The content an empty tank has after these years, one after another. Composed from the last year backwards, because a few
 * years are mostly enough: once the end no longer depends on the beginning, the years before cannot matter.
 */
function contentAfterAll(table: YearsAtVolume, positions: Uint16Array, first: number, last: number): number {
  let [shift, low, high] = [0, 0, Infinity];
  for (let i = last - 1; i >= first && low < high; i--) {
    const year = positions[i]!;
    const floor = Math.min(high, Math.max(low, table.low_L[year]! + shift));
    high = Math.min(high, Math.max(low, table.high_L[year]! + shift));
    low = floor;
    shift += table.shift_L[year]!;
  }
  return Math.min(high, Math.max(low, shift));
}

function contentAfter(table: YearsAtVolume, year: number, content: number): number {
  return Math.min(table.high_L[year]!, Math.max(table.low_L[year]!, content + table.shift_L[year]!));
}

/** Days that are dry in a year that starts with this content: those always dry, and the thresholds above the content. */
function dryDaysFrom(table: YearsAtVolume, year: number, content: number): number {
  let below = year === 0 ? 0 : table.ends[year - 1]!;
  const end = table.ends[year]!;
  if (below === end) return table.always[year]!;
  let above = end;
  while (below < above) {
    const middle = (below + above) >> 1;
    if (table.thresholds_L[middle]! > content) above = middle;
    else below = middle + 1;
  }
  return table.always[year]! + end - above;
}

function yearsAtVolume(balance: Balance, years: readonly WaterYear[], tankVolume_L: number): YearsAtVolume {
  const judged = years.filter((year) => year.judged);
  const make = () => new Float64Array(judged.length);
  const [days, shift_L, low_L, high_L, always] = [make(), make(), make(), make(), make()];
  const thresholds_L = new Float64Array(balance.inflow_L.length);
  const ends = new Int32Array(judged.length);
  let end = 0;
  judged.forEach((year, index) => {
    const begin = end;
    let [shift, low, high, dry] = [0, 0, tankVolume_L, 0];
    for (let day = year.from; day < year.to; day++) {
      const wanted = balance.judged_L[day]!;
      if (wanted > high) dry++;
      else if (wanted > low && wanted > shift) thresholds_L[end++] = wanted - shift;
      const out = wanted + balance.other_L[day]!;
      const inflow = balance.inflow_L[day]!;
      shift += inflow - out;
      low = Math.min(tankVolume_L, Math.max(0, low - out) + inflow);
      high = Math.min(tankVolume_L, Math.max(0, high - out) + inflow);
    }
    thresholds_L.subarray(begin, end).sort();
    ends[index] = end;
    days[index] = year.to - year.from;
    shift_L[index] = shift;
    low_L[index] = low;
    high_L[index] = high;
    always[index] = dry;
  });
  return { days, shift_L, low_L, high_L, always, thresholds_L, ends };
}
