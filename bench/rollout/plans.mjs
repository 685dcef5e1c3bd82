import { parseArgs } from 'node:util';
import { evaluatePlan, planRollout } from '../../packages/engine/dist/programme/rollout/index.js';
import { baselines } from './baselines.mjs';
import { madeProgramme } from './made.mjs';

/**
 * Plans of made programmes (rules in bench/README.md): `node bench/rollout/plans.mjs [--sites 300] [--crews 6] [--kind free|bound]
 * [--seconds 2,60] [--seeds 5] [--searchSeeds 1] [--baselines]`, after `npm run build`. Seconds are CPU of this process. Waiting is told against the
 * plan of the most seconds.
 */
const { values } = parseArgs({
  options: {
    ...{ sites: { type: 'string', default: '300' }, crews: { type: 'string', default: '6' } },
    ...{ kind: { type: 'string', default: 'free' }, seconds: { type: 'string', default: '2,60' } },
    ...{ seeds: { type: 'string', default: '5' }, searchSeeds: { type: 'string', default: '1' } },
    baselines: { type: 'boolean', default: false },
  },
});
const seconds = values.seconds.split(',').map(Number);
const size = { sites: Number(values.sites), crews: Number(values.crews), kind: values.kind };

for (let seed = 1; seed <= Number(values.seeds); seed++) {
  const problem = madeProgramme({ ...size, seed });
  const runs = seconds.map((most) =>
    Array.from({ length: Number(values.searchSeeds) }, (_, at) => planned(problem, most, seed + 100 * at)),
  );
  const best = Math.min(...runs.at(-1).map(({ waiting }) => waiting));
  const over = (waiting) => `${((100 * (waiting - best)) / best).toFixed(2)} %`;
  console.log(
    `${size.kind}, ${size.sites} sites, ${size.crews} crews, seed ${seed}: ${best} after ${seconds.at(-1)} s`,
  );
  runs.forEach((some, at) => {
    const told = some.map(({ waiting, tries, broken }) => `+${over(waiting)} (${tries} tries, ${broken} broken)`);
    console.log(`  ${seconds[at]} s: ${told.join(', ')}`);
  });
  if (values.baselines)
    for (const [name, plan] of Object.entries(baselines)) {
      const { waiting, broken } = evaluatePlan(problem, plan(problem));
      console.log(`  ${name}: +${over(waiting)}, ${broken.length} broken`);
    }
}
console.log(`most memory ${Math.round(process.resourceUsage().maxRSS / 1024)} MB`);

function planned(problem, most, seed) {
  const from = process.cpuUsage();
  const used = () => {
    const { user, system } = process.cpuUsage(from);
    return (user + system) / 1e6;
  };
  const budget = { left: () => 1 - used() / most, report: () => {}, stopped: () => false };
  const { outcome, tries_count } = planRollout(problem, { budget, seed });
  return { waiting: outcome.waiting, tries: tries_count, broken: outcome.broken.length };
}
