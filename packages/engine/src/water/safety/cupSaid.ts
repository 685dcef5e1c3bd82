import {
  type CupNote,
  type CupReason,
  cupReasons,
  type EngineProblemCode,
  type MayDrink,
  type Problem,
  type TestNeed,
  testNeeds,
  type Verdict,
  type WaterTestsFinding,
} from '../../kernel/index.ts';
import type { SamplesSaid } from './samplesSaid.ts';

/** What the reasons for what is said of a cup follow from. */
export interface CupGiven {
  readonly verdict: Verdict;
  readonly mayDrink: MayDrink;
  readonly samples: SamplesSaid;
  readonly waterTests: WaterTestsFinding | null;
  readonly failedUnits: readonly string[];
  readonly isWithheld: boolean;
  /** Is a germ over the target in the usual water; in the worst likely one? */
  readonly isOver: boolean;
  readonly isOverAtWorst: boolean;
  readonly isChlorineHigh: boolean;
  readonly problems: readonly Problem[];
}

/** Why it is said, what is told beside it, and why a sample is to be taken. */
export interface CupSaid {
  readonly reasons: readonly CupReason[];
  readonly notes: readonly CupNote[];
  readonly needsTest: readonly TestNeed[];
}

/** What a problem gives as a reason. */
const reasonOfCode: Readonly<Partial<Record<string, CupReason>>> = {
  'safety.no_barrier': 'noEvidence',
  'safety.no_evidence': 'noEvidence',
  'safety.evidence_without_source': 'noEvidence',
  'safety.raw_unknown': 'rawUnknown',
  'safety.raw_without_source': 'rawUnknown',
  'safety.source_raw_unknown': 'sourceRawUnknown',
  'safety.source_over_target': 'sourceOver',
  'safety.unit_not_in_place': 'notInPlace',
  'safety.skipping_unknown': 'skippingUnknown',
  'safety.days_off_unknown': 'daysOffUnknown',
  'safety.sample_too_old': 'sampleTooOld',
  'safety.no_clean_sample': 'noSample',
};

/** Barriers that count for nothing are a reason only where no other does enough. */
const ofNoWeight: readonly EngineProblemCode[] = ['safety.no_barrier', 'safety.no_evidence'];

/** All reasons in their order, what makes no verdict and is told beside it, and why a sample is wanted. */
export function cupSaid(given: CupGiven): CupSaid {
  return { reasons: reasonsOf(given), notes: notesOf(given), needsTest: needsOf(given) };
}

function reasonsOf(given: CupGiven): readonly CupReason[] {
  const { verdict, mayDrink, samples, failedUnits, isWithheld, isOver, isOverAtWorst, isChlorineHigh } = given;
  const isEnough = verdict === 'tight' || verdict === 'holds';
  const codes = given.problems.filter(({ code }) => !isEnough || !(ofNoWeight as readonly string[]).includes(code));
  const found = new Set<CupReason>([
    ...(samples.hasGerms ? (['found'] as const) : []),
    ...(failedUnits.length > 0 ? (['unitFailed'] as const) : []),
    ...(verdict === 'short' && isOver ? (['overTarget'] as const) : []),
    ...(isWithheld ? (['withheld'] as const) : []),
    ...(samples.isOpen ? (['sampleUnusable'] as const) : []),
    ...(isEnough && isOverAtWorst ? (['overAtWorst'] as const) : []),
    ...(isChlorineHigh ? (['chlorineHigh'] as const) : []),
    ...codes.flatMap(({ code }) => reasonOfCode[code] ?? []),
  ]);
  const isBad = (['found', 'unitFailed', 'overTarget'] as const).some((reason) => found.has(reason));
  if ((mayDrink === 'no' || verdict === 'short') && !isBad) found.add('fails');
  if (found.size === 0) found.add(mayDrink !== 'yes' ? 'unknown' : verdict === 'holds' ? 'shown' : 'assumed');
  return cupReasons.filter((reason) => found.has(reason));
}

function notesOf({ waterTests }: CupGiven): readonly CupNote[] {
  const band = waterTests?.inspection?.band;
  return band === 'high' || band === 'veryHigh' ? ['walkAtRisk'] : [];
}

function needsOf({ samples, waterTests, failedUnits }: CupGiven): readonly TestNeed[] {
  const { hasGerms, isTooOld } = samples;
  const needs: Partial<Record<TestNeed, boolean>> = {
    failed: hasGerms,
    unitFailed: failedUnits.length > 0,
    unusable: (waterTests?.unusable.length ?? 0) > 0,
    none: !hasGerms && (waterTests?.clean_count ?? 0) === 0,
    tooOld: isTooOld,
  };
  return testNeeds.filter((need) => needs[need] === true);
}
