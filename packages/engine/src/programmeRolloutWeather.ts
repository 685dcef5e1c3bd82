import type { SiteFacts } from './kernel/index.ts';
import { type ReadyProgramme, rainOfSite } from './plan.ts';
import { type AreaWeather, closedByRain, fittedChain } from './programme/rollout/index.ts';
import type { ReadyRollout } from './programmeRolloutFacts.ts';

/**
 * On which days was each area closed by rain? From the rain of the first of its sites that has a measured record: a day with more than the limit
 * of the settings is closed. Areas without such a site, and all where no limit is stated, are never closed in the futures drawn.
 *
 * @param ready - the rollout, ready
 * @param sites - the sites' facts
 * @param programme - the programme, ready to be judged
 * @returns as the areas of the problem; both null: never closed
 * @definition ours: docs/methods/rollout.md, finish dates
 */
export function areasWeather(
  ready: ReadyRollout,
  sites: readonly SiteFacts[],
  programme: ReadyProgramme,
): readonly AreaWeather[] {
  const { closedRain_mm } = programme.settings;
  const { areaIds, jobs } = ready.problem;
  const byId = new Map(sites.map((site) => [site.siteId, site]));
  return areaIds.map((_, area): AreaWeather => {
    if (closedRain_mm === null) return { days: null, chain: null };
    for (const job of jobs) {
      const site = job.area === area ? byId.get(job.siteId) : undefined;
      const rain = site === undefined ? null : (rainOfSite(site, programme)?.rain ?? null);
      // Made-up rain has no days of a calendar.
      if (rain === null || rain.madeDays > 0) continue;
      const days = closedByRain(rain.record, closedRain_mm);
      return { days, chain: fittedChain(days) };
    }
    return { days: null, chain: null };
  });
}
