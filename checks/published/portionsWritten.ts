import { ecoliEstimate, type Portion, type Wells } from '../../packages/engine/src/water/waterTests/index.ts';

const mL_per_100mL = 100;

export const tubes = (
  positive: readonly number[],
  of: readonly number[],
  volume_mL: readonly number[],
): readonly Wells[] =>
  positive.map((positive_count, i) => ({
    kind: 'wells',
    volume_mL: volume_mL[i]!,
    wells_count: of[i]!,
    positive_count,
  }));
export const plates = (colonies: readonly number[], volume_mL: readonly number[]): readonly Portion[] =>
  colonies.map((colonies_count, i) => ({ kind: 'plate', volume_mL: volume_mL[i]!, colonies_count }));
export const uncountable = (limit_count: number, volume_mL: readonly number[]): readonly Portion[] =>
  volume_mL.map((own) => ({ kind: 'uncountable', volume_mL: own, limit_count }));

/** In one mL, or one gram, which is the same to the arithmetic. */
export const perOne = (told: number | null) => told! / mL_per_100mL;
export const count = (portions: readonly Portion[]) => perOne(ecoliEstimate(portions)!.ecoli_per_100mL);
export const low = (portions: readonly Portion[]) => perOne(ecoliEstimate(portions)!.lowest_per_100mL);
export const high = (portions: readonly Portion[]) => perOne(ecoliEstimate(portions)!.highest_per_100mL);
export const rarity = (portions: readonly Portion[]) => ecoliEstimate(portions)!.rarity_fraction;
/** Rounded to two figures, as tables print. */
export const twoFigures = (value: number) => Number(value.toPrecision(2));

export const inputs = (positive: readonly number[], of: readonly number[], volume_mL: readonly number[]) => ({
  positive,
  of,
  volume_mL,
});
