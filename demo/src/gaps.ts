import { chanceFor } from './chance.ts';
import { record } from './climate.ts';
import type { MadeReading } from './draft.ts';
import type { DemoRain } from './rain.ts';

/** Every day read: the rain file of a gauge without gaps. */
export function wholeReadings(rain: DemoRain, gauge: number): MadeReading[] {
  const { rain_mm } = rain.gauges[gauge]!;
  return rain.dates.map((date, i) => ({ date, rain_mm: rain_mm[i]! }));
}

/**
 * The rain file of a gauge with its gaps: single days left empty, some stretches of one to five weeks that are not there
 * at all, and, at the second gauge, most of one year.
 */
export function gappedReadings(seed: number, rain: DemoRain, gauge: number): MadeReading[] {
  const chance = chanceFor(seed, `gaps at ${rain.gauges[gauge]!.gaugeId}`);
  const readings = wholeReadings(rain, gauge);
  const gone = new Uint8Array(readings.length);
  const years = freeYears(rain.failedYear);
  for (let i = 0; i < 5; i++) {
    const year = years.splice(chance.whole(0, years.length - 1), 1)[0]!;
    const days = chance.whole(7, 34);
    const from = rain.dates.indexOf(`${year}-05-01`) + chance.whole(0, 120);
    gone.fill(1, from, from + days);
  }
  if (gauge === 1) {
    const year = chance.pick(years);
    gone.fill(1, rain.dates.indexOf(`${year}-03-20`), rain.dates.indexOf(`${year}-12-12`));
  }
  const kept = readings.filter((_, i) => gone[i] === 0);
  return kept.map((reading) => (chance.share() < 0.003 ? { ...reading, rain_mm: null } : reading));
}

/** Years that may lose weeks: neither end of the record, nor the failed season and its neighbours. */
function freeYears(failedYear: number): number[] {
  const years: number[] = [];
  for (let year = record.firstYear + 2; year <= record.lastYear - 2; year++)
    if (Math.abs(year - failedYear) > 1) years.push(year);
  return years;
}
