import {
  boreArea_m2,
  type DesignSettings,
  type EngineProblemCode,
  engineProblem,
  g_per_kg,
  isWaterTemperature,
  type Judged,
  L_per_m3,
  type Problem,
  type RoofFacts,
  type SettlingFinding,
  type SiteFacts,
  s_per_h,
  s_per_min,
  type TankFacts,
  tankGroups,
  type Verdict,
  type WorkingLine,
} from '../../kernel/index.ts';
import { cellsUnknown_count, shownGrains_um, sludgeClearance_m } from './constants.ts';
import { fergusonChurchVelocity_m_per_s, grainInWater } from './grainVelocity.ts';
import { overflowRate_m_per_s } from './overflowRate.ts';
import { firstTenth_fraction, settledFraction } from './settledFraction.ts';
import { settlingHeights } from './settlingHeights.ts';
import { settlingWorking } from './settlingWorking.ts';
import { monthsToClean, sludgeRise } from './sludge.ts';

/** What settling is judged by. */
export interface SettlingGiven {
  readonly site: SiteFacts;
  /** What the storm brings to each tank, by tankId; a tank that is not in it is not known. */
  readonly stormFlow_L_per_s: ReadonlyMap<string, number>;
  /** What the day that asks for most asks of each body of water, by its first tank. */
  readonly demandHighest_L_per_day: ReadonlyMap<string, number>;
  /** Plan area with a gutter, by roofId; a roof that is not in it is not known. */
  readonly gutteredArea_m2: ReadonlyMap<string, number>;
  readonly settings: DesignSettings;
}

/**
 * What settles in the settling tanks of a site, and what leaves them? By day at the flow people pump, in the storm at what the roofs bring. Fine clay
 * and germs do not settle, whatever the verdict.
 *
 * @param given - the site's facts, what the storm brings [L/s], what is asked [L/day], the roofs' areas [m2] and the settings
 * @returns a finding for each tank with the role `settling`; null where settling is not judged
 * @problem settling.none - settling is to be judged everywhere, and there is no settling tank
 * @problem settling.diameter_unknown - a settling tank's diameter is not measured
 * @problem settling.draw_off_unknown - the height of its draw-off is not measured
 * @problem settling.draw_off_low - its draw-off is at the floor
 * @problem settling.inlet_unknown - the height of its inlet is not measured
 * @problem settling.inlet_low - its inlet is not above the draw-off
 * @problem settling.no_roof - no roof leads to it
 * @problem settling.storm_unknown - it is not known what the storm brings to it
 * @problem settling.temperature - the settings' temperature is not that of water
 * @problem settling.solids_unknown - it is not known what roofs shed
 * @law a larger or warmer-water grain never settles less
 * @definition ours: docs/decisions/0180-settling.md
 */
export function settlingFindings(given: SettlingGiven): Judged<readonly SettlingFinding[]> {
  const { site, settings } = given;
  const tanks = site.tanks.filter(({ role }) => role === 'settling');
  if (settings.judgeSettling === 'never' || (settings.judgeSettling === 'whereMeasured' && tanks.length === 0))
    return { finding: null, problems: [], working: [] };
  if (tanks.length === 0) {
    const problem = engineProblem('settling.none', { file: 'tanks.csv', siteId: site.siteId });
    return { finding: [{ ...unknownTank(settings), tankId: null }], problems: [problem], working: [] };
  }
  const judged = tanks.map((tank) => judgedTank(tank, given));
  const problems = [...judged.flatMap((one) => one.problems), ...ofProgramme(given)];
  return { finding: judged.map(({ finding }) => finding), problems, working: judged.flatMap(({ working }) => working) };
}

/** Problems of the settings, told once however many tanks there are. */
function ofProgramme({ site: { siteId }, settings }: SettlingGiven): readonly Problem[] {
  const problems: Problem[] = [];
  const { waterTemperature_C, roofSolids_g_per_m2_per_year } = settings;
  if (!isWaterTemperature(waterTemperature_C))
    problems.push(
      engineProblem(
        'settling.temperature',
        { file: 'settings.json', siteId, column: 'waterTemperature_C' },
        {
          value: String(waterTemperature_C),
        },
      ),
    );
  if (roofSolids_g_per_m2_per_year === null)
    problems.push(
      engineProblem('settling.solids_unknown', {
        file: 'settings.json',
        siteId,
        column: 'roofSolids_g_per_m2_per_year',
      }),
    );
  return problems;
}

