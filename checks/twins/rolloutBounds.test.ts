import { loadSolveLinear } from '@eavewell/linear';
import { expect, it } from 'vitest';
import { waitingBounds } from '../../packages/engine/src/programme/rollout/index.ts';
import { bestPlan } from './everyPlan.ts';
import { madeRollout } from './madeRollouts.ts';

const solve = await loadSolveLinear();

it('no bound is above the waiting of the best of all plans: 500 tiny programmes', () => {
  let compared = 0;
  let seen = 0;
  const above: string[] = [];
  const shares: number[] = [];
  for (let seed = 1; compared < 500; seed++) {
    seen++;
    const jobs = 1 + (seed % 4);
    const crews = 1 + (seed % 2);
    const trouble_fraction = [0, 0.1, 0.2, 0.35][seed % 4]!;
    const kind = { jobs: [jobs, jobs], crews: [crews, crews], horizon_days: [60, 90], trouble_fraction } as const;
    const problem = madeRollout(seed, kind);
    const best = bestPlan(problem);
    if (best === null) continue;
    compared++;
    const bounds = waitingBounds(problem, { solve, mostColumns: 2000 });
    for (const { name, waiting } of bounds?.all ?? [])
      if (waiting > best.price + 1e-6) above.push(`seed ${seed}: ${name} ${waiting} over ${best.price}`);
    shares.push((bounds?.best.waiting ?? 0) / best.price);
    // What can be done has a bound.
    if (bounds === null) above.push(`seed ${seed}: no bound`);
  }
  expect(above).toEqual([]);
  // A bound that is always far below would be true and useless: where nothing but the ways holds up, it comes near.
  shares.sort((a, b) => a - b);
  expect(shares[Math.floor(shares.length * 0.9)]).toBeGreaterThan(0.9);
  expect(compared / seen).toBeGreaterThan(0.2);
});
