import {
  type CleanUnit,
  cautiousPersonPower_W,
  type DesignSettings,
  type Drive,
  handPower_W,
  headOfPressure_m,
  L_per_min_per_m3_per_s,
  personPower_W,
  pressureOfHead_kPa,
  pumpEfficiency_fraction,
  type SiteFacts,
  type UnitFigures,
  unitFlow_L_per_min,
  unitPressure_kPa,
  usableFigure,
  usableFigureOrNone,
  waterDensity_kg_per_m3,
} from '../../kernel/index.ts';
import { pistonFilled_fraction, strokes_per_min } from './constants.ts';
import { strokeFlow_L_per_min, strokeVolume_L } from './handStrokes.ts';
import { keptUpFlow } from './keptUpFlow.ts';

/** What drives water through one of the units of a site. */
export interface Driving {
  readonly drive: Drive;
  readonly clean_per_m3: number;
  readonly temperature_C: number;
  /** The most its membranes may have across them; null where not known. */
  readonly mostPressure_kPa: number | null;
  /** Head across unit and open taps by gravity; null where the way was not measured. */
  readonly gravityHead_m: number | null;
  /** Head the taps take when all are open, and the flow of this unit's share of them then; null where nobody counted them. */
  readonly residualHead_m: number;
  readonly tapsFlow_L_per_min: number | null;
  readonly ratedPressure_kPa: number | null;
  /** Litres a stroke; null where the piston is not known. */
  readonly stroke_L: number | null;
}

/** A flow through a unit, and what it takes. */
export interface DrivenFlow {
  readonly flow_L_per_min: number;
  /** Across the membranes. */
  readonly pressure_kPa: number;
  /** What a hand pump adds; null where there is none. */
  readonly pumped_kPa: number | null;
  readonly power_W: number | null;
}

/** What a unit passes clean, as it is now and at the unfavourable end. */
export interface FlowsOfUnit {
  readonly clean: DrivenFlow;
  readonly now: DrivenFlow;
  /** Null where it is not known when a set is changed. */
  readonly worn: DrivenFlow | null;
  /** The worst it is judged by. */
  readonly worst: DrivenFlow;
}

/** What drives the water: the hand pump that is there, the fall of the water where it was measured, else the pressure the unit is rated at; null where nothing is known. */
export function drivingOf(
  site: SiteFacts,
  figures: UnitFigures,
  unit: CleanUnit,
  head_m: number | null,
  units_count: number,
  settings: DesignSettings,
): Driving | null {
  const { clean_per_m3, ratedPressure_kPa } = unit;
  const gravityHead_m = head_m !== null && usableFigureOrNone(Math.abs(head_m)) !== null ? head_m : null;
  const drive = driveOf(site.hasHandPump, gravityHead_m, ratedPressure_kPa);
  if (clean_per_m3 === null || drive === null) return null;
  const highest_kPa = usableFigure(figures.highestPressure_kPa);
  const [bore_mm, stroke_mm] = [usableFigure(figures.pistonBore_mm), usableFigure(figures.pistonStroke_mm)];
  const taps_count = usableFigure(site.taps_count);
  return {
    ...{ drive, clean_per_m3, gravityHead_m, ratedPressure_kPa },
    temperature_C: settings.waterTemperature_C,
    mostPressure_kPa: drive === 'handPump' ? (highest_kPa ?? ratedPressure_kPa) : highest_kPa,
    residualHead_m: settings.residualHead_m,
    tapsFlow_L_per_min: taps_count === null ? null : (taps_count * settings.tapFlow_L_per_min) / units_count,
    stroke_L: bore_mm === null || stroke_mm === null ? null : strokeVolume_L(bore_mm, stroke_mm, pistonFilled_fraction),
  };
}

