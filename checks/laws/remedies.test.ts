import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoProgramme } from '@eavewell/demo';
import {
  changedSite,
  compareRemedies,
  designSite,
  designSites,
  isFitting,
  kindsOf,
  noSafety,
  noTreatment,
  type PartFacts,
  type ProgrammeFacts,
  pathogens,
  rainOfSite,
  readyProgramme,
  remediesOf,
  type SiteFacts,
  type SiteRemedies,
  stations,
  unmeasuredPart,
  worstVerdict,
} from '@eavewell/engine';
import { readProgramme, writeProgramme } from '@eavewell/formats';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { treated } from '../twins/treatedSites.ts';

let folder: string;
/** What people are multiplied by [ratio]. */
const crowded = 1.2;
let facts: ProgrammeFacts;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'eavewell-laws-'));
  await writeProgramme(folder, demoProgramme({ sites: 60, seed: 3, clean: true }), { overwrite: true });
  const read = (await readProgramme(folder)).facts;
  // More people than the demo has, all of the design year, so that many sites are short.
  const sites = read.sites.filter(({ people, growthFraction_per_year }) => people !== null && !growthFraction_per_year);
  facts = { ...read, sites: sites.map((site) => ({ ...site, people: Math.ceil(site.people! * crowded) })) };
});
afterAll(() => rm(folder, { recursive: true }));

/** What was worked out before, of the same facts. */
const known = new WeakMap<ProgrammeFacts, ReadonlyMap<string, SiteRemedies>>();

function remediesBySite(programme: ProgrammeFacts): ReadonlyMap<string, SiteRemedies> {
  const before = known.get(programme);
  if (before) return before;
  const ready = readyProgramme(programme);
  const found = new Map<string, SiteRemedies>();
  let at = 0;
  for (const design of designSites(programme.sites, ready)) {
    const remedies = remediesOf(programme.sites[at++]!, ready, design);
    if (remedies) found.set(design.siteId, remedies);
  }
  known.set(programme, found);
  return found;
}

/** Units, samples and raw water at every second site, more people than they are made for. */
async function withTreatment(): Promise<ProgrammeFacts> {
  const { planted: _, gauges_count: _g, rawFiles: _r, ...made } = demoProgramme({ sites: 24, seed: 3, clean: true });
  const room = await mkdtemp(join(tmpdir(), 'eavewell-laws-'));
  try {
    await writeProgramme(room, { ...made, tables: { ...made.tables, ...treated(made.tables) } }, { overwrite: true });
    const read = (await readProgramme(room)).facts;
    const sites = read.sites.filter(({ people, growthFraction_per_year: growth }) => people !== null && !growth);
    return { ...read, sites: sites.map((site) => ({ ...site, people: site.people! * 3 })) };
  } finally {
    await rm(room, { recursive: true });
  }
}

let inStorms: ProgrammeFacts | undefined;

/** The same in storms nearly twice as hard, so that gutters spill; fewer sites, since each takes its time. */
function stormy(): ProgrammeFacts {
  if (inStorms) return inStorms;
  const harder = (depth: number | null) => depth && depth * 1.8;
  const gauges = facts.gauges.map((gauge) => ({
    ...gauge,
    storms: gauge.storms.map((storm) => ({
      ...{ ...storm, intensity_mm_per_h: storm.intensity_mm_per_h * 1.8 },
      ...{ low_mm_per_h: harder(storm.low_mm_per_h), high_mm_per_h: harder(storm.high_mm_per_h) },
    })),
  }));
  inStorms = { ...facts, gauges, sites: facts.sites.slice(0, 24) };
  return inStorms;
}

/** Judges every remedy of a programme again as a site of its own; gives the fittings and the stations left out that were seen. */
function judgedAgain(hard: ProgrammeFacts): ReadonlySet<string> {
  const ready = readyProgramme(hard);
  const seen = new Set<string>();
  for (const [siteId, { remedies, besides, leaveIt }] of remediesBySite(hard)) {
    const site = hard.sites.find((one) => one.siteId === siteId)!;
    const { stations: now } = designSite(site, rainOfSite(site, ready), ready);
    expect(leaveIt === null, siteId).toBe(now.storage === 'holds');
    for (const station of besides) expect(['short', 'tight', 'unknown']).toContain(now[station]);
    for (const remedy of remedies) {
      const after = changedSite(site, remedy.changes, hard.settings)!.site;
      const design = designSite(after, rainOfSite(after, ready), ready);
      const judged = stations.filter((station) => !remedy.besides.includes(station));
      const told = `${siteId} ${kindsOf(remedy)}`;
      expect(worstVerdict(judged.map((station) => design.stations[station])), told).toBe(remedy.verdict);
      for (const station of remedy.besides) expect(design.stations[station], told).not.toBe('holds');
      expect(remedy.standGate, told).toBe(design.standGate);
      for (const change of remedy.changes) if (isFitting(change)) seen.add(change.kind);
      for (const station of remedy.besides) seen.add(station);
      if (design.stations.cup !== now.cup) seen.add('the cup moved');
    }
  }
  return seen;
}

