import {
  type DesignSettings,
  type EngineProblemCode,
  engineProblem,
  type GaugeFinding,
  type JudgedRain,
  type Problem,
  type SiteDesign,
  type SiteFacts,
  type Station,
  type StationVerdict,
  type StorageSeries,
  unusableFigures,
  type Verdict,
  type WorkingLine,
  worstVerdict,
} from './kernel/index.ts';
import { type DailyDemand, dailyDemand } from './water/people/index.ts';
import { rainWorking } from './water/rain/index.ts';
import { type RoofCatch, siteInflow_L, siteRoofs, type YieldsByRecord, yearlyInflow_L } from './water/roof/index.ts';
import {
  type Balance,
  type DrawnYears,
  dayByDay,
  drawYears,
  judgedRules,
  type SizeVerdict,
  sizeCurve,
  storageFinding,
  type TankSize,
  usableVolume,
  verdictsBySize,
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
      cappedBy: cappingAssumption(problems),
    });
    storage = found.finding;
    working.push(...found.working);
  }
  const stations = stationVerdicts(storage?.verdict ?? 'unknown');
  return {
    siteId: site.siteId,
    name: site.name,
    people: Number.isFinite(site.people) ? site.people : null,
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
  const { balance, rain, tankVolume_L } = water;
  const { settings } = programme;
  const cappedBy = cappingAssumption(problems);
  const curve = sizeCurve(balance, rain, settings.target, tankVolume_L);
  const given = { balance, rain, settings, drawn: drawnYears(programme, rain.judgedYears) };
  return {
    tankVolume_L,
    tankForTarget_L: curve.tankForTarget_L,
    verdictsAt: (sizes) => verdictsBySize(curve, given, sizes, cappedBy),
  };
}

/** What the stops of the water's way come to before any day is run. */
interface SiteStops {
  /** Problems told elsewhere already, that keep this site from a verdict: a row in doubt, a gauge without rain. */
  readonly restated: readonly Problem[];
  /** Problems of this site's own facts. */
  readonly own: readonly Problem[];
  readonly roofs: readonly RoofCatch[] | null;
  readonly demand: DailyDemand | null;
  readonly tankVolume_L: number | null;
}

/**
 * What is missing or assumed in this site's facts? The part of `designSite` that runs no day.
 *
 * @param site - the site's facts
 * @param gauge - its gauge, or undefined
 * @param programme - settings, catalogue and shared stores
 * @returns the problems of the site's own facts; none while a row about it is in doubt, since that is told of the row
 * @definition ours
 */
export function siteProblems(
  site: SiteFacts,
  gauge: GaugeFinding | undefined,
  programme: Programme,
): readonly Problem[] {
  return siteStops(site, gauge, programme.settings, []).own;
}

/** Rain, roof, people, tank: what each is known to be. Adds to the working. */
function siteStops(
  site: SiteFacts,
  gauge: GaugeFinding | undefined,
  settings: DesignSettings,
  working: WorkingLine[],
): SiteStops {
  const nothing = { own: [], roofs: null, demand: null, tankVolume_L: null };
  const [doubt] = site.doubts;
  if (doubt) {
    const place = { ...doubt, siteId: site.siteId };
    return { ...nothing, restated: [engineProblem('site.facts_in_doubt', place, { count: site.doubts.length })] };
  }
  const unusable = unusableFigures(site);
  if (unusable.length > 0) return { ...nothing, restated: [], own: unusable };
  const place = { file: 'sites.csv', column: 'gaugeId', siteId: site.siteId };
  const noGauge = gauge ? [] : [engineProblem('site.gauge_unknown', place, { gaugeId: site.gaugeId ?? '' })];
  const noRain = gauge?.rain === null ? gauge.problems.filter((problem) => problem.severity === 'blocker') : [];
  const roofs = siteRoofs(site, settings.firstFlush_mm, working);
  const demand = dailyDemand(site, settings, working);
  const tank = usableVolume(site.siteId, site.tanks);
  working.push(...tank.working);
  return {
    restated: noRain,
    own: [...noGauge, ...roofs.problems, ...demand.problems, ...tank.problems],
    roofs: roofs.ok ? roofs.value : null,
    demand: demand.ok ? demand.value : null,
    tankVolume_L: tank.tankVolume_L,
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
  const { restated, own, roofs, demand, tankVolume_L } = siteStops(site, gauge, programme.settings, working);
  problems.push(...restated, ...own);
  if (problems.some((problem) => problem.severity === 'blocker')) return null;
  if (!gauge?.rain || !roofs || !demand || tankVolume_L === null) return null;
  const { rain } = gauge;
  working.push(...rainWorking(rain, site.rainFactor));
  const inflow_L = siteInflow_L(rain.record, roofs, site.rainFactor, programme.yields);
  const days = inflow_L.length;
  return {
    rain,
    balance: {
      inflow_L,
      judged_L: new Float64Array(days).fill(demand.judged_L_per_day),
      other_L: new Float64Array(days).fill(demand.other_L_per_day),
    },
    tankVolume_L,
    judgedDemand_L_per_day: demand.judged_L_per_day,
    otherDemand_L_per_day: demand.other_L_per_day,
    inflow_L_per_year: yearlyInflow_L(inflow_L, rain, roofs, working),
  };
}

/** The first assumption that is kinder than the facts may be: with one of these a site is `tight` at best. */
function cappingAssumption(problems: readonly Problem[]): EngineProblemCode | null {
  return problems.some((problem) => problem.code === 'site.gutters_assumed') ? 'site.gutters_assumed' : null;
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
