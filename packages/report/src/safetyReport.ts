import {
  type BarrierFinding,
  type ChlorineFinding,
  isoDay,
  type PathogenRisk,
  type Reductions,
  type SafetyFinding,
  type SourceDays,
  type UnusableTestFinding,
  type WaterTestFinding,
  type WaterTestsFinding,
} from '@eavewell/engine';
import type { SiteReport } from '@eavewell/tables';
import type { Language } from '@eavewell/words';

type SafetyReport = NonNullable<SiteReport['safety']>;
type WaterTestsReport = SafetyReport['waterTests'];

/** What was found of safety field by field, so that a new field of the engine reaches the report only once the schema has it. */
export function safetyReport(f: SafetyFinding, language: Language): SafetyReport {
  return safetyIn(
    {
      verdict: f.verdict,
      cappedBy: f.cappedBy,
      finding: '',
      mayDrink: f.mayDrink,
      ...cupSaidReport(f),
      isReckoned: f.isReckoned,
      barriers: f.barriers.map(barrierReport),
      credited: reductions(f.credited),
      leaking: f.leaking && reductions(f.leaking),
      effective: reductions(f.effective),
      tier: f.tier,
      skipping_fraction: f.skipping_fraction,
      daysOff_per_year: f.daysOff_per_year,
      sourceDays: f.sourceDays && sourceDaysReport(f.sourceDays),
      risks: f.risks.map(riskReport),
      target_DALY_per_person_per_year: f.target_DALY_per_person_per_year,
      waterTests: { ...testsReport(f.waterTests), finding: '' },
      chlorine: f.chlorine && { ...chlorineReport(f.chlorine), finding: '' },
      boilsAt_C: f.boilsAt_C,
    },
    language,
  );
}

/** The same, said again in a language. No figure changes. */
export function safetyIn(reported: SafetyReport, { findings }: Language): SafetyReport {
  const { sourceDays, waterTests, chlorine } = reported;
  return {
    ...reported,
    finding: findings.safety(reported),
    sourceDays: sourceDays && { ...sourceDays, finding: findings.sourceDays(sourceDays) },
    waterTests: { ...waterTests, finding: findings.waterTests(waterTests) },
    chlorine: chlorine && { ...chlorine, finding: findings.chlorine(chlorine) },
  };
}

const reductions = ({ bacteria_log10, viruses_log10, protozoa_log10 }: Reductions): Reductions => ({
  bacteria_log10,
  viruses_log10,
  protozoa_log10,
});

const barrierReport = (f: BarrierFinding): SafetyReport['barriers'][number] => ({
  kind: f.kind,
  barrierId: f.barrierId,
  evidence: f.evidence,
  credited: reductions(f.credited),
  leaking: f.leaking && reductions(f.leaking),
});

const sourceDaysReport = (f: SourceDays): NonNullable<SafetyReport['sourceDays']> => ({
  secondSourceId: f.secondSourceId,
  name: f.name,
  finding: '',
  days_per_year: f.days_per_year,
  days_per_year_range: f.days_per_year_range && { ...f.days_per_year_range },
});

const riskReport = (f: PathogenRisk): SafetyReport['risks'][number] => ({
  pathogen: f.pathogen,
  waters: f.waters.map((of) => ({
    secondSourceId: of.secondSourceId,
    days_per_year: of.days_per_year,
    raw_per_L: of.raw_per_L,
    rawHigh_per_L: of.rawHigh_per_L,
    drinking_per_L: of.drinking_per_L,
  })),
  infection_per_year: f.infection_per_year,
  illness_per_year: f.illness_per_year,
  DALY_per_person_per_year: f.DALY_per_person_per_year,
  DALYHigh_per_person_per_year: f.DALYHigh_per_person_per_year,
  fromSkipping_fraction: f.fromSkipping_fraction,
  needed_log10: f.needed_log10,
});

const testReport = (f: WaterTestFinding): WaterTestsReport['tests'][number] => ({
  testId: f.testId,
  takenOn: isoDay(f.takenOn),
  point: f.point,
  sign: f.sign,
  count_per_100mL: f.count_per_100mL,
  low_per_100mL: f.low_per_100mL,
  high_per_100mL: f.high_per_100mL,
  rarity: f.rarity,
  band: f.band,
  isBeforeHandOver: f.isBeforeHandOver,
});

/** A sample that cannot be used, as data. */
export const unusableReport = (f: UnusableTestFinding): WaterTestsReport['unusable'][number] => ({
  testId: f.testId,
  because: f.because,
  at: { ...f.at },
  hasGerms: f.hasGerms,
});

/** Why it may be said, what is told beside it, why a sample is to be taken, and the rows that keep more from being said. */
export const cupSaidReport = (
  f: SafetyFinding,
): Pick<SafetyReport, 'reasons' | 'notes' | 'needsTest' | 'failedUnits' | 'withheldBy'> => ({
  reasons: [...f.reasons],
  notes: [...f.notes],
  needsTest: [...f.needsTest],
  failedUnits: [...f.failedUnits],
  withheldBy: f.withheldBy.map((at) => ({ ...at })),
});

const testsReport = (f: WaterTestsFinding): Omit<WaterTestsReport, 'finding'> => ({
  tests: f.tests.map(testReport),
  unusable: f.unusable.map(unusableReport),
  isUnusableOpen: f.isUnusableOpen,
  last: f.last && testReport(f.last),
  clean_count: f.clean_count,
  lastCleanOn: f.lastCleanOn === null ? null : isoDay(f.lastCleanOn),
  cleanBelow_per_100mL: f.cleanBelow_per_100mL,
  cleanWanted_count: f.cleanWanted_count,
  inspection: f.inspection && { ...f.inspection, inspectedOn: isoDay(f.inspection.inspectedOn) },
  priority: f.priority,
});

const chlorineReport = (f: ChlorineFinding): Omit<NonNullable<SafetyReport['chlorine']>, 'finding'> => ({
  ct_mg_min_per_L: f.ct_mg_min_per_L,
  ctForGiardia_mg_min_per_L: f.ctForGiardia_mg_min_per_L,
  ctForGiardiaRegression_mg_min_per_L: f.ctForGiardiaRegression_mg_min_per_L,
  giardia_log10: f.giardia_log10,
  viruses_log10: f.viruses_log10,
  stock_mL: f.stock_mL,
  product_per_L: f.product_per_L,
  residualBand: f.residualBand,
  wait_min: f.wait_min,
  isTooTurbid: f.isTooTurbid,
  credited: reductions(f.credited),
});
