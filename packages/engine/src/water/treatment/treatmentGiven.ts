import type {
  DesignSettings,
  Problem,
  SiteFacts,
  TreatmentFinding,
  TreatmentUnitFacts,
  WorkingLine,
} from '../../kernel/index.ts';

/** What treatment is judged by. */
export interface TreatmentGiven {
  readonly site: SiteFacts;
  /** What the day that asks for most asks of the whole site, its people all there; null where that is not known. */
  readonly demandHighest_L_per_day: number | null;
  /** Head across the unit by gravity, with the tank at its outlet and every tap open; null where the way was not measured. */
  readonly gravityHead_m: number | null;
  readonly settings: DesignSettings;
}

/** One unit, judged. */
export interface JudgedUnit {
  readonly finding: TreatmentFinding;
  readonly problems: readonly Problem[];
  readonly working: readonly WorkingLine[];
}

/** Of a unit of which nothing is known. */
export function unknownUnit(unit: TreatmentUnitFacts | null, { waterTemperature_C }: DesignSettings): TreatmentFinding {
  return {
    serial: unit?.serial ?? null,
    partId: unit?.partId ?? null,
    verdict: 'unknown',
    cappedBy: null,
    drive: null,
    pressure_kPa: null,
    waterTemperature_C,
    flowClean_L_per_h: null,
    flowNow_L_per_h: null,
    flowWorn_L_per_h: null,
    resistanceNow_ratio: null,
    pumpPower_W: null,
    strokes_per_min: null,
    handForce_N: null,
    asked_L_per_day: null,
    treated_L_per_day: null,
    backwash_min_per_day: null,
    hoursNeeded_h: null,
    hoursNeededWorn_h: null,
    peaks: [],
    meanWait_min: null,
    unitHead_m: null,
    pressureTest: null,
  };
}
