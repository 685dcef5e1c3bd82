import { quantile, type Range, seededDice, type WaterYear } from '../../kernel/index.ts';
import { metSlack_fraction } from './constants.ts';
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
  readonly count: number;
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
 * @returns dry days a year, as a range [day/year]
 * @law equals `dayByDay` over the drawn years joined end to end
 * @definition ours: docs/methods/storage.md, how sure
 */
export function resampledDryDays(
  balance: Balance,
  years: readonly WaterYear[],
  tankVolume_L: number,
  drawn: DrawnYears,
  range_fraction: number,
): Range {
  const table = yearsAtVolume(balance, years, tankVolume_L);
  if (table.count === 0) throw new RangeError('resampledDryDays: needs a judged year');
  if (table.ends[table.count - 1] === 0 && table.always.every((dry) => dry === 0)) return { low: 0, high: 0 };
  const settled = table.low_L.every((low, year) => low === table.high_L[year]);
  const dry_per_year = settled ? drawnSettled(table, drawn) : drawnOneByOne(table, drawn);
  dry_per_year.sort();
  const tail = (1 - range_fraction) / 2;
  return { low: quantile(dry_per_year, tail), high: quantile(dry_per_year, 1 - tail) };
}

/** Dry days a year of each draw, where every year ends as it does whatever its beginning: they hang on the year before alone. */
function drawnSettled(table: YearsAtVolume, drawn: DrawnYears): Float64Array {
  const { count } = table;
  const { length, positions } = drawn;
  const dryAfter = new Float64Array(count * count);
  for (let before = 0; before < count; before++)
    for (let year = 0; year < count; year++)
      dryAfter[before * count + year] = dryDaysFrom(table, year, table.high_L[before]!);
  const dry_per_year = new Float64Array(drawn.draws);
  for (let draw = 0; draw < drawn.draws; draw++) {
    const first = draw * length;
    let before = positions[first + length - 1]!;
    let dry = 0;
    for (let i = first; i < first + length; i++) {
      const year = positions[i]!;
      dry += dryAfter[before * count + year]!;
      before = year;
    }
    dry_per_year[draw] = dry / length;
  }
  return dry_per_year;
}

/** Dry days a year of each draw, in general. */
function drawnOneByOne(table: YearsAtVolume, drawn: DrawnYears): Float64Array {
  const { length, positions } = drawn;
  const dry_per_year = new Float64Array(drawn.draws);
  for (let draw = 0; draw < drawn.draws; draw++) {
    const first = draw * length;
    let content = contentAfterAll(table, positions, first, first + length);
    let dry = 0;
    for (let i = first; i < first + length; i++) {
      dry += dryDaysFrom(table, positions[i]!, content);
      content = contentAfter(table, positions[i]!, content);
    }
    dry_per_year[draw] = dry / length;
  }
  return dry_per_year;
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
  const count = judged.length;
  const make = () => new Float64Array(count);
  const table = { count, shift_L: make(), low_L: make(), high_L: make(), always: make() };
  const found_L = new Float64Array(balance.inflow_L.length);
  const foundEnds = new Int32Array(count);
  let end = 0;
  for (let index = 0; index < count; index++) {
    end = fillYear(balance, judged[index]!, tankVolume_L, table, index, found_L, end);
    foundEnds[index] = end;
  }
  return { ...table, ...thresholdsThatMatter(table, found_L, foundEnds) };
}

/** Fills one year's row of the table and adds its thresholds from `end` on; gives where they end. */
// long: a hot loop and its short cut
function fillYear(
  balance: Balance,
  year: WaterYear,
  tankVolume_L: number,
  table: Pick<YearsAtVolume, 'shift_L' | 'low_L' | 'high_L' | 'always'>,
  index: number,
  thresholds_L: Float64Array,
  end: number,
): number {
  const { inflow_L, judged_L, other_L, covered } = balance;
  const isMet = 1 - metSlack_fraction;
  let [shift, low, high, dry] = [0, 0, tankVolume_L, 0];
  let day = year.from;
  for (; day < year.to && low < high; day++) {
    const wanted = judged_L[day]!;
    const met = wanted * isMet;
    if (covered?.[day] === 1) {
      // Never dry: a second source gives what is missing.
    } else if (met > high) dry++;
    else if (met > low && met > shift) thresholds_L[end++] = met - shift;
    const out = wanted + other_L[day]!;
    const inflow = inflow_L[day]!;
    shift += inflow - out;
    low = Math.min(tankVolume_L, Math.max(0, low - out) + inflow);
    high = Math.min(tankVolume_L, Math.max(0, high - out) + inflow);
  }
  // From the day on which the content no longer hangs on the beginning, there is one content only.
  for (; day < year.to; day++) {
    const wanted = judged_L[day]!;
    if (wanted * isMet > low && covered?.[day] !== 1) dry++;
    low = high = Math.min(tankVolume_L, Math.max(0, low - wanted - other_L[day]!) + inflow_L[day]!);
  }
  table.shift_L[index] = shift;
  table.low_L[index] = low;
  table.high_L[index] = high;
  table.always[index] = dry;
  return end;
}

/** A year begins with what some year left, so thresholds not above the least of that are never met; the rest are sorted. */
function thresholdsThatMatter(
  table: Pick<YearsAtVolume, 'low_L' | 'count'>,
  found_L: Float64Array,
  foundEnds: Int32Array,
): Pick<YearsAtVolume, 'thresholds_L' | 'ends'> {
  const leastStart = table.low_L.reduce((least, low) => Math.min(least, low), Infinity);
  const ends = new Int32Array(table.count);
  let end = 0;
  let read = 0;
  for (let year = 0; year < table.count; year++) {
    const begin = end;
    for (; read < foundEnds[year]!; read++) if (found_L[read]! > leastStart) found_L[end++] = found_L[read]!;
    if (end - begin > 1) found_L.subarray(begin, end).sort();
    ends[year] = end;
  }
  return { thresholds_L: found_L, ends };
}
