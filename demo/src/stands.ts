import { type Chance, chanceFor } from './chance.ts';
import type { Row } from './draft.ts';

/** What a stand is made for. */
interface Tank {
  readonly diameter_m: number;
  readonly height_m: number;
  readonly mass_kg: number;
}

/** Ground as crews of the demo find it, and what it is reckoned to bear [kPa]: well under what any source of ours allows. Invented. */
const grounds = [
  { groundClass: 'denseGravel', bears_kPa: 95 },
  { groundClass: 'denseSand', bears_kPa: 85 },
  { groundClass: 'stiffClay', bears_kPa: 65 },
  { groundClass: 'stiffClay', bears_kPa: 65 },
  { groundClass: 'firmClay', bears_kPa: 60 },
  { groundClass: 'firmClay', bears_kPa: 60 },
  { groundClass: 'looseSand', bears_kPa: 42 },
  { groundClass: 'softRock', bears_kPa: 150 },
] as const;

/** Engineers who sign for stands: nobody real. Without a comma, as one table of the demo is written as plain text. */
const signers = ['R. Tolvane', 'S. Quimbray', 'I. Desmaro'] as const;

/** From this height on a stand is a frame on pads; lower, a base of stones and concrete [m]. Ours. */
const frameFrom_m = 0.55;
/** Wide enough to pass around the tank [m]. Ours. */
const rim_m = 0.25;
/** Stones in mortar [kg/m3]. From memory. */
const masonry_kg_per_m3 = 2200;
/** What a frame and its feet weigh for each square metre that wind finds [kg/m2]. Invented, so that it stands in a gale. */
const frame_kg_per_m2 = 260;
const gravity_m_per_s2 = 9.81;

/**
 * The stand of a tank, and who signed for it. Tanks that stand on the ground have none.
 *
 * @param tank - sizes [m] and mass [kg]
 * @param standHeight_m - height of the stand
 * @param site - chance of the site, its ground, and whether all is signed
 * @returns cells of the tank
 */
export function standOf(tank: Tank, standHeight_m: number, site: SiteGround): Row {
  if (standHeight_m <= 0) return {};
  const isFrame = standHeight_m >= frameFrom_m;
  const side_m = tenths(tank.diameter_m + 2 * rim_m);
  const standMass_kg = Math.round(
    isFrame ? frame_kg_per_m2 * tank.diameter_m * tank.height_m : side_m ** 2 * standHeight_m * masonry_kg_per_m3,
  );
  const full_kg = 1000 * (Math.PI / 4) * tank.diameter_m ** 2 * tank.height_m + tank.mass_kg + standMass_kg;
  const { groundClass, bears_kPa } = site.ground;
  const pads = !isFrame ? 1 : tank.diameter_m > 2.5 ? 9 : 4;
  const wanted_m2 = (full_kg * gravity_m_per_s2) / 1000 / (bears_kPa * site.pressure_fraction);
  const padSide_m = isFrame ? Math.ceil(Math.sqrt(wanted_m2 / pads) * 20) / 20 : side_m;
  const baseWidth_m = isFrame ? tenths(tank.diameter_m + 0.3) : side_m;
  const signed = site.signedOn === null ? {} : { signedBy: site.signedBy, signedOn: site.signedOn };
  return { standMass_kg, groundClass, pads, padSide_m, baseWidth_m, fastened: site.isFastened, ...signed };
}

/** Ground and signature of one site. */
export interface SiteGround {
  readonly ground: (typeof grounds)[number];
  /** Meant share of what the ground bears [fraction]. */
  readonly pressure_fraction: number;
  readonly signedBy: string;
  /** Null: not said. */
  readonly isFastened: boolean | null;
  /** Null: nobody signed. */
  readonly signedOn: string | null;
}

/** How often nobody has signed, how often pads are small for their ground, and how often nobody says that tanks are fastened [fraction]. Invented. */
const [unsigned_fraction, small_fraction, unsaid_fraction] = [0.2, 0.04, 0.03] as const;

/** The ground of a site. */
export function groundOf(seed: number, siteId: string, clean: boolean): SiteGround {
  const chance = chanceFor(seed, `ground ${siteId}`);
  const ground = chance.pick(grounds);
  const isSmall = chance.share() < small_fraction;
  const isSigned = chance.share() >= unsigned_fraction;
  const signedBy = chance.pick(signers);
  const signedOn = dayOf2025(chance);
  return {
    ground,
    pressure_fraction: isSmall && !clean ? 1.05 : 0.8,
    signedBy,
    isFastened: clean || chance.share() >= unsaid_fraction ? true : null,
    signedOn: isSigned || clean ? signedOn : null,
  };
}

function dayOf2025(chance: Chance): string {
  const two = (value: number) => String(value).padStart(2, '0');
  return `2025-${two(chance.whole(2, 11))}-${two(chance.whole(1, 28))}`;
}

const tenths = (value: number) => Math.round(value * 10) / 10;
