import { expect, it } from 'vitest';
import { gust_factor, roundTank_factor, roundTankForce_factor } from './constants.ts';
import { exposureFactor, velocityPressure_Pa, windForce_N } from './windPressure.ts';
import { windSafety } from './windSafety.ts';

// Reference case worked by hand: an empty tank of 60 kg, 1.5 m wide and 1.6 m high, on a stand of 200 kg, 2 m high and 1.8 m wide, at 40 m/s.
it('tips an empty tank on a stand as worked by hand', () => {
  const pressure_Pa = velocityPressure_Pa({
    windSpeed_m_per_s: 40,
    exposure_factor: exposureFactor('openGround', 3.6),
    topography_factor: 1,
    direction_factor: roundTank_factor,
  });
  const push_N = windForce_N(pressure_Pa, gust_factor, roundTankForce_factor, 1.5 * 1.6);
  const { overturning_factor, sliding_factor } = windSafety({
    mass_kg: 260,
    windForce_N: push_N,
    pushHeight_m: 2.8,
    baseWidth_m: 1.8,
    friction_factor: 0.3,
  });
  expect(Math.abs(pressure_Pa / 792 - 1)).toBeLessThan(0.001);
  expect(Math.abs(push_N / 1131 - 1)).toBeLessThan(0.001);
  expect(Math.abs(overturning_factor! / 0.725 - 1)).toBeLessThan(0.001);
  expect(sliding_factor).toBeCloseTo((0.3 * 260 * 9.81) / push_N, 12);
});

it('has no factor where nothing pushes', () => {
  const still = { mass_kg: 100, windForce_N: 0, pushHeight_m: 1, baseWidth_m: 1, friction_factor: 0.3 };
  expect(windSafety(still)).toEqual({ overturning_factor: null, sliding_factor: null });
  expect(windSafety({ ...still, windForce_N: Number.NaN })).toEqual({ overturning_factor: null, sliding_factor: null });
});
