import { expect, it } from 'vitest';
import { evenDraws } from './evenDraws.ts';

it('each stretch holds one number of each row, in an order of chance', () => {
  const rows = evenDraws(50, 3, 7);
  for (const row of rows) {
    const sorted = Float64Array.from(row).sort();
    expect(sorted.every((value, place) => Math.floor(value * 50) === place)).toBe(true);
    expect(row.some((value, place) => value !== sorted[place])).toBe(true);
  }
  expect(rows[0]).not.toEqual(rows[1]);
});

it('the same seed gives the same numbers, another seed others', () => {
  expect(evenDraws(20, 2, 5)).toEqual(evenDraws(20, 2, 5));
  expect(evenDraws(20, 2, 5)).not.toEqual(evenDraws(20, 2, 6));
});
