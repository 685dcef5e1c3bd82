import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoProgramme } from '@eavewell/demo';
import {
  allSizes,
  dayByDay,
  judgedRules,
  type ReadyProgramme,
  readyProgramme,
  type SiteFacts,
  seriesOf,
} from '@eavewell/engine';
import { readProgramme, writeProgramme } from '@eavewell/formats';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const besides = (critical: number, judged: number) => {
  const step = 1e-6 * Math.max(critical, judged);
  return [Math.max(0, critical - step), critical + step];
};

describe('every tank size at once on the demo programme', () => {
  let folder: string;
  let sites: readonly SiteFacts[];
  let ready: ReadyProgramme;
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'eavewell-twin-'));
    await writeProgramme(join(folder, 'demo'), demoProgramme({ sites: 60, seed: 1, clean: false }));
    const { facts } = await readProgramme(join(folder, 'demo'));
    sites = facts.sites;
    ready = readyProgramme(facts);
  });
  afterAll(() => rm(folder, { recursive: true }));

  it('agrees with the plain run a millionth beside 40 critical volumes of every site, in both orders', () => {
    let compared = 0;
    for (const site of sites) {
      const [series] = seriesOf(site, ready);
      if (!series) continue;
      // Where only households were counted, any number of people will do: both ways are asked the same.
      const people = site.people ?? 50;
      const days = series.inflow_L.length;
      const balance = {
        inflow_L: series.inflow_L,
        judged_L: new Float64Array(days).fill(people * 7.5),
        other_L: new Float64Array(days).fill(people * 5),
      };
      for (const order of ['drawFirst', 'ybs'] as const) {
        const rules = { ...judgedRules, order };
        const { critical_L } = allSizes(balance, rules);
        const finite = [...new Set(critical_L)].filter((c) => c > 0 && Number.isFinite(c)).sort((a, b) => a - b);
        const step = Math.max(1, Math.floor(finite.length / 20));
        for (let i = 0; i < finite.length; i += step)
          // A millionth of the volume or of the day's demand, whichever is more: litres count as met to 1e-9 of the demand.
          for (const volume of besides(finite[i]!, balance.judged_L[0]!)) {
            const { dry } = dayByDay(balance, volume, rules);
            const differs = critical_L.findIndex((critical, day) => critical > volume !== (dry[day] === 1));
            if (differs >= 0) expect.fail(`${site.siteId}, ${order}, ${volume} L, day ${differs}`);
            compared += days;
          }
      }
    }
    expect(compared).toBeGreaterThan(10_000_000);
  });
});
