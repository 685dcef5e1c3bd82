// Makes the plans that the demo keeps: `node setup/demoPlans.mjs`, after a build. It searches for minutes, so what it finds is kept as data.
import { writeFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoProgramme } from '@eavewell/demo';
import {
  budgetOfTries,
  planRollout,
  readIsoDay,
  readyKit,
  readyProgramme,
  readyRollout,
  rolloutSites,
} from '@eavewell/engine';
import { readProgramme, writeProgramme } from '@eavewell/formats';

/** The first day of the demo's rollout; the plan beside has no crew at the shed from a day of it on. */
const firstDay = readIsoDay('2027-01-04') ?? 0;
const [begins_days, shedUntil_days] = [26, 40];
/** Trips of each crew that have left on the demo's own day. */
const left_count = { north: 2, shed: 2 };
/** Trips that wait for the next dry season are left out: on another day in the year they would meet it otherwise. */
const mostLeaves_days = 200;
const tries_count = { inForce: 20_000, beside: 6000 };

const folder = await mkdtemp(join(tmpdir(), 'eavewell-demo-plans-'));
try {
  await writeProgramme(folder, demoProgramme({ sites: 60, seed: 1 }));
  const { facts } = await readProgramme(folder);
  const asked = { today: firstDay };
  const sites = [...rolloutSites(facts.sites, readyProgramme(facts, asked), readyKit(facts, firstDay))];
  const { problem } = readyRollout(facts, sites, asked);
  const inForce = found(problem, tries_count.inForce, 1);
  // Those that have left go as in the plan in force (demo/src/rolloutPlans.ts).
  const gone = Object.entries(left_count).flatMap(([crew, count]) =>
    inForce
      .filter(({ crewId }) => crewId === crew)
      .slice(0, count)
      .flatMap(({ sites: ids }) => ids),
  );
  const left = {
    ...asked,
    siteIds: new Set(facts.sites.map(({ siteId }) => siteId).filter((id) => !gone.includes(id))),
  };
  const { problem: rest } = readyRollout(facts, sites, { ...left, firstDay: firstDay + begins_days });
  const crews = rest.crews.map((crew) =>
    crew.crewId === 'shed'
      ? { ...crew, works: crew.works.map((one, day) => (day < shedUntil_days - begins_days ? one : 0)) }
      : crew,
  );
  const all = found({ ...rest, crews }, tries_count.beside, 1, begins_days);
  const beside = all.filter(({ leaves }) => leaves < mostLeaves_days);
  const text = `import type { DemoTrip } from './draft.ts';

/** Made by setup/demoPlans.mjs: days are counted from the first day of the rollout of the demo. */
export const tripsInForce: readonly DemoTrip[] = ${JSON.stringify(inForce)};

/** The same for the sites that are left, without a crew at the shed in the end; no day is kept of it. A site that nobody reaches before its way shuts for a season is in none. */
export const tripsBeside: readonly DemoTrip[] = ${JSON.stringify(beside)};
`;
  writeFileSync('demo/src/rolloutPlansFound.ts', text);
} finally {
  await rm(folder, { recursive: true });
}

/**
 * The best plan of so many tries, trip by trip in the order of crews.
 *
 * @param {import('@eavewell/engine').RolloutProblem} problem
 * @param {number} tries
 * @param {number} seed
 * @param {number} from_days
 */
function found(problem, tries, seed, from_days = 0) {
  const { outcome } = planRollout(problem, { budget: budgetOfTries(tries), seed });
  return outcome.trips.flatMap((trips, crew) =>
    trips.map(({ leaves, nights_count, waitsFor, stops }) => ({
      ...{ crewId: problem.crews[crew]?.crewId ?? '', leaves, back: leaves + nights_count },
      // What waited for goods goes no earlier where they are there before: its sites are no readier.
      notBefore: waitsFor === 'stock' ? from_days + leaves : null,
      sites: stops.map(({ job }) => problem.jobs[job]?.siteId ?? ''),
      handOvers: stops.map(({ handOverDay }) => handOverDay),
    })),
  );
}
