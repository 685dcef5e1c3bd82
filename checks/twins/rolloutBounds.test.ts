import { loadSolveLinear } from '@eavewell/linear';
import { expect, it } from 'vitest';
import { evaluatePlan, tripPricesBound, waitingBounds } from '../../packages/engine/src/programme/rollout/index.ts';
import { bestPlan } from './everyPlan.ts';
import { madePlan, madeRollout } from './madeRollouts.ts';

const solve = await loadSolveLinear();

/** Tiny programmes, with the best of all their plans. */
function* tinyProgrammes(programmes_count: number) {
  for (let seed = 1, told = 0; told < programmes_count; seed++) {
    const jobs = 1 + (seed % 4);
    const crews = 1 + (seed % 2);
    const trouble_fraction = [0, 0.1, 0.2, 0.35][seed % 4]!;
    const kind = { jobs: [jobs, jobs], crews: [crews, crews], horizon_days: [60, 90], trouble_fraction } as const;
    const problem = madeRollout(seed, kind);
    const best = bestPlan(problem);
    if (best === null) continue;
    told++;
    yield { seed, problem, best };
  }
}

const shareOf = (shares: readonly number[], fraction: number) =>
  [...shares].sort((a, b) => a - b)[Math.floor(shares.length * fraction)]!;

it('no bound is above the waiting of the best of all plans: 500 tiny programmes', () => {
  let compared = 0;
  let seen = 0;
  const above: string[] = [];
  const shares: number[] = [];
  for (const { seed, problem, best } of tinyProgrammes(500)) {
    compared++;
    seen = seed;
    const bounds = waitingBounds(problem, { solve, mostColumns: 2000 });
    for (const { name, waiting } of bounds?.all ?? [])
      if (waiting > best.price + 1e-6) above.push(`seed ${seed}: ${name} ${waiting} over ${best.price}`);
    shares.push((bounds?.best.waiting ?? 0) / best.price);
    // What can be done has a bound.
    if (bounds === null) above.push(`seed ${seed}: no bound`);
  }
  expect(above).toEqual([]);
  // A bound that is always far below would be true and useless: where nothing but the ways holds up, it comes near.
  expect(shareOf(shares, 0.9)).toBeGreaterThan(0.9);
  expect(compared / seen).toBeGreaterThan(0.2);
});

it('the bound of prices is not either, whatever plan it begins from, and half the time it tells nearly all: 500 tiny programmes', () => {
  const above: string[] = [];
  const shares: number[] = [];
  for (const { seed, problem, best } of tinyProgrammes(500)) {
    // From the best plan, or from one that leaves sites out, ends early or late, and breaks what it will.
    const begun = seed % 3 === 0 ? madePlan(problem, seed) : best.plan;
    const mostPairs_count = [1, 1e5, 1e6][seed % 5] ?? 3e5;
    const outcome = evaluatePlan(problem, begun);
    const bound = tripPricesBound(problem, outcome, { budget: roundsOf(60), mostPairs_count });
    if (bound === null) above.push(`seed ${seed}: no bound`);
    else if (bound.waiting > best.price + 1e-6) above.push(`seed ${seed}: ${bound.waiting} over ${best.price}`);
    if (seed % 3 > 0 && mostPairs_count > 1) shares.push((bound?.waiting ?? 0) / best.price);
  }
  expect(above).toEqual([]);
  // Tiny programmes have trips that no crew repeats; what stays is goods, carriers and learning, which it does not know.
  expect(shareOf(shares, 0.5)).toBeGreaterThan(0.8);
  expect(shareOf(shares, 0.9)).toBeGreaterThan(0.99);
});

function roundsOf(rounds_count: number) {
  let done = 0;
  return { left: () => 1 - done / rounds_count, report: () => done++, stopped: () => false };
}
