import {
  bearingPressure_kPa,
  commonlyExempt_L,
  exposureFactor,
  groundClasses,
  liftingLimit_kg,
  mostHeld,
  presumptiveBearing,
  velocityPressure_Pa,
  waterMass_kg,
  windExposures,
  windForce_N,
  windSafety,
} from '@eavewell/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const metres = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const exposure = fc.constantFrom(...windExposures);

const tank = fc.record({
  diameter_m: metres(0.3, 5),
  height_m: metres(0.3, 6),
  standHeight_m: metres(0, 6),
  baseWidth_m: metres(0.3, 6),
  tank_kg: metres(5, 3000),
  stand_kg: metres(0, 4000),
  windSpeed_m_per_s: metres(1, 90),
  exposure,
});
type Tank = typeof tank extends fc.Arbitrary<infer One> ? One : never;

/** The factors of safety of a tank with so much water in it. */
function safetyOf(one: Tank, volume_L: number) {
  const top_m = one.standHeight_m + one.height_m;
  const pressure_Pa = velocityPressure_Pa({
    windSpeed_m_per_s: one.windSpeed_m_per_s,
    exposure_factor: exposureFactor(one.exposure, top_m),
    topography_factor: 1,
    direction_factor: 0.95,
  });
  const found = windSafety({
    mass_kg: waterMass_kg(volume_L) + one.tank_kg + one.stand_kg,
    windForce_N: windForce_N(pressure_Pa, 0.85, 0.7, one.diameter_m * one.height_m),
    pushHeight_m: one.standHeight_m + one.height_m / 2,
    baseWidth_m: one.baseWidth_m,
    friction_factor: 0.3,
  });
  return { overturning: found.overturning_factor!, sliding: found.sliding_factor! };
}

describe('stands', () => {
  it('more water never presses less, and more area never more', () => {
    fc.assert(
      fc.property(metres(0, 1e5), metres(0, 1e5), metres(0.01, 20), metres(0.01, 20), (one, other, small, large) => {
        const [least, most] = [Math.min(one, other), Math.max(one, other)];
        const [narrow, wide] = [Math.min(small, large), Math.max(small, large)];
        expect(bearingPressure_kPa(waterMass_kg(most), narrow)!).toBeGreaterThanOrEqual(
          bearingPressure_kPa(waterMass_kg(least), narrow)!,
        );
        expect(bearingPressure_kPa(waterMass_kg(most), wide)!).toBeLessThanOrEqual(
          bearingPressure_kPa(waterMass_kg(most), narrow)!,
        );
      }),
    );
  });

  it('more wind, or a more open place, never gives a larger factor', () => {
    fc.assert(
      fc.property(tank, metres(1, 2), (one, more) => {
        const before = safetyOf(one, 0);
        const windier = safetyOf({ ...one, windSpeed_m_per_s: one.windSpeed_m_per_s * more }, 0);
        expect(windier.overturning).toBeLessThanOrEqual(before.overturning);
        expect(windier.sliding).toBeLessThanOrEqual(before.sliding);
        const opener = safetyOf({ ...one, exposure: 'openWater' }, 0);
        expect(opener.overturning).toBeLessThanOrEqual(before.overturning);
      }),
    );
  });

  it('a wider base is never worse', () => {
    fc.assert(
      fc.property(tank, metres(1, 3), (one, more) => {
        const wider = safetyOf({ ...one, baseWidth_m: one.baseWidth_m * more }, 0);
        expect(wider.overturning).toBeGreaterThanOrEqual(safetyOf(one, 0).overturning);
      }),
    );
  });

  it('a full tank never tips or slides sooner than an empty one', () => {
    fc.assert(
      fc.property(tank, metres(0, 1), (one, share) => {
        const { mostHeld_L } = mostHeld({ ...one, overflowHeight_m: null, nominal_L: null, partVolume_L: null })!;
        const [empty, part, full] = [safetyOf(one, 0), safetyOf(one, share * mostHeld_L), safetyOf(one, mostHeld_L)];
        expect(full.overturning).toBeGreaterThanOrEqual(part.overturning);
        expect(part.overturning).toBeGreaterThanOrEqual(empty.overturning);
        expect(full.sliding).toBeGreaterThanOrEqual(empty.sliding);
      }),
    );
  });

  it('the wind is never less higher up', () => {
    fc.assert(
      fc.property(exposure, metres(0, 400), metres(0, 400), (place, one, other) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        expect(exposureFactor(place, high)).toBeGreaterThanOrEqual(exposureFactor(place, low));
      }),
    );
  });

  it('a higher stand is never exempt with a larger tank', () => {
    fc.assert(
      fc.property(metres(0, 6), metres(0, 6), (one, other) => {
        expect(commonlyExempt_L(Math.max(one, other))).toBeLessThanOrEqual(commonlyExempt_L(Math.min(one, other)));
      }),
    );
  });

  it('every class of ground but the last has a figure', () => {
    expect(groundClasses.filter((one) => presumptiveBearing(one) === null)).toEqual(['softOrMadeGround']);
  });
});

describe('lifting', () => {
  const lift = fc.record({
    reach_cm: metres(0, 80),
    handHeight_cm: metres(0, 200),
    travel_cm: metres(0, 200),
    turn_deg: metres(0, 160),
    frequency_factor: metres(0, 1),
    grip_factor: metres(0.9, 1),
  });

  it('is never above 23 kg nor below 0, and never more from farther, further or more turned', () => {
    fc.assert(
      fc.property(lift, metres(0, 60), (one, more) => {
        const limit_kg = liftingLimit_kg(one)!;
        expect(limit_kg).toBeGreaterThanOrEqual(0);
        expect(limit_kg).toBeLessThanOrEqual(23);
        for (const name of ['reach_cm', 'travel_cm', 'turn_deg'] as const)
          expect(liftingLimit_kg({ ...one, [name]: one[name] + more })!).toBeLessThanOrEqual(limit_kg);
      }),
    );
  });
});
