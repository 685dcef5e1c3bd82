import {
  type DesignSettings,
  engineProblem,
  type HeadFinding,
  handPumped_m3_per_s,
  type Judged,
  L_per_min_per_m3_per_s,
  type PartFacts,
  type Problem,
  personPower_W,
  pumpEfficiency_fraction,
  type SiteFacts,
  type TankGroup,
  tankGroups,
  verdictOf,
  type WorkingLine,
  waterDensity_kg_per_m3,
} from '../../kernel/index.ts';
import { mostSuction_m } from './constants.ts';
import { gradeLine, headSegments } from './gradeLine.ts';
import { flowByItself_L_per_min, type HeadAtFlow, headAtFlow } from './headAtFlow.ts';
import { type HeadWay, headWay, wayProblems } from './headWay.ts';
import { headWorking } from './headWorking.ts';
import { leastBore } from './leastBore.ts';

/** What the way to the taps is judged by. */
export interface HeadGiven {
  readonly site: SiteFacts;
  readonly parts: readonly PartFacts[];
  readonly settings: DesignSettings;
}

/**
 * Does the water come to the taps, from tank through treatment unit, by itself or with a hand pump one person can work? Judged with every tap open and the
 * tank at its outlet.
 *
 * @param given - the site's facts, the catalogue and the settings
 * @returns a finding for each body of water that pipes come from; null where the way is not judged
 * @problem head.none - the way is to be judged everywhere, and no pipe is known
 * @problem head.pipe_tank_unknown - several bodies of water, and a pipe to the unit whose tank is not known
 * @problem head.leg_missing - no pipe of a leg was measured
 * @problem head.pipe_not_measured - a pipe's bore or length is not known
 * @problem head.outlet_unknown - the height of an outlet is not known
 * @problem head.stand_unknown - how high a tank stands is not known
 * @problem head.overflow_unknown - the height of an overflow is not known
 * @problem head.taps_unknown - nobody counted the taps
 * @problem head.tap_height_unknown - the height of the taps is not measured
 * @problem head.unit_height_unknown - the height of the unit's inlet is not measured
 * @problem head.unit_head_unknown - the settings do not say what the unit takes
 * @problem head.temperature - the settings' temperature is not that of water
 * @problem head.hand_pump_assumed - nobody said whether there is a hand pump
 * @problem head.tap_above - the taps lie higher than the water, and there is no hand pump
 * @problem head.unit_above - the unit lies higher than the water runs, and there is no hand pump
 * @problem head.suction - the pump would have to draw water up further than it can
 * @law a higher tank, a wider or a shorter pipe never makes a verdict worse
 * @definition ours: docs/decisions/0182-head.md
 */
export function headFindings(given: HeadGiven): Judged<readonly HeadFinding[]> {
  const { site, settings } = given;
  const { siteId } = site;
  if (!isJudged(site, settings)) return { finding: null, problems: [], working: [] };
  const place = { file: 'pipes.csv', siteId };
  const groups = groupsJudged(site);
  if (groups.length === 0)
    return { finding: [unknownWay([], site)], problems: [engineProblem('head.none', place)], working: [] };
  const problems: Problem[] = [...wayProblems(site, settings)];
  const lost = pipesLost(site);
  for (const { pipeId } of lost)
    problems.push(engineProblem('head.pipe_tank_unknown', { ...place, column: 'tankId' }, { pipe: pipeId }));
  const judged = groups.map((group) => judgedGroup(group, given, lost.length > 0));
  return {
    finding: judged.map(({ finding }) => finding),
    problems: [...problems, ...judged.flatMap((one) => one.problems)],
    working: judged.flatMap(({ working }) => working),
  };
}

/**
 * How do the ways to the taps stand? The verdicts of `headFindings`, of their figures the head alone that a unit has.
 *
 * @param given - the site's facts, the catalogue and the settings
 * @returns a verdict for each body of water, with the assumption that keeps it from holding, and the head left and in the unit [m]; null where the station is not judged
 * @law the same verdicts as `headFindings`
 * @definition ours: docs/decisions/0182-head.md
 */
