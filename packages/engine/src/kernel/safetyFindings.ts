import type { DayIndex } from './days.ts';
import type { EngineProblemCode } from './engineProblems.ts';
import type { Place } from './problems.ts';
import type { Range } from './range.ts';
import type { BarrierKind, Pathogen, SamplePoint, UnusableTestReason } from './safetyFacts.ts';
import type { ReductionEvidence } from './treatmentFacts.ts';
import type { Verdict } from './verdicts.ts';

/** Tenfold steps by class, all known. */
export interface Reductions {
  readonly bacteria_log10: number;
  readonly viruses_log10: number;
  readonly protozoa_log10: number;
}

/** One barrier on the way to the cup, with what it is credited. */
export interface BarrierFinding {
  readonly kind: BarrierKind | 'membrane' | 'chlorine';
  /** Its id: a serial, a barrierId; null for chlorine. */
  readonly barrierId: string | null;
  readonly evidence: ReductionEvidence;
  readonly credited: Reductions;
  /** With one of its cartridges leaking as the settings say; null for what has no cartridges. */
  readonly leaking: Reductions | null;
}

/** The performance of a treatment by the world health body's tiers: 3 highly protective, 2 protective, 1 targeted, 0 none. */
export type ProtectionTier = 0 | 1 | 2 | 3;

/** On how many days of each year those who draw from one body of water drink that of the second source, as its tanks have it. */
export interface SourceDaysOfBody {
  readonly people: number;
  /** Whole days of each judged year of the record, in their order; the same years in each body of a site. */
  readonly days_by_year: readonly number[];
}

/** How often the water of the second source is drunk, as a mean over the people of a site. */
export interface SourceDays {
  readonly secondSourceId: string;
  readonly name: string;
  /** Null where the balance of the tanks is not known: each water is then taken as drunk every day, and the worse of them decides. */
  readonly days_per_year: number | null;
  /** The fewest and the most of a year of the record; null where the days are not known. */
  readonly days_per_year_range: Range | null;
}

/** One water people drink in a year, and the germs of one kind in it. */
export interface WaterOfYear {
  /** Null: the water of roofs. */
  readonly secondSourceId: string | null;
  /** Of 365, as a mean. */
  readonly days_per_year: number;
  readonly raw_per_L: number;
  readonly rawHigh_per_L: number | null;
  /** In the water of those whose water is treated, on a day on which it is. */
  readonly drinking_per_L: number;
}

/** What one germ does in a year to those who drink. A range holds nine in ten of what is uncertain; its high end is judged. */
export interface PathogenRisk {
  readonly pathogen: Pathogen;
  /** Of the year, that of roofs first; those of which the germ is known. One alone where it is drunk, or taken as drunk, every day. */
  readonly waters: readonly WaterOfYear[];
  /** Means over people and days, those who skip and days without treatment among them. */
  readonly infection_per_year: number;
  readonly illness_per_year: number;
  readonly DALY_per_person_per_year: number;
  readonly DALYHigh_per_person_per_year: number;
  /** What those who skip bear of it, as a share. */
  readonly fromSkipping_fraction: number;
  /** Log reduction wanted for the target, at the typical water. */
  readonly needed_log10: number;
}

/** E. coli bands, by the count in 100 mL: under 1, from 1, over 10, over 100. */
export const germBands = ['low', 'intermediate', 'high', 'veryHigh'] as const;
export type GermBand = (typeof germBands)[number];

/** One sample. */
export interface WaterTestFinding {
  readonly testId: string;
  readonly takenOn: DayIndex;
  readonly point: SamplePoint;
  /** Is it `less` than the count, the count, or `more`? Null where E. coli was not looked for. */
  readonly sign: 'less' | 'equal' | 'more' | null;
  readonly count_per_100mL: number | null;
  readonly low_per_100mL: number | null;
  readonly high_per_100mL: number | null;
  /** How likely such a set of portions is beside the likeliest; under 0.05: test again. Null where plates alone, or one volume, were read. */
  readonly rarity: number | null;
  readonly band: GermBand | null;
  /** Of before hand-over: it says nothing of the water handed over. */
  readonly isBeforeHandOver: boolean;
}

/** A sample that cannot be used. */
export interface UnusableTestFinding {
  readonly testId: string;
  readonly because: UnusableTestReason;
  /** The row that is to be mended. */
  readonly at: Place;
  /** Does what can be read of it say that E. coli were found? */
  readonly hasGerms: boolean;
}

