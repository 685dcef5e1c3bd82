import { barWork_count, longestRun_m, rounding_um, um_per_m, um_per_mm } from './constants.ts';
import { fewestBars } from './fewestBars.ts';

/** How a gutter, pipe or downpipe is sold, and what cutting it takes. */
export interface BarStock {
  /** As it is sold. */
  readonly length_m: number;
  /** What one cut of the saw turns into dust. */
  readonly cut_mm: number;
  /** What is cut off each end of a bar to make it square. */
  readonly squareOff_mm: number;
}

/** A length that is wanted: of a gutter, a pipe or a downpipe. */
export interface CutRun {
  readonly runId: string;
  readonly length_m: number;
}

/** A piece to cut: of which run, and how long. */
export interface Cut {
  readonly runId: string;
  readonly length_m: number;
}

/** Bars that are cut alike. */
export interface CutBar {
  readonly bars_count: number;
  readonly cuts: readonly Cut[];
  /** What is left of each. */
  readonly offcut_m: number;
}

/** How many bars some runs take, and which pieces are cut from which. */
export interface BarPlan {
  readonly bars_count: number;
  /** No way takes fewer bars, with as few joints. Where it is less than bars_count, fewer may do, and nobody has shown that they do not. */
  readonly bound_count: number;
  /** Where two pieces of one run meet. */
  readonly joints_count: number;
  /** The runs that have any, each as often as it is wanted. */
  readonly joints: readonly { readonly runId: string; readonly joints_count: number }[];
  readonly bars: readonly CutBar[];
}

/**
 * How many bars do these runs take, and how are they cut? A run longer than a bar is joined from whole bars and one remainder, so that no run
 * is made of more pieces than it must be; what remains is cut from as few bars as can be. Other ways to join a run with as few joints
 * never take fewer bars.
 *
 * @param runs - what is wanted: lengths [m], 0 or more
 * @param stock - a bar [m], the waste of a cut and of a squared end [mm]
 * @param work_count - so many steps at most [count], see fewestBars
 * @returns bars [count], what no way beats [count], joints [count] and the plan: cuts [m] and offcuts [m]; null where a length is none, or
 *   nothing is left of a bar
 * @law bars_count is never under bound_count nor under the metres wanted ÷ those of a bar
 * @definition ours: docs/decisions/0242-whole-bars-and-one-remainder.md
 * @example
 * barPlan([{ runId: 'G1', length_m: 7 }, { runId: 'G2', length_m: 5 }], { length_m: 4, cut_mm: 0, squareOff_mm: 0 }, 1000)?.bars_count // → 3
 */
export function barPlan(runs: readonly CutRun[], stock: BarStock, work_count: number = barWork_count): BarPlan | null {
  const bar = usable_um(stock);
  const cut = Math.ceil(stock.cut_mm * um_per_mm - rounding_um);
  if (bar === null || !runs.every(({ length_m }) => length_m >= 0 && length_m <= longestRun_m)) return null;
  const whole: CutBar[] = [];
  const remainders: Cut[] = [];
  const sizes: number[] = [];
  const joints: BarPlan['joints'][number][] = [];
  for (const run of runs) {
    const length = Math.floor(run.length_m * um_per_m + rounding_um);
    const bars_count = Math.floor(length / bar);
    const rest = length - bars_count * bar;
    const { runId } = run;
    const joints_count = bars_count + Number(rest > 0) - 1;
    if (joints_count > 0) joints.push({ runId, joints_count });
    if (bars_count > 0) whole.push({ bars_count, cuts: [{ runId, length_m: bar / um_per_m }], offcut_m: 0 });
    if (rest > 0) remainders.push({ runId, length_m: bars_count === 0 ? run.length_m : rest / um_per_m });
    if (rest > 0) sizes.push(rest);
  }
  const filled = fewestBars(
    sizes.map((size) => size + cut),
    bar + cut,
    work_count,
  );
  const ofWhole = whole.reduce((sum, { bars_count }) => sum + bars_count, 0);
  const offcut_m = (places: readonly number[]) =>
    Math.max(
      0,
      places.reduce((left, place) => left - sizes[place]! - cut, bar),
    ) / um_per_m;
  const cutUp = filled.positions.map((places): CutBar => {
    return { bars_count: 1, cuts: places.map((place) => remainders[place]!), offcut_m: offcut_m(places) };
  });
  return {
    bars_count: ofWhole + cutUp.length,
    bound_count: ofWhole + filled.bound_count,
    joints_count: joints.reduce((sum, one) => sum + one.joints_count, 0),
    joints,
    bars: [...whole, ...cutUp],
  };
}

/** What a bar gives between its squared ends [µm]; null where that is nothing. */
function usable_um({ length_m, cut_mm, squareOff_mm }: BarStock): number | null {
  if (!(length_m > 0 && length_m <= longestRun_m && cut_mm >= 0 && squareOff_mm >= 0)) return null;
  if (cut_mm === Infinity) return null;
  const usable = Math.ceil(length_m * um_per_m - 2 * squareOff_mm * um_per_mm - rounding_um);
  return usable > 0 ? usable : null;
}