export function headVerdicts(
  given: HeadGiven,
): readonly Pick<HeadFinding, 'tankIds' | 'verdict' | 'cappedBy' | 'headLeft_m' | 'lossInUnit_m'>[] | null {
  const { site, settings } = given;
  if (!isJudged(site, settings)) return null;
  const groups = groupsJudged(site);
  const unknown = { verdict: 'unknown', cappedBy: null, headLeft_m: null, lossInUnit_m: null } as const;
  if (groups.length === 0) return [{ tankIds: [], ...unknown }];
  const isLost = pipesLost(site).length > 0;
  return groups.map((group) => {
    const { tankIds } = group;
    const { way } = headWay(site, group, settings);
    if (way === null || isLost) return { tankIds, ...unknown };
    const at = headAtFlow(way, settings);
    const heads = { headLeft_m: at.headLeft_m, lossInUnit_m: way.unitHead_m };
    return { tankIds, ...verdictWith(way, at, site, settings), ...heads };
  });
}

function isJudged({ pipes }: SiteFacts, { judgeHead }: DesignSettings): boolean {
  return judgeHead === 'always' || (judgeHead === 'whereMeasured' && pipes.length > 0);
}

/** Bodies of water with a way of their own to the taps; all of them where a pipe may lead from any. */
function groupsJudged(site: SiteFacts): readonly TankGroup[] {
  const groups = drawnFrom(site);
  if (site.pipes.length === 0) return [];
  const piped = groups.length === 1 ? groups : groups.filter((group) => hasOwnPipe(site, group));
  return pipesLost(site).length > 0 || piped.length === 0 ? groups : piped;
}

/** Of several bodies of water: pipes that come from none that is known. */
function pipesLost(site: SiteFacts): SiteFacts['pipes'] {
  if (drawnFrom(site).length <= 1) return [];
  return site.pipes.filter(
    ({ leg, tankId }) => leg === 'tankToUnit' && !site.tanks.some((tank) => tank.tankId === tankId),
  );
}

function drawnFrom({ tanks }: SiteFacts): readonly TankGroup[] {
  return tankGroups(tanks).filter(isDrawnFrom);
}

/** Nobody draws from a reserve. */
function isDrawnFrom({ tanks }: TankGroup): boolean {
  return tanks.every(({ peopleFraction }) => peopleFraction !== 0);
}

function hasOwnPipe({ pipes }: SiteFacts, { tankIds }: TankGroup): boolean {
  return pipes.some(({ leg, tankId }) => leg === 'tankToUnit' && tankId !== null && tankIds.includes(tankId));
}

function unknownWay(tankIds: readonly string[], { hasHandPump }: SiteFacts): HeadFinding {
  return {
    tankIds,
    verdict: 'unknown',
    cappedBy: null,
    flowWanted_L_per_min: null,
    lowLevel_m: null,
    fullLevel_m: null,
    fallToTap_m: null,
    fallToUnit_m: null,
    lossToUnit_m: null,
    lossInUnit_m: null,
    lossToTap_m: null,
    flowLow_L_per_min: null,
    flowFull_L_per_min: null,
    headLeft_m: null,
    headLeftFull_m: null,
    hasHandPump: hasHandPump ?? true,
    pumpAdds_m: null,
    pumpPower_W: null,
    onePerson_L_per_min: null,
    suction_m: null,
    segments: [],
    grade: [],
    leastBore_mm: null,
    leastPartId: null,
    leastPart_mm: null,
  };
}

interface JudgedGroup {
  readonly finding: HeadFinding;
  readonly problems: readonly Problem[];
  readonly working: readonly WorkingLine[];
}

