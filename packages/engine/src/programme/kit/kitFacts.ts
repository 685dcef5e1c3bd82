import type { PartFacts, RunLength } from '../../kernel/index.ts';

/** What parts are counted by. Those that end in Metre are lengths, all others are things. */
export const countedBys = [
  'site',
  'person',
  'household',
  'roof',
  'gutter',
  'gutterMetre',
  'gutterOutlet',
  'gutterBend',
  'downpipe',
  'downpipeMetre',
  'diverter',
  'tank',
  'settlingTank',
  'overflow',
  'screen',
  'stand',
  'standPad',
  'pipe',
  'pipeMetre',
  'elbow',
  'tee',
  'valve',
  'meter',
  'tap',
  'unit',
  'cartridgeSet',
  'cartridge',
] as const;
export type CountedBy = (typeof countedBys)[number];

/** What a design was decided to be, by the names of conditionFields; null: not known. */
export type Choices = Readonly<Record<string, string | number | null>>;

/** One thing of a design that parts are counted by, or several that are alike. */
export interface CountedOne {
  readonly countedBy: CountedBy;
  /** What it is called in the design; null where it has no name of its own. */
  readonly ofId: string | null;
  /** How many; null: not known. Of a length: 1. */
  readonly things_count: number | null;
  /** Of a length: how long, and how that is known; null: not known. Null of all that is no length. */
  readonly run: RunLength | null;
  /** The part it is said to be; null where none is named. */
  readonly partId: string | null;
  /** Is it there though nobody surveyed it, as a downpipe under an outlet is? */
  readonly isAssumed: boolean;
  /** Its own choices, looked at before those of the site. */
  readonly choices: Choices;
}

/** A site's design, as far as its kit goes. */
export interface CountedDesign {
  readonly siteId: string;
  readonly counted: readonly CountedOne[];
  /** Of the site as a whole. */
  readonly choices: Choices;
}

export const kitRoundings = ['up', 'nearest', 'none'] as const;
export type KitRounding = (typeof kitRoundings)[number];

export const kitTests = ['is', 'isNot', 'atLeast', 'atMost'] as const;
export type KitTest = (typeof kitTests)[number];

/** What must be so for a rule to count. */
export interface KitCondition {
  readonly field: string;
  readonly test: KitTest;
  readonly value: string;
}

/** So many of a part for each thing, or for each metre. */
export interface KitRule {
  readonly ruleId: string;
  readonly partId: string;
  readonly countedBy: CountedBy;
  /** For each thing or metre, in what the part is counted in. */
  readonly each_count: number;
  readonly rounding: KitRounding;
  /** Of what the rule counts, to have over. */
  readonly spare_fraction: number;
  /** Where the rule counts anything, no fewer to have over. */
  readonly leastSpare_count: number;
  /** All must hold. */
  readonly conditions: readonly KitCondition[];
}

/** What a part is counted in. */
export const countedIns = ['piece', 'm', 'kg', 'L'] as const;
export type CountedIn = (typeof countedIns)[number];

/** A part of the catalogue, as far as kits go. */
export interface KitPart extends Pick<PartFacts, 'partId' | 'kind' | 'name' | 'length_m'> {
  readonly countedIn: CountedIn;
  /** How many are sold together; null: singly. */
  readonly packSize_count: number | null;
  readonly supplier: string | null;
  /** From order to arrival. */
  readonly leadTime_days: number | null;
  /** On hand; null: nobody counted. */
  readonly stock_count: number | null;
}

/** What cutting takes. */
export interface Cutting {
  readonly cut_mm: number;
  readonly squareOff_mm: number;
}
