import {
  type ChlorineFinding,
  type DayIndex,
  type DesignSettings,
  type EngineProblemCode,
  engineProblem,
  type Judged,
  type MayDrink,
  type Place,
  type Problem,
  type Reductions,
  type SafetyFinding,
  type SiteFacts,
  type SourceDaysOfBody,
  type TreatmentFinding,
  unmeasuredUnit,
  type Verdict,
  verdictOf,
  type WaterTestsFinding,
} from '../../kernel/index.ts';
import { cupSaid } from './cupSaid.ts';
import { daysOfSource } from './daysOfSource.ts';
import { performanceTier_count } from './performanceTier.ts';
import { type SafetyBarriers, safetyBarriers } from './safetyBarriers.ts';
import {
  type Drinkers,
  daysOffOf,
  drinkersOf,
  effectiveOf,
  type SafetyRisks,
  safetyRisks,
  skippingOf,
} from './safetyRisks.ts';
import { safetyWorking } from './safetyWorking.ts';
import { type SamplesSaid, samplesSaid } from './samplesSaid.ts';
import { unitsNotInPlace } from './unitsNotInPlace.ts';
import { waterWarnings } from './waterWarnings.ts';

/** What safety is judged by. */
export interface SafetyGiven {
  readonly site: SiteFacts;
  /** Null where there is neither sample nor walk. */
  readonly waterTests: WaterTestsFinding | null;
  /** Of the units in use, whose tests with air tell what they can be credited with; empty where none is judged. */
  readonly treatment: readonly Pick<TreatmentFinding, 'serial' | 'pressureTest'>[];
  /** Null where water is not chlorinated. */
  readonly chlorine: ChlorineFinding | null;
  /** At which water boils there; null where the height is not known. */
  readonly boilsAt_C: number | null;
  /** On how many days each body of water leaves people to the second source; null or left out: not known. */
  readonly sourceDays?: readonly SourceDaysOfBody[] | null;
  /** The day it is asked on; null or left out: not known. */
  readonly today?: DayIndex | null;
  readonly settings: DesignSettings;
}

/**
 * Is the water of a site fit to drink? Germs in the raw water, what each barrier is credited with, who drinks it and what samples said. A planning aid: the health authority and
 * accredited laboratories decide.
 *
 * @param given - the site's facts, what samples and chlorine say, the height at which water boils [C], and the settings
 * @returns barriers [log10], risks [DALY/person/year] and what may be said of drinking it; null where safety is not judged
 * @problem safety.raw_unknown - nobody says how many of a germ are in the water of roofs
 * @problem safety.source_raw_unknown - the same of the second source in use
 * @problem safety.source_days_unknown - the balance of the tanks does not tell on how many days it is drunk
 * @problem safety.source_over_target - on the days it is drunk its germs are more than could be borne every day
 * @problem safety.raw_without_source - a figure of raw water with nobody who says so
 * @problem safety.raw_without_range - no high end is stated
 * @problem safety.raw_range_backwards - an end on the wrong side of what is usual
 * @problem safety.no_barrier - nothing is known to lessen germs
 * @problem safety.no_evidence - log reductions that nothing shows
 * @problem safety.evidence_without_source - evidence nobody is named for
 * @problem safety.test_supports_less - the last test with air of a unit supports less than is stated
 * @problem safety.unit_not_in_place - a unit that is still to be installed, or without its cartridges
 * @problem safety.test_limits - it sees no more of the smaller germs than so much
 * @problem safety.over_most - more stated than any barrier is credited with
 * @problem safety.viruses_by_pore - viruses stated for a membrane without a challenge test
 * @problem safety.skipping_unknown - nobody says how many drink untreated water
 * @problem safety.days_off_unknown - nobody says on how many days nothing is treated
 * @problem safety.recontamination_unknown - germs that come back are not reckoned with
 * @problem safety.no_clean_sample - no sample since hand-over was clean
 * @problem safety.sample_too_old - the last clean sample is older than the settings let a verdict rest on
 * @problem safety.do_not_drink - the last sample held E. coli, or the raw water is drunk and its germs are too many
 * @problem safety.ph_low - acid water runs over metal
 * @problem safety.not_taken_out - a roof may give what no treatment here takes out
 * @law more log reduction, fewer who skip, fewer days off or fewer days of a second source whose water is worse never make the verdict worse
 * @definition ours: docs/decisions/0227-verdict-of-the-cup.md
 */
