import {
  type DesignSettings,
  engineProblem,
  isOfUnit,
  isoDay,
  isWaterTemperature,
  min_per_h,
  type Problem,
  type SiteFacts,
  setNewOn,
  type TreatmentUnitFacts,
  unitResistance_per_m3,
  usableFigure,
} from '../../kernel/index.ts';
import { leastResistance_ratio } from './constants.ts';

/** What the last reading that can be used says of a set. */
export interface ReadingNow {
  /** Resistance over that of a clean set; null where there is no such reading. */
  readonly worn_ratio: number | null;
  readonly problems: readonly Problem[];
}

/** How worn the set is, by the last reading of it with its pressure. Readings of an earlier set, without pressure, or of more than a clean set gives are told and left out. */
export function readingNow(
  site: SiteFacts,
  unit: TreatmentUnitFacts,
  clean_per_m3: number,
  settings: DesignSettings,
): ReadingNow {
  const { treatment, siteId } = site;
  const since = setNewOn(treatment, unit, site.handOverDay);
  const own = treatment.flowReadings.filter(({ unitSerial }) => isOfUnit(treatment, unit, unitSerial));
  const problems: Problem[] = [];
  const place = { file: 'flowReadings.csv', siteId };
  for (const reading of own.toReversed()) {
    const facts = { unit: unit.serial, day: isoDay(reading.readOn) };
    if (since !== null && reading.readOn < since) {
      if (problems.length === 0)
        problems.push(engineProblem('treatment.reading_early', place, { ...facts, since: isoDay(since) }));
      break;
    }
    const [flow_L_per_h, pressure_kPa] = [usableFigure(reading.flow_L_per_h), usableFigure(reading.pressure_kPa)];
    const { waterTemperature_C: read_C } = reading;
    const temperature_C = read_C !== null && isWaterTemperature(read_C) ? read_C : settings.waterTemperature_C;
    if (flow_L_per_h === null || pressure_kPa === null) {
      const column = pressure_kPa === null ? 'pressure_kPa' : 'flow_L_per_h';
      problems.push(
        engineProblem('treatment.reading_not_used', { ...place, column }, { ...facts, reason: 'noPressure' }),
      );
      continue;
    }
    const worn_ratio = unitResistance_per_m3(flow_L_per_h / min_per_h, pressure_kPa, temperature_C) / clean_per_m3;
    if (worn_ratio >= leastResistance_ratio) return { worn_ratio, problems };
    const column = 'flow_L_per_h';
    problems.push(
      engineProblem(
        'treatment.reading_not_used',
        { ...place, column },
        { ...facts, reason: 'overClean', flow_L_per_h },
      ),
    );
  }
  return { worn_ratio: null, problems };
}
