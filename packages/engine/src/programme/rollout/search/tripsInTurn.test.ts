import { describe, expect, it } from 'vitest';
import { Draws } from './draws.ts';
import { budgetOfTries } from './searchBudget.ts';
import { releaseRules } from './searchRules.ts';
import { slackInduction } from './slackInduction.ts';
import { TripsInTurn } from './tripsInTurn.ts';

interface OnALine {
  readonly release?: readonly number[];
  readonly opens?: readonly number[];
  readonly closes?: readonly number[];
  readonly demand?: readonly number[];
  readonly capacity?: number;
  readonly vehicles?: number;
  readonly loading?: number;
  readonly home?: number;
}

/** Jobs on a line every 10 from the base, of no work; what is not told limits nothing. */
function planned(jobs: number, told: OnALine) {
  const stops = jobs + 1;
  const cost = Float64Array.from(
    { length: stops * stops },
    (_, at) => 10 * Math.abs((at % stops) - Math.floor(at / stops)),
  );
  const each = (values: readonly number[] | undefined, otherwise: number, base: number) =>
    Float64Array.from({ length: stops }, (_, stop) => (stop === 0 ? base : (values?.[stop - 1] ?? otherwise)));
  const draws = new Draws(1);
  const state = new TripsInTurn(
    {
      cost_ratio: cost,
      time_ratio: cost,
      demand_amount: Int32Array.from(each(told.demand, 1, 0)),
      capacity_amount: told.capacity ?? 100,
      vehicles_count: told.vehicles ?? 1,
      opens_ratio: each(told.opens, 0, 0),
      closes_ratio: each(told.closes, 1000, told.home ?? 1000),
      service_ratio: each([], 0, told.loading ?? 0),
      release_ratio: each(told.release, 0, 0),
    },
    releaseRules.blink_fraction,
    draws,
  );
  const found = slackInduction(state, releaseRules, budgetOfTries(300), draws);
  return { ...found, vehicles: state.vehicles() };
}

describe('trips in turn', () => {
  it('waits for the latest goods of a trip where one trip is shorter', () => {
    expect(planned(2, { release: [0, 100] })).toMatchObject({ best_amount: 40, leftOut_count: 0 });
  });

  it('goes at once, and again when the goods have come, where a window does not wait', () => {
    const { best_amount, vehicles } = planned(2, { release: [0, 100], closes: [15, 1000] });
    expect({ best_amount, vehicles }).toEqual({ best_amount: 60, vehicles: [[[1], [2]]] });
  });

  it('is late for a window by the time loading takes', () => {
    expect(planned(1, { closes: [15], loading: 5 }).leftOut_count).toBe(0);
    expect(planned(1, { closes: [15], loading: 6 })).toMatchObject({ leftOut_count: 1, vehicles: [[]] });
    expect(planned(1, { closes: [15], release: [6] }).leftOut_count).toBe(1);
  });

  it('is home before a trip begins: what one vehicle cannot do two can', () => {
    const told = { capacity: 1, opens: [0, 30], closes: [10, 30] };
    // Back at 20 from the first job, at the second at 40, which is after 30.
    expect(planned(2, told).leftOut_count).toBe(1);
    expect(planned(2, { ...told, closes: [10, 40] })).toMatchObject({ best_amount: 60, vehicles: [[[1], [2]]] });
    expect(planned(2, { ...told, vehicles: 2 })).toMatchObject({ best_amount: 60, leftOut_count: 0 });
  });

  it('is home when the base closes', () => {
    expect(planned(3, { home: 60 })).toMatchObject({ best_amount: 60, leftOut_count: 0 });
    expect(planned(3, { home: 59 })).toMatchObject({ leftOut_count: 1 });
  });

  it('leaves out what no vehicle can carry, and plans the others', () => {
    const { leftOut_count, vehicles } = planned(3, { demand: [1, 9, 1], capacity: 5 });
    expect(leftOut_count).toBe(1);
    expect(vehicles.flat(2).sort()).toEqual([1, 3]);
  });

  it('plans no job, and needs a vehicle', () => {
    expect(planned(0, {})).toMatchObject({ best_amount: 0, vehicles: [[]] });
    expect(() => planned(2, { vehicles: 0 })).toThrow('at least one vehicle');
  });
});