export function safetyFinding(given: SafetyGiven): Judged<SafetyFinding> {
  const { site, settings } = given;
  if (!isSafetyJudged(site, settings)) return { finding: null, problems: [], working: [] };
  const barriers = safetyBarriers(site, given.chlorine, settings, supportedByTests(given));
  const drinkers = drinkersOf(site, barriers.row, settings);
  const days = daysOfSource(site, given.sourceDays ?? null);
  const risks = safetyRisks(site, barriers, drinkers, days, settings);
  const habits = habitsUnknown(given, barriers);
  const samples = samplesSaid(given);
  const place = placeUnknown(given);
  const failedUnits = failedUnitsOf(site, supportedByTests(given));
  const withheldBy = withheldByOf(site);
  const cappedBy = place.cappedBy ?? barriers.cappedBy ?? risks.cappedBy ?? habits.cappedBy ?? samples.cappedBy;
  const verdict = verdictOfCup(barriers, risks, samples, cappedBy, settings);
  const isDoubted = samples.isOpen || withheldBy.length > 0 || failedUnits.length > 0 || hasTooMuchChlorine(given);
  const mayDrink = mayDrinkIt(verdict, barriers, samples, place.cappedBy !== null || risks.isSourceOver || isDoubted);
  const reason = samples.hasGerms ? 'sample' : barriers.isTestedLess ? 'test' : 'raw';
  const doNot =
    mayDrink === 'no'
      ? [engineProblem('safety.do_not_drink', { file: 'waterTests.csv', siteId: site.siteId }, { reason })]
      : [];
  const holdsOtherwise = verdict === 'tight' && isMetAtWorst(risks, settings);
  const problems: readonly Problem[] = [
    ...doNot,
    ...[barriers, place, risks, habits, samples].flatMap((of) => of.problems),
    ...waterWarnings(site),
  ];
  const said = cupSaid({
    ...{ verdict, mayDrink, samples, waterTests: given.waterTests, failedUnits, problems },
    ...{ isWithheld: withheldBy.length > 0, isChlorineHigh: hasTooMuchChlorine(given) },
    ...{ isOver: !isMet(risks, settings), isOverAtWorst: !isMetAtWorst(risks, settings) },
  });
  const finding: SafetyFinding = {
    ...{ verdict, mayDrink, ...said, failedUnits, withheldBy, isReckoned: true },
    cappedBy: holdsOtherwise ? cappedBy : null,
    ...figuresOf(barriers, drinkers, risks, given),
    sourceDays: days.told,
  };
  return { finding, problems, working: safetyWorking(finding, drinkers, settings) };
}

function figuresOf(barriers: SafetyBarriers, drinkers: Drinkers, { risks }: SafetyRisks, given: SafetyGiven) {
  const { site, settings, chlorine, boilsAt_C } = given;
  return {
    barriers: barriers.findings,
    credited: barriers.credited,
    leaking: barriers.leaking,
    effective: effectiveOf(drinkers),
    tier: performanceTier_count(barriers.credited),
    skipping_fraction: skippingOf(site, settings),
    daysOff_per_year: daysOffOf(site, settings),
    risks,
    target_DALY_per_person_per_year: settings.healthTarget_DALY_per_person_per_year,
    waterTests: given.waterTests ?? noTests,
    ...{ chlorine, boilsAt_C },
  };
}

/** Of a site with neither sample nor walk. */
export const noTests: WaterTestsFinding = {
  tests: [],
  unusable: [],
  isUnusableOpen: false,
  last: null,
  clean_count: 0,
  lastCleanOn: null,
  cleanBelow_per_100mL: null,
  cleanWanted_count: 0,
  inspection: null,
  priority: null,
};

/**
 * Is the safety of a site's water judged? Where anything of it was told, everywhere or nowhere, as the settings say.
 *
 * @param site - what is told of its water and its units
 * @param settings - where it is judged
 * @returns whether it is
 * @definition ours: docs/decisions/0227-verdict-of-the-cup.md
 */
export function isSafetyJudged(
  site: Pick<SiteFacts, 'safety' | 'treatment'>,
  settings: Pick<DesignSettings, 'judgeSafety'>,
): boolean {
  const { safety, treatment } = site;
  const { judgeSafety } = settings;
  if (judgeSafety !== 'whereMeasured') return judgeSafety === 'always';
  const { rawWater, barriers, tests, unusableTests, inspections, chlorination } = safety;
  const rows = [rawWater, barriers, tests, unusableTests, inspections];
  const told = rows.some(({ length }) => length > 0) || chlorination !== null;
  return (
    told || treatment.units.some(({ removedOn, figures }) => removedOn === null && hasReductions(figures?.reductions))
  );
}

function hasReductions(reductions: Partial<Record<keyof Reductions, number | null>> | undefined): boolean {
  const { bacteria_log10 = null, viruses_log10 = null, protozoa_log10 = null } = reductions ?? {};
  return bacteria_log10 !== null || viruses_log10 !== null || protozoa_log10 !== null;
}

