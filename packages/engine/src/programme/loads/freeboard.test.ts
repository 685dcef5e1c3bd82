import { expect, it } from 'vitest';
import { ferryFreeboard_mm, freeboardRules, platePersons_count } from './freeboard.ts';

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