function judgedGroup(group: TankGroup, { site, parts, settings }: HeadGiven, isLost: boolean): JudgedGroup {
  const { way, problems } = headWay(site, group, settings);
  if (way === null || isLost) return { finding: unknownWay(group.tankIds, site), problems, working: [] };
  const at = headAtFlow(way, settings);
  const segments = headSegments(way, settings);
  const adds_m = way.hasHandPump ? at.pumpAdds_m : 0;
  const finding: HeadFinding = {
    ...unknownWay(group.tankIds, site),
    ...verdictWith(way, at, site, settings),
    ...figuresOf(way, at, settings),
    segments,
    grade: gradeLine(way, segments, adds_m),
    ...leastBore(way, settings, parts),
  };
  return {
    finding,
    problems: [...problems, ...inTheWay(way, at, site.siteId)],
    working: headWorking(finding, way, settings),
  };
}

/** The verdict; where only a hand pump that nobody mentioned makes it hold, it is tight. */
function verdictWith(
  way: HeadWay,
  at: HeadAtFlow,
  { hasHandPump }: SiteFacts,
  settings: DesignSettings,
): Pick<HeadFinding, 'verdict' | 'cappedBy'> {
  const verdict = verdictOf(at.meetsAtPoint, at.meetsAtWorstEnd);
  const isByItself = () => headAtFlow({ ...way, hasHandPump: false }, settings).meetsAtWorstEnd;
  if (verdict !== 'holds' || hasHandPump !== null || isByItself()) return { verdict, cappedBy: null };
  return { verdict: 'tight', cappedBy: 'head.hand_pump_assumed' };
}

function figuresOf(way: HeadWay, at: HeadAtFlow, settings: DesignSettings) {
  const { lowLevel_m, fullLevel_m } = way;
  const byItself = (level_m: number) => flowByItself_L_per_min(way, level_m, settings);
  const density = waterDensity_kg_per_m3(settings.waterTemperature_C);
  const person = handPumped_m3_per_s(personPower_W, at.pumpAdds_m, density, pumpEfficiency_fraction);
  return {
    flowWanted_L_per_min: way.taps_count * settings.tapFlow_L_per_min,
    lowLevel_m,
    fullLevel_m,
    fallToTap_m: lowLevel_m - way.tapHeight_m,
    fallToUnit_m: lowLevel_m - way.unitHeight_m,
    lossToUnit_m: at.lossToUnit_m,
    lossInUnit_m: way.unitHead_m,
    lossToTap_m: at.lossToTap_m,
    flowLow_L_per_min: byItself(lowLevel_m),
    flowFull_L_per_min: fullLevel_m === null ? null : byItself(fullLevel_m),
    headLeft_m: at.headLeft_m,
    headLeftFull_m: fullLevel_m === null ? null : at.headLeft_m + fullLevel_m - lowLevel_m,
    pumpAdds_m: way.hasHandPump ? at.pumpAdds_m : null,
    pumpPower_W: way.hasHandPump ? at.pumpPower_W : null,
    onePerson_L_per_min: way.hasHandPump && at.pumpAdds_m > 0 ? person * L_per_min_per_m3_per_s : null,
    suction_m: way.hasHandPump ? at.suction_m : null,
  };
}

/** What stands in the way of the water, where it does. */
function inTheWay(way: HeadWay, at: HeadAtFlow, siteId: string): readonly Problem[] {
  const place = { file: 'sites.csv', siteId };
  const { lowLevel_m, tapHeight_m, unitHeight_m, tankIds } = way;
  if (way.hasHandPump)
    return at.suction_m <= mostSuction_m
      ? []
      : [
          engineProblem(
            'head.suction',
            { ...place, column: 'unitHeight_m' },
            {
              suction_m: at.suction_m,
              most_m: mostSuction_m,
              tanks: tankIds,
            },
          ),
        ];
  const problems: Problem[] = [];
  const facts = { level_m: lowLevel_m, tanks: tankIds };
  if (tapHeight_m >= lowLevel_m)
    problems.push(
      engineProblem('head.tap_above', { ...place, column: 'tapHeight_m' }, { ...facts, tap_m: tapHeight_m }),
    );
  if (at.headAtUnit_m < 0)
    problems.push(
      engineProblem('head.unit_above', { ...place, column: 'unitHeight_m' }, { ...facts, unit_m: unitHeight_m }),
    );
  return problems;
}
