import { expect, it } from 'vitest';
import { purposesOf } from './purposesOf.ts';

it('keeps the purposes a site states, judged or not', () => {
  const demand = [{ purpose: 'washing', litres_per_person_per_day: 5, judged: false }];
  expect(purposesOf({ demand }, { litres_per_person_per_day: 7.5 })).toBe(demand);
});
