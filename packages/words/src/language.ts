import type {
  Place,
  Severity,
  SiteDesign,
  Station,
  StationVerdict,
  StorageFinding,
  Target,
  WorkingCode,
  YearAtTank,
} from '@eavewell/engine';
import type { CommandLineWords } from './english/commandLine.ts';
import type { NumberWords } from './numberWords.ts';
import type { ProblemCode, Told } from './problems.ts';
import type { RemedyWords } from './remedyWords.ts';

/** What is wrong, and what to do about it. */
export interface ProblemSentence {
  readonly what: string;
  readonly todo: string;
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
  /** Tanks joined at the foot, by name. */
  tanksNamed(tankIds: readonly string[]): string;
  target(target: Target): string;
  /** The same as short as it can be said, for one class of site. */
  classTarget(siteClass: string, target: Target): string;
  /** What a water year is called; null where it is a calendar year. */
  waterYear(year: YearAtTank): string | null;
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
  readonly remedies: RemedyWords;
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
export const cautionNames = ['drinking', 'otherWater', 'height', 'stand', 'plans'] as const;
export type CautionName = (typeof cautionNames)[number];
