import { describe, expect, it } from 'vitest';
import { fewerStates, statePeriods } from './statePeriods.ts';
import type { WayCause } from './waysFacts.ts';

const cause = (causeId: string, days: readonly [number, number][], ways = 1, slower_factor = Infinity): WayCause => ({
  ...{ causeId, kind: 'closure', reason: null, carrierIds: null, slower_factor },
  ways_positions: Array.from({ length: ways }, (_, index) => index),
  holdsOn_days: Uint8Array.from({ length: 100 }, (_, day) =>
    days.some(([from, to]) => day >= from && day < to) ? 1 : 0,
  ),
});

const told = ({ periods }: ReturnType<typeof statePeriods>) =>
  periods.map(({ from, state }) => [from, state.causes_positions.join()]);

describe('statePeriods', () => {
  const causes = [
    cause(
      'A',
      [
        [10, 20],
        [50, 60],
      ],
      3,
    ),
    cause('B', [[58, 62]]),
  ];

  it('begins a period on each day on which something changes', () => {
    const found = statePeriods(causes, 100);
    expect(told(found)).toEqual([
      [0, ''],
      [10, '0'],
      [20, ''],
      [50, '0'],
      [58, '0,1'],
      [60, '1'],
      [62, ''],
    ]);
    expect(found.worse_days).toBe(0);
    expect(found.periods[0]!.state).toBe(found.periods[2]!.state);
  });

  it('puts together neighbours for which ways are told worse for the fewest days and ways, as the worse of the two', () => {
    const found = statePeriods(causes, 100, 6);
    // A for two days more, of three ways, is 6; B for the eight days before it, of one way, 8; B from day 62 on 38.
    expect(told(found)).toEqual([
      [0, ''],
      [10, '0'],
      [20, ''],
      [50, '0'],
      [58, '0,1'],
      [62, ''],
    ]);
    expect(found.worse_days).toBe(2);
  });

  it('is one period where nothing holds', () => {
    expect(told(statePeriods([], 100))).toEqual([[0, '']]);
  });

  it('has as few states as there is room for, each at least as bad as the truth', () => {
    const all = statePeriods(causes, 100);
    const few = fewerStates(all, causes, 100, 2);
    expect(new Set(few.periods.map(({ state }) => state)).size).toBe(2);
    for (let day = 0; day < 100; day++) {
      const at = (found: typeof all) => found.periods.findLast(({ from }) => from <= day)!.state.causes_positions;
      for (const one of at(all)) expect(at(few)).toContain(one);
    }
    expect(few.worse_days).toBeGreaterThan(0);
    expect(told(fewerStates(all, causes, 100, 9))).toEqual(told(all));
  });
});
