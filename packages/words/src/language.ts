import type {
  Place,
  Problem,
  Severity,
  SourceDays,
  Station,
  StationVerdict,
  StorageFinding,
  Target,
  WorkingCode,
  YearAtTank,
} from '@eavewell/engine';
import type { LanguageHead } from './messages/texts.ts';
import type { ProblemCode, ProblemSentence, Speech } from './problems.ts';
import type { RemedyWords } from './remedyWords.ts';
import type { ChlorineSaid } from './sentences/chlorineFindings.ts';
import type { CommandLineWords } from './sentences/commandLine.ts';
import type { DrainageWords } from './sentences/drainageFindings.ts';
import type { HeadSaid } from './sentences/headFindings.ts';
import type { SafetySaid } from './sentences/safetyFindings.ts';
import type { SettlingSaid } from './sentences/settlingFindings.ts';
import type { StandWords } from './sentences/standFindings.ts';
import type { StormWords } from './sentences/stormFindings.ts';
import type { TreatmentSaid } from './sentences/treatmentFindings.ts';
import type { WaterTestsSaid } from './sentences/waterTestsFindings.ts';
import type { WearSaid } from './sentences/wearFindings.ts';

/** The label of a figure and its formula, in words. */
export interface WorkingWords {
  readonly label: string;
  readonly formula: string;
}

/** What a storage finding is said from: all of it but its days, which a report writes in another form. */
export type StorageSaid = Omit<
  StorageFinding,
  'longestRun' | 'dryRuns' | 'years' | 'sizes' | 'firstService' | 'cappedBy'
> & {
  readonly cappedBy: string | null;
};

/** What is said of the findings of a site. */
export interface FindingWords extends DrainageWords, StandWords, StormWords {
  /** The finding in one or two sentences. */
  storage(finding: StorageSaid): string;
  /** The finding of a whole site, known or not. `reason` is the sentence of the first blocker. */
  site(design: { readonly storages: readonly StorageSaid[] }, reason: string | null): string;
  /** Tanks joined at the foot, by name. */
  tanksNamed(tankIds: readonly string[]): string;
  target(target: Target): string;
  /** The same as short as it can be said, for one class of site. */
  classTarget(siteClass: string, target: Target): string;
  /** What a water year is called; null where it is a calendar year. */
  waterYear(year: YearAtTank): string | null;
  /** What one settling tank does, in a few sentences. */
  settling(finding: SettlingSaid): string;
  /** Whether water comes to the taps, in a few sentences. */
  head(finding: HeadSaid): string;
  /** Whether a treatment unit keeps up, in a few sentences. */
  treatment(finding: TreatmentSaid): string;
  /** When a set of cartridges is due, in a few sentences. */
  wear(finding: WearSaid): string;
  /** What may be said of drinking the water of a site, in a few sentences. */
  safety(finding: SafetySaid): string;
  /** On how many days of a year which water is drunk. */
  sourceDays(days: SourceDays): string;
  /** What its samples say. */
  waterTests(finding: WaterTestsSaid): string;
  /** What chlorine does there. */
  chlorine(finding: ChlorineSaid): string;
}

/** What a severity is called, and so many of it. */
export interface SeverityWords {
  readonly name: string;
  counted(count: number): string;
}

/** Every text a person reads, in one language. */
export interface Language extends Speech {
  /** The tag of the language, with its region where one was asked for. */
  readonly code: string;
  readonly name: string;
  readonly direction: LanguageHead['direction'];
  readonly verdicts: Readonly<Record<StationVerdict, string>>;
  readonly stations: Readonly<Record<Station, string>>;
  readonly severities: Readonly<Record<Severity, SeverityWords>>;
  /** What is wrong and what to do, for a code; its facts as they are. */
  problem(code: ProblemCode, problem: Pick<Problem, 'place' | 'facts'>): ProblemSentence;
  place(place: Place): string;
  readonly findings: FindingWords;
  readonly remedies: RemedyWords;
  readonly working: Readonly<Record<WorkingCode, WorkingWords>>;
  /** The name of an input of a working. */
  input(name: string): string;
  /** A word of the engine that stands as a value in a working; null where it is none. */
  value(name: string): string | null;
  /** Where a figure comes from. */
  source(source: string): string;
  readonly cautions: Readonly<Record<CautionName, string>>;
  readonly commandLine: CommandLineWords;
}

/** The cautions, where someone can be hurt. */
export const cautionNames = ['drinking', 'otherWater', 'height', 'fragileRoof', 'stand', 'lifting', 'plans'] as const;
export type CautionName = (typeof cautionNames)[number];
