import type { ProgrammeTables } from '@eavewell/formats';
import { type Building, buildingOf } from './buildings.ts';
import { castOf, type Part } from './cast.ts';
import { partRows, priceRows } from './catalogue.ts';
import type { DraftProgramme, LaterTable, PlantedFault, Row } from './draft.ts';
import { faultySites, plantFaults } from './faults.ts';
import { asPlanned, toBeFitted } from './fitting.ts';
import { gappedReadings, wholeReadings } from './gaps.ts';
import { gaugesFor, islandPlaces, nearest, type Place, roundedPlace } from './islands.ts';
import { carrierRows, costRows, costSettings, keptApartRows, kitRuleRows, rateRows } from './kit.ts';
import { measuresOf, wornMeasures } from './measures.ts';
import { normalRows } from './normals.ts';
import { type Particular, particularsOf, withIsland } from './particulars.ts';
import { people_per_household, peopleCells, presenceRows, targetRows } from './people.ts';
import { type DemoRain, demoRain } from './rain.ts';
import { altitude_m, chlorinationRows, habitCells, rawWaterRows, roofCells, withAsbestos } from './rawWater.ts';
import { madeRollout } from './rollout.ts';
import { asOfDay } from './rolloutPlans.ts';
import { samplesOf } from './samples.ts';
import { secondSourceOf, secondSourceRows } from './secondSources.ts';
import { demoNames, type MadeSite, madeSites, purposes } from './sites.ts';
import { stormTables } from './storms.ts';
import { tapCells } from './taps.ts';
import { takenOver, treatmentRows } from './treatment.ts';
import { madeWays } from './ways.ts';
import { wear } from './wear.ts';

/** What the demo is to be. */
export interface DemoOptions {
  /** How many sites; 60 where it is not said. */
  readonly sites?: number;
  /** 1 where it is not said. */
  readonly seed?: number;
  /** Without faults and gaps, every needed cell filled. */
  readonly clean?: boolean;
  /** The day on which it is looked at [ISO day]: its rollout is under way then. Left out: the demo stands still in time, and nothing has happened. */
  readonly today?: string;
}

/** A made programme, with the faults planted in it. */
export interface DemoProgramme extends ProgrammeTables {
  readonly planted: readonly PlantedFault[];
  /** Gauges that stand in it, read or not; not those that are a planted fault. */
  readonly gauges_count: number;
}

/**
 * Makes an invented programme: an island chain of our own, its sites, their roofs and tanks, three gauges or more with 32
 * years of made daily rain and one that is not read yet, ways on one island, and planted faults. The same options give the same programme, byte for byte. Nothing in it is
 * a real place, person, gauge or price.
 */