function unknownTank(settings: DesignSettings): SettlingFinding {
  return {
    tankId: null,
    verdict: 'unknown',
    cappedBy: null,
    planArea_m2: null,
    cells_count: cellsUnknown_count,
    flowByDay_L_per_s: null,
    flowInStorm_L_per_s: null,
    overflowRateByDay_m_per_h: null,
    overflowRateInStorm_m_per_h: null,
    grain_um: settings.settlingGrain_um,
    sinks_m_per_h: null,
    settledByDay_fraction: null,
    settledInStorm_fraction: null,
    firstTenth_min: null,
    grains: [],
    sludge_L_per_year: null,
    cleanAfter_months: null,
  };
}

interface JudgedTank {
  readonly finding: SettlingFinding;
  readonly problems: readonly Problem[];
  readonly working: readonly WorkingLine[];
}

function judgedTank(tank: TankFacts, given: SettlingGiven): JudgedTank {
  const { site, settings } = given;
  const { tankId, diameter_m } = tank;
  const heights = settlingHeights(site.siteId, tank);
  const problems = [...heights.problems];
  const place = { file: 'tanks.csv', siteId: site.siteId };
  if (diameter_m === null)
    problems.push(engineProblem('settling.diameter_unknown', { ...place, column: 'diameter_m' }, { tank: tankId }));
  const stormFlow_L_per_s = given.stormFlow_L_per_s.get(tankId) ?? null;
  const inStorm = stormFlow_L_per_s === null ? 'settling.storm_unknown' : null;
  const missing = roofsOf(tank, site).length === 0 ? 'settling.no_roof' : inStorm;
  if (missing !== null) problems.push(engineProblem(missing, place, { tank: tankId }));
  if (diameter_m === null || diameter_m <= 0 || !isWaterTemperature(settings.waterTemperature_C))
    return { finding: { ...unknownTank(settings), tankId }, problems, working: [] };
  const passing = passingOf(tank, boreArea_m2(diameter_m), stormFlow_L_per_s, given);
  const capping = heights.cappedBy ?? missing;
  const verdict = heights.isUnknown ? 'unknown' : verdictOfTank(passing, heights.drawsSludge, capping, settings);
  const finding: SettlingFinding = {
    ...unknownTank(settings),
    ...passing,
    ...sludgeOf(tank, passing.planArea_m2!, given),
    tankId,
    verdict,
    cappedBy: verdict === 'tight' ? capping : null,
  };
  return { finding, problems, working: settlingWorking(finding, tank, settings, solids_kg_per_year(tank, given)) };
}

/** Flows, and what they leave in the tank. */
function passingOf(
  tank: TankFacts,
  planArea_m2: number,
  flowInStorm_L_per_s: number | null,
  { site, settings, demandHighest_L_per_day }: SettlingGiven,
) {
  const cells_count = tank.cells_count ?? cellsUnknown_count;
  const { settlingGrain_um, settlingGrainDensity_kg_per_m3, waterTemperature_C } = settings;
  const flowByDay_L_per_s = flowByDay(tank, site, settings, demandHighest_L_per_day);
  const rateOf = (flow_L_per_s: number | null) =>
    flow_L_per_s === null ? null : overflowRate_m_per_s(flow_L_per_s / L_per_m3, planArea_m2);
  const [byDay, inStorm] = [rateOf(flowByDay_L_per_s), rateOf(flowInStorm_L_per_s)];
  const sinks = (grain_um: number) =>
    fergusonChurchVelocity_m_per_s(grainInWater(grain_um, settlingGrainDensity_kg_per_m3, waterTemperature_C));
  const settled = (grain_um: number, rate: number | null) =>
    rate === null ? null : settledFraction(sinks(grain_um), rate, cells_count);
  const leaves = (grain_um: number, rate: number | null) => {
    const share = settled(grain_um, rate);
    return share === null ? null : 1 - share;
  };
  return {
    planArea_m2,
    cells_count,
    flowByDay_L_per_s,
    flowInStorm_L_per_s,
    overflowRateByDay_m_per_h: byDay === null ? null : byDay * s_per_h,
    overflowRateInStorm_m_per_h: inStorm === null ? null : inStorm * s_per_h,
    grain_um: settlingGrain_um,
    sinks_m_per_h: sinks(settlingGrain_um) * s_per_h,
    settledByDay_fraction: settled(settlingGrain_um, byDay),
    settledInStorm_fraction: settled(settlingGrain_um, inStorm),
    firstTenth_min: firstTenth_min(tank, byDay, cells_count),
    grains: shownGrains_um.map((grain_um) => ({
      grain_um,
      leavesByDay_fraction: leaves(grain_um, byDay),
      leavesInStorm_fraction: leaves(grain_um, inStorm),
    })),
  };
}

