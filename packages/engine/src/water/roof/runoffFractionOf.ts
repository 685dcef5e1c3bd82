import type { RoofFacts } from '../../kernel/index.ts';
import { roofCoverings, runoffOfUnknownCovering } from './constants.ts';

/** A runoff fraction and where it comes from. */
export interface RunoffFraction {
  readonly runoffFraction: number;
  readonly assumed: boolean;
  /** `survey`, or `id, place` of docs/sources.json. */
  readonly source: string;
}

/**
 * Which share of the rain on a roof runs off it? The surveyed share; where none was, the figure of its covering; where
 * that is not known either, the low end of any hard roof.
 *
 * @param roof - the roof as surveyed: runoffFraction [fraction] 0 to 1 or null, material [text] or null
 * @returns runoffFraction [fraction] 0 to 1, whether it was assumed, and its source [text]
 * @source rwh-toolkit, sizing lesson (corrugated iron); the other coverings in constants.ts
 * @example
 * runoffFractionOf({ runoffFraction: null, material: 'corrugatedMetal' }).runoffFraction // → 0.85
 * runoffFractionOf({ runoffFraction: 0.7, material: 'corrugatedMetal' }).assumed // → false
 * runoffFractionOf({ runoffFraction: null, material: null }).runoffFraction // → 0.5
 */
export function runoffFractionOf(roof: Pick<RoofFacts, 'runoffFraction' | 'material'>): RunoffFraction {
  const stated = roof.runoffFraction;
  if (stated !== null && stated >= 0 && stated <= 1)
    return { runoffFraction: stated, assumed: false, source: 'survey' };
  const covering = roof.material === null ? runoffOfUnknownCovering : roofCoverings[roof.material];
  return { runoffFraction: covering.used, assumed: true, source: covering.source };
}
