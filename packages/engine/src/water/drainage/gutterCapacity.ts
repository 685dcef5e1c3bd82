import {
  bend_factor,
  gutterDesign_fraction,
  gutterFlow,
  shareOfIdeal_fraction,
  squareWithin_fraction,
} from './constants.ts';
import { type GutterSection, gutterSection, type SectionFacts, waterway_mm2 } from './gutterSection.ts';
import { idealGutterFlow } from './idealGutterFlow.ts';
import { longGutterFactor } from './longGutterFactor.ts';

/** By which rule a gutter's flow was found: its own constant, that of a half round, or the flow without friction, which is less. */
export type GutterRule = 'halfRound' | 'square' | 'asHalfRound' | 'shallow';

/** What a gutter carries, and how that is made up. */
export interface GutterCapacity {
  readonly waterway_mm2: number;
  readonly rule: GutterRule;
  /** Short, straight and level. */
  readonly nominal_L_per_s: number;
  readonly long_factor: number;
  readonly bends_factor: number;
  /** What it is designed for: nominal × 0.9 × both factors. */
  readonly capacity_L_per_s: number;
}

/**
 * What does a level gutter with a free outfall carry? The standard's formula on the area of its waterway, less where water runs far along it or around
 * a bend. A half round and a square have constants of their own. For every other section the standard reads factors off a graph that is not at hand:
 * the constant of the half round is taken, and never more than 0.80 of the flow without friction, which is what both constants come to.
 *
 * @param facts - shape [text], width_mm, depth_mm and baseWidth_mm [mm]
 * @param run_m - the farthest way water runs along it to an outlet [m], 0 or more
 * @param bends_count - bends of more than 10° on that way [count]
 * @returns waterway_mm2 [mm2], rule [text], nominal_L_per_s and capacity_L_per_s [L/s], and the factors [factor]; null where the section is not
 *   known, or the run is beyond 500 times its depth
 * @law half rounds carry as their width^2.5; a longer run never carries more, nor do more bends
 * @source en-12056-3, 5.1 (from memory); adh-2015, Table 2
 * @example
 * gutterCapacity({ shape: 'halfRound', width_mm: 100, depth_mm: 50, baseWidth_mm: null }, 2, 0).capacity_L_per_s // → 0.778
 */
export function gutterCapacity(facts: SectionFacts, run_m: number, bends_count: number): GutterCapacity | null {
  const section = gutterSection(facts);
  if (section === null) return null;
  const long_factor = longGutterFactor(run_m, section.depth_mm);
  if (long_factor === null) return null;
  const bends_factor = bend_factor ** bends_count;
  const { rule, nominal_L_per_s } = nominal(facts, section);
  const capacity_L_per_s = gutterDesign_fraction * nominal_L_per_s * long_factor * bends_factor;
  return { waterway_mm2: waterway_mm2(section), rule, nominal_L_per_s, long_factor, bends_factor, capacity_L_per_s };
}

function nominal(facts: SectionFacts, section: GutterSection): Pick<GutterCapacity, 'rule' | 'nominal_L_per_s'> {
  const rule = ruleOf(facts);
  const factor = rule === 'square' ? gutterFlow.square_factor : gutterFlow.halfRound_factor;
  const byArea_L_per_s = factor * waterway_mm2(section) ** gutterFlow.exponent;
  const most_L_per_s = shareOfIdeal_fraction * idealGutterFlow(section).flow_L_per_s;
  if (most_L_per_s < byArea_L_per_s) return { rule: 'shallow', nominal_L_per_s: most_L_per_s };
  return { rule, nominal_L_per_s: byArea_L_per_s };
}

function ruleOf({ shape, width_mm, depth_mm }: SectionFacts): GutterRule {
  if (shape === 'halfRound' || shape === 'cutPipe') return 'halfRound';
  const isSquare = Math.abs(depth_mm! - width_mm!) <= squareWithin_fraction * width_mm!;
  return shape === 'rectangular' && isSquare ? 'square' : 'asHalfRound';
}
