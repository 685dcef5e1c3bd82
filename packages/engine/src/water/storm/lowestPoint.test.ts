import { expect, it } from 'vitest';
import { lowestPoint } from './lowestPoint.ts';

it("finds the floor of Rosenbrock's valley", () => {
  const valley = ([x, y]: readonly number[]) => (1 - x!) ** 2 + 100 * (y! - x! * x!) ** 2;
  const [x, y] = lowestPoint(valley, [-1.2, 1], [0.5, 0.5]);
  expect(x).toBeCloseTo(1, 5);
  expect(y).toBeCloseTo(1, 5);
});

it('keeps off points that are not allowed', () => {
  const bowl = ([x, y]: readonly number[]) => (x! < 1 ? Number.POSITIVE_INFINITY : x! * x! + (y! - 2) ** 2);
  const [x, y] = lowestPoint(bowl, [3, 0], [1, 1]);
  expect(x).toBeGreaterThanOrEqual(1);
  expect(x).toBeCloseTo(1, 3);
  expect(y).toBeCloseTo(2, 3);
});
