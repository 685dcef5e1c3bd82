import {
  boreArea_m2,
  cautiousPersonPower_W,
  type DesignSettings,
  gravity_m_per_s2,
  handPower_W,
  kinematicViscosity_m2_per_s,
  L_per_min_per_m3_per_s,
  personPower_W,
  pumpEfficiency_fraction,
  waterDensity_kg_per_m3,
} from '../../kernel/index.ts';
import { mostSuction_m } from './constants.ts';
import { gravityFlow_m3_per_s } from './gravityFlow.ts';
import type { HeadWay } from './headWay.ts';
import { type PipeRun, rowLoss_m } from './pipeLoss.ts';

/** What a way takes and leaves at the flow wanted. */
export interface HeadAtFlow {
  readonly lossToUnit_m: number;
  readonly lossToTap_m: number;
  /** At the taps, the tank at its outlet. */
  readonly headLeft_m: number;
  /** At the inlet of the unit; under 0 water does not run to it. */
  readonly headAtUnit_m: number;
  readonly suction_m: number;
  readonly pumpAdds_m: number;
  readonly pumpPower_W: number;
  readonly meetsAtPoint: boolean;
  readonly meetsAtWorstEnd: boolean;
}

/**
 * The flow with every tap open.
 *
 * @param taps_count - taps [count]
 * @param tapFlow_L_per_min - flow of one [L/min]
 * @returns flow [m3/s]
 * @definition taps × flow of one
 */
export function flowWanted_m3_per_s(taps_count: number, tapFlow_L_per_min: number): number {
  return (taps_count * tapFlow_L_per_min) / L_per_min_per_m3_per_s;
}

/**
 * What is left of the head at the flow wanted, what must a hand pump add, and does that do? The least favourable end has the margin of head against it and a person
 * nobody chose at the handle.
 *
 * @param way - the way to the taps: heights [m], pipes
 * @param settings - flow of a tap [L/min], head wanted there and its margin [m], temperature of the water [C]
 * @returns losses, heads [m], power [W], and whether it meets what is wanted
 * @law wider or shorter pipes, or a higher tank, never make it worse
 * @source darcy-weisbach, f L/D · V²/2g (from memory); lambert-faulkner-1991, abstract
 */
export function headAtFlow(way: HeadWay, settings: DesignSettings): HeadAtFlow {
  const flow = flowWanted_m3_per_s(way.taps_count, settings.tapFlow_L_per_min);
  const nu = kinematicViscosity_m2_per_s(settings.waterTemperature_C);
  const density = waterDensity_kg_per_m3(settings.waterTemperature_C);
  const lossToUnit_m = rowLoss_m(runsOf(way.toUnit), null, flow, nu);
  const lossToTap_m = rowLoss_m(runsOf(way.toTap), null, flow, nu);
  const headAtUnit_m = way.lowLevel_m - way.unitHeight_m - lossToUnit_m;
  const headLeft_m = way.lowLevel_m - way.tapHeight_m - lossToUnit_m - way.unitHead_m - lossToTap_m;
  const suction_m = Math.max(0, -headAtUnit_m);
  const meets = (margin_m: number, power_W: number) => {
    const wanting_m = settings.residualHead_m + margin_m - headLeft_m;
    if (!way.hasHandPump) return wanting_m <= 0 && headAtUnit_m >= 0;
    const drawsTooHigh = headAtUnit_m < 0 && suction_m + margin_m > mostSuction_m;
    return !drawsTooHigh && handPower_W(wanting_m, flow, density, pumpEfficiency_fraction) <= power_W;
  };
  const pumpAdds_m = Math.max(0, settings.residualHead_m - headLeft_m);
  return {
    lossToUnit_m,
    lossToTap_m,
    headLeft_m,
    headAtUnit_m,
    suction_m,
    pumpAdds_m,
    pumpPower_W: handPower_W(pumpAdds_m, flow, density, pumpEfficiency_fraction),
    meetsAtPoint: meets(0, personPower_W),
    meetsAtWorstEnd: meets(settings.headMargin_m, cautiousPersonPower_W),
  };
}

/** The pipes alone. */
function runsOf(pipes: HeadWay['toUnit']): readonly PipeRun[] {
  return pipes.map(({ run }) => run);
}

/**
 * How much comes to the taps by itself from one level? The taps take the head wanted of them at the flow wanted, as holes do; and no more runs to the unit than falls to it.
 *
 * @param way - the way to the taps: heights [m], pipes
 * @param level_m - level of the water [m]
 * @param settings - flow of a tap [L/min], head wanted there [m], temperature of the water [C]
 * @returns flow [L/min]; 0 where the unit or the taps lie higher
 * @law never falls with the level
 * @definition ours: docs/decisions/0182-head.md
 */
export function flowByItself_L_per_min(way: HeadWay, level_m: number, settings: DesignSettings): number {
  const wanted = flowWanted_m3_per_s(way.taps_count, settings.tapFlow_L_per_min);
  const nu = kinematicViscosity_m2_per_s(settings.waterTemperature_C);
  const toUnit = runsOf(way.toUnit);
  const unit = { head_m: way.unitHead_m, flow_m3_per_s: wanted };
  const all = [...toUnit, ...withTaps(runsOf(way.toTap), settings.residualHead_m, wanted)];
  const fallToUnit_m = level_m - way.unitHeight_m;
  const whole = gravityFlow_m3_per_s(all, unit, level_m - way.tapHeight_m, nu);
  const runsToUnit = rowLoss_m(toUnit, null, whole, nu) <= fallToUnit_m;
  const flow = runsToUnit ? whole : Math.min(whole, gravityFlow_m3_per_s(toUnit, null, fallToUnit_m, nu));
  return flow * L_per_min_per_m3_per_s;
}

/** The taps as a fitting of the last pipe, that takes the head wanted at the flow wanted. */
function withTaps(runs: readonly PipeRun[], residualHead_m: number, wanted_m3_per_s: number): readonly PipeRun[] {
  return runs.map((run, index) => {
    if (index < runs.length - 1) return run;
    const velocity_m_per_s = wanted_m3_per_s / boreArea_m2(run.bore_m);
    const taps_factor = residualHead_m / (velocity_m_per_s ** 2 / (2 * gravity_m_per_s2));
    return { ...run, fittings_factor: run.fittings_factor + taps_factor };
  });
}