// long: one programme, table after table
export function demoProgramme(options: DemoOptions = {}): DemoProgramme {
  const { sites: count = 60, seed = 1, clean = false, today = null } = options;
  if (!Number.isSafeInteger(count) || count < 1)
    throw new RangeError(`a demo programme has 1 site or more, a whole number; ${count} was asked for`);
  if (!Number.isSafeInteger(seed)) throw new RangeError(`the seed is a whole number; ${seed} was given`);
  const gaugeIds = Array.from({ length: gaugesFor(count) }, (_, i) => `G${i + 1}`);
  const islands = islandPlaces(seed, gaugeIds.length * 2 + 1);
  const unread = { gaugeId: `G${gaugeIds.length + 1}`, place: islands.pop()! };
  const names = demoNames(seed, islands.length, count);
  const read = gaugeIds.map((gaugeId, i) => gaugeRow(gaugeId, names.islands[i * 2]!, islands[i * 2]!));
  const planned = madeSites(seed, count, names.places, islands);
  const particulars = particularsOf(planned, read);
  const made = withIsland(seed, planned, particulars, unread.place);
  const hasMore = particulars.size > 0;
  const ids = made.map(({ siteId }) => siteId);
  const ofFaults = new Set<Particular>(['harvest', 'tanksApart']);
  const inDoubt = faultySites(seed, ids, new Set(particulars.keys()));
  const faulty = new Set([
    ...inDoubt,
    ...[...particulars].flatMap(([siteId, what]) => (ofFaults.has(what) ? [siteId] : [])),
  ]);
  const ofUnread = new Set(ids.filter((siteId) => particulars.get(siteId) === 'unreadIsland'));
  const cast = hasMore ? castOf(seed, made, clean, faulty, ofUnread) : new Map<string, Part>();
  const waiting = toBeFitted(seed, made, cast, particulars, inDoubt);
  const sites = made.map((site) => {
    const { siteId } = site;
    const particular = particulars.get(siteId);
    const handOverDay = waiting.has(siteId) ? null : takenOver(seed, site);
    const bare = siteRow(seed, { ...site, handOverDay }, gaugeOf(site, particular, read, unread.gaugeId), particular);
    const row = hasMore ? { ...bare, ...habitCells(cast.get(siteId)), altitude_m: altitude_m(seed, siteId) } : bare;
    // Nobody leaves out whether there is a hand pump where nothing is wrong.
    return clean ? { ...row, handPump: true } : row;
  });
  const rain = demoRain(seed, gaugeIds);
  const ways = hasMore ? waysOf(seed, names.islands[0]!, islands, made, particulars) : null;
  const toFit = made.filter(({ siteId }) => waiting.has(siteId));
  const land = { seed, islands, islandNames: names.islands, sites: toFit };
  const rollout = ways === null ? null : madeRollout({ ...land, known: ways }, rain, clean);
  const draft: DraftProgramme = {
    settings: {
      programme: `${names.chain} Islands`,
      seed,
      ...engineering,
      ...costSettings,
      ...(hasMore ? { people_per_household, ...habits } : {}),
      ...rollout?.settings,
    },
    tables: {
      sites: sites.map((row) => ({ ...row, ...rollout?.cells.get(String(row['siteId'])) })),
      ...rowsOf(
        made.map(({ siteId, ...site }) => {
          const building = buildingOf(seed, { siteId, ...site }, particulars.get(siteId));
          const looked = hasMore ? roofCells(seed, siteId, cast.get(siteId), clean) : {};
          const roofs = building.roofs.map((roof) => ({ ...roof, ...looked }));
          return measured(seed, siteId, { ...building, roofs }, clean);
        }),
      ),
      demand: demandRows(made),
      gauges: hasMore ? [...read, unreadGauge(unread.gaugeId, names.unreadIsland, unread.place)] : read,
      parts: partRows(),
      prices: priceRows(),
      ...kitRuleRows(),
      ...{ carriers: carrierRows, keptApart: keptApartRows, rates: rateRows, costs: costRows },
      ...withRows({
        targets: targetRows(made),
        presence: presenceRows(sites),
        // Where nothing is wrong, a storm of the gauge that is not read yet was stated too.
        ...treated(seed, made, { cast, particulars, waiting }, clean),
        ...stormTables(seed, hasMore && clean ? [...gaugeIds, unread.gaugeId] : gaugeIds, rain),
      }),
      ...(hasMore
        ? {
            normals: normalRows(seed, unread.gaugeId),
            secondSources: secondSourceRows(names.river, names.spring),
          }
        : {}),
      ...rollout?.tables,
    },
    rain: gaugeIds.map((gaugeId, i) => ({ gaugeId, rows: readings(seed, rain, i, clean) })),
    rawFiles: rollout ? [rollout.lines] : [],
  };
  const gauges_count = draft.tables.gauges.length;
  // The plans that are kept are of this demo alone.
  const hasPlans = today !== null && count === planned_sites && seed === plannedSeed && rollout !== null;
  const onDay = (made: DraftProgramme) =>
    hasPlans ? asOfDay(made, String(rollout.settings['rolloutStart']), today) : made;
  if (clean) return { ...onDay(draft), gauges_count, planted: [] };
  wear(seed, draft);
  if (hasMore) draft.tables.roofs = withAsbestos(draft.tables.roofs);
  const planted = plantFaults(seed, draft, new Set(particulars.keys()));
  return { ...onDay(draft), gauges_count, planted };
}

/** Whose plans are kept (setup/demoPlans.mjs). */
const [planned_sites, plannedSeed] = [60, 1];

/** Wind that stands of the demo are held against, and head its unit takes at the flow of its taps. Invented. */
const engineering = { windSpeed_m_per_s: 35, unitHead_m: 4 };

/**
 * What the health authority of the demo accepts for the time being, a hundred times what is aimed at everywhere; who drinks untreated water and how often nothing is treated; how clear
 * water of roofs is, and how often a set of cartridges fails. Invented.
 */
const habits = {
  ...{ healthTarget_DALY_per_person_per_year: 1e-4, skipping_fraction: 0.01, daysOff_per_year: 1 },
  // The demo stands still in time: its samples are of two years, whenever somebody looks at it.
  sampleAge_days: 3660,
  ...{ roofTurbidity_NTU: 1, roofTurbidityHigh_NTU: 2.5, cartridgeFailures_per_year: 0.05 },
};

/** What each site shows, and which are still to be fitted. */
interface Shown {
  readonly cast: ReadonlyMap<string, Part>;
  readonly particulars: ReadonlyMap<string, Particular>;
  readonly waiting: ReadonlySet<string>;
}

