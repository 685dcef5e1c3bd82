import { isoDay, type PathogenRisk, type SafetyFinding, type SiteDesign, type WearFinding } from '@eavewell/engine';
import type { SiteCup } from '@eavewell/tables';
import { isSourceKnown, sourceOfRisk } from '@eavewell/words';

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
  { safety, stations, problems }: Pick<SiteDesign, 'safety' | 'stations' | 'problems'>,
  wear: readonly WearFinding[] | null,
): SiteCup | null {
  if (safety === null || stations.cup === 'notJudged') return null;
  // Facts in doubt beside it may leave the station worse than its finding: it is never said to be fit then.
  const isDoubted = stations.cup === 'unknown' && safety.verdict !== 'unknown';
  const [worst] = safety.risks;
  return {
    verdict: stations.cup,
    mayDrink: isDoubted && safety.mayDrink === 'yes' ? 'notShown' : safety.mayDrink,
    because: isDoubted && safety.mayDrink !== 'no' ? 'unknown' : reasonOf(safety, problems),
    worst: worst ? riskOf(worst, safety) : null,
    target_DALY_per_person_per_year: safety.target_DALY_per_person_per_year,
    last: lastOf(safety),
    clean_count: safety.waterTests.clean_count,
    sets: setsOf(wear ?? []),
  };
}

/** What may be missing, and the codes of problems that say so, in the order in which it is told. */
const missing: readonly (readonly [Reason, readonly string[]])[] = [
  ['noEvidence', ['safety.no_barrier', 'safety.no_evidence', 'safety.evidence_without_source']],
  ['rawUnknown', ['safety.raw_unknown', 'safety.raw_without_source']],
  ['sourceRawUnknown', ['safety.source_raw_unknown']],
  ['sourceOver', ['safety.source_over_target']],
  ['skippingUnknown', ['safety.skipping_unknown']],
  ['daysOffUnknown', ['safety.days_off_unknown']],
  ['noSample', ['safety.no_clean_sample']],
  ['fails', ['safety.test_supports_less', 'safety.unit_not_in_place']],
];

/** What is missing first, of what these codes say. */
const missingBy = (codes: readonly string[]): Reason | undefined =>
  missing.find(([, known]) => known.some((code) => codes.includes(code)))?.[0];

function reasonOf(safety: SafetyFinding, problems: SiteDesign['problems']): Reason {
  const { verdict, mayDrink, cappedBy, risks, waterTests, target_DALY_per_person_per_year: target } = safety;
  if (holdsGerms(waterTests.last)) return 'found';
  if (verdict === 'short' && risks.some(({ DALY_per_person_per_year: risk }) => risk > target)) return 'overTarget';
  if (mayDrink === 'no' || verdict === 'short') return 'fails';
  if (verdict === 'unknown') return missingBy(problems.map(({ code }) => code)) ?? 'unknown';
  if (verdict === 'holds') return 'shown';
  if (risks.some(({ DALYHigh_per_person_per_year: risk }) => risk > target)) return 'overAtWorst';
  return (cappedBy === null ? undefined : missingBy([cappedBy])) ?? 'assumed';
}

const holdsGerms = (last: SafetyFinding['waterTests']['last']): boolean =>
  last !== null && (last.sign === 'more' || (last.sign === 'equal' && (last.count_per_100mL ?? 0) > 0));

function riskOf(risk: PathogenRisk, safety: SafetyFinding): NonNullable<SiteCup['worst']> {
  const { pathogen, DALY_per_person_per_year, DALYHigh_per_person_per_year } = risk;
  const source = sourceOfRisk(risk, isSourceKnown(safety));
  return { pathogen, ...source, DALY_per_person_per_year, DALYHigh_per_person_per_year };
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
