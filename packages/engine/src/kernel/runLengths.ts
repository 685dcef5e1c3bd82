import type { DownpipeFacts, GutterFacts, RoofFacts } from './buildingFacts.ts';
import { roofSides, type SideFrom } from './roofSides.ts';

/** How the length of a run is known: measured; made from measures of the roof; or assumed, from a proportion or from what is beside it. */
export const runOrigins = ['measured', 'madeFrom', 'assumed'] as const;
export type RunOrigin = (typeof runOrigins)[number];

/** How long a gutter, a downpipe or a pipe is, and how that is known. */
export interface RunLength {
  readonly length_m: number;
  readonly from: RunOrigin;
}

/** A gutter or eave shorter than this was mistyped [m]. Ours. */
export const leastRun_m = 0.1;

/**
 * How long are the eaves a gutter may hang from, each by itself? A roof of one slope has one, along its length; a hipped roof four, around it;
 * any other two, along its length.
 *
 * @param roof - the roof as surveyed: form and sides [m]
 * @returns each eave [m], and how it is known; null where nothing is known of the roof's sides
 * @law a longer or wider roof never has shorter eaves
 * @definition ours: docs/decisions/0243-lengths-of-runs.md
 */
export function eaveRuns(
  roof: Pick<RoofFacts, 'length_m' | 'width_m' | 'roofPlanArea_m2' | 'form'>,
): readonly RunLength[] | null {
  const sides = roofSides(roof);
  if (sides === null) return null;
  // One side alone, in the column of the width, may be either.
  const isOneSide = sides.widthFrom === 'sideInProportion' && roof.length_m === null;
  const along: RunLength = { length_m: sides.length_m, from: isOneSide ? 'assumed' : originOf(sides.lengthFrom) };
  const across: RunLength = { length_m: sides.width_m, from: originOf(sides.widthFrom) };
  if (roof.form === 'oneSlope') return [along];
  return roof.form === 'hip' ? [along, along, across, across] : [along, along];
}

function originOf(from: SideFrom): RunOrigin {
  return from === 'measured' || from === 'madeFrom' ? from : 'assumed';
}

/**
 * How much gutter does a share of a roof take? The share of its eaves' length, all together.
 *
 * @param roof - the roof as surveyed: form and sides [m]
 * @param guttered_fraction - the share of its plan area that is to drain to gutters [fraction], 0 to 1
 * @returns metres of gutter [m], known as well as the least known of its eaves; null where nothing is known of the roof's sides
 * @definition ours: docs/decisions/0243-lengths-of-runs.md
 */
export function gutterFor(roof: Parameters<typeof eaveRuns>[0], guttered_fraction: number): RunLength | null {
  const eaves = eaveRuns(roof);
  if (eaves === null) return null;
  const length_m = guttered_fraction * eaves.reduce((sum, eave) => sum + eave.length_m, 0);
  return { length_m, from: runOrigins.findLast((one) => eaves.some(({ from }) => from === one)) ?? 'measured' };
}

/**
 * How long is a gutter? As measured; else, assumed, as one eave of its roof along its length.
 *
 * @param gutter - the gutter as surveyed [m]; null where none was
 * @param eave_m - an eave of its roof [m]; null where that is not known
 * @returns its length [m], and how it is known; null where neither is known
 * @definition ours: docs/decisions/0243-lengths-of-runs.md
 * @example
 * gutterRun({ length_m: 7 }, 9)?.length_m // → 7
 * gutterRun({ length_m: null }, 9)?.from // → 'assumed'
 * gutterRun(null, null) // → null
 */
export function gutterRun(gutter: Pick<GutterFacts, 'length_m'> | null, eave_m: number | null): RunLength | null {
  const length_m = gutter?.length_m ?? null;
  if (length_m !== null && length_m >= leastRun_m && length_m < Infinity) return { length_m, from: 'measured' };
  return eave_m === null ? null : { length_m: eave_m, from: 'assumed' };
}

/**
 * How long is a downpipe? As measured; else, assumed, as the longest of its roof; else as its eave is high.
 *
 * @param downpipe - the downpipe as surveyed [m]; null where none was
 * @param ofRoof - the downpipes of its roof [m]
 * @param eaveHeight_m - from the ground to the gutter [m]; null where that is not known
 * @returns its length [m], and how it is known; null where nothing is
 * @definition ours: docs/decisions/0243-lengths-of-runs.md
 * @example
 * downpipeRun({ length_m: null }, [{ length_m: 2 }, { length_m: 3 }], 2.6)?.length_m // → 3
 * downpipeRun(null, [], 2.6)?.from // → 'assumed'
 * downpipeRun(null, [], null) // → null
 */
export function downpipeRun(
  downpipe: Pick<DownpipeFacts, 'length_m'> | null,
  ofRoof: readonly Pick<DownpipeFacts, 'length_m'>[],
  eaveHeight_m: number | null,
): RunLength | null {
  if (downpipe !== null && downpipe.length_m !== null) return { length_m: downpipe.length_m, from: 'measured' };
  const measured = ofRoof.flatMap(({ length_m }) => (length_m === null ? [] : [length_m]));
  const length_m = measured.length > 0 ? Math.max(...measured) : eaveHeight_m;
  return length_m === null ? null : { length_m, from: 'assumed' };
}