/** Units, samples and raw water of the sites of the cast. */
function treated(
  seed: number,
  made: readonly MadeSite[],
  { cast, particulars, waiting }: Shown,
  clean: boolean,
): Partial<Record<LaterTable, readonly Row[]>> {
  const all = made.flatMap((site) => {
    const { siteId } = site;
    const part = cast.get(siteId);
    if (part === undefined) return [];
    const source = secondSourceOf(particulars.get(siteId));
    const rows = {
      ...treatmentRows(seed, site, part, clean),
      ...samplesOf(seed, siteId, part, takenOver(seed, site), clean),
      rawWater: rawWaterRows(seed, siteId, part, source),
      chlorination: chlorinationRows(siteId, part),
    };
    return [waiting.has(siteId) ? asPlanned(rows) : rows];
  });
  const names = new Set(all.flatMap((rows) => Object.keys(rows) as LaterTable[]));
  return Object.fromEntries(
    [...names].map((name) => [
      name,
      all.flatMap((rows: Partial<Record<LaterTable, readonly Row[]>>) => rows[name] ?? []),
    ]),
  );
}

/** The tables that have rows. */
function withRows(tables: Partial<Record<LaterTable, readonly Row[]>>): Partial<Record<LaterTable, readonly Row[]>> {
  return Object.fromEntries(Object.entries(tables).filter(([, rows]) => rows.length > 0));
}

/** Ways to sites of the first island. */
function waysOf(
  seed: number,
  name: string,
  islands: readonly Place[],
  made: readonly MadeSite[],
  particulars: ReadonlyMap<string, Particular>,
) {
  const near = made.filter(
    ({ siteId, place }) => nearest(place, islands) === 0 && particulars.get(siteId) !== 'unreadIsland',
  );
  return madeWays(seed, { name, place: islands[0]! }, near);
}

/** The gauge a site is given; none where it stands between two. */
function gaugeOf(
  { place }: MadeSite,
  particular: Particular | undefined,
  read: readonly (Place & { gaugeId: string })[],
  unreadId: string,
): string | null {
  if (particular === 'betweenGauges') return null;
  return particular === 'unreadIsland' ? unreadId : read[nearest(place, read)]!.gaugeId;
}

/** A gauge that stands and is not read yet. */
function unreadGauge(gaugeId: string, island: string, place: Place) {
  return { ...gaugeRow(gaugeId, island, place), readingTime: null };
}

function readings(seed: number, rain: DemoRain, gauge: number, clean: boolean) {
  return clean ? wholeReadings(rain, gauge) : gappedReadings(seed, rain, gauge);
}

function gaugeRow(gaugeId: string, island: string, place: Place) {
  return { gaugeId, name: `${island} landing`, ...roundedPlace(place), readingTime: '09:00' };
}

function siteRow(seed: number, site: MadeSite, gaugeId: string | null, particular: Particular | undefined): Row {
  return {
    siteId: site.siteId,
    name: site.name,
    ...roundedPlace(site.place),
    people: site.people,
    gaugeId,
    rainFactor: site.rainFactor,
    handOverDay: site.handOverDay,
    ...(particular === 'rations' ? { rationBelow_fraction: 0.35, rationedOther_fraction: 0 } : {}),
    secondSourceId: secondSourceOf(particular),
    ...peopleCells(seed, site, particular),
    ...tapCells(seed, site.siteId),
  };
}

/** A building with its gutters and downpipes. */
interface MeasuredBuilding extends Building {
  readonly gutters: readonly Row[];
  readonly downpipes: readonly Row[];
  readonly pipes: readonly Row[];
}

/** A building as it was measured; a true survey leaves some of it out. */
function measured(seed: number, siteId: string, building: Building, clean: boolean): MeasuredBuilding {
  const whole = measuresOf(seed, { siteId, ...building }, clean);
  const { gutters, downpipes, pipes, ...cells } = clean ? whole : wornMeasures(seed, siteId, whole);
  const withCells = (rows: readonly Row[], id: string, of: ReadonlyMap<string, Row>) =>
    rows.map((row) => ({ ...row, ...of.get(String(row[id])) }));
  return {
    roofs: withCells(building.roofs, 'roofId', cells.roofs),
    diverters: withCells(building.diverters, 'roofId', cells.diverters),
    tanks: withCells(building.tanks, 'tankId', cells.tanks),
    gutters,
    downpipes,
    pipes,
  };
}

function rowsOf(buildings: readonly MeasuredBuilding[]) {
  return {
    ...withRows({
      gutters: buildings.flatMap(({ gutters }) => gutters),
      downpipes: buildings.flatMap(({ downpipes }) => downpipes),
      pipes: buildings.flatMap(({ pipes }) => pipes),
    }),
    roofs: buildings.flatMap(({ roofs }) => roofs),
    diverters: buildings.flatMap(({ diverters }) => diverters),
    tanks: buildings.flatMap(({ tanks }) => tanks),
  };
}

/** The programme's purposes are the halls'; schools and clinics have their own. */
function demandRows(made: readonly MadeSite[]): Row[] {
  const programme = purposes.hall.map((purpose) => ({ siteId: null, ...purpose }));
  const own = made.filter(({ kind }) => kind !== 'hall');
  return [
    ...programme,
    ...own.flatMap(({ siteId, kind }) => purposes[kind].map((purpose) => ({ siteId, ...purpose }))),
  ];
}
