import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import {
  designSites,
  greatCircle_km,
  lineLength_km,
  type Problem,
  type ProgrammeFacts,
  readyProgramme,
  type SiteDesign,
  type Station,
} from '@eavewell/engine';
import { type ProgrammeTables, readProgramme, writeProgramme } from '@eavewell/formats';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demoProgramme } from './demoProgramme.ts';

const madeFolders: string[] = [];

async function written(programme: ProgrammeTables): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'demo-'));
  madeFolders.push(folder);
  await writeProgramme(folder, programme);
  return folder;
}

afterAll(async () => {
  for (const folder of madeFolders) await rm(folder, { recursive: true });
});

function designed(facts: ProgrammeFacts): { designs: SiteDesign[]; problems: Problem[] } {
  const ready = readyProgramme(facts);
  const designs = [...designSites(facts.sites, ready)];
  const ofGauges = [...ready.gauges.values()].flatMap(({ problems }) => problems);
  return { designs, problems: [...ofGauges, ...designs.flatMap(({ problems }) => problems)] };
}

function countBy(designs: readonly { readonly verdict: string }[]): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const { verdict } of designs) counts[verdict] = (counts[verdict] ?? 0) + 1;
  return counts;
}

const blockersOf = (problems: readonly Problem[]) => problems.filter(({ severity }) => severity === 'blocker');
const at = (file: string, row: number, column: string, code: string) => `${file} row ${row} ${column} ${code}`;
const placeOf = ({ place, code }: Problem) => at(place.file ?? '', place.row ?? 0, place.column ?? '', code);

async function bytesOf(folder: string): Promise<Record<string, string>> {
  const bytes: Record<string, string> = {};
  for (const entry of await readdir(folder, { recursive: true, withFileTypes: true })) {
    const path = join(entry.parentPath, entry.name);
    if (entry.isFile()) bytes[path.slice(folder.length)] = await readFile(path, 'utf8');
  }
  return bytes;
}

/** Planted faults that leave their station short, where the others leave it unknown. */
const shortBy = new Set(['head.tap_above', 'waterTests.all_positive']);

