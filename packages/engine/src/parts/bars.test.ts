import { expect, it } from 'vitest';
import { type BarStock, barPlan, type CutRun } from './bars.ts';

const bar: BarStock = { length_m: 4, cut_mm: 0, squareOff_mm: 0 };
const runs = (...lengths_m: readonly number[]): readonly CutRun[] =>
  lengths_m.map((length_m, at) => ({ runId: `G${at + 1}`, length_m }));
const count = (lengths_m: readonly number[], stock: Partial<BarStock> = {}) =>
  barPlan(runs(...lengths_m), { ...bar, ...stock })?.bars_count;

it('joins a run that is longer than a bar from whole bars and one remainder', () => {
  expect(barPlan(runs(11), bar)).toEqual({
    bars_count: 3,
    bound_count: 3,
    joints_count: 2,
    joints: [{ runId: 'G1', joints_count: 2 }],
    bars: [
      { bars_count: 2, cuts: [{ runId: 'G1', length_m: 4 }], offcut_m: 0 },
      { bars_count: 1, cuts: [{ runId: 'G1', length_m: 3 }], offcut_m: 1 },
    ],
  });
  expect(barPlan(runs(8), bar)).toMatchObject({ bars_count: 2, joints_count: 1 });
});

it('takes no bar for no run, one for a run of a bar, and offcuts for short ones', () => {
  expect(barPlan([], bar)).toEqual({ bars_count: 0, bound_count: 0, joints_count: 0, joints: [], bars: [] });
  expect(count([0, 0])).toBe(0);
  expect(count([4])).toBe(1);
  expect(count([4.00001])).toBe(2);
  expect(count([7, 5])).toBe(3);
  expect(count([3, 3, 3, 3])).toBe(4);
});

it('gives each cut what the saw takes, but none where a bar ends', () => {
  // 2 + 2 leave a bar of 4 m without a cut to spare: one cut between them.
  expect(count([2, 2], { cut_mm: 3 })).toBe(2);
  expect(count([2, 1.997], { cut_mm: 3 })).toBe(1);
  expect(count([1, 1, 1, 0.991], { cut_mm: 3 })).toBe(1);
  expect(count([1, 1, 1, 0.9911], { cut_mm: 3 })).toBe(2);
  expect(count([4, 4], { cut_mm: 3 })).toBe(2);
  const [first] = barPlan(runs(1, 2), { ...bar, cut_mm: 3 })!.bars;
  expect(first!.offcut_m).toBeCloseTo(0.994, 9);
});

it('squares both ends of a bar', () => {
  expect(count([4], { squareOff_mm: 5 })).toBe(2);
  expect(count([3.99], { squareOff_mm: 5 })).toBe(1);
  expect(count([7.98], { squareOff_mm: 5 })).toBe(2);
});

it('is not misled by the last bits of a length', () => {
  expect(count([4 / 3, 4 / 3, 4 / 3])).toBe(1);
  expect(count([2 / 3, 2 / 3, 2 / 3], { length_m: 2 })).toBe(1);
  expect(count([0.1 + 0.2, 0.1], { length_m: 0.4 })).toBe(1);
  expect(count([0.58], { length_m: 0.29 })).toBe(2);
  expect(count([3 * 1.1], { length_m: 1.1 })).toBe(3);
});

it.each([Number.NaN, -1, Number.POSITIVE_INFINITY, 1e9])('has no answer to a length of %s', (wrong) => {
  expect(count([1, wrong])).toBeUndefined();
  expect(count([1], { length_m: wrong })).toBeUndefined();
  if (wrong !== 1e9) expect(count([1], { cut_mm: wrong })).toBeUndefined();
  expect(count([1], { squareOff_mm: wrong })).toBeUndefined();
  expect(count([1], { length_m: 0 })).toBeUndefined();
  expect(count([1], { squareOff_mm: 2000 })).toBeUndefined();
});

it('says where nobody has shown that fewer would not do', () => {
  // Five bars cut into three each: with one step only the quick ways are tried.
  const lengths_m = [2.73, 0.81, 0.46, 1.87, 1.29, 0.84, 3.11, 0.52, 0.37, 1.53, 1.38, 1.09, 2.02, 1.07, 0.91];
  const stopped = barPlan(runs(...lengths_m), bar, 1)!;
  const searched = barPlan(runs(...lengths_m), bar)!;
  expect(searched).toMatchObject({ bars_count: 5, bound_count: 5 });
  expect(stopped.bound_count).toBeLessThanOrEqual(5);
  expect(stopped.bars_count).toBeGreaterThanOrEqual(5);
});

it('cuts every piece once', () => {
  const wanted = runs(2.73, 0.81, 9.46, 1.87, 4, 0.84, 3.11);
  const plan = barPlan(wanted, { ...bar, cut_mm: 4 })!;
  for (const { runId, length_m } of wanted) {
    const own_m = plan.bars.flatMap(({ bars_count, cuts }) =>
      cuts.filter((cut) => cut.runId === runId).map((cut) => bars_count * cut.length_m),
    );
    expect(own_m.reduce((sum, one) => sum + one, 0)).toBeCloseTo(length_m, 6);
  }
});
