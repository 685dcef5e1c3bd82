import type {
  DayIndex,
  Place,
  Range,
  Severity,
  SiteDesign,
  Station,
  StationVerdict,
  StorageFinding,
  Target,
  WorkingCode,
} from '@eavewell/engine';
import type { CommandLineWords } from './english/commandLine.ts';
import type { ProblemCode, Told } from './problems.ts';

/** What is wrong, and what to do about it. */
export interface ProblemSentence {
  readonly what: string;
  readonly todo: string;
}

/** Numbers, days and shares as people read them: never a number without its unit. */
export interface NumberWords {
  litres(value_L: number): string;
  /** A tank that is enough: rounded up, never down. */
  tankLitres(value_L: number): string;
  litresADay(value_L_per_day: number): string;
  days(value_days: number): string;
  daysAYear(value_days: number): string;
  dryDaysAYear(value_days: number): string;
  years(count: number): string;
  people(count: number): string;
  /** "28 of 30 years". */
  ofYears(good: number, all: number): string;
  percent(value_fraction: number): string;
  /** "likely 13 to 21", without a unit of its own: the figure beside it carries it. */
  likely(range: Range): string;
  /** "likely 25 to 30": a range of shares as years of so many. */
  likelyYears(range_fraction: Range, all: number): string;
  date(day: DayIndex | string): string;
  /** Any figure with its unit, as the engine spells units. */
  quantity(value: number | string | Range | null, unit: string): string;
  /** The same, without rounding, for what was given. */
  given(value: number | string, unit: string): string;
}

/** The label of a figure and its formula, in words. */
export interface WorkingWords {
  readonly label: string;
  readonly formula: string;
}

/** What is said of a storage finding and of a site. */
export interface FindingWords {
  /** The finding in one or two sentences. */
  storage(finding: StorageFinding): string;
  /** The finding of a whole site, known or not. `reason` is the sentence of the first blocker. */
  site(design: SiteDesign, reason: string | null): string;
  target(target: Target): string;
}

/** Every text a person reads, in one language. A language that lacks a key does not compile. */
export interface Language {
  readonly code: string;
  readonly name: string;
  readonly numbers: NumberWords;
  readonly verdicts: Readonly<Record<StationVerdict, string>>;
  readonly stations: Readonly<Record<Station, string>>;
  readonly severities: Readonly<Record<Severity, readonly [one: string, many: string]>>;
  readonly problems: Readonly<Record<ProblemCode, (told: Told) => ProblemSentence>>;
  place(place: Place): string;
  readonly findings: FindingWords;
  readonly working: Readonly<Record<WorkingCode, WorkingWords>>;
  /** The name of an input of a working. */
  input(name: string): string;
  /** Words of the engine that stand as values in a working. */
  readonly values: Readonly<Record<string, string>> & { readonly none: string };
  /** Where a figure comes from. */
  source(source: string): string;
  readonly cautions: Readonly<Record<CautionName, string>>;
  readonly commandLine: CommandLineWords;
}

/** The cautions, where someone can be hurt. */
export const cautionNames = ['drinking', 'height', 'stand', 'plans'] as const;
export type CautionName = (typeof cautionNames)[number];
