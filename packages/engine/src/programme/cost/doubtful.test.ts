import { expect, it } from 'vitest';
import { doubtful, throwsOf, valueAtShare } from './doubtful.ts';

it('takes an end that is not stated for the likely figure, and refuses ends that do not rise', () => {
  expect(doubtful('a', 5, null, 8)).toEqual({ inputId: 'a', low: 5, likely: 5, high: 8, ends: 'limits' });
  expect(doubtful('a', 5, 6, 8)).toBeNull();
  expect(doubtful('a', 5, 4, 4.5)).toBeNull();
  expect(doubtful('a', Number.NaN, 4, 5)).toBeNull();
});

it('throws a triangle between limits', () => {
  const figure = doubtful('a', 2, 0, 10)!;
  const thrown = throwsOf(figure, 4000, 7);
  const share = (below: number) => thrown.filter((one) => one < below).length / thrown.length;
  // By hand: under the top lies (2 − 0) ÷ 10; under 6 lies 1 − 4² ÷ (10 × 8).
  expect(share(2)).toBeCloseTo(0.2, 2);
  expect(share(6)).toBeCloseTo(0.8, 2);
  expect(thrown.reduce((sum, one) => sum + one, 0) / 4000).toBeCloseTo(4, 2);
});

it('keeps P10, P50 and P90 where they are', () => {
  const figure = { inputId: 'b', low: 1, likely: 2, high: 8, ends: 'p10p90' as const };
  expect([0, 0.1, 0.3, 0.5, 0.7, 0.9, 1].map((share) => valueAtShare(figure, share))).toEqual([
    1,
    1,
    1.5,
    2,
    expect.closeTo(5, 12),
    8,
    8,
  ]);
});

it('throws figures of one name together, and others apart', () => {
  const [a, b] = [doubtful('a', 2, 0, 10)!, doubtful('b', 2, 0, 10)!];
  expect(throwsOf(a, 50, 7)).toEqual(throwsOf({ ...a }, 50, 7));
  expect(throwsOf(a, 50, 7)).not.toEqual(throwsOf(b, 50, 7));
  expect(throwsOf(a, 50, 7)).not.toEqual(throwsOf(a, 50, 8));
});
