import {
  type DayIndex,
  isoDay,
  type PathogenRisk,
  type SafetyFinding,
  type SiteDesign,
  type WearFinding,
} from '@eavewell/engine';
import type { SiteCup } from '@eavewell/tables';
import { sourceOfRisk } from '@eavewell/words';
import { cupSaidReport, unusableReport } from './safetyReport.ts';

/**
 * What does a list of the whole programme tell of the cup of one site?
 *
 * @param design - what the site came to
 * @param wear - when its sets of cartridges are due; null where that was not asked
 * @param today - the day it is asked on; null where that is not known
 * @returns what may be said of drinking and why, why a sample is wanted, the last sample [1/100 mL], the sets that are due; null where its cup is not judged
 * @definition ours: docs/decisions/0232-safety-of-the-whole-programme.md
 */
export function siteCup(
  { safety, stations }: Pick<SiteDesign, 'safety' | 'stations'>,
  wear: readonly WearFinding[] | null,
  today: DayIndex | null,
): SiteCup | null {
  if (safety === null || stations.cup === 'notJudged') return null;
  const [worst] = safety.risks;
  const said = cupSaidReport(safety);
  const isSetOverdue = (wear ?? []).some((one) => isOverdue(one, today));
  return {
    verdict: stations.cup,
    mayDrink: safety.mayDrink,
    because: said.reasons[0] ?? 'unknown',
    ...said,
    notes: [...said.notes, ...(isSetOverdue ? (['setOverdue'] as const) : [])],
    needsTest: [...said.needsTest, ...(isSetOverdue ? (['setOverdue'] as const) : [])],
    unusable: safety.waterTests.unusable.map(unusableReport),
    worst: worst ? riskOf(worst, safety) : null,
    target_DALY_per_person_per_year: safety.target_DALY_per_person_per_year,
    last: lastOf(safety),
    clean_count: safety.waterTests.clean_count,
    setsUndated_count: (wear ?? []).filter(({ endsOn }) => endsOn === null).length,
    sets: setsOf(wear ?? []),
  };
}

/** A set is overdue once half its futures have ended. */
function isOverdue({ endsOn }: WearFinding, today: DayIndex | null): boolean {
  return endsOn !== null && today !== null && endsOn.p50 < today;
}

function riskOf(risk: PathogenRisk, safety: SafetyFinding): NonNullable<SiteCup['worst']> {
  const { pathogen, DALY_per_person_per_year, DALYHigh_per_person_per_year } = risk;
  const source = sourceOfRisk(risk, safety);
  return { pathogen, ...source, DALY_per_person_per_year, DALYHigh_per_person_per_year };
}

/** The last sample. What may be low in it is not called so beside a word that it must not be drunk. */
function lastOf({ mayDrink, waterTests: { last } }: SafetyFinding): SiteCup['last'] {
  if (last === null) return null;
  const { takenOn, point, sign, count_per_100mL, band } = last;
  const told = mayDrink === 'no' && band === 'low' ? null : band;
  return { takenOn: isoDay(takenOn), point, sign, count_per_100mL, band: told };
}

function setsOf(wear: readonly WearFinding[]): SiteCup['sets'] {
  return wear
    .flatMap(({ serial, endsOn }) => (endsOn === null ? [] : [{ serial, ...endsOn }]))
    .sort((a, b) => a.p50 - b.p50 || a.serial.localeCompare(b.serial))
    .map(({ serial, p10, p50, p90 }) => ({
      ...{ serial, early: isoDay(p10), middle: isoDay(p50), late: isoDay(p90) },
    }));
}
