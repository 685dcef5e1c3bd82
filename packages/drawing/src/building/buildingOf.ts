import {
  cylinderVolume_L,
  L_per_m3,
  type SiteFacts,
  type TankFacts,
  tankGroups,
  unmeasuredRoof,
  unmeasuredTank,
} from '@eavewell/engine';
import type { BodyOfWater, Building, BuiltRoof, BuiltTank, Measure } from './building.ts';
import { builtRoof } from './builtRoof.ts';
import { builtStops } from './builtStops.ts';
import {
  mostDrawn_count,
  overTank_m,
  standBeyond_m,
  usualFreeboard_m,
  usualOutletHeight_m,
  usualOverflowBore_m,
  usualSlenderness,
  usualStandHeight_m,
  usualTank_L,
} from './constants.ts';
import { countedOr, madeFrom, measured, measuredOr, usual } from './measures.ts';

/**
 * Which measures is a site drawn by? What was measured stands; what can be made from it is made; the rest is of usual size
 * and says so. A site without a roof or a tank gets one of each of which nothing is known.
 *
 * @param site - the site's facts
 * @returns its bodies of water, each with its tanks and the roofs that lead to them [m, L, degrees, fraction]
 * @definition ours: docs/methods/drawing.md
 */
export function buildingOf(site: SiteFacts): Building {
  const groups = tankGroups(site.tanks.length > 0 ? site.tanks : [unknownTank]);
  const roofs = (site.roofs.length > 0 ? site.roofs : [unknownRoof]).map((roof) => builtRoof(site, roof));
  const homeOf = (roof: BuiltRoof) => {
    const home = groups.findIndex(({ tankIds }) => roof.tankId !== null && tankIds.includes(roof.tankId));
    return Math.max(0, home);
  };
  const bodies = groups.map(({ tankIds, tanks }, index): BodyOfWater => {
    const settlingFirst = [...tanks].sort((a, b) => Number(b.role === 'settling') - Number(a.role === 'settling'));
    const built = settlingFirst.map(builtTank);
    const own = roofs.filter((roof) => homeOf(roof) === index).map((roof) => overTanks(roof, built));
    return { tankIds, tanks: built, roofs: own };
  });
  return { bodies, stops: builtStops(site) };
}

/** An eave that nobody measured is drawn high enough for the tanks to fill. */
function overTanks(roof: BuiltRoof, tanks: readonly BuiltTank[]): BuiltRoof {
  if (roof.eaveHeight_m.how !== 'usual') return roof;
  const full = tanks.map(({ standHeight_m, overflowHeight_m }) => standHeight_m.value + overflowHeight_m.value);
  return { ...roof, eaveHeight_m: usual(Math.max(roof.eaveHeight_m.value, ...full.map((one) => one + overTank_m))) };
}

/**
 * A tank from what is known of it: two of diameter, height and volume make the third; overflow and outlet follow.
 */
function builtTank(tank: TankFacts): BuiltTank {
  const { tankId, role } = tank;
  const stated_L = positive(tank.nominal_L) ?? positive(tank.partVolume_L);
  const outletHeight_m = measuredOr(tank.outletHeight_m, usualOutletHeight_m);
  const overflow_m = above(tank.overflowHeight_m, outletHeight_m.value);
  const top_m = above(positive(tank.height_m), outletHeight_m.value);
  const diameter_m = diameterOf(positive(tank.diameter_m), stated_L, outletHeight_m.value, overflow_m, top_m);
  const water_m = (stated_L ?? usualTank_L) / cylinderVolume_L(diameter_m.value, 1);
  const how = stated_L === null ? 'usual' : 'madeFrom';
  const filled_m = outletHeight_m.value + water_m;
  let overflowHeight_m: Measure = { value: filled_m, how };
  if (overflow_m !== null) overflowHeight_m = measured(overflow_m);
  else if (top_m !== null && (stated_L === null || filled_m > top_m))
    overflowHeight_m = madeFrom(underTop(outletHeight_m.value, top_m));
  const height_m: Measure =
    top_m === null
      ? {
          value: overflowHeight_m.value + usualFreeboard_m,
          how: overflowHeight_m.how === 'usual' ? 'usual' : 'madeFrom',
        }
      : { value: Math.max(top_m, overflowHeight_m.value), how: 'measured' };
  const between_L = cylinderVolume_L(diameter_m.value, overflowHeight_m.value - outletHeight_m.value);
  const areMeasured = tank.outletHeight_m !== null && overflow_m !== null && positive(tank.diameter_m) !== null;
  const usable_L: Measure =
    areMeasured || stated_L === null
      ? { value: between_L, how: areMeasured ? 'madeFrom' : 'usual' }
      : { value: stated_L, how: 'measured' };
  const standHeight_m = measuredOr(tank.standHeight_m, usualStandHeight_m);
  return {
    ...{ tankId, role, diameter_m, height_m, outletHeight_m, overflowHeight_m, standHeight_m, usable_L },
    ...fittingsOf(tank, diameter_m.value, height_m.value),
  };
}

