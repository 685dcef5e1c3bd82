import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoProgramme } from '@eavewell/demo';
import {
  designSites,
  type PresencePeriod,
  type ProgrammeFacts,
  readyProgramme,
  type SiteDesign,
  type SiteFacts,
} from '@eavewell/engine';
import { readProgramme, writeProgramme } from '@eavewell/formats';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

let folder: string;
let facts: ProgrammeFacts;
let before: ReadonlyMap<string, SiteDesign>;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'eavewell-people-'));
  await writeProgramme(folder, demoProgramme({ sites: 60, seed: 5, clean: true }), { overwrite: true });
  const read = (await readProgramme(folder)).facts;
  // Everyone always there, no other water, one body of water that is drawn from freely: what the laws change is changed alone.
  const plain = { presence: null, secondSource: null, ration: null, growthFraction_per_year: null };
  const sites = read.sites.filter(({ people, tanks }) => people !== null && tanks[0]!.peopleFraction === null);
  // A second source whose water nobody looked at leaves the cup unknown: that is a law of its own, not one of people.
  const settings = { ...read.settings, judgeSafety: 'never' as const };
  facts = { ...read, settings, sites: sites.map((site) => ({ ...site, ...plain })) };
  before = designsOf(facts.sites);
});
afterAll(() => rm(folder, { recursive: true }));

function designsOf(sites: readonly SiteFacts[]): ReadonlyMap<string, SiteDesign> {
  return new Map([...designSites(sites, readyProgramme(facts))].map((design) => [design.siteId, design]));
}

function changed(change: (site: SiteFacts) => Partial<SiteFacts>): ReadonlyMap<string, SiteDesign> {
  return designsOf(facts.sites.map((site) => ({ ...site, ...change(site) })));
}

/** No more dry days, no longer run in any year, no fewer good years; gives at how many sites it is better. */
function neverWorse(after: ReadonlyMap<string, SiteDesign>): number {
  let better = 0;
  expect(after.size).toBe(before.size);
  for (const [
    siteId,
    {
      storages: [storage],
    },
  ] of after) {
    const was = before.get(siteId)!.storages[0]!;
    expect(storage!.dryDays_per_year, siteId).toBeLessThanOrEqual(was.dryDays_per_year);
    expect(storage!.goodYears, siteId).toBeGreaterThanOrEqual(was.goodYears);
    storage!.years.forEach((year, i) => {
      expect(year.longestRun_days, siteId).toBeLessThanOrEqual(was.years[i]!.longestRun_days);
    });
    expect(storage!.tankForRuns_L ?? Infinity).toBeLessThanOrEqual(was.tankForRuns_L ?? Infinity);
    if (storage!.dryDays_per_year < was.dryDays_per_year) better++;
  }
  return better;
}

const away = (from_dayOfYear: number, to_dayOfYear: number, presentFraction: number): PresencePeriod => ({
  from_dayOfYear,
  to_dayOfYear,
  presentFraction,
  reason: null,
});

describe('people', () => {
  it('fewer of them never make a site worse, nor its verdict', () => {
    const after = changed((site) => ({ people: Math.ceil(site.people! * 0.7) }));
    expect(neverWorse(after)).toBeGreaterThan(10);
    const order = ['short', 'tight', 'holds'];
    for (const [siteId, { verdict }] of after)
      expect(order.indexOf(verdict)).toBeGreaterThanOrEqual(order.indexOf(before.get(siteId)!.verdict));
  });

  it('being away never makes a site worse', () => {
    const periods = [away(350, 20, 0), away(150, 220, 0.5), away(230, 231, 1)];
    expect(neverWorse(changed(() => ({ presence: { calendarId: 'C', periods } })))).toBeGreaterThan(10);
  });

  it('having a second source never makes a site worse, nor its verdict', () => {
    const secondSource = {
      secondSourceId: 'R',
      name: 'R',
      kind: 'spring',
      months: [7, 8, 9, 10],
      turbidity_NTU: null,
    } as const;
    const after = changed(() => ({ secondSource }));
    expect(neverWorse(after)).toBeGreaterThan(5);
    const order = ['short', 'tight', 'holds'];
    for (const [siteId, { verdict }] of after)
      expect(order.indexOf(verdict)).toBeGreaterThanOrEqual(order.indexOf(before.get(siteId)!.verdict));
  });

  it('guests never make a site better', () => {
    const periods = [away(200, 206, 3), away(340, 10, 1.5)];
    const after = changed(() => ({ presence: { calendarId: 'C', periods } }));
    let worse = 0;
    for (const [
      siteId,
      {
        storages: [storage],
      },
    ] of after) {
      const was = before.get(siteId)!.storages[0]!;
      expect(storage!.dryDays_per_year).toBeGreaterThanOrEqual(was.dryDays_per_year);
      expect(storage!.goodYears).toBeLessThanOrEqual(was.goodYears);
      if (storage!.dryDays_per_year > was.dryDays_per_year) worse++;
    }
    expect(worse).toBeGreaterThan(10);
  });

  it('a calendar on which all are always there changes nothing, however it is cut up', () => {
    const periods = [away(300, 299, 1)];
    const halves = [away(1, 100, 1), away(101, 365, 1)];
    for (const calendar of [periods, halves])
      for (const [siteId, { storages, verdict }] of changed(() => ({
        presence: { calendarId: 'C', periods: calendar },
      }))) {
        expect(storages).toEqual(before.get(siteId)!.storages);
        expect(verdict).toBe(before.get(siteId)!.verdict);
      }
  });

  it('purposes that share out the months of one purpose ask for the same', () => {
    const months = [1, 2, 3, 10, 11, 12];
    const rest = [4, 5, 6, 7, 8, 9];
    const split = changed((site) => ({
      demand: site.demand.flatMap((one) => [
        { ...one, months },
        { ...one, purpose: `${one.purpose}-2`, months: rest },
      ]),
    }));
    for (const [siteId, { storages }] of split) expect(storages).toEqual(before.get(siteId)!.storages);
  });
});
