import { metSlack_fraction } from './constants.ts';
import type { Balance } from './dayByDay.ts';
import type { PoolYear } from './drawYears.ts';
import { poolDays } from './poolDays.ts';

/**
 * Years at one tank: what each does to the content, how many of its days are dry and whether it is good for a content at
 * its start. Flat arrays, a year each, because they are walked tens of thousands of times a site. A day is dry exactly for
 * contents at the year's start under a threshold of its own: 0 never, Infinity always.
 */
export interface YearsAtVolume {
  readonly count: number;
  /** The content at the end is start + shift, held between low and high [L]. */
  readonly shift_L: Float64Array;
  readonly low_L: Float64Array;
  readonly high_L: Float64Array;
  /** Days that are dry whatever the content at the start [day]. */
  readonly always_days: Float64Array;
  /** Ascending within a year: one more day is dry for each of these above the content at the start [L]. */
  readonly thresholds_L: Float64Array;
  /** Where a year's thresholds end; they begin where those of the year before end. */
  readonly ends_count: Int32Array;
  /** Days of the year [day]. */
  readonly days: Int32Array;
  /** Content at the start from which no run wholly within the year grows too long [L]. */
  readonly need_L: Float64Array;
  /** Days in a row that are one too many [day]. */
  readonly tooLong_days: number;
  /** `tooLong_days` − 1 places a year: the first k days are all dry for contents under this [L]. */
  readonly first_L: Float64Array;
  /** The same for the last k days. */
  readonly last_L: Float64Array;
}

/** What a year's row is while it is made. */
type Rows = Omit<YearsAtVolume, 'thresholds_L' | 'ends_count'>;

/**
 * What do these years do to a tank of this size?
 *
 * @param balance - inflow and demands by day [L], drawFirst
 * @param pool - the years
 * @param tankVolume_L - usable volume [L]
 * @param longestDryRun_days - longest dry run of a good year [day]
 * @returns a row a year [L], [day]
 * @definition ours: docs/methods/storage.md, how sure
 */
export function yearsAtVolume(
  balance: Balance,
  pool: readonly PoolYear[],
  tankVolume_L: number,
  longestDryRun_days: number,
): YearsAtVolume {
  const count = pool.length;
  const make = (each = 1) => new Float64Array(count * each);
  const rows: Rows = {
    count,
    shift_L: make(),
    low_L: make(),
    high_L: make(),
    always_days: make(),
    days: Int32Array.from(pool, ({ year }) => year.to - year.from),
    need_L: make(),
    tooLong_days: longestDryRun_days + 1,
    first_L: make(longestDryRun_days),
    last_L: make(longestDryRun_days),
  };
  const found_L = new Float64Array(rows.days.reduce((sum, days) => sum + days, 0));
  const foundEnds = new Int32Array(count);
  const stretch = new DryStretch(rows);
  let end = 0;
  for (let index = 0; index < count; index++) {
    stretch.begin(index);
    end = fillYear(poolDays(balance, pool[index]!), tankVolume_L, rows, index, stretch, found_L, end);
    foundEnds[index] = end;
  }
  return { ...rows, ...thresholdsThatMatter(rows, found_L, foundEnds) };
}

/** Fills one year's row and adds its thresholds from `end` on; gives where they end. */
// long: a hot loop and its short cut
function fillYear(
  { inflow_L, judged_L, other_L, covered }: Balance,
  tankVolume_L: number,
  rows: Rows,
  index: number,
  stretch: DryStretch,
  thresholds_L: Float64Array,
  end: number,
): number {
  const days = inflow_L.length;
  const isMet = 1 - metSlack_fraction;
  let [shift, low, high, dry] = [0, 0, tankVolume_L, 0];
  let day = 0;
  for (; day < days && low < high; day++) {
    const wanted = judged_L[day]!;
    // A day that a second source covers is never dry.
    const met = covered?.[day] === 1 ? 0 : wanted * isMet;
    if (met > high) {
      dry++;
      stretch.add(Infinity, day);
    } else if (met > low && met > shift) {
      thresholds_L[end++] = met - shift;
      stretch.add(met - shift, day);
    } else if (stretch.length > 0) stretch.close(false);
    const out = wanted + other_L[day]!;
    const inflow = inflow_L[day]!;
    shift += inflow - out;
    low = afterDay(low, out, inflow, tankVolume_L);
    high = afterDay(high, out, inflow, tankVolume_L);
  }
  // From the day on which the content no longer hangs on the beginning, there is one content only.
  for (; day < days; day++) {
    const wanted = judged_L[day]!;
    if (wanted * isMet > low && covered?.[day] !== 1) {
      dry++;
      stretch.add(Infinity, day);
    } else if (stretch.length > 0) stretch.close(false);
    low = high = afterDay(low, wanted + other_L[day]!, inflow_L[day]!, tankVolume_L);
  }
  if (stretch.length > 0) stretch.close(true);
  rows.shift_L[index] = shift;
  rows.low_L[index] = low;
  rows.high_L[index] = high;
  rows.always_days[index] = dry;
  return end;
}

