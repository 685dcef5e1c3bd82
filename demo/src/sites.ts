import { type Chance, chanceFor } from './chance.ts';
import type { Place } from './islands.ts';
import { placeNames } from './names.ts';

/** How well a site is meant to be off, before any fault is planted. */
export type Lot = 'ample' | 'edge' | 'littleTank' | 'littleRoof';

/** What the building is. */
export type Kind = 'hall' | 'school' | 'clinic';

/** One purpose of a site's water. */
export interface MadePurpose {
  readonly purpose: string;
  readonly litres_per_person_per_day: number;
  readonly judged: boolean;
}

/** A made site, before its roofs and tanks. */
export interface MadeSite {
  readonly siteId: string;
  readonly name: string;
  readonly kind: Kind;
  readonly lot: Lot;
  readonly people: number;
  readonly place: Place;
  readonly rainFactor: number | null;
  readonly handOverDay: string | null;
}

/**
 * Litres a person a day by kind of building. Halls: 7.5 L is the lower end of Sphere 2018's basic survival range; the 5 L
 * for washing are ours. Schools 3 L a pupil, clinics 5 L an outpatient: Sphere 2018, from memory.
 */
export const purposes: Readonly<Record<Kind, readonly MadePurpose[]>> = {
  hall: [
    { purpose: 'drinkingAndCooking', litres_per_person_per_day: 7.5, judged: true },
    { purpose: 'washing', litres_per_person_per_day: 5, judged: false },
  ],
  school: [{ purpose: 'drinkingAndHandWashing', litres_per_person_per_day: 3, judged: true }],
  clinic: [
    { purpose: 'patients', litres_per_person_per_day: 5, judged: true },
    { purpose: 'cleaning', litres_per_person_per_day: 5, judged: false },
  ],
};

const kindNames: Readonly<Record<Kind, string>> = { hall: 'village hall', school: 'school', clinic: 'clinic' };

/** Of every twenty sites; the order is drawn anew for each twenty. */
const lots: readonly Lot[] = [
  ...Array<Lot>(16).fill('ample'),
  'edge',
  'littleTank',
  ...Array<Lot>(2).fill('littleRoof'),
];
const kinds: readonly Kind[] = ['hall', 'hall', 'hall', 'school', 'hall', 'hall', 'school', 'hall', 'clinic', 'hall'];

/** Litres a person a day, all purposes. */
export function wantedOf(kind: Kind): number {
  return purposes[kind].reduce((sum, { litres_per_person_per_day: litres }) => sum + litres, 0);
}

/** Makes the sites. Every fifth one shares its place with the one before it, as a school stands beside a hall. */
export function madeSites(seed: number, count: number, names: readonly string[], places: readonly Place[]): MadeSite[] {
  const digits = Math.max(3, String(count).length);
  const chance = chanceFor(seed, 'which islands');
  let lotsLeft: Lot[] = [];
  let beside: { place: Place; kind: Kind } | null = null;
  return Array.from({ length: count }, (_, i) => {
    if (lotsLeft.length === 0) lotsLeft = [...lots];
    const lot = lotsLeft.splice(i === 0 ? 0 : chance.whole(0, lotsLeft.length - 1), 1)[0]!;
    const shares = i % 5 === 4;
    const kind: Kind = shares ? (beside?.kind === 'hall' ? 'school' : 'hall') : kinds[(i - Math.floor(i / 5)) % 10]!;
    const place: Place = shares && beside ? near(chance, beside.place) : near(chance, chance.pick(places));
    beside = { place, kind };
    const siteId = `S${String(i + 1).padStart(digits, '0')}`;
    const name = `${names[i - Math.floor((i + 1) / 5)]!} ${kindNames[kind]}`;
    return { siteId, name, kind, lot, place, ...facts(chanceFor(seed, `people of ${siteId}`), kind) };
  });
}

/** How many place names that many sites need. */
export function placesFor(sites: number): number {
  return sites - Math.floor(sites / 5);
}

/** Names for the chain, for its islands, for the places the sites stand in, and for what a larger programme has besides. */
export function demoNames(seed: number, islands: number, sites: number) {
  const upTo = 1 + islands + placesFor(sites);
  const names = placeNames(seed, upTo + 3);
  const [unreadIsland, river, spring] = names.slice(upTo) as [string, string, string];
  const places = names.slice(1 + islands, upTo);
  return { chain: names[0]!, islands: names.slice(1, 1 + islands), places, unreadIsland, river, spring };
}

function near(chance: Chance, { latitude_deg, longitude_deg }: Place): Place {
  return {
    latitude_deg: latitude_deg + chance.between(-0.06, 0.06),
    longitude_deg: longitude_deg + chance.between(-0.09, 0.09),
  };
}

/** Sites are handed over from March of this year to the end of the next: before the first samples of the demo. */
const firstHandOver_year = 2024;

function facts(chance: Chance, kind: Kind): Pick<MadeSite, 'people' | 'rainFactor' | 'handOverDay'> {
  const people = { hall: peopleOfHall(chance), school: chance.whole(90, 450), clinic: chance.whole(30, 80) }[kind];
  const rainFactor = chance.share() < 0.1 ? Math.round(chance.between(0.85, 1.2) * 20) / 20 : null;
  const month = chance.whole(2, 23);
  const day = String(chance.whole(1, 28)).padStart(2, '0');
  const date = `${firstHandOver_year + Math.floor(month / 12)}-${String((month % 12) + 1).padStart(2, '0')}-${day}`;
  return { people, rainFactor, handOverDay: chance.share() < 0.9 ? date : null };
}

/** Most halls serve a few dozen people, some nearly two hundred. */
function peopleOfHall(chance: Chance): number {
  return Math.round(Math.min(190, 30 + 26 * chance.gamma(1.6)));
}
