import {
  type DesignSettings,
  type EngineProblemCode,
  engineProblem,
  type Facts,
  isWaterTemperature,
  mm_per_m,
  type PipeFacts,
  type Place,
  type Problem,
  pipeLegs,
  type SiteFacts,
  type TankFacts,
  type TankGroup,
} from '../../kernel/index.ts';
import { fittingLoss_factor, roughness_mm } from './constants.ts';
import type { PipeRun } from './pipeLoss.ts';

/** The way from the tanks of one body of water to the taps, with all that is needed to judge it. */
export interface HeadWay {
  readonly tankIds: readonly string[];
  readonly lowLevel_m: number;
  readonly fullLevel_m: number | null;
  readonly unitHeight_m: number;
  readonly tapHeight_m: number;
  readonly taps_count: number;
  readonly unitHead_m: number;
  readonly hasHandPump: boolean;
  readonly toUnit: readonly PipeOnWay[];
  readonly toTap: readonly PipeOnWay[];
}

/** A pipe of the way, as it was surveyed and as it is reckoned with. */
export interface PipeOnWay {
  readonly pipe: PipeFacts;
  readonly run: PipeRun;
}

/** A way, or null with the problems that say what is missing. */
export interface FoundWay {
  readonly way: HeadWay | null;
  readonly problems: readonly Problem[];
}

/**
 * Which way does the water of these tanks take to the taps, and is all of it measured?
 *
 * @param site - the site's facts: pipes [mm], [m], heights [m], taps [count]
 * @param group - tanks that are one body of water
 * @param settings - what the unit takes [m]
 * @returns the way in SI units, null where something of it is not known; and every problem
 * @problem head.leg_missing - no pipe of a leg was measured
 * @problem head.pipe_not_measured - a pipe's bore or length is not known
 * @problem head.outlet_unknown - the height of an outlet is not known
 * @problem head.stand_unknown - how high a tank stands is not known
 * @problem head.overflow_unknown - the height of an overflow is not known, so that nothing is said of the full tank
 * @definition ours: docs/decisions/0182-head.md
 */
export function headWay(site: SiteFacts, group: TankGroup, settings: DesignSettings): FoundWay {
  const problems: Problem[] = [];
  const own = site.pipes.filter(({ tankId }) => tankId === null || group.tankIds.includes(tankId));
  const tell = (file: string, code: EngineProblemCode, column: string, facts: Facts) =>
    problems.push(engineProblem(code, { file, siteId: site.siteId, column }, facts));
  for (const leg of pipeLegs)
    if (!own.some((pipe) => pipe.leg === leg))
      tell('pipes.csv', 'head.leg_missing', 'leg', { leg, tanks: group.tankIds });
  const toUnit = pipesOnWay(own, 'tankToUnit', site.siteId, problems);
  const toTap = pipesOnWay(own, 'unitToTap', site.siteId, problems);
  const levels = levelsOf(tanksDrawnFrom(group, own), group, (code, column, tank) =>
    tell('tanks.csv', code, column, { tank }),
  );
  const { taps_count, tapHeight_m, unitHeight_m } = site;
  const { unitHead_m } = settings;
  const isComplete = problems.every(({ severity }) => severity === 'note');
  if (!isComplete || levels === null || !isWhole(site, settings)) return { way: null, problems };
  const way = {
    tankIds: group.tankIds,
    ...levels,
    unitHeight_m: unitHeight_m!,
    tapHeight_m: tapHeight_m!,
    taps_count: taps_count!,
    unitHead_m: unitHead_m!,
    hasHandPump: site.hasHandPump ?? true,
    toUnit,
    toTap,
  };
  return { way, problems };
}

/** Is everything of the site and the settings known that every way needs? `siteProblems` says what is not. */
function isWhole({ taps_count, tapHeight_m, unitHeight_m }: SiteFacts, settings: DesignSettings): boolean {
  const figures = [taps_count, tapHeight_m, unitHeight_m, settings.unitHead_m];
  return !figures.includes(null) && taps_count! > 0 && isWaterTemperature(settings.waterTemperature_C);
}

/**
 * What is not known of taps, unit and water? Told once for a site, however many bodies of water it has.
 *
 * @param site - the site's facts
 * @param settings - what the unit takes [m], temperature of the water [C]
 * @returns the problems
 * @problem head.taps_unknown - nobody counted the taps
 * @problem head.tap_height_unknown - the height of the taps is not measured
 * @problem head.unit_height_unknown - the height of the unit's inlet is not measured
 * @problem head.unit_head_unknown - the settings do not say what the unit takes
 * @problem head.temperature - the settings' temperature is not that of water
 * @problem head.hand_pump_assumed - nobody said whether there is a hand pump: the standard kit has one
 * @definition ours
 */
