import { describe, expect, it } from 'vitest';
import { tinyCrew, tinyRollout } from './tinyRollout.testing.ts';
import { pairedVariants, rolloutVariants } from './variants.ts';

const rollout = tinyRollout(3, {
  crews: [tinyCrew(100), { ...tinyCrew(100), crewId: 'D', store: 1, pools: [0] }],
  stores: [
    { node: 0, arrivals: [], filledBy: null },
    {
      node: 0,
      arrivals: [],
      filledBy: {
        ...{ store: 0, there_days: [1], back_days: [1], limit_kg: 100, limit_L: 100 },
        ...{ there_cost: [1], back_cost: [1], there_fuel_L: [1], back_fuel_L: [1], pool: null },
      },
    },
  ],
  pools: [{ carrierId: 'BOAT', carriers_count: 1 }],
});

describe('rolloutVariants', () => {
  const variants = rolloutVariants(rollout);

  it('tells the rollout as it is first, and each change once', () => {
    expect(variants.map(({ change }) => change)).toEqual([
      { kind: 'asIs', of: null, by_count: 0, crewId: null, otherCrewId: null },
      { kind: 'crews', of: null, by_count: -1, crewId: null, otherCrewId: null },
      { kind: 'crews', of: null, by_count: 1, crewId: null, otherCrewId: null },
      { kind: 'crews', of: null, by_count: 2, crewId: null, otherCrewId: null },
      { kind: 'carriers', of: 'BOAT', by_count: 1, crewId: null, otherCrewId: null },
      { kind: 'forwardStore', of: 'B', by_count: -1, crewId: null, otherCrewId: null },
    ]);
    expect(variants[0]!.problem).toBe(rollout);
  });

  it('changes nothing else', () => {
    for (const { problem } of variants) {
      expect(problem.jobs).toBe(rollout.jobs);
      expect(problem.travels).toBe(rollout.travels);
    }
    expect(variants.map(({ problem }) => problem.crews.length)).toEqual([2, 1, 3, 4, 2, 2]);
    expect(new Set(variants[3]!.problem.crews.map(({ crewId }) => crewId)).size).toBe(4);
    expect(variants[4]!.problem.pools[0]!.carriers_count).toBe(2);
    expect(variants[5]!.problem.crews.map(({ store }) => store)).toEqual([0, 0]);
  });

  it('tries a store that could be with each crew of the store behind it, and none that cannot be filled', () => {
    const [main, shed] = rollout.stores;
    const never = { ...shed!, filledBy: { ...shed!.filledBy!, back_days: [Number.POSITIVE_INFINITY] } };
    const possible = { ...rollout, stores: [main!, shed!, shed!, never] };
    const tried = rolloutVariants(rollout, possible).slice(variants.length);
    expect(tried.map(({ change }) => change)).toEqual([
      { kind: 'newStore', of: 'B', by_count: 1, crewId: 'C', otherCrewId: null },
    ]);
    expect(tried[0]!.problem.crews.map(({ store }) => store)).toEqual([2, 1]);
  });

  it('tries a store that could be with the two crews that waited least when each was alone there', () => {
    const [main, shed] = rollout.stores;
    const crews = ['C', 'D', 'E'].map((crewId) => ({ ...tinyCrew(100), crewId, store: 0 }));
    const possible = { ...rollout, stores: [main!, shed!], crews };
    const alone = rolloutVariants({ ...rollout, crews }, possible).filter(({ change }) => change.kind === 'newStore');
    expect(alone.map(({ change }) => change.crewId)).toEqual(['C', 'D', 'E']);
    const tried = alone.map(({ change }, nth) => ({ change, waiting: [30, 10, 20][nth]!, cost: 0 }));
    const both = pairedVariants(possible, tried);
    expect(both.map(({ change }) => [change.of, change.crewId, change.otherCrewId])).toEqual([['B', 'D', 'E']]);
    expect(both[0]!.problem.crews.map(({ store }) => store)).toEqual([0, 1, 1]);
    expect(both[0]!.problem.jobs).toBe(rollout.jobs);
    expect(pairedVariants(possible, tried.slice(0, 1))).toEqual([]);
  });

  it('has none where nobody goes', () => {
    expect(rolloutVariants({ ...rollout, crews: [] })).toEqual([]);
  });
});
