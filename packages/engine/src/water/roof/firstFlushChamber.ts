import {
  boreArea_m2,
  type DiverterFacts,
  emptyingTime_s,
  orificeCoefficient_ratio,
  orificeFlow_m3_per_s,
} from '../../kernel/index.ts';
import { loadHalvedBy_mm } from './constants.ts';

/** A first-flush chamber: what it should hold, what it holds, and how it empties. */
export interface FirstFlushChamber {
  /** For the depth wanted on this roof. */
  readonly chamberWanted_L: number;
  /** As surveyed, or as the stated depth makes it; null where neither is known. */
  readonly chamber_L: number | null;
  /** What it lets go of a spell: 0 where its drain hole is blocked, as then it stays full. */
  readonly diverted_mm: number;
  readonly loadLeft_fraction: number;
  /** Height of the water in it when it is full; null where its bore is not known. */
  readonly head_m: number | null;
  /** Until it is empty; null where a measure is missing or the hole is blocked. */
  readonly emptying_h: number | null;
  /** Rain that just keeps up with its hole while it is full: harmless as long as it is little. */
  readonly leak_mm_per_h: number | null;
}

/**
 * What does a first-flush chamber do for its roof, and when is it empty again? It should hold the wanted depth on the area that drains to it. Full, it
 * stands as high as its bore makes it, and runs out through its drain hole by Torricelli's law. A blocked hole leaves it full: nothing more is let go.
 *
 * @param diverter - as surveyed: chamber_L [L], firstFlush_mm [mm], chamberBore_mm and drainHole_mm [mm], each null where not known; drainHole
 * @param drainedArea_m2 - plan area × guttered share [m2], above 0
 * @param wanted_mm - the depth to be let go [mm], 0 or more
 * @returns volumes [L], depth [mm], load left [fraction], head [m], emptying time [h] and leak [mm/h]
 * @law load left falls as the depth grows; the mean flow out of it is half of the first
 * @source martinson-thomas-2005 (load left, a rule of thumb); torricelli-1644 (emptying)
 */
export function firstFlushChamber(
  diverter: DiverterFacts,
  drainedArea_m2: number,
  wanted_mm: number,
): FirstFlushChamber {
  const chamber_L = chamberOf_L(diverter, drainedArea_m2);
  const isBlocked = diverter.drainHole === 'blocked';
  const diverted_mm = isBlocked || chamber_L === null ? 0 : chamber_L / drainedArea_m2;
  const bore_mm = isAboveZero(diverter.chamberBore_mm) ? diverter.chamberBore_mm : null;
  const head_m = chamber_L === null || bore_mm === null ? null : chamberHeight_m(chamber_L, bore_mm);
  const hole_m2 = isAboveZero(diverter.drainHole_mm) ? boreArea_m2(diverter.drainHole_mm / 1000) : null;
  const runs = head_m !== null && hole_m2 !== null && !isBlocked;
  return {
    chamberWanted_L: wanted_mm * drainedArea_m2,
    chamber_L,
    diverted_mm,
    loadLeft_fraction: loadLeft_fraction(diverted_mm),
    head_m,
    emptying_h: runs
      ? emptyingTime_s(boreArea_m2(bore_mm! / 1000), hole_m2, head_m, 0, orificeCoefficient_ratio) / 3600
      : null,
    leak_mm_per_h: runs
      ? (orificeFlow_m3_per_s(hole_m2, head_m, orificeCoefficient_ratio) * 1000 * 3600) / drainedArea_m2
      : null,
  };
}

/** The chamber as measured; else what the stated depth comes to on this roof. */
function chamberOf_L({ chamber_L, firstFlush_mm }: DiverterFacts, drainedArea_m2: number): number | null {
  if (chamber_L !== null && chamber_L >= 0) return chamber_L;
  return firstFlush_mm !== null && firstFlush_mm >= 0 ? firstFlush_mm * drainedArea_m2 : null;
}

function isAboveZero(value: number | null): value is number {
  return value !== null && value > 0 && value < Infinity;
}

/**
 * How tall is an upright pipe that holds so much?
 *
 * @param chamber_L - what it holds [L], 0 or more
 * @param bore_mm - inside diameter [mm], above 0
 * @returns height [m]
 * @definition volume ÷ area of the bore
 * @example
 * chamberHeight_m(7.853981633974483, 100) // → 1
 */
export function chamberHeight_m(chamber_L: number, bore_mm: number): number {
  return chamber_L / 1000 / boreArea_m2(bore_mm / 1000);
}

/**
 * Which share of the dirt on a roof still comes down once so much has been let go? Half of it goes with each millimetre: a rule of thumb from
 * measured roofs, no barrier one may count on.
 *
 * @param diverted_mm - depth let go [mm], 0 or more
 * @returns share of the load left [fraction]
 * @source martinson-thomas-2005, abstract
 * @example
 * loadLeft_fraction(0) // → 1
 * loadLeft_fraction(2) // → 0.25
 */
export function loadLeft_fraction(diverted_mm: number): number {
  return 2 ** (-diverted_mm / loadHalvedBy_mm);
}
