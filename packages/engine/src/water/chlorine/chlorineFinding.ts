import type { ChlorineFinding, DesignSettings, Judged, SiteFacts } from '../../kernel/index.ts';

/**
 * What does chlorine do at a site?
 *
 * @param site - the site's facts
 * @param settings - temperature of the water [C], where the site states none
 * @returns contact, log reductions and doses; null where water is not chlorinated there
 * @definition ours
 */
export function chlorineFinding(site: SiteFacts, settings: DesignSettings): Judged<ChlorineFinding> {
  void site;
  void settings;
  return { finding: null, problems: [], working: [] };
}
