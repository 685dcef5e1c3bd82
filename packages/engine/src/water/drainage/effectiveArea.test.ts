import { expect, it } from 'vitest';
import { effectiveArea_m2, pitchFactor } from './effectiveArea.ts';

const over = (length_m: number, width_m: number, rise_m: number) =>
  effectiveArea_m2({
    roofPlanArea_m2: length_m * width_m,
    pitch_deg: (Math.atan(rise_m / width_m) * 180) / Math.PI,
    gutteredFraction: 1,
    wallAbove_m2: 0,
  });

// city-guilds-plumbing, page 540, exercises 1 to 3: the inputs are printed, the answers follow from L × (W + H ÷ 2).
it.each([
  [12, 7, 3, 102],
  [8, 8, 4, 80],
  [10, 8, 4, 100],
])('is length × (width + half the rise): %d m by %d m, %d m high', (length, width, rise, area) => {
  expect(over(length, width, rise)).toBeCloseTo(area, 9);
});

it('is the plan area of a flat roof, less what has no gutter, more half the wall above it', () => {
  const roof = { roofPlanArea_m2: 40, pitch_deg: 0, gutteredFraction: 0.25, wallAbove_m2: 6 };
  expect(effectiveArea_m2(roof)).toBe(13);
});

it('judges no roof over 70°, and one of 70° still', () => {
  const roof = { roofPlanArea_m2: 10, gutteredFraction: 1, wallAbove_m2: 0 };
  expect(effectiveArea_m2({ ...roof, pitch_deg: 70.01 })).toBeNull();
  expect(effectiveArea_m2({ ...roof, pitch_deg: 70 })).toBeCloseTo(10 * (1 + Math.tan((70 * Math.PI) / 180) / 2), 9);
});

it('grows with the pitch', () => {
  for (let pitch = 0; pitch < 70; pitch++) expect(pitchFactor(pitch + 1)).toBeGreaterThan(pitchFactor(pitch));
});