/** What people pump on the day that asks for most. Nobody draws from a reserve. */
function flowByDay(
  tank: TankFacts,
  site: SiteFacts,
  { pumping_h_per_day }: DesignSettings,
  demandHighest_L_per_day: ReadonlyMap<string, number>,
): number | null {
  const group = tankGroups(site.tanks).find(({ tanks }) => tanks.includes(tank))!;
  const isReserve = group.tanks.some(({ peopleFraction }) => peopleFraction === 0);
  const asked_L_per_day = demandHighest_L_per_day.get(group.tankIds[0]!) ?? (isReserve ? 0 : null);
  if (asked_L_per_day === null || pumping_h_per_day <= 0) return null;
  return asked_L_per_day / (pumping_h_per_day * s_per_h);
}

/** When the first tenth of the water has gone through, the tank being full. */
function firstTenth_min(tank: TankFacts, byDay_m_per_s: number | null, cells_count: number): number | null {
  const { outletHeight_m, overflowHeight_m } = tank;
  if (byDay_m_per_s === null || byDay_m_per_s <= 0 || outletHeight_m === null || overflowHeight_m === null) return null;
  const depth_m = overflowHeight_m - outletHeight_m;
  return depth_m <= 0 ? null : (firstTenth_fraction(cells_count) * depth_m) / (byDay_m_per_s * s_per_min);
}

function verdictOfTank(
  { settledByDay_fraction: byDay, settledInStorm_fraction: inStorm }: ReturnType<typeof passingOf>,
  drawsSludge: boolean,
  cappedBy: EngineProblemCode | null,
  { settledTarget_fraction: target }: DesignSettings,
): Verdict {
  if (drawsSludge) return 'short';
  if (byDay === null) return 'unknown';
  if (byDay < target) return 'short';
  return cappedBy === null && inStorm !== null && inStorm >= target ? 'holds' : 'tight';
}

/** Dry dirt of the roofs that lead to a tank; null where their areas or their dirt are not known. */
function solids_kg_per_year(tank: TankFacts, { site, settings, gutteredArea_m2 }: SettlingGiven): number | null {
  const { roofSolids_g_per_m2_per_year } = settings;
  if (roofSolids_g_per_m2_per_year === null) return null;
  const areas = roofsOf(tank, site).map(({ roofId }) => gutteredArea_m2.get(roofId) ?? null);
  if (areas.includes(null)) return null;
  const area_m2 = areas.reduce<number>((sum, area) => sum + area!, 0);
  return (area_m2 * roofSolids_g_per_m2_per_year) / g_per_kg;
}

/** The roofs that lead to a tank: those that say so, and with one body of water those that say nothing. */
function roofsOf({ tankId }: TankFacts, { tanks, roofs }: SiteFacts): readonly RoofFacts[] {
  const isOneWater = tankGroups(tanks).length === 1;
  return roofs.filter((roof) => roof.tankId === tankId || (roof.tankId === null && isOneWater));
}

function sludgeOf(tank: TankFacts, planArea_m2: number, given: SettlingGiven) {
  const solids = solids_kg_per_year(tank, given);
  if (solids === null) return {};
  const { sludge_L_per_year, rise_m_per_year } = sludgeRise(solids, planArea_m2);
  const { outletHeight_m } = tank;
  const months = outletHeight_m === null ? null : monthsToClean(outletHeight_m, sludgeClearance_m, rise_m_per_year);
  return { sludge_L_per_year, cleanAfter_months: months === Infinity ? null : months };
}
