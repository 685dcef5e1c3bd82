import type { ProgrammeTables } from '@eavewell/formats';
import { type Building, buildingOf } from './buildings.ts';
import { partRows, priceRows } from './catalogue.ts';
import type { DraftProgramme, PlantedFault, Row } from './draft.ts';
import { plantFaults } from './faults.ts';
import { gappedReadings, wholeReadings } from './gaps.ts';
import { gaugesFor, islandPlaces, nearest, type Place, roundedPlace } from './islands.ts';
import { type DemoRain, demoRain } from './rain.ts';
import { demoNames, type MadeSite, madeSites, purposes } from './sites.ts';
import { wear } from './wear.ts';

/** What the demo is to be. */
export interface DemoOptions {
  /** How many sites; 60 where it is not said. */
  readonly sites?: number;
  /** 1 where it is not said. */
  readonly seed?: number;
  /** Without faults and gaps, every needed cell filled. */
  readonly clean?: boolean;
}

/** A made programme, with the faults planted in it. */
export interface DemoProgramme extends ProgrammeTables {
  readonly planted: readonly PlantedFault[];
}

/**
 * Makes an invented programme: an island chain of our own, its sites, their roofs and tanks, three gauges or more with 32
 * years of made daily rain, and planted faults. The same options give the same programme, byte for byte. Nothing in it is
 * a real place, person, gauge or price.
 */
export function demoProgramme(options: DemoOptions = {}): DemoProgramme {
  const { sites: count = 60, seed = 1, clean = false } = options;
  if (!Number.isSafeInteger(count) || count < 1)
    throw new RangeError(`a demo programme has 1 site or more, a whole number; ${count} was asked for`);
  if (!Number.isSafeInteger(seed)) throw new RangeError(`the seed is a whole number; ${seed} was given`);
  const gaugeIds = Array.from({ length: gaugesFor(count) }, (_, i) => `G${i + 1}`);
  const islands = islandPlaces(seed, gaugeIds.length * 2);
  const names = demoNames(seed, islands.length, count);
  const gauges = gaugeIds.map((gaugeId, i) => gaugeRow(gaugeId, names.islands[i * 2]!, islands[i * 2]!));
  const made = madeSites(seed, count, names.places, islands);
  const buildings = made.map((site) => buildingOf(seed, site));
  const rain = demoRain(seed, gaugeIds);
  const draft: DraftProgramme = {
    settings: { programme: `${names.chain} Islands`, seed },
    tables: {
      sites: made.map((site) => siteRow(site, gauges)),
      ...rowsOf(buildings),
      demand: demandRows(made),
      gauges: [...gauges],
      parts: partRows(),
      prices: priceRows(),
    },
    rain: gaugeIds.map((gaugeId, i) => ({ gaugeId, rows: readings(seed, rain, i, clean) })),
    rawFiles: [],
  };
  if (clean) return { ...draft, planted: [] };
  wear(seed, draft);
  return { ...draft, planted: plantFaults(seed, draft) };
}

function readings(seed: number, rain: DemoRain, gauge: number, clean: boolean) {
  return clean ? wholeReadings(rain, gauge) : gappedReadings(seed, rain, gauge);
}

function gaugeRow(gaugeId: string, island: string, place: Place) {
  return { gaugeId, name: `${island} landing`, ...roundedPlace(place), readingTime: '09:00' };
}

function siteRow(site: MadeSite, gauges: readonly (Place & { gaugeId: string })[]): Row {
  return {
    siteId: site.siteId,
    name: site.name,
    ...roundedPlace(site.place),
    people: site.people,
    gaugeId: gauges[nearest(site.place, gauges)]!.gaugeId,
    rainFactor: site.rainFactor,
    handOverDay: site.handOverDay,
  };
}

function rowsOf(buildings: readonly Building[]) {
  return {
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
