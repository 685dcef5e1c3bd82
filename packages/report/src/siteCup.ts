import { isoDay, type PathogenRisk, type SafetyFinding, type SiteDesign, type WearFinding } from '@eavewell/engine';
import type { SiteCup } from '@eavewell/tables';

type Reason = SiteCup['because'];

/**
 * What does a list of the whole programme tell of the cup of one site?
 *
 * @param design - what the site came to
 * @param wear - when its sets of cartridges are due; null where that was not asked
 * @returns what may be said of drinking and why, the last sample [1/100 mL], the sets that are due; null where its cup is not judged
 * @definition ours: docs/decisions/0232-safety-of-the-whole-programme.md
 */
export function siteCup(
  { safety, stations }: Pick<SiteDesign, 'safety' | 'stations'>,
  wear: readonly WearFinding[] | null,
): SiteCup | null {
  if (safety === null || stations.cup === 'notJudged') return null;
  // Facts in doubt beside it may leave the station worse than its finding: it is never said to be fit then.
  const isDoubted = stations.cup === 'unknown' && safety.verdict !== 'unknown';
  const [worst] = safety.risks;
  return {
    verdict: stations.cup,
    mayDrink: isDoubted && safety.mayDrink === 'yes' ? 'notShown' : safety.mayDrink,
    because: isDoubted && safety.mayDrink !== 'no' ? 'unknown' : reasonOf(safety),
    worst: worst ? riskOf(worst) : null,
    target_DALY_per_person_per_year: safety.target_DALY_per_person_per_year,
    last: lastOf(safety),
    clean_count: safety.waterTests.clean_count,
    sets: setsOf(wear ?? []),
  };
}

/** Each code that keeps a cup from holding, and the reason it is told as. */
const reasonOfCode: Readonly<Record<string, Reason>> = {
  'safety.raw_unknown': 'rawUnknown',
  'safety.raw_without_source': 'rawUnknown',
  'safety.source_raw_unknown': 'sourceRawUnknown',
  'safety.no_barrier': 'noEvidence',
  'safety.no_evidence': 'noEvidence',
  'safety.evidence_without_source': 'noEvidence',
  'safety.skipping_unknown': 'skippingUnknown',
  'safety.days_off_unknown': 'daysOffUnknown',
  'waterTests.none': 'noSample',
  'waterTests.before_handover': 'noSample',
  'waterTests.handover_unknown': 'noSample',
};

function reasonOf({
  verdict,
  mayDrink,
  cappedBy,
  risks,
  waterTests,
  target_DALY_per_person_per_year: target,
}: SafetyFinding): Reason {
  const { band } = waterTests.last ?? { band: null };
  if (band !== null && band !== 'low') return 'found';
  if (risks.some(({ DALY_per_person_per_year: risk }) => risk > target)) return 'overTarget';
  if (mayDrink === 'no' || verdict === 'short') return 'fails';
  const told = cappedBy === null ? undefined : reasonOfCode[cappedBy];
  if (verdict === 'unknown') return told ?? 'unknown';
  if (verdict === 'holds') return 'shown';
  if (risks.some(({ DALYHigh_per_person_per_year: risk }) => risk > target)) return 'overAtWorst';
  if (told !== undefined) return told;
  return waterTests.last === null ? 'noSample' : 'assumed';
}

function riskOf(risk: PathogenRisk): NonNullable<SiteCup['worst']> {
  const { pathogen, secondSourceId, DALY_per_person_per_year, DALYHigh_per_person_per_year } = risk;
  return { pathogen, secondSourceId, DALY_per_person_per_year, DALYHigh_per_person_per_year };
}

function lastOf({ waterTests: { last } }: SafetyFinding): SiteCup['last'] {
  if (last === null) return null;
  const { takenOn, point, sign, count_per_100mL, band } = last;
  return { takenOn: isoDay(takenOn), point, sign, count_per_100mL, band };
}

function setsOf(wear: readonly WearFinding[]): SiteCup['sets'] {
  return wear
    .flatMap(({ serial, endsOn }) => (endsOn === null ? [] : [{ serial, ...endsOn }]))
    .sort((a, b) => a.p50 - b.p50 || a.serial.localeCompare(b.serial))
    .map(({ serial, p10, p50, p90 }) => ({
      ...{ serial, early: isoDay(p10), middle: isoDay(p50), late: isoDay(p90) },
    }));
}
