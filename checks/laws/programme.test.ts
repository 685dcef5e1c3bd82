import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoProgramme } from '@eavewell/demo';
import { designSites, type ProgrammeFacts, readyProgramme, type SiteDesign, type SiteFacts } from '@eavewell/engine';
import { readProgramme, writeProgramme } from '@eavewell/formats';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

let folder: string;
let facts: ProgrammeFacts;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'eavewell-laws-'));
  await writeProgramme(join(folder, 'a'), demoProgramme({ sites: 60, seed: 3, clean: false }));
  await writeProgramme(join(folder, 'b'), demoProgramme({ sites: 60, seed: 3, clean: false }));
  facts = (await readProgramme(join(folder, 'a'))).facts;
});
afterAll(() => rm(folder, { recursive: true }));

function designs(sites: readonly SiteFacts[]): Map<string, SiteDesign> {
  return new Map([...designSites(sites, readyProgramme(facts))].map((design) => [design.siteId, design]));
}

describe('a programme', () => {
  it('the order of sites, and which others there are, change no design', () => {
    const all = designs(facts.sites);
    const backwards = designs([...facts.sites].reverse());
    expect(all.size).toBe(60);
    for (const [siteId, design] of all) expect(JSON.stringify(backwards.get(siteId))).toBe(JSON.stringify(design));
    for (const site of facts.sites.slice(10, 14))
      expect(JSON.stringify(designs([site]).get(site.siteId))).toBe(JSON.stringify(all.get(site.siteId)));
  });

  it('the same seed gives the same bytes, in the folder and in the design', async () => {
    const names = (await readdir(join(folder, 'a'), { recursive: true, withFileTypes: true })).filter((f) =>
      f.isFile(),
    );
    expect(names.length).toBeGreaterThan(8);
    for (const file of names) {
      const path = join(file.parentPath, file.name);
      expect(await readFile(path.replace(join(folder, 'a'), join(folder, 'b')), 'utf8')).toBe(
        await readFile(path, 'utf8'),
      );
    }
    const again = (await readProgramme(join(folder, 'b'))).facts;
    expect(JSON.stringify([...designSites(again.sites, readyProgramme(again))])).toBe(
      JSON.stringify([...designSites(facts.sites, readyProgramme(facts))]),
    );
  });

  it('more roof or a larger tank never leaves a site with more dry days or fewer good years', () => {
    const before = designs(facts.sites);
    const roof = (site: SiteFacts): SiteFacts => ({
      ...site,
      // A first flush in mm, as the law asks; a chamber of fixed litres would be a shallower flush on a larger roof.
      roofs: site.roofs.map((r) => ({
        ...r,
        diverter: null,
        length_m: r.length_m && r.length_m * 2,
        roofPlanArea_m2: r.roofPlanArea_m2 && r.roofPlanArea_m2 * 2,
      })),
    });
    const plain = designs(
      facts.sites.map((site) => ({ ...site, roofs: site.roofs.map((r) => ({ ...r, diverter: null })) })),
    );
    const tank = (site: SiteFacts): SiteFacts => ({
      ...site,
      tanks: site.tanks.map((t) => ({
        ...t,
        diameter_m: t.diameter_m && t.diameter_m * 1.5,
        nominal_L: t.nominal_L && t.nominal_L * 2.25,
        partVolume_L: t.partVolume_L && t.partVolume_L * 2.25,
      })),
    });
    let compared = 0;
    for (const [base, more] of [
      [plain, designs(facts.sites.map(roof))],
      [before, designs(facts.sites.map(tank))],
    ] as const)
      for (const [siteId, { storages }] of base) {
        const [storage] = storages;
        const [larger] = more.get(siteId)!.storages;
        if (!storage || !larger) continue;
        compared++;
        expect(larger.dryDays_per_year).toBeLessThanOrEqual(storage.dryDays_per_year);
        expect(larger.goodYears).toBeGreaterThanOrEqual(storage.goodYears);
      }
    expect(compared).toBeGreaterThan(80);
  });
});
