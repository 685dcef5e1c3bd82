import { type GaugeFinding, isoDay, type JudgedRain } from '@eavewell/engine';
import type { GaugeReport } from '@eavewell/tables';
import type { Language } from '@eavewell/words';
import { problemReport } from './problemReport.ts';
import { stormReport } from './stormReport.ts';

/** One gauge as the report has it. */
export function gaugeReport(gauge: GaugeFinding, language: Language): GaugeReport {
  return {
    gaugeId: gauge.gaugeId,
    name: gauge.name,
    rain: gauge.rain && rainReport(gauge.rain),
    storm: gauge.storm && stormReport(gauge.storm, gauge.gaugeId, language),
    problems: gauge.problems.map((problem) => problemReport(problem, language)),
  };
}

function rainReport(rain: JudgedRain): NonNullable<GaugeReport['rain']> {
  const { firstDay, rain_mm } = rain.record;
  return {
    firstDay: isoDay(firstDay),
    lastDay: isoDay(firstDay + rain_mm.length - 1),
    waterYearStartMonth: rain.startMonth,
    judgedYears: rain.judgedYears,
    years: rain.years.map(({ label, judged, missing_days }) => ({ waterYear: label, judged, missing_days })),
    filledDays: rain.filledDays,
    neighbourDays: rain.neighbourDays,
    madeDays: rain.madeDays,
    cutDays: rain.cutDays,
    meanAnnualRain_mm: rain.meanAnnualRain_mm,
    longestRainlessRun_days: rain.longestRainlessRun_days,
  };
}
