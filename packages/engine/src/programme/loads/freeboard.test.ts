import { expect, it } from 'vitest';
import { ferryFreeboard_mm, freeboardRules, freeboardWith, platePersons_count } from './freeboard.ts';

it('asks no less of a longer boat', () => {
  const lengths = [1, 6, 6.096, 7, 9, 12.192, 13, 30].map((length) => ferryFreeboard_mm(length)!);
  expect(lengths).toEqual([...lengths].sort((a, b) => a - b));
  expect(lengths[0]).toBeCloseTo(304.8, 9);
  expect(lengths.at(-1)).toBeCloseTo(457.2, 9);
  for (const wrong of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) expect(ferryFreeboard_mm(wrong)).toBeNull();
});

it('names each rule once, with a source', () => {
  const rules = freeboardRules();
  expect(new Set(rules.map(({ rule }) => rule)).size).toBe(rules.length);
  for (const { least_mm, source } of rules) {
    expect(least_mm).toBeGreaterThan(200);
    expect(source).toMatch(/^[a-z-]+, /);
  }
});

it('has no people on a plate that is none', () => {
  for (const wrong of [-1, Number.NaN, Number.POSITIVE_INFINITY]) expect(platePersons_count(wrong)).toBeNull();
});

it('has less freeboard the more is aboard, down to what is stated at the limit, and claims none it does not know', () => {
  const boat = { freeboard_cm: 38, freeboardEmpty_cm: 50, limit_kg: 1200 };
  const heights = [0, 300, 600, 900, 1200].map((load_kg) => freeboardWith(boat, load_kg)!.freeboard_cm);
  // Three centimetres for each quarter of the limit.
  expect(heights).toEqual([50, 47, 44, 41, 38]);
  expect(freeboardWith(boat, 1201)).toBeNull();
  expect(freeboardWith(boat, Number.NaN)).toBeNull();
  expect(freeboardWith({ ...boat, limit_kg: null }, 5)).toBeNull();
  expect(freeboardWith({ ...boat, limit_kg: 0 }, 0)).toBeNull();
  // Deeper empty than laden: measured wrong, and not used.
  expect(freeboardWith({ ...boat, freeboardEmpty_cm: 30 }, 600)).toEqual({ freeboard_cm: 38, from: 'atLeast' });
});