describe('sixty sites, seed 1', () => {
  const { planted, ...programme } = demoProgramme();
  const { tables } = programme;
  let read: Awaited<ReturnType<typeof readProgramme>>;
  let found: ReturnType<typeof designed>;
  beforeAll(async () => {
    read = await readProgramme(await written(programme));
    found = designed(read.facts);
  });

  test('the water of over half holds, over a third of those handed over hold in all, and every verdict is there', () => {
    const counts = countBy(found.designs);
    expect(found.designs).toHaveLength(60);
    const handedOver = new Set(tables.sites!.flatMap(({ siteId, handOverDay }) => (handOverDay ? [siteId] : [])));
    // No sample was taken yet where a site is to be fitted: what is drunk there is tight at best.
    const ofStation = (station: Station) =>
      countBy(
        found.designs.flatMap(({ siteId, stations }) =>
          station === 'cup' && !handedOver.has(siteId) ? [] : [{ verdict: stations[station] }],
        ),
      );
    expect(ofStation('storage')['holds']).toBeGreaterThanOrEqual(33);
    expect(ofStation('storage')['holds']).toBeLessThanOrEqual(45);
    const holding = found.designs.filter(({ verdict }) => verdict === 'holds');
    expect(holding.length).toBeGreaterThanOrEqual(handedOver.size / 3);
    expect(holding.every(({ siteId }) => handedOver.has(siteId))).toBe(true);
    // Where gutters, stands and pipes were measured, most do their work, and some of each do not.
    for (const [station, least] of [
      ['gutter', 2],
      ['stand', 2],
      ['tap', 1],
      ['treatmentUnit', 2],
      ['cup', 8],
    ] as const) {
      const { holds = 0, notJudged = 0, tight = 0, short = 0 } = ofStation(station);
      const sites = station === 'cup' ? handedOver.size : 60;
      expect(holds, station).toBeGreaterThanOrEqual((sites - notJudged) / 2);
      expect(tight + short, station).toBeGreaterThanOrEqual(least);
    }
    expect(ofStation('gutter')['short']).toBeGreaterThanOrEqual(2);
    expect(new Set(found.designs.map(({ standGate }) => standGate))).toEqual(new Set(['open', 'closed', 'notNeeded']));
    for (const verdict of ['tight', 'short', 'unknown']) expect(counts[verdict]).toBeGreaterThanOrEqual(2);
    const lacks = new Set(found.designs.map(({ storages }) => storages[0]?.lacks));
    expect(lacks).toEqual(new Set([null, undefined, 'tank', 'water']));
  });

  test('every planted fault is found where it stands', () => {
    expect(planted).toHaveLength(38);
    const codes = planted.map(({ code }) => code);
    expect(codes).toContain('link.periods_overlap');
    expect(codes).toContain('site.tank_shares_sum');
    const places = new Set(read.problems.map(placeOf));
    const ofRain = new Set(
      found.problems.map((problem) => placeOf({ ...problem, place: { ...problem.place, column: '' } })),
    );
    const ofSites = new Set(found.problems.map(({ place, code }) => `${place.siteId} ${code}`));
    for (const fault of planted) {
      const { file, row, column, code, siteId } = fault;
      // What leaves no site in doubt is told once for all its samples.
      if (code === 'waterTests.before_handover') expect(found.problems.map((one) => one.code)).toContain(code);
      else if (code.startsWith('rain.')) expect(ofRain).toContain(at(file, row, '', code));
      else if (/^(?:site|drainage|stand|head|safety|waterTests)\./.test(code))
        expect(ofSites).toContain(`${siteId} ${code}`);
      else expect(places).toContain(at(file, row, column, code));
    }
  });

  test('no blocker stands that was not planted', () => {
    const known = new Set(planted.map(({ file, row, column, code }) => at(file, row, column, code)));
    expect(
      blockersOf(read.problems)
        .map(placeOf)
        .filter((place) => !known.has(place)),
    ).toEqual([]);
    // Taps above the water, and germs in every tube, are known: short, and not in doubt.
    const doubted = new Set(planted.flatMap(({ siteId, code }) => (shortBy.has(code) ? [] : [siteId])));
    // A site that is short by another station is short, however little is known of the rest.
    const isUnknown = ({ stations }: SiteDesign) => Object.values(stations).includes('unknown');
    const unknown = found.designs.filter((one) => isUnknown(one) && one.storm !== null).map(({ siteId }) => siteId);
    // Where no storm is known, gutters that were measured are unknown, and nothing else is.
    const noStorm = found.designs.filter(({ storm }) => storm === null);
    expect(noStorm.flatMap(({ stations }) => Object.values(stations)).filter((one) => one === 'unknown')).toHaveLength(
      noStorm.length,
    );
    expect(new Set(unknown)).toEqual(new Set([...doubted].filter((siteId) => siteId !== undefined)));
  });

  test('each fault stands at a site of its own, or at a station of its own', () => {
    const sites = planted.flatMap(({ siteId, station, code }) =>
      siteId === undefined ? [] : [{ siteId, station, code }],
    );
    const whole = sites.flatMap(({ siteId, station }) => (station === undefined ? [siteId] : []));
    const beside = sites.flatMap(({ siteId, station }) => (station === undefined ? [] : [`${siteId} ${station}`]));
    expect(new Set(whole).size).toBe(whole.length);
    expect(new Set(beside).size).toBe(beside.length);
    expect(sites.filter(({ siteId, station }) => station !== undefined && whole.includes(siteId))).toEqual([]);
    // What is wrong with one station leaves the others judged.
    for (const { siteId, station, code } of sites) {
      if (station === undefined) continue;
      const { stations } = found.designs.find((design) => design.siteId === siteId)!;
      expect(stations[station], siteId).toBe(shortBy.has(code) ? 'short' : 'unknown');
      expect(stations.storage, siteId).not.toBe('unknown');
    }
  });

  test('sites that stand for each table are there, and come to what they show', () => {
    const rows = (name: keyof typeof tables) => tables[name] ?? [];
    const sites = rows('sites');
    const where = (column: string, value?: unknown) =>
      sites.filter((row) => (value === undefined ? (row[column] ?? null) !== null : row[column] === value));
    const designOf = (siteId: unknown) => found.designs.find((design) => design.siteId === siteId)!;
    const verdictsOf = (chosen: typeof sites) => chosen.map(({ siteId }) => designOf(siteId).verdict);
    expect(where('siteClass', 'clinic').length).toBeGreaterThanOrEqual(3);
    expect(where('siteClass', 'school').length).toBeGreaterThanOrEqual(10);
    expect(where('presenceCalendar', 'terms')).toEqual(where('siteClass', 'school'));
    expect(where('presenceCalendar', 'feast')).toHaveLength(1);
    const classed = rows('targets').map(({ siteClass }) => siteClass);
    expect(classed).toEqual(['clinic', 'school']);
    expect(where('growthFraction_per_year')).toHaveLength(7);
    expect(where('households')).toHaveLength(1);
    expect(designOf(where('households')[0]!['siteId']).verdict).not.toBe('unknown');
    const apart = new Set(rows('tanks').flatMap(({ peopleFraction, siteId }) => (peopleFraction ? [siteId] : [])));
    expect([...apart].map((siteId) => designOf(siteId).storages.length).sort()).toEqual([0, 2, 2]);
    expect(rows('tanks').filter(({ role }) => role === 'settling')).toHaveLength(1);
    expect(where('rationBelow_fraction')).toHaveLength(1);
    const sources = where('secondSourceId');
    expect(sources).toHaveLength(4);
    expect(new Set(sources.map(({ gaugeId }) => gaugeId))).toEqual(new Set(['G2']));
    expect(verdictsOf(sources)).toContain('tight');
    const atG4 = where('gaugeId', 'G4').map(({ siteId }) => designOf(siteId));
    expect(atG4).toHaveLength(3);
    for (const { stations, problems } of atG4) {
      expect(stations.storage).toMatch(/^(?:tight|short)$/);
      expect(stations.gutter).toBe('unknown');
      expect(problems.map(({ code }) => code)).toContain('drainage.no_storm');
    }
    expect(new Set(found.designs.filter(({ storm }) => storm === null))).toEqual(new Set(atG4));
    const byDistance = sites.filter(({ gaugeId }) => gaugeId === null);
    expect(byDistance).toHaveLength(2);
    expect(verdictsOf(byDistance)).not.toContain('unknown');
  });

  test('ways run from end to end by their lines, by road, river and foot', async () => {
    const lines = JSON.parse(programme.rawFiles!.find(({ path }) => path === 'ways.geojson')!.text) as {
      features: { id: string; geometry: { coordinates: [number, number][] } }[];
    };
    const ends = new Map(
      [...tables.sites!, ...tables.places!].map((row) => [
        row['siteId'] ?? row['placeId'],
        { latitude_deg: Number(row['latitude_deg']), longitude_deg: Number(row['longitude_deg']) },
      ]),
    );
    expect(tables.places!.slice(0, 4).map(({ kind }) => kind)).toEqual(['store', 'landing', 'landing', 'roadhead']);
    expect(new Set(tables.ways!.map(({ mode }) => mode))).toEqual(new Set(['road', 'river', 'foot']));
    expect(lines.features.map(({ id }) => id)).toEqual(tables.ways!.map(({ wayId }) => wayId));
    tables.ways!.forEach((way, i) => {
      const line = lines.features[i]!.geometry.coordinates.map(([longitude_deg, latitude_deg]) => {
        return { latitude_deg, longitude_deg };
      });
      expect(line[0]).toEqual(ends.get(way['from']!));
      expect(line.at(-1)).toEqual(ends.get(way['to']!));
      expect(Math.abs(Number(way['length_km']) - lineLength_km([line]))).toBeLessThanOrEqual(0.0051);
      expect(Number(way['length_km'])).toBeLessThan(1.5 * greatCircle_km(line[0]!, line.at(-1)!) + 0.01);
    });
  });

  test('a water year of the second gauge is not judged, and its gaps are known', () => {
    const gauges = readyProgramme(read.facts).gauges;
    expect(gauges.get('G2')!.rain!.years.filter(({ judged }) => !judged)).toHaveLength(1);
    expect(gauges.get('G1')!.rain!.filledDays).toBeGreaterThan(50);
  });
});