/** What the last test with air of each unit supports, where it tells. */
function supportedByTests({ treatment }: SafetyGiven): ReadonlyMap<string, number> {
  return new Map(
    treatment.flatMap(({ serial, pressureTest }) => {
      const supports_log10 = pressureTest?.supports_log10 ?? null;
      return serial === null || supports_log10 === null ? [] : [[serial, Math.max(0, supports_log10)] as const];
    }),
  );
}

/** Units that take nothing out today, whatever their part can do. */
function placeUnknown({ site, today = null }: SafetyGiven) {
  const units = unitsNotInPlace(site.treatment, today);
  if (units.length === 0) return { cappedBy: null, problems: [] };
  const cappedBy: EngineProblemCode = 'safety.unit_not_in_place';
  return {
    cappedBy,
    problems: [engineProblem(cappedBy, { file: 'treatmentUnits.csv', siteId: site.siteId }, { barriers: units })],
  };
}

/** Units whose last test with air supports less than is stated of the largest germs, shown or not: there is a hole. */
function failedUnitsOf({ treatment }: SiteFacts, supported_log10: ReadonlyMap<string, number>): readonly string[] {
  return treatment.units
    .filter(({ serial, figures, removedOn }) => {
      const { protozoa_log10, bacteria_log10 } = (figures ?? unmeasuredUnit).reductions;
      return removedOn === null && (protozoa_log10 ?? bacteria_log10 ?? 0) > (supported_log10.get(serial) ?? Infinity);
    })
    .map(({ serial }) => serial);
}

/** A row of samples or of units that could not be used may be the one that says no. */
function withheldByOf({ doubtsBeside: { safety, treatment } }: SiteFacts): readonly Place[] {
  return [...safety, ...treatment];
}

/** More chlorine is left in it than may be drunk. */
function hasTooMuchChlorine({ chlorine }: SafetyGiven): boolean {
  return chlorine?.residualBand === 'tooHigh';
}

/** What nobody said of how people drink. It says nothing where nothing is treated. */
function habitsUnknown({ site, settings }: SafetyGiven, { credited }: SafetyBarriers) {
  const isTreated = Object.values(credited).some((reduction) => reduction > 0);
  const place = { file: 'sites.csv', siteId: site.siteId };
  const caps: EngineProblemCode[] = [];
  if (isTreated && skippingOf(site, settings) === null) caps.push('safety.skipping_unknown');
  if (isTreated && daysOffOf(site, settings) === null) caps.push('safety.days_off_unknown');
  const notes: readonly EngineProblemCode[] =
    isTreated && settings.recontamination_fraction === null ? ['safety.recontamination_unknown'] : [];
  const cappedBy: EngineProblemCode | null = caps[0] ?? null;
  return { cappedBy, problems: [...caps, ...notes].map((code) => engineProblem(code, place, {})) };
}

function isMet({ risks }: SafetyRisks, { healthTarget_DALY_per_person_per_year: target }: DesignSettings): boolean {
  return risks.every(({ DALY_per_person_per_year }) => DALY_per_person_per_year <= target);
}

function isMetAtWorst(
  { risks }: SafetyRisks,
  { healthTarget_DALY_per_person_per_year: target }: DesignSettings,
): boolean {
  return risks.every(({ DALYHigh_per_person_per_year }) => DALYHigh_per_person_per_year <= target);
}

/** A germ that is too many is short, whatever is not known of the others; but nothing is short for want of evidence alone. */
function verdictOfCup(
  { isShown }: SafetyBarriers,
  of: SafetyRisks,
  { hasGerms, isOpen }: SamplesSaid,
  cappedBy: EngineProblemCode | null,
  settings: DesignSettings,
): Verdict {
  if (hasGerms) return 'short';
  const isMetAsUsual = isMet(of, settings);
  if (isShown && !isMetAsUsual) return 'short';
  if (!isShown || !of.isKnown || isOpen) return 'unknown';
  return verdictOf(isMetAsUsual, isMetAtWorst(of, settings) && cappedBy === null);
}

/**
 * `yes` wants a clean sample as well as the sums, units that are in place and passed their last test with air, and nothing that could not be read; `no` is said where germs were found, or where nothing is done to water that wants it, or a test
 * showed that what is done does less than is stated.
 */
function mayDrinkIt(
  verdict: Verdict,
  barriers: SafetyBarriers,
  { hasGerms, isClean }: SamplesSaid,
  isDoubted: boolean,
): MayDrink {
  const isKnownNotToWork = barriers.findings.length === 0 || barriers.isTestedLess;
  if (hasGerms || (verdict === 'short' && isKnownNotToWork)) return 'no';
  const isMet = verdict === 'holds' || verdict === 'tight';
  return isClean && isMet && !isDoubted && !barriers.isTestedLess ? 'yes' : 'notShown';
}
