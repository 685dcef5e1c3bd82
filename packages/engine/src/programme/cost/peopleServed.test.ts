import { expect, it } from 'vitest';
import { servedPeople } from './peopleServed.ts';

it('adds up growing people and takes the share that works', () => {
  // By hand: 100 + 102 + 104.04 = 306.04 person-years; × 0.75 ÷ 3.
  const given = { people: 100, growth_fraction_per_year: 0.02, years_count: 3 };
  expect(servedPeople(given, 0.75)).toBeCloseTo(76.51, 10);
});