/** Warnings that are no fault of the tables: they say what a verdict rests on. */
const saidOfSoundTables = new Set([
  'rain.made_up',
  'safety.source_over_target',
  'site.second_source',
  'site.people_from_households',
  // Of a site that is to be fitted.
  'waterTests.none',
]);

describe('without faults', () => {
  test.each([1, 2])('nothing is wrong, seed %i', async (seed) => {
    const { planted, ...programme } = demoProgramme({ seed, clean: true });
    const { facts, problems, notUsed } = await readProgramme(await written(programme));
    const found = designed(facts);
    expect(planted).toEqual([]);
    expect(notUsed).toEqual([]);
    const said = [...problems, ...found.problems].filter(({ severity }) => severity !== 'note');
    expect(said.filter(({ code }) => !saidOfSoundTables.has(code))).toEqual([]);
    expect(said.filter(({ severity }) => severity === 'blocker')).toEqual([]);
    expect(found.designs.every(({ verdict }) => verdict !== 'unknown')).toBe(true);
  });
});

describe('from a seed', () => {
  test('the same bytes come twice, other bytes from another seed', async () => {
    const [once, again, other] = [demoProgramme({ seed: 7 }), demoProgramme({ seed: 7 }), demoProgramme({ seed: 8 })];
    const bytes = await bytesOf(await written(once));
    expect(await bytesOf(await written(again))).toEqual(bytes);
    expect(again.planted).toEqual(once.planted);
    expect((await bytesOf(await written(other)))['/sites.csv']).not.toBe(bytes['/sites.csv']);
  });
});