export function wayProblems(site: SiteFacts, settings: DesignSettings): readonly Problem[] {
  const { siteId, taps_count, tapHeight_m, unitHeight_m, hasHandPump } = site;
  const missing: [boolean, EngineProblemCode, Place, Facts][] = [
    [!(taps_count !== null && taps_count > 0), 'head.taps_unknown', at('sites.csv', 'taps'), {}],
    [tapHeight_m === null, 'head.tap_height_unknown', at('sites.csv', 'tapHeight_m'), {}],
    [unitHeight_m === null, 'head.unit_height_unknown', at('sites.csv', 'unitHeight_m'), {}],
    [settings.unitHead_m === null, 'head.unit_head_unknown', at('settings.json', 'unitHead_m'), {}],
    [
      !isWaterTemperature(settings.waterTemperature_C),
      'head.temperature',
      at('settings.json', 'waterTemperature_C'),
      { value: String(settings.waterTemperature_C) },
    ],
    [hasHandPump === null, 'head.hand_pump_assumed', at('sites.csv', 'handPump'), {}],
  ];
  return missing
    .filter(([isMissing]) => isMissing)
    .map(([, code, place, facts]) => engineProblem(code, { ...place, siteId }, facts));
}

const at = (file: string, column: string): Place => ({ file, column });

/** The pipes of a leg, with the ends of the leg in the losses of its first and last one. Those not measured are told. */
function pipesOnWay(
  own: readonly PipeFacts[],
  leg: PipeFacts['leg'],
  siteId: string,
  problems: Problem[],
): readonly PipeOnWay[] {
  const pipes = own.filter((pipe) => pipe.leg === leg);
  return pipes.flatMap((pipe, index) => {
    const { bore_mm, length_m } = pipe;
    if (!(bore_mm !== null && bore_mm > 0) || length_m === null) {
      const place = { file: 'pipes.csv', siteId, column: length_m === null ? 'length_m' : 'bore_mm' };
      problems.push(engineProblem('head.pipe_not_measured', place, { pipe: pipe.pipeId }));
      return [];
    }
    const ends =
      (index === 0 ? fittingLoss_factor.entrance : 0) +
      (leg === 'tankToUnit' && index === pipes.length - 1 ? fittingLoss_factor.exit : 0);
    return [{ pipe, run: runOf(pipe, bore_mm, length_m, ends) }];
  });
}

function runOf(pipe: PipeFacts, bore_mm: number, length_m: number, ends_factor: number): PipeRun {
  const { elbow, tee, valve, meter } = fittingLoss_factor;
  const fittings_factor =
    ends_factor +
    elbow * (pipe.elbows_count ?? 0) +
    tee * (pipe.tees_count ?? 0) +
    valve * (pipe.valves_count ?? 0) +
    meter * (pipe.meters_count ?? 0) +
    (pipe.otherLoss_k ?? 0);
  const roughness_m = roughness_mm[pipe.material ?? 'plastic'] / mm_per_m;
  return { bore_m: bore_mm / mm_per_m, length_m, roughness_m, fittings_factor };
}

/** The tanks the pipes come from; where no pipe says, those that store. */
function tanksDrawnFrom({ tanks }: TankGroup, own: readonly PipeFacts[]): readonly TankFacts[] {
  const named = tanks.filter(({ tankId }) => own.some((pipe) => pipe.leg === 'tankToUnit' && pipe.tankId === tankId));
  if (named.length > 0) return named;
  const storing = tanks.filter(({ role }) => role === 'storage');
  return storing.length > 0 ? storing : tanks;
}

type TellTank = (code: EngineProblemCode, column: string, tank: string) => void;

/** The lowest outlet and the lowest overflow; null where an outlet or a stand is not known. */
function levelsOf(
  drawnFrom: readonly TankFacts[],
  { tanks }: TankGroup,
  tell: TellTank,
): Pick<HeadWay, 'lowLevel_m' | 'fullLevel_m'> | null {
  let isKnown = true;
  for (const { tankId, outletHeight_m, standHeight_m } of drawnFrom) {
    if (outletHeight_m === null) tell('head.outlet_unknown', 'outletHeight_m', tankId);
    if (standHeight_m === null) tell('head.stand_unknown', 'standHeight_m', tankId);
    isKnown &&= outletHeight_m !== null && standHeight_m !== null;
  }
  if (!isKnown) return null;
  const lowLevel_m = Math.min(...drawnFrom.map((tank) => tank.outletHeight_m! + tank.standHeight_m!));
  const open = tanks.find((tank) => tank.overflowHeight_m === null || tank.standHeight_m === null);
  if (open) tell('head.overflow_unknown', 'overflowHeight_m', open.tankId);
  const full_m = open ? null : Math.min(...tanks.map((tank) => tank.overflowHeight_m! + tank.standHeight_m!));
  return { lowLevel_m, fullLevel_m: full_m === null ? null : Math.max(lowLevel_m, full_m) };
}
