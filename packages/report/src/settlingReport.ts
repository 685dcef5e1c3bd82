import type { SettlingFinding } from '@eavewell/engine';
import type { SiteReport } from '@eavewell/tables';
import type { Language } from '@eavewell/words';

/** One settling tank field by field, so that a new field of the engine reaches the report only once the schema has it. */
export function settlingReport(f: SettlingFinding, language: Language): SiteReport['settling'][number] {
  return {
    tankId: f.tankId,
    verdict: f.verdict,
    cappedBy: f.cappedBy,
    finding: language.findings.settling(f),
    planArea_m2: f.planArea_m2,
    cells_count: f.cells_count,
    flowByDay_L_per_s: f.flowByDay_L_per_s,
    flowInStorm_L_per_s: f.flowInStorm_L_per_s,
    overflowRateByDay_m_per_h: f.overflowRateByDay_m_per_h,
    overflowRateInStorm_m_per_h: f.overflowRateInStorm_m_per_h,
    grain_um: f.grain_um,
    sinks_m_per_h: f.sinks_m_per_h,
    settledByDay_fraction: f.settledByDay_fraction,
    settledInStorm_fraction: f.settledInStorm_fraction,
    firstTenth_min: f.firstTenth_min,
    grains: f.grains.map((grain) => ({ ...grain })),
    sludge_L_per_year: f.sludge_L_per_year,
    cleanAfter_months: f.cleanAfter_months,
  };
}