describe('of any size', () => {
  test('one site is a programme', async () => {
    const { planted, ...programme } = demoProgramme({ sites: 1 });
    const { facts } = await readProgramme(await written(programme));
    expect(planted.every(({ siteId }) => siteId === undefined)).toBe(true);
    expect(designed(facts).designs.map(({ verdict }) => verdict)).toEqual(['holds']);
  });

  test.each([
    [60, 3],
    [1500, 6],
    [10000, 23],
  ])('%i sites have names and ids of their own and %i gauges', (sites, gauges) => {
    const { tables, rain } = demoProgramme({ sites, clean: true });
    expect(new Set(tables.sites!.map(({ name }) => name)).size).toBe(sites);
    expect(new Set(tables.sites!.map(({ siteId }) => siteId)).size).toBe(sites);
    // One gauge more stands and is not read, and some sites stand between gauges.
    expect(tables.gauges).toHaveLength(gauges + 1);
    expect(rain).toHaveLength(gauges);
    const used = new Set(tables.sites!.map(({ gaugeId }) => gaugeId));
    expect(used.size).toBe(gauges + 2);
    expect(used).toContain(null);
    expect(new Set(tables.normals!.map(({ gaugeId }) => gaugeId))).toEqual(new Set([`G${gauges + 1}`]));
  });

  test('three sites are a plain programme, with targets and terms for the schools there are', async () => {
    const { tables, ...rest } = demoProgramme({ sites: 3, clean: true });
    const { facts, problems } = await readProgramme(await written({ tables, ...rest }));
    expect(blockersOf(problems)).toEqual([]);
    expect(designed(facts).designs).toHaveLength(3);
    for (const name of ['normals', 'secondSources', 'places', 'ways'] as const) expect(tables[name]).toBeUndefined();
  });

  test.each([0, -3, 2.5, Number.NaN, Number.POSITIVE_INFINITY])('%d sites are refused', (sites) => {
    expect(() => demoProgramme({ sites })).toThrow(RangeError);
  });

  test('a seed that is not whole is refused', () => {
    expect(() => demoProgramme({ seed: 0.5 })).toThrow(RangeError);
  });
});
