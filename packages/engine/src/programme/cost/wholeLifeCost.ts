import type { CostHead, DayIndex, Spread } from '../../kernel/index.ts';
import type { CostItem, CostReason } from './costItem.ts';
import type { Doubtful } from './doubtful.ts';

/** All that the whole-life cost of a site, or of what the programme pays as one, is made of. */
export interface WholeLifeGiven {
  readonly items: readonly CostItem[];
  /** The programme's, of all amounts. */
  readonly currency: string;
  /** The day whose prices count. */
  readonly day: DayIndex;
  readonly years_count: number;
  /** In money that keeps its worth [fraction/year]; null: not known. */
  readonly interest: Doubtful | null;
  /** What it was made from, for the working; left out: it is stated as it is. */
  readonly interestFrom?: { readonly interest_fraction_per_year: number; readonly inflation_fraction_per_year: number };
  /** At the start; null: not known. */
  readonly people: number | null;
  /** Null: they stay as many. */
  readonly growth_fraction_per_year: number | null;
  /** People it is designed for; null: not known. */
  readonly design_people: number | null;
  /** Share of the year and of the people for which the service works [fraction]; null: not known, and never 1. */
  readonly workingService: Doubtful | null;
  readonly draws: number;
  readonly seed: number;
}

/** One head of cost, plain money spread evenly over the years: without interest, which is a head of its own. */
export interface HeadCost {
  readonly head: CostHead;
  /** A year; null where anything of it is not known. */
  readonly perYear_amount: number | null;
  /** A year, of what is known: at least so much. */
  readonly known_amount: number;
  /** The same with every input at the end that costs least, and most: no throw goes beyond, but for interest. */
  readonly least_amount: number;
  readonly most_amount: number;
  /** Why it is not known; empty where it is. */
  readonly reasons: readonly CostReason[];
}

/** A cost a year and the people it is for. */
export interface YearlyCost {
  readonly perYear_amount: number;
  /** With working service, in the mean of the years; null: not known. */
  readonly served_people: number | null;
}

/** What one input alone moves: at its low end, and at its high end, all others likely. */
export interface CostSwing {
  readonly inputId: string;
  readonly low: YearlyCost;
  readonly high: YearlyCost;
}

/** Whole-life cost. Amounts are in the programme's currency at the prices of one day. */
export interface WholeLifeCost extends YearlyCost {
  readonly currency: string;
  readonly day: DayIndex;
  readonly years_count: number;
  /** In the order of costHeads; they add up to what is known a year. */
  readonly heads: readonly HeadCost[];
  /** Is something not known, so that every sum is at least so much? */
  readonly isAtLeast: boolean;
  /** All that is spent in all years, without interest. */
  readonly total_amount: number;
  /** Worth of it at the start; null where the interest is not known. */
  readonly presentValue_amount: number | null;
  /** For each person and year of working service; null where people or service are not known. */
  readonly perPersonYear_amount: number | null;
  readonly design_people: number | null;
  /** For each person it is designed for. */
  readonly perDesignPerson_amount: number | null;
  readonly perYearSpread_amount: Spread;
  readonly perPersonYearSpread_amount: Spread | null;
  /** The widest first. */
  readonly swings: readonly CostSwing[];
  /** Throw by throw, so that sites can be added up. */
  readonly throws: { readonly perYear_amount: Float64Array; readonly served_people: Float64Array | null };
}
