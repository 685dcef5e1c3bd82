import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoProgramme } from '@eavewell/demo';
import {
  asInstalled,
  costAtSite,
  costOfProgramme,
  kitAtSite,
  kitsBought,
  kitsCarried,
  loadsBy,
  piecesOfKit,
  readIsoDay,
  readyKit,
  readyProgramme,
  setsOf,
  wearOf,
} from '@eavewell/engine';
import { readProgramme, writeProgramme } from '@eavewell/formats';

/**
 * Kits, loads of every carrier and costs of a large programme, every site still to be built: seconds of CPU of each and the most memory. By hand:
 * `node bench/kit.mjs [sites]`, after `npm run build`.
 */
const count = Number(process.argv[2] ?? 1500);
if (!(Number.isInteger(count) && count > 0)) throw new Error('how many sites? a whole number above 0');

const folder = await mkdtemp(join(tmpdir(), 'eavewell-bench-'));
try {
  const programme = join(folder, 'programme');
  await writeProgramme(programme, demoProgramme({ sites: count, seed: 1, clean: true }));
  const { facts: read } = await readProgramme(programme);
  const facts = { ...read, sites: read.sites.map((site) => ({ ...site, handOverDay: null })) };
  const today = readIsoDay('2026-03-02');
  const ready = readyKit(facts, today);

  const kits = timed('kits', () => facts.sites.map((site) => kitAtSite(site, ready)));
  timed('what is bought', () => kitsBought(kits, ready, today + 200));
  const pieces = kits.map((kit) => piecesOfKit(kit, ready));
  for (const carrier of facts.kit.carriers) {
    const all = timed(`loads, ${carrier.name}`, () => pieces.map((own) => loadsBy(own, carrier, ready)));
    const loads = all.reduce((sum, one) => sum + one.loads.length, 0);
    console.log(
      `  ${loads} loads; the fewest there can be at ${all.filter(({ isLeast }) => isLeast).length} of ${count} sites`,
    );
  }
  timed('whole kits in containers', () => pieces.map((own) => kitsCarried(own, ready)));
  const rain = timed('rain made ready', () => readyProgramme(facts, { today }));
  const sets = timed('when cartridges are due', () =>
    facts.sites.map((site) => {
      const installed = asInstalled(site, today);
      return setsOf(installed, wearOf(installed, rain), ready);
    }),
  );
  timed('costs and their sum', () => costOfProgramme(costs(facts.sites, sets, ready), ready));
  console.log(`most memory: ${Math.round(process.resourceUsage().maxRSS / 1024)} MiB`);
} finally {
  await rm(folder, { recursive: true });
}

/** One after the other, so that no two stand in memory. */
function* costs(sites, sets, ready) {
  for (const [at, site] of sites.entries()) yield costAtSite(site, sets[at], ready);
}

function timed(what, work) {
  const before = process.cpuUsage();
  const value = work();
  const { user, system } = process.cpuUsage(before);
  console.log(`${what}: ${((user + system) / 1e6).toFixed(1)} s of CPU`);
  return value;
}
