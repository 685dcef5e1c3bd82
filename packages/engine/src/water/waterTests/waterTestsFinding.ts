import type { Judged, SiteFacts, WaterTestsFinding } from '../../kernel/index.ts';

/**
 * What do the samples and the walks at a site say?
 *
 * @param site - the site's facts
 * @returns what each sample holds [per 100 mL] and what they say together; null where there is neither sample nor walk
 * @definition ours
 */
export function waterTestsFinding(site: SiteFacts): Judged<WaterTestsFinding> {
  void site;
  return { finding: null, problems: [], working: [] };
}
