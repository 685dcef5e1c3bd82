import { boreArea_m2, gravity_m_per_s2, risingRoot } from '../../kernel/index.ts';
import { type PipeRun, rowLoss_m, type UnitLoss } from './pipeLoss.ts';

/**
 * How much flows by itself through pipes in a row, and a unit between them? The flow at which they take all the head there is.
 *
 * @param runs - the pipes, one after another, at least one with fittings or a wall that take something
 * @param unit - what the unit takes [m] at a flow [m3/s]; null where there is none
 * @param head_m - the head there is [m]; under 0 nothing flows
 * @param kinematicViscosity_m2_per_s - of the water [m2/s]
 * @returns flow [m3/s]; 0 without head
 * @law never falls with the head, never rises with the length of a pipe
 * @source darcy-weisbach, f L/D · V²/2g (from memory); solved by bisection
 */
export function gravityFlow_m3_per_s(
  runs: readonly PipeRun[],
  unit: UnitLoss | null,
  head_m: number,
  kinematicViscosity_m2_per_s: number,
): number {
  if (head_m <= 0 || runs.length === 0) return 0;
  const over_m = (flow_m3_per_s: number) => rowLoss_m(runs, unit, flow_m3_per_s, kinematicViscosity_m2_per_s) - head_m;
  // One velocity head in the narrowest pipe is mostly less than all of it takes; where it is not, look further up.
  const narrowest_m = Math.min(...runs.map((run) => run.bore_m));
  let most_m3_per_s = boreArea_m2(narrowest_m) * Math.sqrt(2 * gravity_m_per_s2 * head_m);
  for (let doubled = 0; doubled < 100 && over_m(most_m3_per_s) < 0; doubled++) most_m3_per_s *= 2;
  return risingRoot(over_m, 0, most_m3_per_s);
}