function driveOf(hasHandPump: boolean | null, head_m: number | null, rated_kPa: number | null): Drive | null {
  if (hasHandPump === true) return 'handPump';
  // Where nobody says whether there is a pump, water that does not run by itself is taken to be pumped somehow.
  if (head_m !== null && (hasHandPump === false || head_m > 0)) return 'gravity';
  return rated_kPa === null ? null : 'rated';
}

/** The flow through a set that is so worn; at the worst end with a person nobody chose at the handle. */
export function drivenFlow(by: Driving, worn_ratio: number, end: 'point' | 'worst'): DrivenFlow {
  if (by.drive === 'handPump') return pumped(by, worn_ratio, end === 'point' ? personPower_W : cautiousPersonPower_W);
  const { clean_per_m3, temperature_C } = by;
  const free = by.drive === 'gravity' ? fallingFlow_L_per_min(by, worn_ratio) : Infinity;
  const most_kPa = Math.min(by.mostPressure_kPa ?? Infinity, by.drive === 'rated' ? by.ratedPressure_kPa! : Infinity);
  const flow_L_per_min = Math.min(
    free,
    most_kPa === Infinity ? Infinity : unitFlow_L_per_min(clean_per_m3, most_kPa, temperature_C, worn_ratio),
  );
  const pressure_kPa = unitPressure_kPa(clean_per_m3, flow_L_per_min, temperature_C, worn_ratio);
  return { flow_L_per_min, pressure_kPa, pumped_kPa: null, power_W: null };
}

/** The pressure the drive alone would put across the membranes, were nothing in its way: more than they may have is told. */
export function unchecked_kPa(by: Driving): number | null {
  if (by.drive === 'rated') return by.ratedPressure_kPa;
  if (by.drive === 'gravity') return pressureOfHead_kPa(Math.max(0, by.gravityHead_m!), by.temperature_C);
  return null;
}

/** A person at the pump; lift and taps are beside the membranes. */
function pumped(by: Driving, worn_ratio: number, power_W: number): DrivenFlow {
  const { clean_per_m3, temperature_C, gravityHead_m, residualHead_m, stroke_L, mostPressure_kPa } = by;
  const beside_kPa = gravityHead_m === null ? 0 : pressureOfHead_kPa(residualHead_m - gravityHead_m, temperature_C);
  const mostStrokes_L_per_min = stroke_L === null ? null : strokeFlow_L_per_min(strokes_per_min, stroke_L);
  const found = keptUpFlow(
    { clean_per_m3, worn_ratio, temperature_C, beside_kPa },
    { power_W, efficiency_fraction: pumpEfficiency_fraction, mostPressure_kPa, mostStrokes_L_per_min },
  );
  const density = waterDensity_kg_per_m3(temperature_C);
  const head_m = headOfPressure_m(found.pumped_kPa, temperature_C);
  const flow_m3_per_s = found.flow_L_per_min / L_per_min_per_m3_per_s;
  return {
    flow_L_per_min: found.flow_L_per_min,
    pressure_kPa: found.pressure_kPa,
    pumped_kPa: found.pumped_kPa,
    power_W: handPower_W(head_m, flow_m3_per_s, density, pumpEfficiency_fraction),
  };
}

/** The flow at which unit and open taps take just the head there is: R Q + c Q² = H. Without taps to count they take nothing. */
function fallingFlow_L_per_min(by: Driving, worn_ratio: number): number {
  const { clean_per_m3, temperature_C, tapsFlow_L_per_min, residualHead_m } = by;
  const head_m = Math.max(0, by.gravityHead_m!);
  const unit_m_per_flow = headOfPressure_m(unitPressure_kPa(clean_per_m3, 1, temperature_C, worn_ratio), temperature_C);
  const taps_m_per_flow2 = tapsFlow_L_per_min === null ? 0 : residualHead_m / tapsFlow_L_per_min ** 2;
  const root = Math.sqrt(unit_m_per_flow ** 2 + 4 * taps_m_per_flow2 * head_m);
  return (2 * head_m) / (unit_m_per_flow + root);
}