describe('remedies', () => {
  it('the order of sites, parts and prices changes none', () => {
    const plain = remediesBySite(facts);
    expect(plain.size).toBeGreaterThan(5);
    const turned = remediesBySite({
      ...facts,
      sites: [...facts.sites].reverse(),
      parts: [...facts.parts].reverse(),
      prices: [...facts.prices].reverse(),
    });
    expect([...turned].sort()).toEqual([...plain].sort());
  });

  it('are in strict order, and the design need not be given', () => {
    const ready = readyProgramme(facts);
    for (const [siteId, found] of remediesBySite(facts)) {
      for (const [index, remedy] of found.remedies.slice(1).entries())
        expect(compareRemedies(found.remedies[index]!, remedy)).toBeLessThan(0);
      expect(remediesOf(facts.sites.find((site) => site.siteId === siteId)!, ready)).toEqual(found);
    }
  });

  it('one more tank in the catalogue never makes the smallest change a worse one', () => {
    const plain = remediesBySite(facts);
    const parts = [...facts.parts, { ...unmeasuredPart, partId: 'odd', kind: 'tank', name: 'Odd', volume_L: 13_300 }];
    const prices = [...facts.prices, { ...facts.prices[0]!, partId: 'odd', amount: 900 }];
    let better = 0;
    for (const [siteId, { remedies }] of remediesBySite({ ...facts, parts, prices })) {
      const [first] = plain.get(siteId)!.remedies;
      if (first === undefined) continue;
      expect(compareRemedies(remedies[0]!, first)).toBeLessThanOrEqual(0);
      if (compareRemedies(remedies[0]!, first) < 0) better++;
    }
    expect(better).toBeGreaterThan(0);
  });

  it('the verdict of each is the worst of its changed site, the stations it leaves out apart', () => {
    const seen = judgedAgain(stormy());
    for (const what of ['outlet', 'downpipe']) expect(seen).toContain(what);
  });

  it('the same where treatment and what is drunk are judged', async () => {
    const seen = judgedAgain(await withTreatment());
    for (const station of ['treatmentUnit', 'cup']) expect(seen).toContain(station);
  });

  it('the same where what is drunk hangs on the days a tank leaves to a second source, in use or declared', async () => {
    const made = await withTreatment();
    const pond = {
      secondSourceId: 'pond',
      name: 'Pond',
      kind: 'pond',
      months: [...Array(12).keys()].map((m) => m + 1),
    };
    const source = { ...pond, turbidity_NTU: null } as NonNullable<SiteFacts['secondSource']>;
    const all = { bacteria_log10: 4, viruses_log10: 4, protozoa_log10: 4 };
    const reductions = { ...all, evidence: 'credited', source: 'An invented authority' } as const;
    const rawWaterOf = (pond_per_L: number) =>
      [null, 'pond'].flatMap((secondSourceId) =>
        pathogens.map((pathogen) => {
          const typical_per_L = secondSourceId === null ? 0.01 : pond_per_L;
          return {
            secondSourceId,
            pathogen,
            typical_per_L,
            low_per_L: null,
            high_per_L: typical_per_L * 2,
            source: 'x',
          };
        }),
      );
    const barriers = [{ barrierId: 'B', kind: 'other', reductions, used_fraction: null }] as const;
    const tubes = {
      kind: 'tubes',
      volume_mL: 100,
      portions_count: 1,
      positive_count: 0,
      colonies_count: null,
    } as const;
    const portions = [{ ...tubes, uncountable_count: 0, uncountableFrom_count: null }];
    const clean = {
      ...{
        testId: 'W',
        takenOn: 30_000,
        point: 'tap' as const,
        portions,
        turbidity_NTU: null,
        freeChlorine_mg_per_L: null,
      },
      ...{ pH: null, waterTemperature_C: null, laboratory: null },
    } as const;
    const said = { skipping_fraction: 0, daysOff_per_year: 0, tests: [clean] };

    for (const isInUse of [true, false]) {
      const near = isInUse ? { secondSource: source } : { secondSource: null, nearSecondSource: source };
      // One that is declared is drunk from on so many days that only mild water leaves the site mended.
      const safety = { ...noSafety, rawWater: rawWaterOf(isInUse ? 20 : 2), barriers, ...said };
      const some = made.sites.slice(0, 14);
      const sites = some.map((site) => ({ ...site, ...near, safety, treatment: noTreatment }));
      const seen = judgedAgain({
        ...{ ...made, sites },
        settings: { ...made.settings, healthTarget_DALY_per_person_per_year: 1e-5 },
      });
      expect(seen, `in use: ${isInUse}`).toContain('the cup moved');
    }
  });

  it('one more gutter, outlet, downpipe and overflow in the catalogue never make the smallest change a worse one', () => {
    const odd = (partId: string, kind: string, sizes: Partial<PartFacts>) => ({
      ...{ ...unmeasuredPart, partId, kind, name: partId, ...sizes },
    });
    const more = [
      odd('odd-gutter', 'gutter', { shape: 'halfRound', topWidth_mm: 190, depth_mm: 95, length_m: 3 }),
      odd('odd-outlet', 'outlet', { bore_mm: 95 }),
      odd('odd-downpipe', 'downpipe', { bore_mm: 95, length_m: 3.5 }),
      odd('odd-overflow', 'overflow', { bore_mm: 120 }),
      odd('odd-pipe', 'pipe', { bore_mm: 45, length_m: 5 }),
    ];
    const hard = stormy();
    const plain = remediesBySite(hard);
    for (const amount of [1, 400]) {
      const prices = more.map(({ partId }) => ({ ...facts.prices[0]!, partId, amount }));
      const richer = { ...hard, parts: [...hard.parts, ...more], prices: [...hard.prices, ...prices] };
      let fitted = 0;
      for (const [siteId, { remedies }] of remediesBySite(richer)) {
        const [first] = plain.get(siteId)!.remedies;
        if (first === undefined) continue;
        expect(compareRemedies(remedies[0]!, first), siteId).toBeLessThanOrEqual(0);
        if (first.changes.some(isFitting)) fitted++;
      }
      expect(fitted).toBeGreaterThan(0);
    }
  });

  it('a site carries the people it is said to, and not one more; half of them stay, or it is told beside', () => {
    // Catalogues without a tank, so that more sites are mended by another one only.
    // Every third has five times the people, so that more than half would have to go.
    const bare = {
      ...facts,
      parts: facts.parts.filter(({ kind }) => kind !== 'tank'),
      sites: facts.sites.map((site, index) =>
        index % 3 > 0 ? site : { ...site, people: site.people === null ? null : site.people * 5 },
      ),
    };
    const ready = readyProgramme(bare);
    const order = ['short', 'tight', 'holds'];
    let [split, beside] = [0, 0];
    for (const [siteId, { remedies, peopleCarried }] of remediesBySite(bare)) {
      const site = bare.sites.find((one) => one.siteId === siteId)!;
      // Stations that no number of people lifts are told beside: the water is what they are carried by.
      const verdictWith = (people: number) => [...designSites([{ ...site, people }], ready)][0]!.stations.storage;
      const told = remedies.flatMap(({ changes, verdict }) => {
        const [one] = changes;
        return changes.length === 1 && one?.kind === 'people' ? [{ ...one, verdict }] : [];
      });
      if (peopleCarried !== null) expect(told).toEqual([]);
      for (const { verdict, carried_people, others_people } of peopleCarried ? [peopleCarried] : told) {
        expect(carried_people + others_people).toBe(site.people);
        expect(order.indexOf(verdictWith(carried_people)), siteId).toBeGreaterThanOrEqual(order.indexOf(verdict));
        expect(order.indexOf(verdictWith(carried_people + 1)), siteId).toBeLessThan(order.indexOf(verdict));
        expect(carried_people >= others_people).toBe(peopleCarried === null);
      }
      if (peopleCarried !== null) beside++;
      split += told.length;
    }
    expect(split).toBeGreaterThan(2);
    expect(beside).toBeGreaterThan(0);
  });

  it('no cut goes under 2.5 L a person a day, and no first flush under that of the programme', () => {
    const thirsty = {
      ...facts,
      sites: facts.sites.map((site) => ({
        ...site,
        people: site.people! * 4,
        roofs: site.roofs.map((roof) => ({
          ...roof,
          diverter: {
            firstFlush_mm: 3,
            chamber_L: null,
            drainHole: 'open' as const,
            chamberBore_mm: null,
            drainHole_mm: null,
          },
        })),
      })),
    };
    const changes = [...remediesBySite(thirsty).values()].flatMap(({ remedies }) =>
      remedies.flatMap((remedy) => remedy.changes),
    );
    const litres = changes.flatMap((one) => (one.kind === 'litres' ? [one.judged_L_per_person_per_day] : []));
    const depths = changes.flatMap((one) => (one.kind === 'firstFlush' ? [one.firstFlush_mm] : []));
    expect(litres.length).toBeGreaterThan(10);
    expect(depths.length).toBeGreaterThan(0);
    expect(Math.min(...litres)).toBe(2.5);
    expect(Math.min(...depths)).toBeGreaterThanOrEqual(thirsty.settings.firstFlush_mm);
  });
});
