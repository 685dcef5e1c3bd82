import {
  engineProblem,
  explain,
  type PartFacts,
  type SiteFacts,
  type TankFacts,
  type TankGroup,
  tankGroups,
  workingInput,
} from '../../kernel/index.ts';
import { type JudgedPart, judgedPart } from './judgedPart.ts';
import { type Notes, placeOf } from './notes.ts';
import { overflowCapacity_L_per_s } from './overflowCapacity.ts';
import { headToRim_mm, openMeasure, ownHead_mm } from './overflowHead.ts';
import type { RoofStorm } from './roofStorms.ts';
import type { SiteStorm, StormFlow } from './siteStorm.ts';

/** What is judged of a site's overflows. */
export interface OverflowsJudged {
  readonly parts: readonly JudgedPart[];
  /** Is there a tank that its roof cannot fill? */
  readonly isAboveEave: boolean;
}

/** The overflows of each body of water, judged by all that its roofs bring. */
export function overflowParts(
  site: SiteFacts,
  roofs: readonly RoofStorm[],
  storm: SiteStorm | null,
  parts: readonly PartFacts[],
  notes: Notes,
): OverflowsJudged {
  const groups = tankGroups(site.tanks);
  let isAboveEave = false;
  const judged = groups.flatMap((group) => {
    const own = roofs.filter(({ roof }) => groups.length === 1 || group.tankIds.includes(roof.tankId ?? ''));
    if (own.length === 0) return [];
    for (const { roof } of own) isAboveEave = noteEave(roof, group, notes) || isAboveEave;
    return overflowsOf(group, own, storm, parts, notes);
  });
  return { parts: judged, isAboveEave };
}

/** Water runs into a tank by its inlet, or over its rim where no inlet was measured: neither may be higher than the gutter. */
function noteEave(roof: RoofStorm['roof'], { tanks }: TankGroup, notes: Notes): boolean {
  const { eaveHeight_m, roofId } = roof;
  if (eaveHeight_m === null) return false;
  const reached = tanks.filter(({ tankId }) => roof.tankId === null || roof.tankId === tankId);
  const tops = reached.map((tank) => ({ tank, top_m: wayIn_m(tank) }));
  if (tops.length === 0 || tops.some(({ top_m }) => top_m === null || top_m <= eaveHeight_m)) return false;
  const { tank, top_m } = tops[0]!;
  const place = placeOf(notes, 'roofs', 'eaveHeight_m');
  const facts = { roof: roofId, tank: tank.tankId, eave_m: eaveHeight_m, top_m: top_m! };
  notes.problems.push(engineProblem('drainage.tank_above_eave', place, facts));
  return true;
}

/** From the ground to where water comes in; null where nothing of it was measured. A stand that was not measured adds nothing. */
function wayIn_m({ inletHeight_m, height_m, overflowHeight_m, standHeight_m }: TankFacts): number | null {
  const own_m = inletHeight_m ?? height_m ?? overflowHeight_m;
  return own_m === null ? null : own_m + (standHeight_m ?? 0);
}

function overflowsOf(
  group: TankGroup,
  roofs: readonly RoofStorm[],
  storm: SiteStorm | null,
  parts: readonly PartFacts[],
  notes: Notes,
): readonly JudgedPart[] {
  const id = group.tankIds[0]!;
  const measured = group.tanks.filter(({ overflowBore_mm }) => overflowBore_mm !== null && overflowBore_mm > 0);
  if (measured.length === 0) {
    const place = placeOf(notes, 'tanks', 'overflowBore_mm');
    notes.problems.push(engineProblem('drainage.overflow_not_measured', place, { tanks: group.tankIds }));
    return [];
  }
  const atRim = measured.filter((tank) => noteRim(tank, notes));
  const isAssumed = measured.map((tank) => noteHead(tank, group, notes)).includes(true);
  const capacity_L_per_s =
    atRim.length > 0 ? null : measured.reduce((sum, tank) => sum + explained(tank, group, notes), 0);
  const choices = parts.flatMap(({ partId, kind, bore_mm }) =>
    kind === 'overflow' && bore_mm !== null
      ? [{ partId, size_mm: bore_mm, capacity_L_per_s: carriedBy(measured, group, bore_mm) }]
      : [],
  );
  const caps = [storm?.cappedBy ?? null, ...roofs.map(({ cappedBy }) => cappedBy)];
  const cap = isAssumed ? ('drainage.overflow_head_assumed' as const) : null;
  const flow = sumOf(roofs.map((roof) => roof.flow));
  return [judgedPart({ part: 'overflow', id, roofId: null, flow, capacity_L_per_s, caps: [...caps, cap], choices })];
}

function noteRim(tank: TankFacts, notes: Notes): boolean {
  const head_mm = ownHead_mm(tank);
  if (head_mm === null || head_mm > 0) return false;
  const facts = { tank: tank.tankId, overflow_m: tank.overflowHeight_m!, rim_m: tank.height_m! };
  notes.problems.push(engineProblem('drainage.overflow_at_rim', placeOf(notes, 'tanks', 'overflowHeight_m'), facts));
  return true;
}

function noteHead(tank: TankFacts, group: TankGroup, notes: Notes): boolean {
  const column = openMeasure(tank, group);
  if (column === null) return false;
  const facts = { tank: tank.tankId, missing: [column], bore_mm: tank.overflowBore_mm! };
  notes.problems.push(engineProblem('drainage.overflow_head_assumed', placeOf(notes, 'tanks', column), facts));
  return true;
}

/** What the overflows of a tank let out, its pipes all of this bore. */
function ofTank_L_per_s(tank: TankFacts, group: TankGroup, bore_mm: number): number {
  const head_mm = headToRim_mm(tank, group, bore_mm);
  return (tank.overflows_count ?? 1) * overflowCapacity_L_per_s(bore_mm, head_mm, tank.overflowScreen);
}

function carriedBy(tanks: readonly TankFacts[], group: TankGroup, bore_mm: number): number {
  return tanks.reduce((sum, tank) => sum + ofTank_L_per_s(tank, group, bore_mm), 0);
}

function explained(tank: TankFacts, group: TankGroup, notes: Notes): number {
  const bore_mm = tank.overflowBore_mm!;
  return explain(notes.working, {
    code: 'drainage.overflow',
    value: ofTank_L_per_s(tank, group, bore_mm),
    unit: 'L_per_s',
    inputs: [
      workingInput('tank', tank.tankId, 'text'),
      workingInput('bore', bore_mm, 'mm'),
      workingInput('overflows', tank.overflows_count ?? 1, 'count'),
      workingInput('headToRim', headToRim_mm(tank, group, bore_mm), 'mm'),
      workingInput('screen', tank.overflowScreen, 'text'),
    ],
    source: 'chow-1959, critical flow (from memory)',
  });
}

/** What all of them bring; null where one is not known. */
function sumOf(flows: readonly (StormFlow | null)[]): StormFlow | null {
  let sum: StormFlow = { flow_L_per_s: 0, flow_L_per_s_range: { low: 0, high: 0 } };
  for (const flow of flows) {
    if (flow === null) return null;
    const { low, high } = flow.flow_L_per_s_range;
    sum = {
      flow_L_per_s: sum.flow_L_per_s + flow.flow_L_per_s,
      flow_L_per_s_range: { low: sum.flow_L_per_s_range.low + low, high: sum.flow_L_per_s_range.high + high },
    };
  }
  return sum;
}
