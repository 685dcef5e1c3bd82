import { engineProblem, type Problem, type Ration, type SiteFacts } from '../../kernel/index.ts';

/** How a site rations its water, and what is missing of it. */
export interface RationFound {
  /** Null where nothing is rationed. */
  readonly ration: Ration | null;
  readonly problems: readonly Problem[];
}

/**
 * How is water rationed at this site? Below a mark of the usable volume only a share of each kind of litres is given; a share
 * that is not said is the whole.
 *
 * @param site - siteId [text] and its ration: mark and shares as stated [fraction], each null where empty
 * @returns mark and shares [fraction]; null where nothing is rationed, or where it is not said how
 * @problem site.ration_incomplete - a mark without any share, or a share without a mark
 * @definition ours: docs/decisions/0092-rationing.md
 * @example
 * rationOf({ siteId: 'S1', ration: { below_fraction: 0.5, judged_fraction: null, other_fraction: 0 } }).ration // → { below_fraction: 0.5, judged_fraction: 1, other_fraction: 0 }
 */
export function rationOf(site: Pick<SiteFacts, 'siteId' | 'ration'>): RationFound {
  const { siteId, ration } = site;
  if (ration === null) return { ration: null, problems: [] };
  const { below_fraction, judged_fraction, other_fraction } = ration;
  const isShared = judged_fraction !== null || other_fraction !== null;
  if (below_fraction === null && !isShared) return { ration: null, problems: [] };
  if (below_fraction === null || !isShared) {
    const column = below_fraction === null ? 'rationBelow_fraction' : 'rationedOther_fraction';
    return { ration: null, problems: [engineProblem('site.ration_incomplete', { file: 'sites.csv', siteId, column })] };
  }
  const found = { below_fraction, judged_fraction: judged_fraction ?? 1, other_fraction: other_fraction ?? 1 };
  return { ration: found, problems: [] };
}
