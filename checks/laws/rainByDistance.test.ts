import {
  calendarDay,
  gammaShares,
  madeRain,
  measured,
  monthsFromNormals,
  type RainMonth,
  type RainRecord,
  rainByDistance,
  unknownDay,
  wetShare,
} from '@eavewell/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const settings = { numRuns: process.env['EAVEWELL_SOAK'] ? 10_000 : 500, seed: 20261125 };

/** Up to five gauges at up to 90 km, some days of each not measured. */
const anyGauges = fc
  .array(
    fc.record({
      distance_km: fc.oneof(fc.constant(0), fc.double({ min: 0.1, max: 90, noNaN: true })),
      firstDay: fc.integer({ min: 0, max: 10 }),
      rain: fc.array(fc.option(fc.oneof(fc.constant(0), fc.double({ min: 0, max: 200, noNaN: true }))), {
        minLength: 1,
        maxLength: 30,
      }),
    }),
    { minLength: 1, maxLength: 5 },
  )
  .map((gauges) =>
    gauges
      .map(({ distance_km, firstDay, rain }, i) => ({
        distance_km,
        record: {
          gaugeId: `G${i}`,
          firstDay,
          rain_mm: Float64Array.from(rain, (one) => one ?? 0),
          state: Uint8Array.from(rain, (one) => (one === null ? unknownDay : measured)),
        },
      }))
      .sort((a, b) => a.distance_km - b.distance_km),
  );

describe('rain at a place from the gauges around it', () => {
  it('lies each day between the least and the greatest of those that measured it; a day none measured is unknown', () => {
    fc.assert(
      fc.property(anyGauges, (near) => {
        const { record, shares } = rainByDistance('x', near);
        for (let at = 0; at < record.state.length; at++) {
          const told = near.flatMap(({ record: one }) => {
            const day = record.firstDay + at - one.firstDay;
            return one.state[day] === measured ? [one.rain_mm[day]!] : [];
          });
          expect(record.state[at]).toBe(told.length > 0 ? measured : unknownDay);
          if (told.length === 0) continue;
          const slack = 1e-12 * Math.max(...told);
          expect(record.rain_mm[at]).toBeGreaterThanOrEqual(Math.min(...told) - slack);
          expect(record.rain_mm[at]).toBeLessThanOrEqual(Math.max(...told) + slack);
        }
        const weights = shares.reduce((sum, { weight_fraction }) => sum + weight_fraction, 0);
        if (record.state.includes(measured)) expect(weights).toBeCloseTo(1, 9);
      }),
      settings,
    );
  });
});

const months: readonly RainMonth[] = monthsFromNormals(
  [210, 190, 220, 150, 80, 40, 25, 12, 30, 90, 160, 230].map((rain_mm, i) => ({
    rain_mm,
    wetDays: [16, 14, 16, 13, 9, 6, 4, 2, 4, 8, 12, 17][i]!,
  })),
)!;
const years = 100;

/** Two gauges of one climate: in a share of the ten-day blocks it rains alike at both, in the others at each for itself. */
function pair(shared_fraction: number): readonly RainRecord[] {
  const rain = (name: string) => madeRain(months, { name, seed: 4, firstYear: 2001, years });
  const common = rain('common');
  return ['A', 'B'].map((gaugeId) => {
    const rain_mm = rain(gaugeId).rain_mm.map((own, day) =>
      (Math.floor(day / 10) * 7919) % 100 < 100 * shared_fraction ? common.rain_mm[day]! : own,
    );
    return { gaugeId, firstDay: common.firstDay, rain_mm, state: new Uint8Array(rain_mm.length) };
  });
}

function facts({ rain_mm }: RainRecord) {
  const wet = rain_mm.filter((one) => one >= 1);
  let [run, longest] = [0, 0];
  for (const one of rain_mm) {
    run = one < 1 ? run + 1 : 0;
    longest = Math.max(longest, run);
  }
  const sum = (values: Float64Array) => values.reduce((total, one) => total + one, 0);
  return { total: sum(rain_mm), wetDays: wet.length, meanWetDay_mm: sum(wet) / wet.length, longest };
}

/** Wet days expected of the mean of both: wet where both are, or where one is and brings 2 mm or more. */
function wetDaysExpected({ firstDay, rain_mm }: RainRecord, shared_fraction: number): number {
  const shares = months.map(({ chain, amounts }) => {
    if (amounts.kind !== 'gamma') throw new Error('gamma is meant');
    const p = wetShare(chain);
    const twoOrMore = gammaShares((2 - amounts.least_mm) / amounts.scale_mm, amounts.shape).above_fraction;
    return shared_fraction * p + (1 - shared_fraction) * (p * p + 2 * p * (1 - p) * twoOrMore);
  });
  return rain_mm.reduce((sum, _, at) => sum + shares[calendarDay(firstDay + at).month - 1]!, 0);
}

describe('a mean of two gauges, half way between them', () => {
  it.each([0, 0.5, 1])(
    'of which %f of the days are alike has the wet days that follow, and less rain on each',
    (shared) => {
      const [a, b] = pair(shared);
      const near = [a!, b!].map((record) => ({ record, distance_km: 20 }));
      const mean = rainByDistance('x', near).record;
      const [one, other, both] = [facts(a!), facts(b!), facts(mean)];
      expect(both.total / ((one.total + other.total) / 2)).toBeCloseTo(1, 9);
      const expected = wetDaysExpected(mean, shared);
      // Days of a chain with d = 0.25 spread (1 + d) ÷ (1 − d) times as much as days without memory, a quarter each at most.
      expect(Math.abs(both.wetDays - expected)).toBeLessThan(4 * Math.sqrt((mean.rain_mm.length / 4) * (1.25 / 0.75)));
      expect(both.longest).toBeLessThanOrEqual(Math.max(one.longest, other.longest));
      if (shared === 1) expect(mean.rain_mm).toEqual(a!.rain_mm);
      else {
        expect(both.wetDays).toBeGreaterThan(1.1 * Math.max(one.wetDays, other.wetDays));
        expect(both.meanWetDay_mm).toBeLessThan(0.9 * Math.min(one.meanWetDay_mm, other.meanWetDay_mm));
      }
    },
  );
});
