import { isoDay, type TreatmentFinding } from '@eavewell/engine';
import type { SiteReport } from '@eavewell/tables';
import type { Language } from '@eavewell/words';

type TreatmentReport = SiteReport['treatment'][number];

/** One treatment unit field by field, so that a new field of the engine reaches the report only once the schema has it. */
export function treatmentReport(f: TreatmentFinding, language: Language): TreatmentReport {
  return {
    serial: f.serial,
    partId: f.partId,
    verdict: f.verdict,
    cappedBy: f.cappedBy,
    finding: language.findings.treatment(f),
    drive: f.drive,
    pressure_kPa: f.pressure_kPa,
    waterTemperature_C: f.waterTemperature_C,
    flowClean_L_per_h: f.flowClean_L_per_h,
    flowNow_L_per_h: f.flowNow_L_per_h,
    flowWorn_L_per_h: f.flowWorn_L_per_h,
    resistanceNow_ratio: f.resistanceNow_ratio,
    pumpPower_W: f.pumpPower_W,
    strokes_per_min: f.strokes_per_min,
    handForce_N: f.handForce_N,
    asked_L_per_day: f.asked_L_per_day,
    treated_L_per_day: f.treated_L_per_day,
    backwash_min_per_day: f.backwash_min_per_day,
    hoursNeeded_h: f.hoursNeeded_h,
    hoursNeededWorn_h: f.hoursNeededWorn_h,
    peaks: f.peaks.map((peak) => ({ ...peak })),
    meanWait_min: f.meanWait_min,
    unitHead_m: f.unitHead_m,
    pressureTest: f.pressureTest && { ...f.pressureTest, testedOn: isoDay(f.pressureTest.testedOn) },
  };
}

/** The same, said again in a language. No figure changes. */
export function treatmentIn(reported: TreatmentReport, { findings }: Language): TreatmentReport {
  return { ...reported, finding: findings.treatment(reported) };
}