/** Its inlet, overflow, cells and stand. */
function fittingsOf(tank: TankFacts, diameter_m: number, height_m: number) {
  const inlet_m = positive(tank.inletHeight_m);
  const bore_m = positive((tank.overflowBore_mm ?? 0) / mm_per_m);
  const side_m = positive(tank.padSide_m);
  const pads = countedOr(tank.pads_count, 4, mostDrawn_count);
  const base_m = diameter_m + 2 * standBeyond_m;
  return {
    // An inlet far over its tank was mistyped.
    inletHeight_m: inlet_m !== null && inlet_m <= height_m + usualSlenderness ? measured(inlet_m) : null,
    overflowBore_m: bore_m === null ? usual(usualOverflowBore_m) : measured(bore_m),
    overflows_count: countedOr(tank.overflows_count, 1, mostDrawn_count),
    isOverflowScreened: tank.overflowScreen === 'screened',
    cells_count: countedOr(tank.cells_count, 1, mostDrawn_count).value,
    stand: {
      ground: tank.groundClass,
      pads: side_m === null || pads.how === 'usual' ? null : { count: pads.value, side_m },
      base_m: measuredOr(positive(tank.baseWidth_m), base_m, 0.1),
    },
  };
}

const mm_per_m = 1000;

/** As measured; else from the volume and the height of its water; else from the volume, as tall as such tanks usually are. */
function diameterOf(
  given_m: number | null,
  stated_L: number | null,
  outlet_m: number,
  overflow_m: number | null,
  top_m: number | null,
): Measure {
  if (given_m !== null) return { value: given_m, how: 'measured' };
  const volume_m3 = (stated_L ?? usualTank_L) / L_per_m3;
  const to_m = overflow_m ?? (top_m === null ? null : underTop(outlet_m, top_m));
  const slender_m = Math.cbrt((4 * volume_m3) / (Math.PI * usualSlenderness));
  if (stated_L === null) return usual(to_m === null ? slender_m : (to_m - outlet_m) / usualSlenderness);
  return madeFrom(to_m === null ? slender_m : Math.sqrt((4 * volume_m3) / (Math.PI * (to_m - outlet_m))));
}

/** Where water usually stands at most under the top of a wall. */
const underTop = (outlet_m: number, top_m: number) => Math.max((outlet_m + top_m) / 2, top_m - usualFreeboard_m);

const positive = (value: number | null | undefined): number | null =>
  value !== null && value !== undefined && value > 0.001 && value < Infinity ? value : null;

/** Heights nearer to each other were mistyped: no tank is so shallow [m]. */
const leastWater_m = 0.02;

const above = (value: number | null, floor: number): number | null =>
  value !== null && value > floor + leastWater_m ? value : null;

const unknownTank: TankFacts = { ...unmeasuredTank, tankId: '' };

const unknownRoof: SiteFacts['roofs'][number] = { ...unmeasuredRoof, roofId: '' };
