import { type CatalogueTank, catalogueTanks, outletHeight_m } from './catalogue.ts';
import { type Chance, chanceFor } from './chance.ts';
import type { Row } from './draft.ts';
import type { Particular } from './particulars.ts';
import { type Lot, type MadeSite, wantedOf } from './sites.ts';

/** A site's roofs, diverters and tanks, as rows with every needed cell filled. */
export interface Building {
  readonly roofs: readonly Row[];
  readonly diverters: readonly Row[];
  readonly tanks: readonly Row[];
}

/** How much roof and how much tank a lot gets. Tuned so that most ample sites hold and most lean ones do not. */
interface Measure {
  /** Guttered plan area for each litre a day wanted [m2 per L/day]. */
  readonly roof: readonly [number, number];
  /** Days of all wanted litres that the tanks hold [day]. */
  readonly cover_days: readonly [number, number];
}

const measures: Readonly<Record<Lot, Measure>> = {
  ample: { roof: [0.56, 0.7], cover_days: [74, 94] },
  edge: { roof: [0.43, 0.52], cover_days: [42, 56] },
  littleTank: { roof: [0.42, 0.55], cover_days: [16, 28] },
  littleRoof: { roof: [0.17, 0.22], cover_days: [60, 80] },
};

/** Mostly sheet iron, as along many coasts. */
const coverings = [
  ...Array.from({ length: 8 }, () => ({ material: 'corrugatedMetal', runoffFraction: 0.85 })),
  { material: 'tile', runoffFraction: 0.75 },
  { material: 'concrete', runoffFraction: 0.7 },
];

/** First flush the diverters are made for, as depth on the plan roof [mm]; the same as the programme's default. */
const firstFlush_mm = 0.5;

/** Of two houses with a tank each: their shares of the roof and of the people [fraction]. */
const houses = [0.6, 0.4] as const;

/** What is built larger where people are known to become more, and, in tank alone, where a clinic is promised more [ratio]. Ours. */
const [forGrowth, forClinic] = [1.2, 1.8] as const;

/** Height of a settling tank's draw-off [m]. */
const drawOffHeight_m = 0.25;

/** Makes the roofs, diverters and tanks of a site. */
export function buildingOf(seed: number, site: MadeSite, particular?: Particular): Building {
  const chance = chanceFor(seed, `building ${site.siteId}`);
  const wanted_L_per_day = site.people * wantedOf(site.kind) * (particular === 'growing' ? forGrowth : 1);
  const measure = measures[site.lot];
  const guttered_m2 = wanted_L_per_day * chance.between(...measure.roof);
  const apart = particular === 'tanksApart';
  const { roofs, diverters } = roofsOf(chance, site.siteId, guttered_m2, apart);
  const wanted_L = wanted_L_per_day * chance.between(...measure.cover_days) * (site.kind === 'clinic' ? forClinic : 1);
  if (apart) {
    const led = roofs.map((roof, i) => ({ ...roof, tankId: `T${i + 1}` }));
    return { roofs: led, diverters, tanks: tanksApart(site.siteId, wanted_L) };
  }
  const tanks = tanksOf(site.siteId, wanted_L);
  return { roofs, diverters, tanks: particular === 'settles' ? [...tanks, settlingTank(tanks)] : tanks };
}

function roofsOf(chance: Chance, siteId: string, guttered_m2: number, apart: boolean) {
  const shares = guttered_m2 < 220 && !apart ? [1] : houses;
  const made = shares.map((share, i) => roofOf(chance, { siteId, roofId: `R${i + 1}` }, guttered_m2 * share));
  return { roofs: made.map(({ roof }) => roof), diverters: made.map(({ diverter }) => diverter) };
}

function roofOf(chance: Chance, key: { siteId: string; roofId: string }, guttered_m2: number) {
  const gutteredFraction = chance.pick([1, 1, 0.95, 0.9, 0.85, 0.8, 0.75, 0.7, 0.6, 0.5]);
  const { material, runoffFraction } = chance.pick(coverings);
  // A poorer covering is given more roof, so that the lot decides and not the covering.
  const plan_m2 = ((guttered_m2 / gutteredFraction) * 0.85) / runoffFraction;
  const ratio = chance.between(1.8, 3.4);
  const width_m = tenths(Math.max(Math.sqrt(plan_m2 / ratio), plan_m2 / 58));
  const length_m = tenths(plan_m2 / width_m);
  const byArea = chance.share() < 0.15;
  const sides = byArea
    ? { length_m: null, width_m: null, roofPlanArea_m2: Math.round(plan_m2) }
    : { length_m, width_m, roofPlanArea_m2: null };
  const byChamber = chance.share() < 0.4;
  const diverter = byChamber
    ? { firstFlush_mm: null, chamber_L: Math.round(firstFlush_mm * plan_m2 * gutteredFraction) }
    : { firstFlush_mm, chamber_L: null };
  return {
    roof: { ...key, ...sides, material, runoffFraction, gutteredFraction },
    diverter: { ...key, ...diverter, drainHole: 'open' },
  };
}

/** The fewest and best fitting tanks of one size, joined at the foot. */
function tanksOf(siteId: string, wanted_L: number): Row[] {
  const { part, count } = bestFit(wanted_L);
  return Array.from({ length: count }, (_, i) => ({
    ...tankRow(siteId, i + 1, part),
    joinedTo: i === 0 ? null : 'T1',
  }));
}

/** A tank for each of two houses, each with the people of its house. */
function tanksApart(siteId: string, wanted_L: number): Row[] {
  return houses.map((share, i) => ({
    ...tankRow(siteId, i + 1, bestFit(share * wanted_L, 1).part),
    joinedTo: null,
    peopleFraction: share,
  }));
}

/** A first tank in which dirt settles, as high as the others; the volume written on it is not what it gives. */
function settlingTank(stored: readonly Row[]): Row {
  const own = { tankId: `T${stored.length + 1}`, nominal_L: null, outletHeight_m: drawOffHeight_m };
  return { ...stored[0]!, ...own, joinedTo: 'T1', role: 'settling' };
}

function tankRow(siteId: string, number: number, part: CatalogueTank): Row {
  return {
    siteId,
    tankId: `T${number}`,
    partId: part.partId,
    nominal_L: part.volume_L,
    outletHeight_m,
    overflowHeight_m: part.overflowHeight_m,
    diameter_m: part.diameter_m,
  };
}

function bestFit(wanted_L: number, most = 4): { part: CatalogueTank; count: number } {
  let best = {
    part: catalogueTanks.at(-1)!,
    count: Math.max(1, Math.round(wanted_L / catalogueTanks.at(-1)!.volume_L)),
  };
  let least = Infinity;
  for (const part of catalogueTanks) {
    for (let count = 1; count <= most; count++) {
      const misfit = Math.abs((part.volume_L * count) / wanted_L - 1) + 0.03 * (count - 1);
      if (misfit < least) [best, least] = [{ part, count }, misfit];
    }
  }
  return best;
}

function tenths(value: number): number {
  return Math.round(value * 10) / 10;
}
