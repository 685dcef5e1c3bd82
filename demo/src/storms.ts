import { type Chance, chanceFor } from './chance.ts';
import type { Row } from './draft.ts';
import type { DemoRain } from './rain.ts';

const source = 'invented for the demonstration';

/** Storms of 20 years [mm/h], how they grow with the years, and how wide their range is [fraction]. Invented. */
const usual20_mm_per_h = [145, 165] as const;
const growth = 0.2;
const spread_fraction = 0.12;
const periods_years = [2, 5, 10, 20, 50, 100] as const;
const designPeriod_years = 20;

/** What is known of the storms of these gauges: a table, a set of coefficients, or rain of five minutes. */
export function stormTables(seed: number, gaugeIds: readonly string[], rain: DemoRain) {
  // Of the first three gauges each shows another way of knowing; the others have a table.
  const [, coefficients, short] = gaugeIds;
  const stated = gaugeIds.filter((gaugeId) => gaugeId !== coefficients && gaugeId !== short);
  return {
    storms: stated.flatMap((gaugeId) => stormRows(seed, gaugeId)),
    stormCoefficients: coefficients === undefined ? [] : [coefficientRow(seed, coefficients)],
    shortRain: short === undefined ? [] : shortRows(seed, short, rain),
  };
}

function stormRows(seed: number, gaugeId: string): Row[] {
  const at20_mm_per_h = chanceFor(seed, `storms of ${gaugeId}`).between(...usual20_mm_per_h);
  return periods_years.map((returnPeriod_years) => {
    const rate = at20_mm_per_h * (returnPeriod_years / designPeriod_years) ** growth;
    return {
      gaugeId,
      returnPeriod_years,
      intensity_mm_per_h: Math.round(rate),
      low_mm_per_h: Math.round(rate * (1 - spread_fraction)),
      high_mm_per_h: Math.round(rate * (1 + spread_fraction)),
      source,
    };
  });
}

/** A set that gives a storm of five minutes once in 20 years like those of the other gauges. */
function coefficientRow(seed: number, gaugeId: string): Row {
  const [kappa, theta_h, eta] = [0.19, 0.15, 0.8];
  const at20_mm_per_h = chanceFor(seed, `storms of ${gaugeId}`).between(...usual20_mm_per_h);
  const lambda = (at20_mm_per_h * (5 / 60 + theta_h) ** eta) / designPeriod_years ** kappa;
  const powers = { lambda: Math.round(lambda * 100) / 100, kappa, theta_h, eta };
  return { gaugeId, ...powers, leastPeriod_years: 2, mostPeriod_years: 100, source };
}

/** So many years at the end of the record have rain of five minutes, on so many of each year's wettest days [count]. Ours. */
const [years_count, days_count] = [12, 24] as const;

/** Each year's wettest days, taken apart into storms of an afternoon. */
function shortRows(seed: number, gaugeId: string, { dates, gauges }: DemoRain): Row[] {
  const chance = chanceFor(seed, `short rain of ${gaugeId}`);
  const { rain_mm } = gauges.find((gauge) => gauge.gaugeId === gaugeId)!;
  const lastYear = Number(dates.at(-1)!.slice(0, 4));
  const rows: Row[] = [];
  for (let year = lastYear - years_count + 1; year <= lastYear; year++) {
    const days = dates.flatMap((date, i) => (i > 0 && date.startsWith(`${year}-`) ? [i] : []));
    const wettest = days.sort((a, b) => rain_mm[b]! - rain_mm[a]! || a - b).slice(0, days_count);
    // A reading before noon is the rain of the day before.
    for (const i of wettest.sort((a, b) => a - b))
      for (const interval of afternoon(chance, rain_mm[i]!)) rows.push({ gaugeId, date: dates[i - 1]!, ...interval });
  }
  return rows;
}

/** A storm of five to nine intervals: a peak near its beginning, that tails off, and no more than its day has. */
function afternoon(chance: Chance, day_mm: number): Row[] {
  const count = chance.whole(5, 9);
  const peak_mm = Math.min(day_mm * 0.3, chance.between(1.2, 3.4) * Math.sqrt(Math.max(1, day_mm)) * 0.36);
  const from_min = chance.whole(12 * 12, 19 * 12) * 5;
  const at = chance.whole(0, 2);
  const shares = Array.from({ length: count }, (_, i) => 0.72 ** Math.abs(i - at) * chance.between(0.85, 1));
  const depths = shares.map((share, i) => (i === at ? peak_mm : peak_mm * share * 0.95));
  const most = Math.min(1, day_mm / depths.reduce((sum, depth) => sum + depth, 0));
  return depths.flatMap((depth, i) => {
    const rain_mm = Math.round(depth * most * 10) / 10;
    const minute = from_min + 5 * i;
    const two = (value: number) => String(value).padStart(2, '0');
    const time = `${two(Math.floor(minute / 60))}:${two(minute % 60)}`;
    return rain_mm > 0 ? [{ time, interval_min: 5, rain_mm }] : [];
  });
}
