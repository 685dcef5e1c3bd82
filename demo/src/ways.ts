import { lineLength_km } from '@eavewell/engine';
import { wayLinesFile } from '@eavewell/tables';
import { type Chance, chanceFor } from './chance.ts';
import type { Row } from './draft.ts';
import { nearest, type Place, roundedPlace } from './islands.ts';
import type { MadeSite } from './sites.ts';

/** Where a way may start or end. */
export interface End extends Place {
  readonly id: string;
  readonly name: string;
}

/** The ways of one island: where they start, how they are gone, and their lines. */
export interface MadeWays {
  readonly places: readonly Row[];
  readonly made: readonly WayMade[];
}

/** A way with its line. */
export interface WayMade {
  readonly wayId: string;
  readonly line: readonly Place[];
  readonly row: Row;
}

/** So many sites of the first island have a way [site]. */
const sitesWithWay = 8;
/** Bends between the ends of a way, and how far each strays, as a share of the straight line. Invented. */
const bends = 6;
const stray_fraction = 0.09;

/** Where the places of the island lie from its middle [deg], what each is, and how a site is reached from there. */
const layout = [
  { id: 'STORE', name: 'store', kind: 'store', north: 0, east: -0.045, onward: 'road' },
  { id: 'LANDING1', name: 'lower landing', kind: 'landing', north: 0.012, east: -0.06, onward: 'road' },
  { id: 'LANDING2', name: 'upper landing', kind: 'landing', north: 0.022, east: 0.03, onward: 'foot' },
  { id: 'ROADHEAD', name: 'road end', kind: 'roadhead', north: -0.036, east: -0.052, onward: 'foot' },
] as const;

/** Store, landings, end of the road and the ways from them to some sites, all on one island. */
export function madeWays(seed: number, island: { name: string; place: Place }, sites: readonly MadeSite[]): MadeWays {
  const chance = chanceFor(seed, 'ways');
  const ends = layout.map(({ id, name, north, east }) => {
    const at = { latitude_deg: island.place.latitude_deg + north, longitude_deg: island.place.longitude_deg + east };
    return { id, name: `${island.name} ${name}`, ...roundedPlace(at) };
  });
  const [store, lower, upper, roadEnd] = ends as [End, End, End, End];
  const made = [
    wayOf(chance, 'road', store, lower),
    wayOf(chance, 'road', store, roadEnd),
    wayOf(chance, 'river', lower, upper),
    ...sites.slice(0, sitesWithWay).map(({ siteId, name, place }) => {
      const at = nearest(place, ends);
      return wayOf(chance, layout[at]!.onward, ends[at]!, { id: siteId, name, ...roundedPlace(place) });
    }),
  ].map((way, i) => ({ ...way, wayId: `W${String(i + 1).padStart(2, '0')}` }));
  return {
    places: layout.map(({ id, kind }, i) => ({ placeId: id, name: ends[i]!.name, kind, ...roundedPlace(ends[i]!) })),
    made,
  };
}

/** A way between two ends, by a line that wanders. */
export function wayOf(chance: Chance, mode: 'road' | 'river' | 'foot', from: End, to: End) {
  const line = bentLine(chance, from, to);
  const length_km = Math.max(0.01, Math.round(lineLength_km([line]) * 100) / 100);
  const name = `${from.name} to ${to.name}`;
  return { line, row: { name, from: from.id, to: to.id, mode, length_km } };
}

/** A line that strays to both sides of the straight one, from end to end. */
function bentLine(chance: Chance, from: Place, to: Place): readonly Place[] {
  const north = to.latitude_deg - from.latitude_deg;
  const east = to.longitude_deg - from.longitude_deg;
  const between = Array.from({ length: bends }, (_, i) => {
    const share = (i + 1) / (bends + 1);
    const aside = chance.between(-stray_fraction, stray_fraction);
    return roundedPlace({
      latitude_deg: from.latitude_deg + share * north + aside * east,
      longitude_deg: from.longitude_deg + share * east - aside * north,
    });
  });
  return [roundedPlace(from), ...between, roundedPlace(to)];
}

/** A collection of lines by RFC 7946, longitude first, one way to a line of text. */
export function linesText(made: readonly WayMade[]): { readonly path: string; readonly text: string } {
  const features = made.map(({ wayId, line, row }) => ({
    type: 'Feature',
    id: wayId,
    properties: { name: row['name'] ?? null },
    geometry: {
      type: 'LineString',
      coordinates: line.map(({ latitude_deg, longitude_deg }) => [longitude_deg, latitude_deg]),
    },
  }));
  const text = features.map((one) => JSON.stringify(one)).join(',\n');
  return { path: wayLinesFile, text: `{"type":"FeatureCollection","features":[\n${text}\n]}\n` };
}
