import { greatCircle_km } from '@eavewell/engine';
import { chanceFor } from './chance.ts';
import type { Row } from './draft.ts';
import { nearest, type Place, roundedPlace } from './islands.ts';
import type { MadeRain } from './rain.ts';
import type { MadeSite } from './sites.ts';
import { type End, type WayMade, wayOf } from './ways.ts';

/** Where the rollout of the demo goes: its islands by name, and the sites that are to be fitted. */
export interface RolloutLand {
  readonly seed: number;
  readonly islands: readonly Place[];
  readonly islandNames: readonly string[];
  readonly sites: readonly MadeSite[];
  /** Ways that are there already, and the places they start from. */
  readonly known: { readonly places: readonly Row[]; readonly made: readonly WayMade[] };
}

/** Places and ways that the rollout adds, and where its forward store stands. */
export interface RolloutWays {
  readonly places: readonly Row[];
  readonly made: readonly WayMade[];
  readonly forward: string;
  readonly river: string;
}

/** Beyond this a site is reached over the sea, not by a track of its island [km]. Ours. */
const farFromLanding_km = 14;
/** How far landings and an upper landing lie from the middle of their island [deg]. Invented. */
const landingAt = { north: -0.004, east: -0.058 };
const innerAt = { north: 0.014, east: 0.012 };
const mainStore = 'STORE';

/** An end of ways, some degrees from the middle of an island. */
function endAt(
  id: string,
  name: string,
  { latitude_deg, longitude_deg }: Place,
  off: { north: number; east: number },
): End {
  return {
    id,
    name,
    ...roundedPlace({ latitude_deg: latitude_deg + off.north, longitude_deg: longitude_deg + off.east }),
  };
}

function endOf(row: Row): End {
  const at = { latitude_deg: Number(row['latitude_deg']), longitude_deg: Number(row['longitude_deg']) };
  return { id: String(row['placeId']), name: String(row['name']), ...at };
}

/** The area whose weather something has, by the island it lies on: two islands share one, as they share a gauge. */
export const areaOf = (island: number): string => `weather-${Math.floor(island / 2) + 1}`;

/** Landings of the islands with sites to be fitted, a forward store and a river on the one that has most, and a track to each site. */
// long: places first, then the ways between them
export function rolloutWays({ seed, islands, islandNames, sites, known }: RolloutLand): RolloutWays {
  const chance = chanceFor(seed, 'ways of the rollout');
  const islandOf = new Map(sites.map(({ siteId, place }) => [siteId, nearest(place, islands)]));
  const counts = islands.map((_, i) => sites.filter(({ siteId }) => islandOf.get(siteId) === i).length);
  const visited = islands.flatMap((_, i) => (i === 0 || counts[i]! > 0 ? [i] : []));
  const others = visited.filter((i) => i > 0);
  const busiest = others.reduce((most, i) => (counts[i]! > counts[most]! ? i : most), others[0] ?? 0);
  const there = known.places.map(endOf);
  const byId = (id: string): End => there.find((end) => end.id === id)!;
  const landings = new Map<number, End>(
    visited.map((i) => {
      const [id, what] = i === busiest ? ['FORWARD', 'shed'] : [`ISLE${i + 1}`, 'landing'];
      // The main store has a quay of its own.
      return [i, i === 0 ? byId(mainStore) : endAt(id, `${islandNames[i]} ${what}`, islands[i]!, landingAt)];
    }),
  );
  const inner = endAt('INNER', `${islandNames[busiest]} upper landing`, islands[busiest]!, innerAt);
  const made: Omit<WayMade, 'wayId'>[] = [];
  const add = (mode: 'road' | 'river' | 'foot', from: End, to: End, island: number, cells: Row = {}) => {
    const { line, row } = wayOf(chance, mode, from, to);
    made.push({ line, row: { ...row, weatherArea: areaOf(island), ...cells } });
  };
  visited.forEach((i, at) => {
    if (at > 0) add('river', landings.get(visited[at - 1]!)!, landings.get(i)!, i);
  });
  const forward = landings.get(busiest)!;
  // Against the stream it takes half as long again.
  const lowland = greatCircle_km(forward, inner) / 8;
  const hours = { there_h: Math.round(lowland * 15) / 10, back_h: Math.round(lowland * 10) / 10 };
  add('river', forward, inner, busiest, { ...hours, riverGaugeId: 'LEVEL1', limit_kg: 5000 });
  const river = made.length;
  const startsOf = (island: number): readonly End[] => {
    if (island === 0) return [byId(mainStore), byId('ROADHEAD'), byId('LANDING2')];
    return island === busiest ? [forward, inner] : [landings.get(island)!];
  };
  const foot = new Set(known.made.map(({ row }) => row['to']));
  for (const { siteId, name, place } of sites) {
    const island = islandOf.get(siteId)!;
    const to = { id: siteId, name, ...roundedPlace(place) };
    const starts = startsOf(island);
    const from = starts[nearest(place, starts)]!;
    const isFar = greatCircle_km(from, to) > farFromLanding_km;
    // A way on foot that is there already is too narrow for tanks: a track goes round.
    const about = foot.has(siteId) ? { name: `track to ${name}` } : {};
    if (isFar) add('river', landings.get(island)!, to, island, about);
    else add('road', from, to, island, about);
  }
  const wayId = (i: number) => `W${String(known.made.length + i + 1).padStart(2, '0')}`;
  const own = [...others.flatMap((i) => (i === busiest ? [] : [landings.get(i)!])), inner];
  const filled = { filledFrom: mainStore, filledBy: 'coaster', changeOver_h: 1.5 };
  return {
    places: [
      ...own.map(({ id, name, latitude_deg, longitude_deg }) => {
        return { placeId: id, name, kind: 'landing', latitude_deg, longitude_deg };
      }),
      { placeId: forward.id, name: forward.name, kind: 'store', ...roundedPlace(forward), ...filled },
    ],
    made: made.map((way, i) => ({ wayId: wayId(i), ...way })),
    forward: forward.id,
    river: wayId(river - 1),
  };
}

/** A river holds back rain so far: what is left of it from one day to the next [fraction], and what one mm raises it by, and where the gauge reads without any [m]. Invented. */
const [held_fraction, rise_m_per_mm, bed_m] = [0.965, 0.0115, -0.45] as const;
/** Read every third day, over the last seven years of the rain. */
const [readEvery_days, readYears] = [3, 7] as const;

/** Levels of the river, from the rain of the gauge near it. A true record has days nobody read. */
export function riverRows(
  seed: number,
  dates: readonly string[],
  { rain_mm }: MadeRain,
  clean: boolean,
): readonly Row[] {
  const chance = chanceFor(seed, 'levels of the river');
  const first = Number(dates.at(-1)!.slice(0, 4)) - readYears + 1;
  let held_m = 0;
  return dates.flatMap((day, i) => {
    held_m = held_m * held_fraction + rise_m_per_mm * rain_mm[i]!;
    if (Number(day.slice(0, 4)) < first || i % readEvery_days !== 0) return [];
    const level_m = Math.round(100 * (bed_m + held_m + chance.between(-0.02, 0.02))) / 100;
    return !clean && chance.share() < 0.02 ? [] : [{ riverGaugeId: 'LEVEL1', day, level_m }];
  });
}
