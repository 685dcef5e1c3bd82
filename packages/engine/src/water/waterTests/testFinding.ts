import type { DayIndex, GermBand, TestPortion, WaterTest, WaterTestFinding } from '../../kernel/index.ts';
import { ecoliBand } from './bands.ts';
import { foundAnyway_per_100mL, told_mL } from './constants.ts';
import { type EcoliEstimate, ecoliEstimate } from './ecoliEstimate.ts';
import { looked_mL } from './likelihood.ts';
import type { Portion } from './portion.ts';
import { type PortionsRead, portionsOf } from './portionsOf.ts';

/** A sample as it was read: what is found in it, and what of it could not be used. */
export interface TestRead {
  readonly finding: WaterTestFinding;
  readonly read: PortionsRead;
  readonly estimate: EcoliEstimate | null;
  /** Water looked at in portions that could be used. */
  readonly looked_mL: number;
  /** None were found, in as much water as counts are told for. */
  readonly isClean: boolean;
}

/**
 * Reads one sample. Where a portion cannot be used, the others count only if they found E. coli: none found in what is left proves nothing. A portion that cannot be
 * used and yet says that some were found is believed in that.
 */
export function testFinding(test: WaterTest, handOverDay: DayIndex | null): TestRead {
  const read = portionsOf(test.portions);
  const { portions, faulty } = read;
  const whole = ecoliEstimate(portions);
  const estimate = faulty.length > 0 && whole?.reach === 'below' ? null : whole;
  const looked = looked_mL(portions);
  const figures = estimate === null && faulty.some(hasSigns) ? foundUncounted : figuresOf(estimate, portions, looked);
  const finding: WaterTestFinding = {
    ...{ testId: test.testId, takenOn: test.takenOn, point: test.point },
    ...figures,
    isBeforeHandOver: handOverDay !== null && test.takenOn < handOverDay,
  };
  return { finding, read, estimate, looked_mL: looked, isClean: estimate?.reach === 'below' && looked >= told_mL };
}

function hasSigns({ positive_count, colonies_count, uncountable_count }: TestPortion): boolean {
  return (positive_count ?? 0) > 0 || (colonies_count ?? 0) > 0 || uncountable_count > 0;
}

type Figures = Omit<WaterTestFinding, 'testId' | 'takenOn' | 'point' | 'isBeforeHandOver'>;

/** E. coli were found, and nobody can tell how many. */
const foundUncounted: Figures = {
  ...{ sign: 'more', count_per_100mL: 0, low_per_100mL: 0, high_per_100mL: null, rarity: null },
  band: ecoliBand(foundAnyway_per_100mL),
};

function figuresOf(estimate: EcoliEstimate | null, portions: readonly Portion[], looked: number): Figures {
  if (estimate === null) {
    const nothing = { count_per_100mL: null, low_per_100mL: null, high_per_100mL: null, rarity: null };
    return { sign: null, band: null, ...nothing };
  }
  const { ecoli_per_100mL, lowest_per_100mL: low_per_100mL, highest_per_100mL: high_per_100mL } = estimate;
  const limits = { low_per_100mL, high_per_100mL };
  if (estimate.reach === 'below')
    return { sign: 'less', count_per_100mL: high_per_100mL, ...limits, rarity: null, band: bandWhenNone(looked) };
  if (estimate.reach === 'above') {
    const band = ecoliBand(Math.max(low_per_100mL, foundAnyway_per_100mL));
    return { sign: 'more', count_per_100mL: low_per_100mL, ...limits, rarity: null, band };
  }
  const rarity = tellsRarity(portions) ? estimate.rarity_fraction : null;
  return { sign: 'equal', count_per_100mL: ecoli_per_100mL, ...limits, rarity, band: ecoliBand(ecoli_per_100mL!) };
}

/** The band that one germ in the water looked at would be in, just under it: none in 100 mL is low, none in 10 mL may be up to ten. */
function bandWhenNone(looked: number): GermBand {
  return looked >= told_mL ? 'low' : ecoliBand(told_mL / looked);
}

/** One volume, or plates alone, have no pattern that could be rare. */
function tellsRarity(portions: readonly Portion[]): boolean {
  return portions.some(({ kind }) => kind === 'wells') && new Set(portions.map(({ volume_mL }) => volume_mL)).size > 1;
}
