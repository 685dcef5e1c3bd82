import {
  type DayIndex,
  type DesignSettings,
  dayOrNull,
  engineProblem,
  type FlowReading,
  isOfUnit,
  isoDay,
  isWaterTemperature,
  type Problem,
  type TreatmentUnitFacts,
} from '../../kernel/index.ts';
import { type FlowRating, resistanceRead_ratio } from './cartridgeRating.ts';
import {
  largestFigure_count,
  pressureNotRead_fraction,
  smallestFigure_count,
  temperatureNotRead_fraction,
} from './constants.ts';
import type { SetsOf, WearSite } from './setsOf.ts';
import type { SiteReading } from './siteFouling.ts';

/** Litres that passed a set, by the water they came from. */
export interface PassedLitres {
  readonly roof_L: number;
  readonly secondSource_L: number;
}

/** What the readings of a unit tell. */
export interface ReadingsOf {
  readonly readings: readonly SiteReading[];
  /** What the meter says of the set that is in it, on the last day it was read; null where it was not. */
  readonly metered: (PassedLitres & { readonly day: DayIndex }) | null;
  readonly problems: readonly Problem[];
}

interface ReadingsGiven {
  readonly site: WearSite;
  readonly settings: DesignSettings;
  readonly unit: TreatmentUnitFacts;
  /** Null where flow is not rated. */
  readonly flow: FlowRating | null;
  /** The pressure of a reading without one. */
  readonly pressure_kPa: number;
  readonly sets: SetsOf;
  /** What passed between two days, as the balance has it. */
  readonly passedBetween: (from: DayIndex, to: DayIndex) => PassedLitres;
}

/** Every reading that can be used, with what had passed its set till then: by the meter, else by the balance. */
export function readingsOf(given: ReadingsGiven): ReadingsOf {
  const { site, unit, flow, sets } = given;
  const own = site.treatment.flowReadings.filter(
    (reading) => isOfUnit(site.treatment, unit, reading.unitSerial) && isUsable(reading),
  );
  const problems: Problem[] = [];
  const tell = (code: 'wear.meter_backwards' | 'wear.reading_before_set' | 'wear.readings_not_used', facts: object) =>
    problems.push(
      engineProblem(code, { file: 'flowReadings.csv', siteId: site.siteId }, { unit: unit.serial, ...facts }),
    );
  const readings: SiteReading[] = [];
  let metered: ReadingsOf['metered'] = null;
  let last = { since: Number.NaN, passed_L: 0 };
  for (const reading of own) {
    const since = sets.since.findLast((day) => day <= reading.readOn);
    if (since === undefined) {
      tell('wear.reading_before_set', { day: isoDay(reading.readOn) });
      continue;
    }
    const byBalance = given.passedBetween(since, reading.readOn);
    const isBackwards = reading.passed_L !== null && since === last.since && reading.passed_L < last.passed_L;
    if (isBackwards)
      tell('wear.meter_backwards', { day: isoDay(reading.readOn), value: reading.passed_L, before: last.passed_L });
    const isMetered = reading.passed_L !== null && !isBackwards;
    const passed = isMetered ? inTheSameShares(byBalance, reading.passed_L!) : byBalance;
    if (isMetered) {
      last = { since, passed_L: reading.passed_L! };
      if (since === sets.setSince) metered = { ...passed, day: reading.readOn };
    }
    if (flow !== null) readings.push({ ...passed, ...resistanceOf(given, flow, reading) });
  }
  if (flow === null && own.length > 0) tell('wear.readings_not_used', { count: own.length });
  return { readings, metered, problems };
}

/** Can one reckon with it? What a table may hold always is so. */
function isUsable({ readOn, flow_L_per_h, pressure_kPa, passed_L }: FlowReading): boolean {
  const isMeasure = (value: number | null, least: number) =>
    value === null || (value >= least && value <= largestFigure_count);
  const isPositive = isMeasure(flow_L_per_h, smallestFigure_count) && isMeasure(pressure_kPa, smallestFigure_count);
  return dayOrNull(readOn) !== null && isPositive && isMeasure(passed_L, 0);
}

/** What a meter counted, parted as the balance has it. */
function inTheSameShares({ roof_L, secondSource_L }: PassedLitres, passed_L: number): PassedLitres {
  const sum = roof_L + secondSource_L;
  const ofSource = sum > 0 ? passed_L * (secondSource_L / sum) : 0;
  return { roof_L: passed_L - ofSource, secondSource_L: ofSource };
}

/** The resistance a reading tells, and how far it may be out. */
function resistanceOf({ settings, pressure_kPa }: ReadingsGiven, flow: FlowRating, reading: FlowReading) {
  const temperature_C = reading.waterTemperature_C;
  const errors = [
    settings.flowReadingError_fraction,
    reading.pressure_kPa === null ? pressureNotRead_fraction : 0,
    temperature_C === null ? temperatureNotRead_fraction : 0,
  ];
  const isRead = temperature_C !== null && isWaterTemperature(temperature_C);
  return {
    resistance_ratio: resistanceRead_ratio(
      flow,
      reading.flow_L_per_h,
      reading.pressure_kPa ?? pressure_kPa,
      isRead ? temperature_C : settings.waterTemperature_C,
    ),
    error_fraction: Math.hypot(...errors),
  };
}