/** Content after a day: what is asked goes out, as far as it is there, the rain comes in, the rest spills [L]. */
function afterDay(content: number, out: number, inflow: number, tankVolume_L: number): number {
  return Math.min(tankVolume_L, Math.max(0, content - out) + inflow);
}

/** The stretch of days in a row that can be dry, as it is walked through; when it ends, the row takes what it needs of it. */
class DryStretch {
  length = 0;
  private readonly rows: Rows;
  private thresholds_L = new Float64Array(512);
  private row = 0;
  private from = 0;

  constructor(rows: Rows) {
    this.rows = rows;
  }

  begin(row: number): void {
    this.row = row;
    this.length = 0;
  }

  add(threshold_L: number, day: number): void {
    if (this.length === 0) this.from = day;
    if (this.length === this.thresholds_L.length) {
      const larger = new Float64Array(2 * this.length);
      larger.set(this.thresholds_L);
      this.thresholds_L = larger;
    }
    this.thresholds_L[this.length++] = threshold_L;
  }

  close(isLast: boolean): void {
    const { need_L, tooLong_days, first_L, last_L } = this.rows;
    if (this.from === 0) this.fillLeast(first_L, 0, 1);
    if (isLast) this.fillLeast(last_L, this.length - 1, -1);
    if (this.length >= tooLong_days) need_L[this.row] = this.needFrom(need_L[this.row]!);
    this.length = 0;
  }

  /** The least threshold of the first 1, 2, 3 … days of the stretch, or of its last. */
  private fillLeast(least_L: Float64Array, start: number, step: 1 | -1): void {
    const places = this.rows.tooLong_days - 1;
    let least = Infinity;
    for (let k = 0; k < places && k < this.length; k++) {
      least = Math.min(least, this.thresholds_L[start + step * k]!);
      least_L[this.row * places + k] = least;
    }
  }

  /** The greatest, over all windows of too many days, of the least threshold in the window; not under `need`. */
  private needFrom(need: number): number {
    const window = this.rows.tooLong_days;
    let above = 0;
    for (let end = 0; end < this.length; end++) {
      if (this.thresholds_L[end]! <= need) {
        above = 0;
        continue;
      }
      above++;
      if (above < window) continue;
      let least = Infinity;
      for (let day = end - window + 1; day <= end; day++) {
        if (this.thresholds_L[day]! > least) continue;
        least = this.thresholds_L[day]!;
        above = end - day;
      }
      need = least;
    }
    return need;
  }
}

/** A year begins with what some year left, so thresholds not above the least of that are never met; the rest are sorted. */
function thresholdsThatMatter(
  { low_L, count }: Pick<Rows, 'low_L' | 'count'>,
  found_L: Float64Array,
  foundEnds: Int32Array,
): Pick<YearsAtVolume, 'thresholds_L' | 'ends_count'> {
  const leastStart = low_L.reduce((least, low) => Math.min(least, low), Infinity);
  const ends_count = new Int32Array(count);
  let end = 0;
  let read = 0;
  for (let year = 0; year < count; year++) {
    const begin = end;
    for (; read < foundEnds[year]!; read++) if (found_L[read]! > leastStart) found_L[end++] = found_L[read]!;
    if (end - begin > 1) found_L.subarray(begin, end).sort();
    ends_count[year] = end;
  }
  return { thresholds_L: found_L, ends_count };
}
