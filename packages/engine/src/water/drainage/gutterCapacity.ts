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

/** By which rule a gutter's flow was found: its own constant, that of the square in it or of a half round, or the flow without friction, which is less. */
export type GutterRule = 'halfRound' | 'square' | 'squareWithin' | 'asHalfRound' | 'shallow';

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
 * the constant of the half round is taken, for a rectangle at least what the square in it carries, and never more than 0.80 of the flow without friction, which is what both constants come to.
 *
 * @param facts - shape [text], width_mm, depth_mm and baseWidth_mm [mm]
 * @param run_m - the farthest way water runs along it to an outlet [m], 0 or more
 * @param bends_count - bends of more than 10° on that way [count]
 * @returns waterway_mm2 [mm2], rule [text], nominal_L_per_s and capacity_L_per_s [L/s], and the factors [factor]; null where the section is not
 *   known, or the run is beyond 500 times its depth
 * @law half rounds carry as their width^2.5; a wider or deeper rectangle never carries less; a longer run never carries more, nor do more bends
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
  const { rule, nominal_L_per_s } = byArea(facts, waterway_mm2(section));
  const most_L_per_s = shareOfIdeal_fraction * idealGutterFlow(section).flow_L_per_s;
  return most_L_per_s < nominal_L_per_s
    ? { rule: 'shallow', nominal_L_per_s: most_L_per_s }
    : { rule, nominal_L_per_s };
}

/** A rectangle that is no square carries at least what the square in it does, so that a larger one is never worse. */
function byArea(
  { shape, width_mm, depth_mm }: SectionFacts,
  area_mm2: number,
): Pick<GutterCapacity, 'rule' | 'nominal_L_per_s'> {
  const asHalfRound_L_per_s = gutterFlow.halfRound_factor * area_mm2 ** gutterFlow.exponent;
  if (shape === 'halfRound' || shape === 'cutPipe') return { rule: 'halfRound', nominal_L_per_s: asHalfRound_L_per_s };
  if (shape !== 'rectangular') return { rule: 'asHalfRound', nominal_L_per_s: asHalfRound_L_per_s };
  const [least_mm, most_mm] = [Math.min(width_mm!, depth_mm!), Math.max(width_mm!, depth_mm!)];
  const squared_mm = Math.min(most_mm, least_mm * (1 + squareWithin_fraction));
  const square_L_per_s = gutterFlow.square_factor * (least_mm * squared_mm) ** gutterFlow.exponent;
  if (square_L_per_s < asHalfRound_L_per_s) return { rule: 'asHalfRound', nominal_L_per_s: asHalfRound_L_per_s };
  return { rule: squared_mm === most_mm ? 'square' : 'squareWithin', nominal_L_per_s: square_L_per_s };
}
