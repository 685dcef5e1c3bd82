import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  evaluatePlan,
  missingPairs,
  type PackedRollout,
  packLegs,
  packNumbers,
  pairsOfPlan,
  pairsOfSite,
  putSiteIn,
  readNumbers,
  takeSiteOut,
  withLegs,
} from '../../packages/engine/src/programme/rollout/index.ts';
import { made, numRuns, placeAt, planOf, seeds, small } from './byHandPlans.ts';

const asText = (value: unknown) => JSON.parse(JSON.stringify(value)) as never;

it('a plan is timed by the legs that go with it as by all legs, and what is lacking is told', () => {
  let [alone, more_count, legs_count] = [0, 0, 0];
  fc.assert(
    fc.property(seeds, (seed) => {
      const problem = made(seed);
      const plan = planOf(problem, seed);
      const pairs = pairsOfPlan(problem, plan);
      // Of every second plan some legs are kept back, so that they are asked for.
      const some = seed % 2 === 0 ? pairs : pairs.filter((_, at) => (at + seed) % 3 > 0);
      let sparse = readNumbers(asText(packNumbers(problem, some)));
      const own = missingPairs(sparse, plan);
      if (own.length === 0) alone++;
      for (let lacks = own; lacks.length > 0; lacks = missingPairs(sparse, plan)) {
        for (const { travel, from, to } of lacks) {
          const { nodes, pairs: known } = sparse.travels[travel]!;
          expect(Array.from(known!.keys)).not.toContain(from * nodes + to);
        }
        sparse = withLegs(sparse, asText(packLegs(problem, lacks)))!;
        more_count += lacks.length;
      }
      for (const { pairs: known, byPeriod } of sparse.travels) {
        legs_count += known!.keys.length;
        for (const { river_h, limitOf } of byPeriod)
          expect([river_h.length, limitOf.length]).toEqual([known!.keys.length, known!.keys.length]);
      }
      expect(evaluatePlan(sparse, plan)).toEqual(evaluatePlan(problem, plan));
      expect(missingPairs(problem, plan)).toEqual([]);
    }),
    { numRuns, seed: 20261126 },
  );
  expect(alone).toBeGreaterThan(numRuns / 3);
  expect(more_count).toBeGreaterThan(numRuns / 10);
  expect(legs_count).toBeGreaterThan(5 * numRuns);
});

it('a rollout that JSON carried is the same to the last bit, and packs into the same', () => {
  fc.assert(
    fc.property(seeds, (seed) => {
      const problem = made(seed);
      const every = problem.travels.flatMap(({ nodes }, travel) =>
        Array.from({ length: nodes * nodes }, (_, at) => ({ travel, from: Math.floor(at / nodes), to: at % nodes })),
      );
      const packed: PackedRollout = asText(packNumbers(problem, every));
      const read = readNumbers(packed);
      expect({ ...read, travels: null }).toEqual({ ...problem, travels: null });
      for (const [at, { byPeriod }] of problem.travels.entries())
        for (const [period, table] of byPeriod.entries()) {
          const got = read.travels[at]!.byPeriod[period]!;
          const { limits, limitOf, ...columns } = table;
          for (const [name, column] of Object.entries(columns))
            expect(got[name as keyof typeof columns], name).toEqual(column);
          expect(Array.from(got.limitOf, (limit) => got.limits[limit])).toEqual(
            Array.from(limitOf, (limit) => limits[limit]),
          );
        }
      expect(asText(packNumbers(read, every))).toEqual(packed);
      expect(withLegs(read, packLegs(problem, []))).toEqual(read);
      expect(withLegs(read, { travels: [] })).toBeNull();
    }),
    { numRuns, seed: 20261126 },
  );
});

it('with the legs of a site it is timed at any place as by all legs', () => {
  let compared = 0;
  fc.assert(
    fc.property(seeds, small, small, small, (seed, crew, trip, at) => {
      const problem = made(seed);
      const plan = planOf(problem, seed);
      const job = seed % problem.jobs.length;
      const { plan: without } = takeSiteOut(plan, job);
      const place = placeAt(crew, trip, at);
      const { plan: moved } = putSiteIn(without ?? plan, job, place);
      if (moved === null) return;
      const first = readNumbers(packNumbers(problem, pairsOfPlan(problem, plan)));
      const known = withLegs(first, packLegs(problem, pairsOfSite(problem, job, plan)))!;
      const got = evaluatePlan(known, moved);
      if (missingPairs(known, moved).length > 0) return;
      compared++;
      expect(got).toEqual(evaluatePlan(problem, moved));
    }),
    { numRuns: 4 * numRuns, seed: 20261126 },
  );
  expect(compared).toBeGreaterThan(numRuns / 3);
});
