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
 * used and yet says that some were found is believed in that, unless it says so of more tubes than there were: then nobody knows what was meant.
 */
export function testFinding(test: WaterTest, handOverDay: DayIndex | null): TestRead {
  const read = portionsOf(test.portions);
  const { portions, faulty } = read;
  const whole = ecoliEstimate(portions);
  const estimate = faulty.length > 0 && whole?.reach === 'below' ? null : whole;
  const looked = looked_mL(portions);
  const figures =
    estimate === null && faulty.some(isBelieved)
      ? foundUncounted(test.portions)
      : figuresOf(estimate, portions, looked);
  const finding: WaterTestFinding = {
    ...{ testId: test.testId, takenOn: test.takenOn, point: test.point },
    ...figures,
    isBeforeHandOver: handOverDay !== null && test.takenOn < handOverDay,
  };
  return { finding, read, estimate, looked_mL: looked, isClean: estimate?.reach === 'below' && looked >= told_mL };
}

/** Does a portion say that E. coli were found, whether or not it can be reckoned with? */
export function hasSigns({ positive_count, colonies_count, uncountable_count }: TestPortion): boolean {
  return (positive_count ?? 0) > 0 || (colonies_count ?? 0) > 0 || uncountable_count > 0;
}

function isBelieved(portion: TestPortion): boolean {
  return hasSigns(portion) && !(portion.kind === 'tubes' && (portion.positive_count ?? 0) > portion.portions_count);
}

type Figures = Omit<WaterTestFinding, 'testId' | 'takenOn' | 'point' | 'isBeforeHandOver'>;

/** E. coli were found, and nobody can tell how many: one at least in the water looked at. */
function foundUncounted(rows: readonly TestPortion[]): Figures {
  const looked = rows.reduce((sum, of) => sum + of.volume_mL * (of.portions_count + of.uncountable_count), 0);
  const least = looked > 0 && Number.isFinite(looked) ? oneIn_per_100mL(looked) : foundAnyway_per_100mL;
  return {
    ...{ sign: 'more', count_per_100mL: least, low_per_100mL: least, high_per_100mL: null, rarity: null },
    band: bandWhenFound(least),
  };
}

/** A single germ in the water looked at [per 100 mL]: where some were found there were no fewer. */
function oneIn_per_100mL(looked: number): number {
  return told_mL / looked;
}

/** Where some were found the water is not called low, however much of it was looked at. */
function bandWhenFound(count_per_100mL: number): GermBand {
  return ecoliBand(Math.max(count_per_100mL, foundAnyway_per_100mL));
}

function figuresOf(estimate: EcoliEstimate | null, portions: readonly Portion[], looked: number): Figures {
  if (estimate === null) {
    const nothing = { count_per_100mL: null, low_per_100mL: null, high_per_100mL: null, rarity: null };
    return { sign: null, band: null, ...nothing };
  }
  const { ecoli_per_100mL, lowest_per_100mL: low_per_100mL, highest_per_100mL: high_per_100mL } = estimate;
  const limits = { low_per_100mL, high_per_100mL };
  if (estimate.reach === 'below')
    return { sign: 'less', count_per_100mL: high_per_100mL, ...limits, rarity: null, band: bandWhenNone(looked) };
  const least = Math.max(low_per_100mL, oneIn_per_100mL(looked));
  if (estimate.reach === 'above') {
    const found = { count_per_100mL: least, low_per_100mL: least, high_per_100mL };
    return { sign: 'more', ...found, rarity: null, band: bandWhenFound(least) };
  }
  const count_per_100mL = ecoli_per_100mL!;
  const rarity = tellsRarity(portions) ? estimate.rarity_fraction : null;
  const found = { count_per_100mL, low_per_100mL: Math.min(least, count_per_100mL), high_per_100mL };
  return { sign: 'equal', ...found, rarity, band: bandWhenFound(count_per_100mL) };
}

/** The band that one germ in the water looked at would be in, just under it: none in 100 mL is low, none in 10 mL may be up to ten. */
function bandWhenNone(looked: number): GermBand {
  return looked >= told_mL ? 'low' : ecoliBand(told_mL / looked);
}

/** One volume, or plates alone, have no pattern that could be rare. */
function tellsRarity(portions: readonly Portion[]): boolean {
  return portions.some(({ kind }) => kind === 'wells') && new Set(portions.map(({ volume_mL }) => volume_mL)).size > 1;
}
