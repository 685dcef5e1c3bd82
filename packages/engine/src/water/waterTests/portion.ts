import { leastPortion_mL, mostCounted_count, mostPortion_mL } from './constants.ts';

/** Tubes or wells of one volume, of which some turned positive. One well is a test for presence or absence. */
export interface Wells {
  readonly kind: 'wells';
  /** Of the sample itself, in each. */
  readonly volume_mL: number;
  readonly wells_count: number;
  readonly positive_count: number;
}

/** A plate or membrane whose colonies could be counted. */
export interface Plate {
  readonly kind: 'plate';
  readonly volume_mL: number;
  readonly colonies_count: number;
}

/** A plate with so many colonies that nobody could count them: this many, or more. */
export interface UncountablePlate {
  readonly kind: 'uncountable';
  readonly volume_mL: number;
  readonly limit_count: number;
}

/** A part of a sample that was looked at for E. coli. */
export type Portion = Wells | Plate | UncountablePlate;

/** What makes a portion unusable. */
export type PortionFault = 'volume' | 'count' | 'moreThanAll';

/**
 * A test that tells only whether there were any E. coli in a volume.
 *
 * @param volume_mL - how much was looked at [mL], above 0
 * @param isFound - were there any?
 * @returns the portion: one well of that volume [mL]
 * @definition one well
 */
export function presenceAbsence(volume_mL: number, isFound: boolean): Wells {
  return { kind: 'wells', volume_mL, wells_count: 1, positive_count: isFound ? 1 : 0 };
}

/**
 * What is wrong with a portion as it was written down?
 *
 * @param portion - volume [mL] and counts
 * @returns `volume` where it is not from a millionth of a mL to a million, `count` where something counted is no whole number of 0 (1 for wells and
 *   limits) to a million,
 *   `moreThanAll` where more wells are positive than there were; null where it can be used
 * @definition ours
 */
export function portionFault(portion: Portion): PortionFault | null {
  if (!(portion.volume_mL >= leastPortion_mL && portion.volume_mL <= mostPortion_mL)) return 'volume';
  const isCount = (value: number, least: number) =>
    Number.isInteger(value) && value >= least && value <= mostCounted_count;
  if (portion.kind === 'plate') return isCount(portion.colonies_count, 0) ? null : 'count';
  if (portion.kind === 'uncountable') return isCount(portion.limit_count, 1) ? null : 'count';
  if (!isCount(portion.wells_count, 1) || !isCount(portion.positive_count, 0)) return 'count';
  return portion.positive_count > portion.wells_count ? 'moreThanAll' : null;
}
