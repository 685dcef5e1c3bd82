import { boreArea_m2, gravity_m_per_s2, reynoldsFactor } from '../../kernel/index.ts';
import { frictionFactor } from './frictionFactor.ts';

/** A pipe of one bore, with all it takes beside its wall. */
export interface PipeRun {
  readonly bore_m: number;
  readonly length_m: number;
  readonly roughness_m: number;
  /** Velocity heads that its fittings take together. */
  readonly fittings_factor: number;
}

/** What a pipe takes of the head at one flow. */
export interface PipeLoss {
  readonly velocity_m_per_s: number;
  readonly reynolds_factor: number;
  readonly friction_m: number;
  readonly minor_m: number;
}

/**
 * How much head does a pipe take at a flow? Friction by Darcy and Weisbach; fittings in velocity heads.
 *
 * @param run - the pipe: bore, length and roughness [m], fittings in velocity heads [number]
 * @param flow_m3_per_s - the flow [m3/s], 0 or more
 * @param kinematicViscosity_m2_per_s - of the water [m2/s]
 * @returns speed [m/s], Reynolds number, head lost to the wall and to the fittings [m]
 * @law neither loss falls with the flow or the length, nor rises with the bore
 * @source darcy-weisbach, f L/D · V²/2g (from memory); salvato, table 6-4, K · V²/2g
 */
export function pipeLoss(run: PipeRun, flow_m3_per_s: number, kinematicViscosity_m2_per_s: number): PipeLoss {
  if (flow_m3_per_s <= 0) return { velocity_m_per_s: 0, reynolds_factor: 0, friction_m: 0, minor_m: 0 };
  const velocity_m_per_s = flow_m3_per_s / boreArea_m2(run.bore_m);
  const reynolds_factor = reynoldsFactor(velocity_m_per_s, run.bore_m, kinematicViscosity_m2_per_s);
  const velocityHead_m = velocity_m_per_s ** 2 / (2 * gravity_m_per_s2);
  const factor = frictionFactor(reynolds_factor, run.roughness_m / run.bore_m);
  return {
    velocity_m_per_s,
    reynolds_factor,
    friction_m: (factor * run.length_m * velocityHead_m) / run.bore_m,
    minor_m: run.fittings_factor * velocityHead_m,
  };
}

/** The unit between the pipes: what it takes at one flow. What it takes at others is in proportion, as through a membrane. */
export interface UnitLoss {
  readonly head_m: number;
  readonly flow_m3_per_s: number;
}

/**
 * How much head do pipes in a row take at a flow, and a unit between them?
 *
 * @param runs - the pipes, one after another
 * @param unit - what the unit takes [m] at a flow [m3/s]; null where there is none
 * @param flow_m3_per_s - the flow [m3/s], 0 or more
 * @param kinematicViscosity_m2_per_s - of the water [m2/s]
 * @returns head lost [m]
 * @law never falls with the flow
 * @definition sum over the pipes; the unit's loss in proportion to the flow (docs/decisions/0182-head.md)
 */
export function rowLoss_m(
  runs: readonly PipeRun[],
  unit: UnitLoss | null,
  flow_m3_per_s: number,
  kinematicViscosity_m2_per_s: number,
): number {
  const pipes_m = runs.reduce((sum, run) => {
    const { friction_m, minor_m } = pipeLoss(run, flow_m3_per_s, kinematicViscosity_m2_per_s);
    return sum + friction_m + minor_m;
  }, 0);
  return pipes_m + (unit === null ? 0 : (unit.head_m * flow_m3_per_s) / unit.flow_m3_per_s);
}
