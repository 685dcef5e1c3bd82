import { daysInMonth } from '@eavewell/engine';
import { chanceFor } from './chance.ts';
import { months } from './climate.ts';
import type { Row } from './draft.ts';

/** The island that is not read is a little drier than the middling gauge [fraction]. Invented. */
const wetness = 0.94;
const plainYear = 2025;

/** Twelve made months of a gauge without a record, drawn round the demo's own climate. */
export function normalRows(seed: number, gaugeId: string): Row[] {
  const chance = chanceFor(seed, `normals of ${gaugeId}`);
  return months.map(({ wetAfterDry_fraction: dryToWet, wetAfterWet_fraction: wetToWet, wetDay_mm }, i) => {
    // Share of wet days of a chain that has run for long.
    const wetShare = dryToWet / (1 + dryToWet - wetToWet);
    const days = daysInMonth(plainYear, i + 1) * wetShare * chance.between(0.92, 1.08);
    const wetDays = Math.round(days * 10) / 10;
    const rain_mm = Math.round(wetDays * wetDay_mm * wetness * chance.between(0.94, 1.06));
    return {
      gaugeId,
      month: i + 1,
      rain_mm,
      wetDays,
      source: 'weather office, printed table',
      yearFrom: 1981,
      yearTo: 2010,
    };
  });
}
