import { barPlan, type CutRun, type Dice, fewestBars, seededDice } from '@eavewell/engine';
import { expect, it } from 'vitest';
import { slowBars } from './slowBars.ts';

const draw = (dice: Dice, low: number, high: number): number => low + dice.next(high - low + 1);
const runsOf = (lengths: readonly number[]): readonly CutRun[] =>
  lengths.map((length_m, at) => ({ runId: `${at}`, length_m }));

it('takes as few bars as the slow way for up to eight pieces', () => {
  for (let seed = 1; seed <= 300; seed++) {
    const dice = seededDice(seed);
    const bar = draw(dice, 10, 60);
    const cut = dice.next(3);
    const sizes = Array.from({ length: dice.next(9) }, () => draw(dice, 1, bar));
    const plan = barPlan(runsOf(sizes), { length_m: bar, cut_mm: cut * 1000, squareOff_mm: 0 })!;
    const slow = slowBars(sizes, bar, cut);
    expect(plan, `seed ${seed}`).toMatchObject({ bars_count: slow, bound_count: slow });
  }
});

it('takes no more bars than any other way to join runs with as few joints', () => {
  for (let seed = 1; seed <= 300; seed++) {
    const dice = seededDice(1000 + seed);
    const bar = draw(dice, 3, 7);
    const cut = dice.next(2);
    const runs = Array.from({ length: draw(dice, 1, 4) }, () => draw(dice, 1, 2 * bar + 2));
    const plan = barPlan(runsOf(runs), { length_m: bar, cut_mm: cut * 1000, squareOff_mm: 0 })!;
    expect(plan.bars_count, `seed ${seed}`).toBe(slowBars(runs, bar, cut));
    const joints = runs.reduce((sum, run) => sum + Math.ceil(run / bar) - 1, 0);
    expect(plan.joints_count).toBe(joints);
  }
});

/** Whole bars cut into pieces at random, shuffled: no way takes fewer bars than there were. */
function wholeBarsCut(dice: Dice, bar: number, pieces: number, most: number) {
  const sizes: number[] = [];
  let bars = 0;
  while (sizes.length < pieces) {
    const marks = Array.from({ length: Math.min(dice.next(most), pieces - sizes.length - 1) }, () =>
      draw(dice, 1, bar - 1),
    );
    const ends = [...new Set([...marks, bar])].sort((a, b) => a - b);
    sizes.push(...ends.map((end, at) => end - (ends[at - 1] ?? 0)));
    bars++;
  }
  for (let at = sizes.length - 1; at > 0; at--) {
    const other = dice.next(at + 1);
    [sizes[at], sizes[other]] = [sizes[other]!, sizes[at]!];
  }
  return { sizes, bars };
}

it.each([
  ['a bar of 4 m cut by the millimetre into at most 12', 4000, 60, 12],
  ['a bar of 6 m cut by the centimetre into at most 30', 600, 60, 30],
  ['a bar of 4 m cut by the thousandth of a millimetre into at most 4', 4_000_000, 60, 4],
  ['a few pieces', 4000, 15, 5],
] as const)('puts back together what whole bars were cut into: %s', (_name, bar, pieces, most) => {
  for (let seed = 1; seed <= 25; seed++) {
    const { sizes, bars } = wholeBarsCut(seededDice(seed * 31 + bar), bar, pieces, most);
    const plan = barPlan(runsOf(sizes.map((size) => size / 1000)), {
      length_m: bar / 1000,
      cut_mm: 0,
      squareOff_mm: 0,
    })!;
    expect(plan, `seed ${seed}`).toMatchObject({ bars_count: bars, bound_count: bars });
    expect(plan.bars.reduce((sum, { offcut_m }) => sum + offcut_m, 0)).toBe(0);
  }
});

it('stays quick and says its bound for 500 pieces', () => {
  const { sizes, bars } = wholeBarsCut(seededDice(5), 4000, 500, 6);
  const found = fewestBars(sizes, 4000, 200_000);
  expect(found.bound_count).toBe(bars);
  expect(found.positions.length - bars).toBeLessThanOrEqual(1);
  expect([...found.positions.flat()].sort((a, b) => a - b)).toEqual(sizes.map((_, at) => at));
});
