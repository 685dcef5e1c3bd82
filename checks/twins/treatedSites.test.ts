import { demoProgramme } from '@eavewell/demo';
import { filesOfProgramme, readProgramme } from '@eavewell/formats';
import { expect, it } from 'vitest';
import { inFolder } from '../faults/folder.ts';
import { treated } from './treatedSites.ts';

it('the made-up treatment is read whole and without a fault', async () => {
  const { planted: _, gauges_count: _g, rawFiles: _r, ...made } = demoProgramme({ sites: 12, clean: true });
  const files = filesOfProgramme({ ...made, tables: { ...made.tables, ...treated(made.tables) } });
  await inFolder(Object.fromEntries(files), async (folder) => {
    const { facts, problems } = await readProgramme(folder);
    const named = /treatment|cartridge|flowRead|pressureT|rawW|barrier|waterT|portion|inspect|chlorin|parts/;
    expect(problems.filter(({ place }) => named.test(place.file ?? ''))).toEqual([]);
    const { sites } = facts;
    const count = (of: (site: (typeof sites)[number]) => number) => sites.reduce((sum, site) => sum + of(site), 0);
    expect(count(({ treatment }) => treatment.units.length)).toBe(6);
    expect(count(({ treatment }) => treatment.units.filter(({ figures }) => figures !== null).length)).toBe(6);
    expect(count(({ treatment }) => treatment.cartridges.length)).toBe(6);
    expect(count(({ treatment }) => treatment.flowReadings.length)).toBe(12);
    expect(count(({ safety }) => safety.tests.flatMap(({ portions }) => portions).length)).toBe(12);
    expect(count(({ safety }) => safety.rawWater.length)).toBe(36);
    expect(count(({ safety }) => safety.inspections.length)).toBe(6);
    expect(count(({ safety }) => Number(safety.chlorination !== null))).toBe(1);
  });
});
