import { type GermBand, germBands } from '../../kernel/index.ts';
import { bandEnds_per_100mL, classEnds_per_100mL, inspectionBands, inspectionQuestions_count } from './constants.ts';

/** Which bands an inspection's score is told in: four of them, or the older three. */
export type InspectionBandSet = keyof typeof inspectionBands;

/** A sanitary inspection out of ten. */
export interface InspectionScore {
  readonly score_count: number;
  readonly band: GermBand;
}

/** The older classes of E. coli. */
export type EcoliClass = 'A' | 'B' | 'C' | 'D' | 'E';

/**
 * In which band is a count of E. coli? Bands are half-open, so that every number that a count by likelihood may be has one: less than 1, to 10, to 100, more.
 *
 * @param ecoli_per_100mL - the count [per 100 mL], 0 or more
 * @returns the band
 * @law a higher count is never in a better band
 * @source who-gdwq-2017, table 5.4 (from memory); that bands are half-open is ours: docs/decisions/0215-half-open-bands.md
 * @example
 * [0.5, 1, 10, 10.9, 100, 101].map(ecoliBand) // → ['low', 'intermediate', 'intermediate', 'high', 'high', 'veryHigh']
 */
export function ecoliBand(ecoli_per_100mL: number): GermBand {
  if (ecoli_per_100mL < bandEnds_per_100mL.lowBelow) return 'low';
  if (ecoli_per_100mL <= bandEnds_per_100mL.intermediateUpTo) return 'intermediate';
  return ecoli_per_100mL <= bandEnds_per_100mL.highUpTo ? 'high' : 'veryHigh';
}

/**
 * In which of the older classes is a count of E. coli? Half-open as the bands.
 *
 * @param ecoli_per_100mL - the count [per 100 mL], 0 or more
 * @returns A to E
 * @source lloyd-bartram-1991, classes of water supplies (from memory)
 * @example
 * [0, 1, 10.5, 1000, 1001].map(ecoliClass) // → ['A', 'B', 'C', 'D', 'E']
 */
export function ecoliClass(ecoli_per_100mL: number): EcoliClass {
  if (ecoli_per_100mL < classEnds_per_100mL.aBelow) return 'A';
  if (ecoli_per_100mL <= classEnds_per_100mL.bUpTo) return 'B';
  if (ecoli_per_100mL <= classEnds_per_100mL.cUpTo) return 'C';
  return ecoli_per_100mL <= classEnds_per_100mL.dUpTo ? 'D' : 'E';
}

/**
 * What is the score of a sanitary inspection out of ten, and in which band is it? A list of more or fewer than ten questions is brought to ten and rounded up.
 *
 * @param risks_count - questions answered with a risk [count], whole, 0 to all
 * @param questions_count - questions asked [count], whole, 1 or more
 * @param bandSet - the set of bands it is told in: the four of today, or the older three
 * @returns score_count out of ten [count] and the band; null where the numbers are none
 * @law more risks are never in a better band
 * @source who-sanitary-inspection, scores (from memory); lloyd-bartram-1991 (from memory)
 */
export function inspectionBand(
  risks_count: number,
  questions_count: number,
  bandSet: InspectionBandSet = 'four',
): InspectionScore | null {
  const isWhole = Number.isInteger(risks_count) && Number.isInteger(questions_count);
  if (!isWhole || risks_count < 0 || questions_count < 1 || risks_count > questions_count) return null;
  const score_count = Math.ceil((risks_count * inspectionQuestions_count) / questions_count);
  return { score_count, band: inspectionBands[bandSet].find(({ upTo_count }) => score_count <= upTo_count)!.band };
}

/**
 * How pressing is it, by the count and by the inspection? The worse of the two; where one is not known, the other.
 *
 * @param ecoli - band of the count; null where there is none
 * @param inspection - band of the inspection; null where there is none
 * @returns the band; null where neither is known
 * @law never better than either
 * @source who-gdwq-2017, table 5.4 (from memory); that it is the worse of the two is our reading: docs/decisions/0215-half-open-bands.md
 * @example
 * combinedPriority('low', 'veryHigh') // → 'veryHigh'
 * combinedPriority('intermediate', null) // → 'intermediate'
 */
export function combinedPriority(ecoli: GermBand | null, inspection: GermBand | null): GermBand | null {
  if (ecoli === null || inspection === null) return ecoli ?? inspection;
  return germBands.indexOf(ecoli) >= germBands.indexOf(inspection) ? ecoli : inspection;
}
