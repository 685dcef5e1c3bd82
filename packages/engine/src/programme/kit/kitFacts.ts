import type {
  ConditionField,
  CountedBy,
  DayIndex,
  DesignSettings,
  KitFacts,
  KitRule,
  PartFacts,
  RunLength,
} from '../../kernel/index.ts';

/** What a design was decided to be, a text or a number in the unit of its name; null, or left out: not known. */
export type Choices = Readonly<Partial<Record<ConditionField, string | number | null>>>;

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

/** What one rule, or what the design names, counts of a part at a site. */
export interface CountedFor {
  /** Null: the design names the part itself. */
  readonly rule: KitRule | null;
  readonly partId: string;
  readonly countedBy: CountedBy;
  readonly ones: readonly CountedOne[];
}

/** A part of the catalogue, as far as kits go. */
export type KitPart = Pick<PartFacts, 'partId' | 'kind' | 'name' | 'length_m' | 'kit'>;

/** What cutting takes. */
export interface Cutting {
  readonly cut_mm: number;
  readonly squareOff_mm: number;
}

/** What kits are made from. */
export interface KitMarket {
  readonly parts: readonly KitPart[];
  readonly kit: Pick<KitFacts, 'rules'>;
  readonly settings: Pick<DesignSettings, 'cutWaste_mm'>;
  /** Null: not known, and nothing is handed over or late. */
  readonly today: DayIndex | null;
}
