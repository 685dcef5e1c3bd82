import type { Scenario, SiteDesign } from '@eavewell/engine';
import { findingOf } from '@eavewell/report';
import type { DesignReport, SiteReport } from '@eavewell/tables';
import { spoken } from '../language.ts';
import type { ScenarioCounts } from '../print/scenario.ts';

/** A site under the scenario, as the report has it. */
export function siteUnderReport(under: SiteDesign): NonNullable<SiteReport['scenario']> {
  const [storage] = under.storages;
  return {
    verdict: under.verdict,
    finding: findingOf(under, spoken),
    judgedYears: storage?.judgedYears ?? null,
    goodYears: storage?.goodYears ?? null,
    dryDays_per_year: storage?.dryDays_per_year ?? null,
    longestRun_days: storage ? (storage.longestRun?.days ?? 0) : null,
    tankForTarget_L: storage?.tankForTarget_L ?? null,
  };
}

/** The whole scenario, as the report has it. */
export function scenarioReport(asked: Scenario, counts: ScenarioCounts): NonNullable<DesignReport['scenario']> {
  return {
    asked: { ...asked },
    present: { ...counts.present },
    under: { ...counts.under },
    changed: counts.changed.map((change) => ({ ...change })),
  };
}
