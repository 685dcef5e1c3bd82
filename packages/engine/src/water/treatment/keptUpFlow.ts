import {
  L_per_min_per_m3_per_s,
  Pa_per_kPa,
  unitFlow_L_per_min,
  unitPressure_kPa,
  waterViscosity_Pas,
} from '../../kernel/index.ts';

/** A unit as it is on a day, and what its water has to overcome beside it. */
export interface UnitAtWork {
  /** Resistance ÷ area of the unit when new [1/m3]. */
  readonly clean_per_m3: number;
  /** Resistance now ÷ resistance when new. */
  readonly worn_ratio: number;
  readonly temperature_C: number;
  /** What lift and pipes take beside the membranes; under 0 the water comes with that much pressure of its own. */
  readonly beside_kPa: number;
}

/** What a hand pump and the person at it can do. */
export interface PumpAtHand {
  /** What the person keeps up. */
  readonly power_W: number;
  /** Share of it that reaches the water, above 0, at most 1. */
  readonly efficiency_fraction: number;
  /** Most the membranes may have across them; null where it is not known. */
  readonly mostPressure_kPa: number | null;
  /** Strokes a minute × litres a stroke; null where it is not known. */
  readonly mostStrokes_L_per_min: number | null;
}

/** What keeps the flow from being more. */
export type FlowLimit = 'power' | 'pressure' | 'strokes';

/** The flow that is kept up, and what it takes. */
export interface KeptUpFlow {
  readonly flow_L_per_min: number;
  /** Across the membranes. */
  readonly pressure_kPa: number;
  /** What the pump adds: membranes and all beside them; 0 where the water comes by itself. */
  readonly pumped_kPa: number;
  /** At the handle. */
  readonly power_W: number;
  readonly limitedBy: FlowLimit;
}

/**
 * How much water can a person keep pumping through a unit? As much as the power gives, but no more than the membranes may have across them, nor than the strokes give.
 *
 * @param unit - the unit on the day: resistance ÷ area [1/m3], wear [ratio], temperature [C], lift and pipes beside it [kPa]
 * @param pump - power kept up [W], efficiency [fraction], most pressure across the membranes [kPa], most flow by strokes [L/min]
 * @returns flow [L/min], pressures [kPa], power at the handle [W], and which of the three limits it
 * @law never falls with power, efficiency or warmth, never rises with wear or lift; the power is never above that of the person
 * @source hydraulic-power, p Q ÷ η (from memory); darcy-1856, with p in proportion to Q: (R Q + h) Q = η P solved for Q
 */
export function keptUpFlow(unit: UnitAtWork, pump: PumpAtHand): KeptUpFlow {
  const limits: [FlowLimit, number][] = [['power', flowByPower_L_per_min(unit, pump)]];
  const { clean_per_m3, worn_ratio, temperature_C, beside_kPa } = unit;
  const { mostPressure_kPa, mostStrokes_L_per_min } = pump;
  if (mostPressure_kPa !== null)
    limits.push(['pressure', unitFlow_L_per_min(clean_per_m3, mostPressure_kPa, temperature_C, worn_ratio)]);
  if (mostStrokes_L_per_min !== null) limits.push(['strokes', mostStrokes_L_per_min]);
  const [limitedBy, flow_L_per_min] = limits.reduce((least, one) => (one[1] < least[1] ? one : least));
  const pressure_kPa = unitPressure_kPa(clean_per_m3, flow_L_per_min, temperature_C, worn_ratio);
  const pumped_kPa = Math.max(0, pressure_kPa + beside_kPa);
  const water_W = pumped_kPa * Pa_per_kPa * (flow_L_per_min / L_per_min_per_m3_per_s);
  return { flow_L_per_min, pressure_kPa, pumped_kPa, power_W: water_W / pump.efficiency_fraction, limitedBy };
}

/** The flow that takes just the power there is: (R Q + h) Q = η P, in the form that loses no digits whichever sign h has. */
function flowByPower_L_per_min(
  { clean_per_m3, worn_ratio, temperature_C, beside_kPa }: UnitAtWork,
  { power_W, efficiency_fraction }: PumpAtHand,
): number {
  const against_Pas_per_m3 = waterViscosity_Pas(temperature_C) * clean_per_m3 * worn_ratio;
  const beside_Pa = beside_kPa * Pa_per_kPa;
  const water_W = Math.max(0, power_W) * efficiency_fraction;
  const root_Pa = Math.sqrt(beside_Pa * beside_Pa + 4 * against_Pas_per_m3 * water_W);
  const flow_m3_per_s =
    beside_Pa > 0 ? (2 * water_W) / (root_Pa + beside_Pa) : (root_Pa - beside_Pa) / (2 * against_Pas_per_m3);
  return flow_m3_per_s * L_per_min_per_m3_per_s;
}
