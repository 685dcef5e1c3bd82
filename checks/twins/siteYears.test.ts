import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoProgramme } from '@eavewell/demo';
import { designSites, readyProgramme } from '@eavewell/engine';
import { readProgramme, writeProgramme } from '@eavewell/formats';
import { siteYears } from '@eavewell/report';
import { afterAll, expect, it } from 'vitest';

// The years that are kept for the page of a whole programme, against what the finding of each site counts.

const room = await mkdtemp(join(tmpdir(), 'eavewell-years-'));
await writeProgramme(join(room, 'demo'), demoProgramme({ sites: 60 }));
const { facts } = await readProgramme(join(room, 'demo'));
afterAll(() => rm(room, { recursive: true }));

it('the good years that can be counted from them are those the finding counts, and so are the judged ones', () => {
  let [ofOne, ofSeveral, onMadeRain] = [0, 0, 0];
  for (const design of designSites(facts.sites, readyProgramme(facts))) {
    const years = siteYears(design);
    if (years === null) {
      expect(design.storages).toEqual([]);
      continue;
    }
    const { storages, target } = design;
    const judged = years.longestRun_days.filter((days) => days !== null);
    const good = judged.filter((days) => days <= years.limit_days).length;
    expect(years.limit_days).toBe(target.longestDryRun_days);
    expect(years.dryDays.length).toBe(years.longestRun_days.length);
    for (const { judgedYears } of storages) expect(judged.length).toBe(judgedYears);
    if (storages.length === 1) {
      expect(good).toBe(storages[0]!.goodYears);
      ofOne++;
    } else {
      expect(good).toBeLessThanOrEqual(Math.min(...storages.map(({ goodYears }) => goodYears)));
      ofSeveral++;
    }
    if (years.isMade) onMadeRain++;
    expect(years.isMade).toBe(years.firstYear < 1000);
  }
  expect(ofOne).toBeGreaterThan(20);
  expect(ofSeveral).toBeGreaterThan(0);
  expect(onMadeRain).toBeGreaterThan(0);
});
