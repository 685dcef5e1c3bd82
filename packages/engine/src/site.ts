import type {
  GaugeFinding,
  Problem,
  SiteDesign,
  SiteFacts,
  Station,
  StationVerdict,
  StorageSeries,
  Verdict,
  WorkingLine,
} from './kernel/index.ts';
import { worstVerdict } from './kernel/index.ts';
import { cappingAssumption, drawnYears, type Programme, siteWater, targetOf } from './siteWater.ts';
import {
  dayByDay,
  judgedRules,
  type SizeVerdict,
  sizeCurve,
  storageFinding,
  type TankSize,
  verdictsBySize,
} from './water/storage/index.ts';

export { type Programme, siteProblems } from './siteWater.ts';

/**
 * Does this site hold? Follows the water from rain to tank: each stop gives what the next one needs, with its problems and
 * its working; a blocker on the way leaves the site `unknown`.
 *
 * @param site - the site's facts
 * @param gauge - its gauge, or undefined where the site names none that is known
 * @param programme - settings, catalogue and shared stores
 * @returns verdict, stations, the storage finding (volumes [L], days a year [day/year]), problems and working
 * @problem site.facts_in_doubt - when a row about the site could not be used
 * @problem site.target_of_programme - when its class has no target of its own
 * @problem site.gauge_unknown - when it names no gauge that is known
 * @law the same facts give the same design, whatever other sites there are
 * @definition ours: docs/methods
 */
export function designSite(site: SiteFacts, gauge: GaugeFinding | undefined, programme: Programme): SiteDesign {
  const problems: Problem[] = [];
  const working: WorkingLine[] = [];
  const water = siteWater(site, gauge, programme, problems, working);
  let storage: SiteDesign['storage'] = null;
  if (water) {
    const found = storageFinding({
      ...water,
      catalogue: programme.catalogue,
      drawn: drawnYears(programme, water.rain.judgedYears),
      handOverDay: site.handOverDay,
      cappedBy: cappingAssumption(problems),
    });
    storage = found.finding;
    working.push(...found.working);
  }
  const stations = stationVerdicts(storage?.verdict ?? 'unknown');
  return {
    siteId: site.siteId,
    name: site.name,
    people: site.people,
    gaugeId: site.gaugeId,
    siteClass: site.siteClass,
    target: targetOf(site, programme.settings),
    targetFrom: site.target === null ? 'programme' : 'class',
    verdict: worstVerdict(Object.values(stations)),
    stations,
    storage,
    problems,
    working,
  };
}

/**
 * What happens in this site's tank, day by day? The plain run behind the trace and the raster.
 *
 * @param site - the site's facts
 * @param gauge - its gauge, or undefined
 * @param programme - settings, catalogue and shared stores
 * @returns daily rain [mm], inflow, content, taken and spill [L] and dry days over the judged record; null where the site is `unknown`
 * @definition ours: docs/methods/storage.md, drawFirst, second pass
 */
export function siteSeries(
  site: SiteFacts,
  gauge: GaugeFinding | undefined,
  programme: Programme,
): StorageSeries | null {
  const water = siteWater(site, gauge, programme, [], []);
  if (!water) return null;
  const run = dayByDay(water.balance, water.tankVolume_L, judgedRules, true);
  const { record } = water.rain;
  return {
    firstDay: record.firstDay,
    rain_mm: record.rain_mm.map((depth) => depth * site.rainFactor),
    inflow_L: water.balance.inflow_L,
    judgedAsked_L: water.balance.judged_L,
    ...run.series!,
    dry: run.dry,
    state: record.state,
  };
}

/** One site's water with every size of tank answered at once. */
export interface SiteSizes {
  /** What the site's tanks give now. */
  readonly tankVolume_L: number;
  /** Smallest tank that meets the target; null where no tank would do. */
  readonly tankForTarget_L: number | null;
  /** What tanks of these sizes would do here, smallest first. */
  verdictsAt(sizes: readonly TankSize[]): readonly SizeVerdict[];
}

/**
 * What would tanks of other sizes do at this site? The same way of the water as `designSite`, run once for every size.
 *
 * @param site - the site's facts
 * @param gauge - its gauge, or undefined
 * @param programme - settings, catalogue and shared stores
 * @returns the present tank [L], the smallest for the target [L], and the verdict at any size [L]; null where the site is `unknown`
 * @law the verdict at a size is that of `designSite` for the same site with a tank of that size
 * @definition ours: docs/methods/storage.md, every size at once
 */
export function siteSizes(site: SiteFacts, gauge: GaugeFinding | undefined, programme: Programme): SiteSizes | null {
  const problems: Problem[] = [];
  const water = siteWater(site, gauge, programme, problems, []);
  if (!water) return null;
  const { balance, rain, tankVolume_L, settings } = water;
  const cappedBy = cappingAssumption(problems);
  const curve = sizeCurve(balance, rain, settings.target, tankVolume_L);
  const given = { balance, rain, settings, drawn: drawnYears(programme, rain.judgedYears) };
  return {
    tankVolume_L,
    tankForTarget_L: curve.tankForTarget_L,
    verdictsAt: (sizes) => verdictsBySize(curve, given, sizes, cappedBy),
  };
}

/** Only storage is modelled so far; the other stations wait for their rooms. */
function stationVerdicts(storage: Verdict): Record<Station, StationVerdict> {
  return { roof: 'notJudged', gutter: 'notJudged', storage, unit: 'notJudged', tap: 'notJudged' };
}
