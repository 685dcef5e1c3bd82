import { describe, expect, it } from 'vitest';
import { seededDice } from '../../kernel/index.ts';
import { type Balance, dayByDay } from './dayByDay.ts';

const once = { passes: 1, start: 'empty' } as const;

function balanceOf(inflow: number[], judged: number, other = 0): Balance {
  return {
    inflow_L: Float64Array.from(inflow),
    judged_L: new Float64Array(inflow.length).fill(judged),
    other_L: new Float64Array(inflow.length).fill(other),
  };
}

describe('dayByDay', () => {
  it('ends a second pass where it can only repeat the first, and says the same as one run to its end', () => {
    const dice = seededDice(7);
    for (const order of ['drawFirst', 'yas', 'ybs'] as const)
      for (const tank_L of [30, 200, 2000]) {
        const balance = balanceOf(
          Array.from({ length: 1000 }, () => (dice.next(6) === 0 ? dice.next(60) : 0)),
          5,
          2,
        );
        const ration = { below_fraction: 0.3, judged_fraction: 0.5, other_fraction: 0.25 };
        for (const rules of [{ order }, { order, ration }]) {
          const whole = { ...rules, passes: 2, start: 'empty' } as const;
          const { series, ...toItsEnd } = dayByDay(balance, tank_L, whole, true);
          expect(series).not.toBeNull();
          const { series: none, dry, ...quick } = dayByDay(balance, tank_L, whole);
          expect(none).toBeNull();
          expect(dry).toEqual(toItsEnd.dry);
          for (const [name, value] of Object.entries(quick))
            expect(value, name).toBeCloseTo(toItsEnd[name as keyof typeof quick], 6);
        }
      }
  });

  it('draws before the rain comes in under drawFirst, so the first rain serves the next day', () => {
    const run = dayByDay(balanceOf([5, 0, 0], 2), 10, { order: 'drawFirst', ...once }, true);
    expect([...run.dry]).toEqual([1, 0, 0]);
    expect([...run.series!.content_L]).toEqual([5, 3, 1]);
  });

  it('spills what does not fit, after the draw', () => {
    const run = dayByDay(balanceOf([12, 12], 2), 10, { order: 'drawFirst', ...once }, true);
    expect([...run.series!.spill_L]).toEqual([2, 10]);
    expect(run.endContent_L).toBe(10);
  });

  it('serves the judged purposes first and drinks what is there on a dry day', () => {
    const run = dayByDay(balanceOf([5, 0, 0], 2, 2), 10, { order: 'drawFirst', ...once }, true);
    expect([...run.series!.judgedTaken_L]).toEqual([0, 2, 1]);
    expect([...run.series!.otherTaken_L]).toEqual([0, 2, 0]);
    expect([...run.dry]).toEqual([1, 0, 1]);
  });

  it('counts the second pass only, from the content the first left', () => {
    const run = dayByDay(balanceOf([9, 0, 0], 2), 20, { order: 'drawFirst', passes: 2, start: 'empty' }, true);
    expect(run.startContent_L).toBe(5);
    expect([...run.dry]).toEqual([0, 0, 0]);
  });

  it('never calls a day dry on which nothing is asked', () => {
    expect([...dayByDay(balanceOf([0, 0], 0), 0, { order: 'yas', ...once }).dry]).toEqual([0, 0]);
  });
});

describe('the rules as printed, on a series worked out by hand', () => {
  const balance = balanceOf([0, 400, 1200, 0, 0, 200, 0, 0, 0, 800], 250);

  it('yield after spill: the rain of a day cannot be drawn that day, and the draw holds its room', () => {
    // From empty, so the 100 L that the hand series starts with come as its first rain, one day earlier.
    const shifted = balanceOf([100, 0, 400, 1200, 0, 0, 200, 0, 0, 0, 800], 250);
    const { series } = dayByDay(shifted, 1000, { order: 'yas', ...once }, true);
    expect([...series!.judgedTaken_L].slice(1)).toEqual([100, 0, 250, 250, 250, 250, 200, 0, 0, 0]);
    expect([...series!.content_L].slice(1)).toEqual([0, 400, 750, 500, 250, 200, 0, 0, 0, 800]);
    expect([...series!.spill_L].slice(1)).toEqual([0, 0, 600, 0, 0, 0, 0, 0, 0, 0]);
  });

  it('yield before spill: the rain of a day can be drawn that day; from empty, so nothing is there on the first', () => {
    const { series } = dayByDay(balance, 1000, { order: 'ybs', ...once }, true);
    expect([...series!.judgedTaken_L]).toEqual([0, 250, 250, 250, 250, 250, 250, 200, 0, 250]);
    expect([...series!.content_L]).toEqual([0, 150, 1000, 750, 500, 450, 200, 0, 0, 550]);
    expect([...series!.spill_L]).toEqual([0, 0, 100, 0, 0, 0, 0, 0, 0, 0]);
  });
});
