import {
  type DesignSettings,
  engineProblem,
  type GaugeFinding,
  type JudgedRain,
  type Problem,
  type SiteDesign,
  type SiteFacts,
  type Station,
  type StationVerdict,
  type StorageSeries,
  type Verdict,
  type WorkingLine,
  worstVerdict,
} from './kernel/index.ts';
import { dailyDemand } from './water/people/index.ts';
import { rainWorking } from './water/rain/index.ts';
import { siteInflow_L, siteRoofs, type YieldsByRecord, yearlyInflow_L } from './water/roof/index.ts';
import {
  type Balance,
  type DrawnYears,
  dayByDay,
  drawYears,
  judgedRules,
  storageFinding,
  type TankSize,
  usableVolume,
} from './water/storage/index.ts';

/** What all sites of a programme share. The two stores only save work: the answers are the same without what they hold. */
export interface Programme {
  readonly settings: DesignSettings;
  readonly catalogue: readonly TankSize[];
  readonly yields: YieldsByRecord;
  readonly drawn: Map<number, DrawnYears>;
}

/** A site's water, ready to be judged. */
interface SiteWater {
  readonly rain: JudgedRain;
  readonly balance: Balance;
  readonly tankVolume_L: number;
  readonly judgedDemand_L_per_day: number;
  readonly otherDemand_L_per_day: number;
  readonly inflow_L_per_year: number;
}

/**
 * Does this site hold? Follows the water from rain to tank: each stop gives what the next one needs, with its problems and
 * its working; a blocker on the way leaves the site `unknown`.
 *
 * @param site - the site's facts
 * @param gauge - its gauge, or undefined where the site names none that is known
 * @param programme - settings, catalogue and shared stores
 * @returns verdict, stations, the storage finding (volumes [L], days a year [day/year]), problems and working
 * @problem site.facts_in_doubt - when a row about the site could not be used
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
      settings: programme.settings,
      drawn: drawnYears(programme, water.rain.judgedYears),
      handOverDay: site.handOverDay,
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
    ...run.series!,
    dry: run.dry,
    state: record.state,
  };
}

/** The way of the water: rain, roof, people, tank. Adds what it finds to problems and working; null where a blocker stands. */
function siteWater(
  site: SiteFacts,
  gauge: GaugeFinding | undefined,
  programme: Programme,
  problems: Problem[],
  working: WorkingLine[],
): SiteWater | null {
  const { settings } = programme;
  const place = { siteId: site.siteId };
  if (site.doubts.length > 0)
    problems.push(engineProblem('site.facts_in_doubt', site.doubts[0]!, { count: site.doubts.length }));
  if (!gauge) problems.push(engineProblem('site.gauge_unknown', place, { gaugeId: site.gaugeId ?? '' }));
  else if (!gauge.rain) problems.push(...gauge.problems.filter((problem) => problem.severity === 'blocker'));
  const roofs = siteRoofs(site, settings.firstFlush_mm, working);
  const demand = dailyDemand(site, settings, working);
  const tank = usableVolume(site.siteId, site.tanks);
  problems.push(...roofs.problems, ...demand.problems, ...tank.problems);
  working.push(...tank.working);
  if (problems.some((problem) => problem.severity === 'blocker')) return null;
  if (!gauge?.rain || !roofs.ok || !demand.ok || tank.tankVolume_L === null) return null;
  const { rain } = gauge;
  working.push(...rainWorking(rain, site.rainFactor));
  const inflow_L = siteInflow_L(rain.record, roofs.value, site.rainFactor, programme.yields);
  const days = inflow_L.length;
  return {
    rain,
    balance: {
      inflow_L,
      judged_L: new Float64Array(days).fill(demand.value.judged_L_per_day),
      other_L: new Float64Array(days).fill(demand.value.other_L_per_day),
    },
    tankVolume_L: tank.tankVolume_L,
    judgedDemand_L_per_day: demand.value.judged_L_per_day,
    otherDemand_L_per_day: demand.value.other_L_per_day,
    inflow_L_per_year: yearlyInflow_L(inflow_L, rain, roofs.value, working),
  };
}

/** Only storage is modelled so far; the other stations wait for their rooms. */
function stationVerdicts(storage: Verdict): Record<Station, StationVerdict> {
  return { roof: 'notJudged', gutter: 'notJudged', storage, unit: 'notJudged', tap: 'notJudged' };
}

function drawnYears(programme: Programme, judgedYears: number): DrawnYears {
  const known = programme.drawn.get(judgedYears);
  if (known) return known;
  const { draws, seed } = programme.settings;
  const drawn = drawYears(judgedYears, draws, seed);
  programme.drawn.set(judgedYears, drawn);
  return drawn;
}
