import type { RiverLevel, WayLevel } from '@eavewell/engine';
import type { RolloutRows, RowOf } from './rolloutRows.ts';

/** Fewer readings of a gauge say nothing of one another [reading]. Ours. */
const leastReadings = 10;
/** No gauge of a river that is usually a thirtieth of that reads so much [m], and what it may be more by in metres [factor]. Ours. */
const [tallest_m, leastTimes, mostTimes] = [20, 30, 1000] as const;
const centimetres = 100;

/** Readings of one gauge. */
interface Read {
  readonly rows: RowOf<'riverLevels'>[];
  median_m: number;
  low_m: number;
  high_m: number;
}

const levelOf = ({ values }: RowOf<'riverLevels'>): number => values.level_m!;

function readingsByGauge(rows: RolloutRows): ReadonlyMap<string, Read> {
  const byGauge = new Map<string, Read>();
  for (const row of rows.all('riverLevels')) {
    const id = row.values.riverGaugeId!;
    const known = byGauge.get(id);
    if (known) known.rows.push(row);
    else byGauge.set(id, { rows: [row], median_m: 0, low_m: 0, high_m: 0 });
  }
  return byGauge;
}

function settle(read: Read, levels: readonly number[]): void {
  const sorted = Float64Array.from(levels).sort();
  read.median_m = sorted[Math.floor(sorted.length / 2)] ?? 0;
  read.low_m = sorted[0] ?? 0;
  read.high_m = sorted.at(-1) ?? 0;
}

/** A reading is in centimetres where it is far beyond the others, and among them when divided by 100. */
function isInCentimetres(level_m: number, { median_m }: Read): boolean {
  return level_m > tallest_m && level_m > leastTimes * median_m && level_m <= mostTimes * median_m;
}

function checkGauge(rows: RolloutRows, gauge: string, read: Read): void {
  settle(read, read.rows.map(levelOf));
  if (read.rows.length < leastReadings) return;
  const wrong = read.rows.filter((row) => isInCentimetres(levelOf(row), read));
  const [first] = wrong;
  if (first === undefined) return;
  const facts = { gauge, likely: String(levelOf(first) / centimetres), median: read.median_m, count: wrong.length };
  rows.fault(rows.at('riverLevels', first, 'level_m', 'rollout.level_unlikely'), facts);
  for (const row of wrong.slice(1)) rows.leave(rows.at('riverLevels', row, 'level_m', 'rollout.level_unlikely'));
  const left = new Set(wrong);
  settle(read, read.rows.filter((row) => !left.has(row)).map(levelOf));
}

/** What a limit would be in the unit of the readings, where it is a hundred times of them or they of it; null where the two go together. */
function likelyLimit(limit_m: number, { low_m, high_m, median_m }: Read): number | null {
  if (limit_m > 10 * Math.max(high_m, 1) && limit_m / centimetres <= 3 * high_m) return limit_m / centimetres;
  if (limit_m > 0 && low_m > 10 * limit_m && median_m <= 10 * limit_m * centimetres) return limit_m * centimetres;
  return null;
}

function checkLimits(rows: RolloutRows, byGauge: ReadonlyMap<string, Read>): void {
  const ways = { code: 'link.unknown_way', expected: 'a wayId of ways.csv' } as const;
  rows.link(['wayLevels', 'wayId'], rows.ids('ways', 'wayId'), ways);
  const carriers = { code: 'link.unknown_carrier', expected: 'a carrierId of carriers.csv' } as const;
  rows.link(['wayLevels', 'carrierId'], rows.ids('carriers', 'carrierId'), carriers);
  const gaugeOf = new Map(rows.all('ways').map(({ values }) => [values.wayId!, values.riverGaugeId]));
  for (const row of rows.used('wayLevels')) {
    const { wayId, least_m, greatest_m } = row.values;
    if (least_m !== null && greatest_m !== null && least_m > greatest_m) {
      const at = rows.at('wayLevels', row, 'least_m', 'rollout.levels_turned');
      rows.fault(at, { least: least_m, greatest: greatest_m });
      continue;
    }
    const read = byGauge.get(gaugeOf.get(wayId!) ?? '');
    if (read === undefined || read.rows.length < leastReadings) continue;
    for (const column of ['least_m', 'greatest_m'] as const) {
      const limit_m = row.values[column];
      const likely = limit_m === null ? null : likelyLimit(limit_m, read);
      if (likely === null) continue;
      const facts = { low: read.low_m, high: read.high_m, likely: String(likely) };
      rows.remark(rows.at('wayLevels', row, column, 'rollout.limit_unlikely', false), facts);
    }
  }
}

/** Tells what is wrong with levels of rivers, and with the levels between which a carrier goes. */
export function checkRivers(rows: RolloutRows): void {
  const byGauge = readingsByGauge(rows);
  for (const [gauge, read] of byGauge) checkGauge(rows, gauge, read);
  checkLimits(rows, byGauge);
}

/** The readings that are used. */
export function riverLevelsOf(rows: RolloutRows): readonly RiverLevel[] {
  return rows.used('riverLevels').map(({ values: { riverGaugeId, day, level_m } }) => ({
    riverGaugeId: riverGaugeId!,
    day: day!,
    level_m: level_m!,
  }));
}

/** The limits that are used. */
export function wayLevelsOf(rows: RolloutRows): readonly WayLevel[] {
  return rows.used('wayLevels').map(({ values: { wayId, carrierId, least_m, greatest_m } }) => ({
    ...{ wayId: wayId!, carrierId: carrierId!, least_m, greatest_m },
  }));
}
