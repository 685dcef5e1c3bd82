import type { Balance } from './dayByDay.ts';
import type { DrawnYears, PoolYear } from './drawYears.ts';
import { type YearsAtVolume, yearsAtVolume } from './yearsAtVolume.ts';

/** What a tank did in each of the drawn records, in the order of the draws. */
export interface DrawnRecords {
  readonly dryDays_per_year: Float64Array;
  readonly goodYears_fraction: Float64Array;
}

/**
 * How would this tank have done, had other years been drawn? Every drawn record is run through the tank again, twice, the
 * second run counted. Exact and quick, because a year at one volume can only shift the content and hold it between two
 * levels, and a day of it is dry exactly for contents at its start under a threshold of its own.
 *
 * @param balance - inflow and demands by day [L], drawFirst
 * @param pool - the years to draw from
 * @param tankVolume_L - usable volume [L]
 * @param longestDryRun_days - longest dry run of a good year [day], under the days of a year
 * @param drawn - the drawn years
 * @returns dry days a year [day/year] and share of good years [fraction] of each draw
 * @law equals `dayByDay` over the drawn years joined end to end, a dry run that crosses the seam being one
 * @law a larger tank, or more inflow on any day, never gives more dry days or fewer good years in any draw
 * @definition ours: docs/methods/storage.md, how sure
 */
export function drawnRecords(
  balance: Balance,
  pool: readonly PoolYear[],
  tankVolume_L: number,
  longestDryRun_days: number,
  drawn: DrawnYears,
): DrawnRecords {
  if (pool.length === 0) throw new RangeError('drawnRecords: needs a year to draw');
  const table = yearsAtVolume(balance, pool, tankVolume_L, longestDryRun_days);
  const kept = { dryDays_per_year: new Float64Array(drawn.draws), goodYears_fraction: new Float64Array(drawn.draws) };
  const canBeDry = Uint8Array.from(table.always_days, (dry, year) => (dry > 0 || hasThresholds(table, year) ? 1 : 0));
  if (!canBeDry.includes(1)) kept.goodYears_fraction.fill(1);
  else if (isSettled(table)) drawSettled(table, canBeDry, drawn, kept);
  else drawOneByOne(table, canBeDry, drawn, kept);
  return kept;
}

function hasThresholds({ ends_count }: YearsAtVolume, year: number): boolean {
  return ends_count[year]! > (year === 0 ? 0 : ends_count[year - 1]!);
}

/** Does every year end as it does whatever its beginning, dry run at its end included? */
function isSettled({ count, days, low_L, high_L, last_L, tooLong_days }: YearsAtVolume): boolean {
  const places = tooLong_days - 1;
  for (let year = 0; year < count; year++) if (low_L[year] !== high_L[year] || days[year]! < places) return false;
  const leastStart = low_L.reduce((least, low) => Math.min(least, low), Infinity);
  for (let i = 0; i < count * places; i++) if (last_L[i]! > leastStart && last_L[i]! < Infinity) return false;
  return true;
}

/** One sum carries both counts, since a record has fewer dry days than this [count]. */
const badYear = 2 ** 24;

/**
 * Where every year ends as it does whatever its beginning, what a year does hangs on the year before alone. Year by year
 * of the pool, since most are never dry and need no look.
 */
function drawSettled(table: YearsAtVolume, canBeDry: Uint8Array, drawn: DrawnYears, kept: DrawnRecords): void {
  const { count, high_L } = table;
  const { draws, before, ends } = placesOf(drawn);
  const runs = Float64Array.from(high_L, (content, year) => runAtEnd(table, year, content, 0));
  const after = new Float64Array(count);
  const sums = kept.dryDays_per_year;
  for (let year = 0; year < count; year++) {
    if (canBeDry[year] === 0) continue;
    for (let last = 0; last < count; last++) {
      const bad = isBad(table, year, high_L[last]!, runs[last]!);
      after[last] = dryDaysFrom(table, year, high_L[last]!) + (bad ? badYear : 0);
    }
    const end = ends[year] ?? 0;
    for (let i = year === 0 ? 0 : ends[year - 1]!; i < end; i++) sums[draws[i]!]! += after[before[i]!]!;
  }
  for (let draw = 0; draw < sums.length; draw++) {
    const bad = Math.floor(sums[draw]! / badYear);
    kept.goodYears_fraction[draw] = 1 - bad / drawn.length;
    sums[draw] = (sums[draw]! - bad * badYear) / drawn.length;
  }
}

