import { describe, expect, it } from 'vitest';
import { greatCircle_km, lineLength_km, middleInSteps, middleOf } from './greatCircle.ts';

const at = (latitude_deg: number, longitude_deg: number) => ({ latitude_deg, longitude_deg });

describe('greatCircle_km', () => {
  // A quarter of a meridian and of the equator: a quarter of the circle of the mean radius.
  it('goes along the circle, both ways, and across the 180° meridian', () => {
    const quarter = (2 * Math.PI * 6371.0088) / 4;
    const pole = { latitude_deg: 90, longitude_deg: 17 };
    const zero = { latitude_deg: 0, longitude_deg: 0 };
    expect(greatCircle_km(zero, pole)).toBeCloseTo(quarter, 6);
    expect(greatCircle_km(pole, zero)).toBeCloseTo(quarter, 6);
    expect(greatCircle_km(zero, { latitude_deg: 0, longitude_deg: 180 })).toBeCloseTo(2 * quarter, 6);
    expect(
      greatCircle_km({ latitude_deg: 0, longitude_deg: 179.5 }, { latitude_deg: 0, longitude_deg: -179.5 }),
    ).toBeCloseTo(quarter / 90, 6);
    expect(greatCircle_km(pole, pole)).toBe(0);
  });
});

describe('lineLength_km', () => {
  // A degree of the equator and of a meridian are 1/360 of the circle of the mean radius.
  const degree_km = (2 * Math.PI * 6371.0088) / 360;

  it('adds the stretches of a line, from either end', () => {
    const line = [at(0, 0), at(0, 1), at(1, 1), at(3, 1)];
    expect(lineLength_km([line])).toBeCloseTo(4 * degree_km, 9);
    expect(lineLength_km([line.toReversed()])).toBeCloseTo(4 * degree_km, 9);
  });

  it('leaves out the gaps between pieces, and is 0 where there is no line', () => {
    expect(
      lineLength_km([
        [at(0, 0), at(0, 1)],
        [at(0, 5), at(0, 7)],
      ]),
    ).toBeCloseTo(3 * degree_km, 9);
    expect(lineLength_km([])).toBe(0);
    expect(lineLength_km([[at(5, 5)], []])).toBe(0);
  });

  it('does not go round the world at the 180° meridian', () => {
    expect(lineLength_km([[at(0, 179.5), at(0, -179.5)]])).toBeCloseTo(degree_km, 9);
  });
});

describe('middleOf', () => {
  it('lies amid the places, and a few wrong ones do not move it far', () => {
    const places = [at(-8, 125), at(-8.1, 125.1), at(-8.2, 125.2), at(-8.1, 125), at(-8, 125.2)];
    const { latitude_deg, longitude_deg } = middleOf([...places, at(0, 0)])!;
    expect(Math.abs(latitude_deg + 8.1)).toBeLessThan(0.2);
    expect(Math.abs(longitude_deg - 125.1)).toBeLessThan(0.2);
  });

  it('knows no edge at the 180° meridian', () => {
    const { longitude_deg } = middleOf([at(-17, 179.8), at(-17, -179.8), at(-17, 179.9), at(-17, -179.9)])!;
    expect(Math.abs(longitude_deg)).toBeGreaterThan(179.7);
  });

  it('is not known without places, or where they lie all round', () => {
    expect(middleOf([])).toBeNull();
    expect(middleOf([at(0, 0), at(0, 180)])).toBeNull();
  });

  it('comes in steps where there are many', () => {
    const places = Array.from({ length: 5000 }, (_, i) => at(-8 + (i % 11) / 10, 125 + (i % 7) / 10));
    const steps = middleInSteps(
      Float64Array.from(places, ({ latitude_deg }) => latitude_deg),
      Float64Array.from(places, ({ longitude_deg }) => longitude_deg),
    );
    let [count, last] = [0, steps.next()];
    for (; last.done !== true; last = steps.next()) count++;
    expect(count).toBe(4);
    // The middle of eleven parallels and seven meridians that are equally full, nearly.
    expect(last.value!.latitude_deg).toBeCloseTo(-7.5, 1);
    expect(last.value!.longitude_deg).toBeCloseTo(125.3, 1);
  });
});
