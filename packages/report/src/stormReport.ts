import type { DesignStorm } from '@eavewell/engine';
import type { GaugeReport } from '@eavewell/tables';
import type { Language } from '@eavewell/words';

type StormReport = NonNullable<GaugeReport['storm']>;

/** The storm field by field, so that a new field of the engine reaches the report only once the schema has it. */
export function stormReport(storm: DesignStorm, gaugeId: string, language: Language): StormReport {
  return {
    said: language.findings.storm(storm, gaugeId),
    gaugeId: storm.gaugeId,
    returnPeriod_years: storm.returnPeriod_years,
    intensity_mm_per_h: storm.intensity_mm_per_h,
    intensity_range: storm.intensity_range,
    from: storm.from,
    source: storm.source,
    years_count: storm.years_count,
    cappedBy: storm.cappedBy,
  };
}

/** The storm said in another language. */
export const stormIn = (storm: StormReport, gaugeId: string, language: Language): StormReport => ({
  ...storm,
  said: language.findings.storm(storm, gaugeId),
});