/** What samples and walks say together. */
export interface WaterTestsFinding {
  /** In the order of their days. */
  readonly tests: readonly WaterTestFinding[];
  readonly unusable: readonly UnusableTestFinding[];
  /** May one that cannot be used be the one that says no: none that was clean is known to have come after it? */
  readonly isUnusableOpen: boolean;
  /** The last of tap or container since hand-over in which E. coli was looked for; one of shortly before that held E. coli while none since was clean. */
  readonly last: WaterTestFinding | null;
  /** Clean ones in a row since, at tap and container, and the mean that is then below with 95 % sureness. */
  readonly clean_count: number;
  /** The newest of them; null where there is none. */
  readonly lastCleanOn: DayIndex | null;
  readonly cleanBelow_per_100mL: number | null;
  /** How many clean in a row are wanted to say that fewer than one in twenty is not. */
  readonly cleanWanted_count: number;
  readonly inspection: { readonly inspectedOn: DayIndex; readonly score: number; readonly band: GermBand } | null;
  /** The worse of the last sample and the last walk; null where there is neither. */
  readonly priority: GermBand | null;
}

/** Where a free chlorine residual lies. */
export const residualBands = ['none', 'low', 'good', 'high', 'tooHigh'] as const;
export type ResidualBand = (typeof residualBands)[number];

/** What chlorine does at a site. */
export interface ChlorineFinding {
  /** Residual × contact time × share of it that counts; null where one is not known. */
  readonly ct_mg_min_per_L: number | null;
  /** For three tenfold steps of Giardia: by the table, read to the safe side; by the regression, for comparison. Null outside them. */
  readonly ctForGiardia_mg_min_per_L: number | null;
  readonly ctForGiardiaRegression_mg_min_per_L: number | null;
  readonly giardia_log10: number | null;
  readonly viruses_log10: number | null;
  /** Stock for one batch, for the dose. */
  readonly stock_mL: number | null;
  /** Product for a litre of stock of one per cent: grams of a powder, millilitres of a liquid. */
  readonly product_per_L: number | null;
  readonly residualBand: ResidualBand | null;
  readonly wait_min: number | null;
  /** Too turbid for chlorine to be relied on? Null where turbidity is not known. */
  readonly isTooTurbid: boolean | null;
  readonly credited: Reductions;
}

/** What may be said of drinking it: `no` where a sample after hand-over held E. coli or treatment is known not to work, `notShown` where nothing proves it. */
export type MayDrink = 'yes' | 'notShown' | 'no';

/** Why it may be said of the water of a site what is said of drinking it, the worst kind first. */
export const cupReasons = [
  ...(['found', 'unitFailed', 'overTarget', 'fails'] as const),
  ...(['withheld', 'sampleUnusable', 'noEvidence', 'rawUnknown', 'sourceRawUnknown', 'sourceOver', 'unknown'] as const),
  ...(['chlorineHigh', 'notInPlace', 'overAtWorst', 'skippingUnknown', 'daysOffUnknown'] as const),
  ...(['sampleTooOld', 'noSample', 'assumed'] as const),
  'shown',
] as const;
export type CupReason = (typeof cupReasons)[number];

/** What makes no verdict and is told beside it all the same: many risks found by the last walk, a set of cartridges past its day. */
export const cupNotes = ['walkAtRisk', 'setOverdue'] as const;
export type CupNote = (typeof cupNotes)[number];

/** Why a sample is to be taken: none since hand-over was clean, the last clean one is too old, the last one failed, one cannot be used, a unit failed its test, a set is overdue. */
export const testNeeds = ['failed', 'unitFailed', 'unusable', 'none', 'tooOld', 'setOverdue'] as const;
export type TestNeed = (typeof testNeeds)[number];

/** Is the water of a site fit to drink? A planning aid: the health authority and accredited laboratories decide. */
export interface SafetyFinding {
  readonly verdict: Verdict;
  readonly cappedBy: EngineProblemCode | null;
  readonly mayDrink: MayDrink;
  /** All of them, the first told first. */
  readonly reasons: readonly CupReason[];
  readonly notes: readonly CupNote[];
  readonly needsTest: readonly TestNeed[];
  /** Units whose last test with air failed. */
  readonly failedUnits: readonly string[];
  /** Rows that could not be used and keep more from being said: where a row of the whole site is among them, nothing is reckoned of barriers and germs. */
  readonly withheldBy: readonly Place[];
  readonly isReckoned: boolean;
  readonly barriers: readonly BarrierFinding[];
  /** Sum of what is credited; where nobody skips and no day is without treatment. */
  readonly credited: Reductions;
  /** The same with one cartridge leaking; null where there is no unit. */
  readonly leaking: Reductions | null;
  /** Of the mean of what is drunk, over people and days: for display alone, risks are worked for each group. */
  readonly effective: Reductions;
  readonly tier: ProtectionTier;
  readonly skipping_fraction: number | null;
  readonly daysOff_per_year: number | null;
  /** Null where the site names no second source. */
  readonly sourceDays: SourceDays | null;
  /** The worst first. */
  readonly risks: readonly PathogenRisk[];
  readonly target_DALY_per_person_per_year: number;
  readonly waterTests: WaterTestsFinding;
  readonly chlorine: ChlorineFinding | null;
  /** At which water boils there; null where the height is not known. */
  readonly boilsAt_C: number | null;
}