/** Where each year of the pool was drawn: in which draw, after which year. A year's places end where `ends` says. */
interface Places {
  readonly draws: Uint32Array;
  readonly before: Uint16Array;
  readonly ends: Uint32Array;
}

/** The places of draws that were asked for before; every site of a programme asks for the same few. */
const knownPlaces = new WeakMap<DrawnYears, Places>();

function placesOf(drawn: DrawnYears): Places {
  const known = knownPlaces.get(drawn);
  if (known) return known;
  const { positions, length } = drawn;
  const ends = new Uint32Array(positions.reduce((most, position) => Math.max(most, position), 0) + 1);
  for (const position of positions) ends[position]!++;
  for (let year = 1; year < ends.length; year++) ends[year]! += ends[year - 1]!;
  const next = ends.slice();
  const places = { draws: new Uint32Array(positions.length), before: new Uint16Array(positions.length), ends };
  for (let i = positions.length - 1; i >= 0; i--) {
    const place = --next[positions[i]!]!;
    places.draws[place] = Math.floor(i / length);
    places.before[place] = positions[i % length === 0 ? i + length - 1 : i - 1]!;
  }
  knownPlaces.set(drawn, places);
  return places;
}

/** In general: year after year, twice where a dry run crosses the seam. */
function drawOneByOne(table: YearsAtVolume, canBeDry: Uint8Array, drawn: DrawnYears, kept: DrawnRecords): void {
  const { draws, length, positions } = drawn;
  const { shift_L, low_L, high_L } = table;
  for (let draw = 0; draw < draws; draw++) {
    const first = draw * length;
    const start = contentAfterAll(table, positions, first, first + length);
    let atSeam = 0;
    let [dry, bad] = [0, 0];
    for (let round = 0; round < 2; round++) {
      let [content, run] = [start, atSeam];
      dry = bad = 0;
      for (let i = first; i < first + length; i++) {
        const year = positions[i]!;
        if (canBeDry[year] === 1) {
          dry += dryDaysFrom(table, year, content);
          if (isBad(table, year, content, run)) bad++;
          run = runAtEnd(table, year, content, run);
        } else run = 0;
        content = Math.min(high_L[year]!, Math.max(low_L[year]!, content + shift_L[year]!));
      }
      if (run === atSeam) break;
      atSeam = run;
    }
    kept.dryDays_per_year[draw] = dry / length;
    kept.goodYears_fraction[draw] = 1 - bad / length;
  }
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

/** Does a dry run grow too long on some day of this year, with so many dry days right before it? */
function isBad(table: YearsAtVolume, year: number, content: number, runBefore_days: number): boolean {
  if (content < table.need_L[year]!) return true;
  if (runBefore_days === 0) return false;
  const places = table.tooLong_days - 1;
  return content < table.first_L[year * places + places - runBefore_days]!;
}

/** Dry days in a row up to the end of this year, counted up to the longest allowed. */
function runAtEnd(table: YearsAtVolume, year: number, content: number, runBefore_days: number): number {
  const places = table.tooLong_days - 1;
  const end = Math.min(places, table.days[year]!);
  let run = 0;
  while (run < end && content < table.last_L[year * places + run]!) run++;
  return run === table.days[year] ? Math.min(places, run + runBefore_days) : run;
}

/** Days that are dry in a year that starts with this content: those always dry, and the thresholds above the content. */
function dryDaysFrom(table: YearsAtVolume, year: number, content: number): number {
  let below = year === 0 ? 0 : table.ends_count[year - 1]!;
  const end = table.ends_count[year]!;
  if (below === end) return table.always_days[year]!;
  let above = end;
  while (below < above) {
    const middle = (below + above) >> 1;
    if (table.thresholds_L[middle]! > content) above = middle;
    else below = middle + 1;
  }
  return table.always_days[year]! + end - above;
}
