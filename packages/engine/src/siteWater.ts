import {
  type DesignSettings,
  type EngineProblemCode,
  engineProblem,
  type GaugeFinding,
  type JudgedRain,
  type Problem,
  type SiteFacts,
  type WorkingLine,
} from './kernel/index.ts';
import { type DailyDemand, dailyDemand } from './water/people/index.ts';
import { rainWorking } from './water/rain/index.ts';
import { type RoofCatch, siteInflow_L, siteRoofs, type YieldsByRecord, yearlyInflow_L } from './water/roof/index.ts';
import { type Balance, type DrawnYears, drawYears, type TankSize, usableVolume } from './water/storage/index.ts';

/** What all sites of a programme share. The two stores only save work: the answers are the same without what they hold. */
export interface Programme {
  readonly settings: DesignSettings;
  readonly catalogue: readonly TankSize[];
  readonly yields: YieldsByRecord;
  readonly drawn: Map<number, DrawnYears>;
}

/** A site's water, ready to be judged. */
export interface SiteWater {
  readonly rain: JudgedRain;
  readonly balance: Balance;
  readonly tankVolume_L: number;
  readonly judgedDemand_L_per_day: number;
  readonly otherDemand_L_per_day: number;
  readonly inflow_L_per_year: number;
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
  const place = { file: 'sites.csv', column: 'gaugeId', siteId: site.siteId };
  const noGauge = gauge ? [] : [engineProblem('site.gauge_unknown', place, { gaugeId: site.gaugeId ?? '' })];
  const ofGauge = gauge?.problems ?? [];
  const capping = ofGauge.filter(({ code }) => cappingCodes.some((one) => one === code));
  const told = gauge?.rain === null ? ofGauge.filter((problem) => problem.severity === 'blocker') : capping;
  // Rain made for this site alone has its problems told nowhere else.
  const isOfSite = (problem: Problem) => problem.place.siteId === site.siteId;
  const roofs = siteRoofs(site, settings.firstFlush_mm, working);
  const demand = dailyDemand(site, settings, working);
  const tank = usableVolume(site.siteId, site.tanks);
  working.push(...tank.working);
  return {
    restated: told.filter((problem) => !isOfSite(problem)),
    own: [...noGauge, ...ofGauge.filter(isOfSite), ...roofs.problems, ...demand.problems, ...tank.problems],
    roofs: roofs.ok ? roofs.value : null,
    demand: demand.ok ? demand.value : null,
    tankVolume_L: tank.tankVolume_L,
  };
}

/** The way of the water: rain, roof, people, tank. Adds what it finds to problems and working; null where a blocker stands. */
export function siteWater(
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
  working.push(...rainWorking(rain, site.rainFactor, gauge.byDistance));
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

/** Problems of a site or of its rain that keep it from holding, the gravest first. */
const cappingCodes: readonly EngineProblemCode[] = ['rain.made_up', 'site.gutters_assumed'];

/** The gravest assumption that is kinder than the facts may be: with one of these a site is `tight` at best. */
export function cappingAssumption(problems: readonly Problem[]): EngineProblemCode | null {
  return cappingCodes.find((capping) => problems.some(({ code }) => code === capping)) ?? null;
}

/** The years drawn again for so many judged years, drawn once for all sites. */
export function drawnYears(programme: Programme, judgedYears: number): DrawnYears {
  const known = programme.drawn.get(judgedYears);
  if (known) return known;
  const { draws, seed } = programme.settings;
  const drawn = drawYears(judgedYears, draws, seed);
  programme.drawn.set(judgedYears, drawn);
  return drawn;
}
