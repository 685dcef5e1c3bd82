import {
  type Checked,
  engineProblem,
  explain,
  type Problem,
  type RoofFacts,
  roofPlanArea,
  type WorkingLine,
  workingInput,
} from '../../kernel/index.ts';
import { largestDifference_fraction, roofCoverings, usualPlanArea_m2, usualSide_m } from './constants.ts';
import { firstFlushDepth } from './firstFlushDepth.ts';
import { runoffFractionOf } from './runoffFractionOf.ts';

/** A roof ready for rain: every figure known or assumed with a problem that says so. */
export interface RoofCatch {
  readonly roofId: string;
  readonly roofPlanArea_m2: number;
  readonly gutteredFraction: number;
  readonly runoffFraction: number;
  readonly firstFlush_mm: number;
  readonly drainHole: 'open' | 'blocked';
}

/** What is gathered while roofs are read. */
interface Notes {
  readonly siteId: string;
  readonly problems: Problem[];
  readonly working: WorkingLine[];
}

/**
 * What do this site's roofs catch rain with? Reads area, guttered share, runoff fraction and first flush of each roof,
 * and says of each what was assumed.
 *
 * @param site - siteId [text] and its roofs as surveyed
 * @param defaultFirstFlush_mm - the programme's first-flush depth [mm], 0 or more
 * @param working - lines already written; area, runoff and first flush of each roof are added
 * @returns the roofs in the order given: roofPlanArea_m2 [m2], gutteredFraction [fraction], runoffFraction [fraction],
 *   firstFlush_mm [mm], drainHole; problems alone where there is a blocker
 * @problem site.roof_none - the site has no roof
 * @problem site.roof_area_unknown - a roof has neither an area nor both sides
 * @problem site.roof_area_differs - the area given and the sides are far apart; the area is taken
 * @problem site.roof_very_large - far larger than roofs mostly are, by the sides alone or by the area alone
 * @problem site.roof_material_unsafe - a covering asks for care before its water is drunk
 * @problem site.runoff_assumed - the runoff fraction is that of the covering, not surveyed
 * @problem site.gutters_assumed - the guttered share is not known; the whole roof is taken
 * @problem site.first_flush_assumed - no depth and no chamber is known; the programme's depth is taken
 * @problem site.diverter_blocked - the drain hole is blocked, so dirt passes after the first spell
 * @definition ours
 */
export function siteRoofs(
  site: { readonly siteId: string; readonly roofs: readonly RoofFacts[] },
  defaultFirstFlush_mm: number,
  working: WorkingLine[],
): Checked<readonly RoofCatch[]> {
  const problems: Problem[] = [];
  const notes: Notes = { siteId: site.siteId, problems, working };
  if (site.roofs.length === 0)
    problems.push(engineProblem('site.roof_none', { file: 'roofs.csv', siteId: site.siteId }));
  const caught: RoofCatch[] = [];
  for (const roof of site.roofs) {
    const one = roofCatch(roof, defaultFirstFlush_mm, notes);
    if (one) caught.push(one);
  }
  const whole = caught.length > 0 && caught.length === site.roofs.length;
  return whole ? { ok: true, value: caught, problems } : { ok: false, problems };
}

function roofCatch(roof: RoofFacts, defaultFirstFlush_mm: number, notes: Notes): RoofCatch | null {
  const { siteId, problems } = notes;
  const { roofId, diverter } = roof;
  noteMaterial(roof, notes);
  const roofPlanArea_m2 = roofPlanArea(roof);
  if (roofPlanArea_m2 === null) {
    problems.push(
      engineProblem(
        'site.roof_area_unknown',
        { file: 'roofs.csv', siteId, column: 'roofPlanArea_m2' },
        { roof: roofId },
      ),
    );
    return null;
  }
  noteDiffering(roof, roofPlanArea_m2, notes);
  noteVeryLarge(roof, notes);
  const gutteredFraction = gutteredShare(roof, notes);
  explainArea(roof, roofPlanArea_m2, notes.working);
  const { runoffFraction, assumed, source } = runoffFractionOf(roof);
  if (assumed) {
    const facts = { roof: roofId, material: roof.material ?? 'unknown', runoffFraction };
    problems.push(engineProblem('site.runoff_assumed', { file: 'roofs.csv', siteId, column: 'runoffFraction' }, facts));
  }
  const inputs = [workingInput('roof', roofId, 'text'), workingInput('material', roof.material ?? 'unknown', 'text')];
  explain(notes.working, { code: 'roof.runoff', value: runoffFraction, unit: 'fraction', inputs, source });
  if (diverter?.drainHole === 'blocked') {
    problems.push(
      engineProblem('site.diverter_blocked', { file: 'diverters.csv', siteId, column: 'drainHole' }, { roof: roofId }),
    );
  }
  const firstFlush_mm = explainFirstFlush(roof, roofPlanArea_m2 * gutteredFraction, defaultFirstFlush_mm, notes);
  const drainHole = diverter?.drainHole ?? 'open';
  return { roofId, roofPlanArea_m2, gutteredFraction, runoffFraction, firstFlush_mm, drainHole };
}

function noteMaterial(roof: RoofFacts, { siteId, problems }: Notes): void {
  if (roof.material === null) return;
  const { caution } = roofCoverings[roof.material];
  if (caution === null) return;
  const facts = { roof: roof.roofId, material: roof.material, caution };
  problems.push(engineProblem('site.roof_material_unsafe', { file: 'roofs.csv', siteId, column: 'material' }, facts));
}

function noteDiffering(roof: RoofFacts, roofPlanArea_m2: number, { siteId, problems }: Notes): void {
  if (roof.length_m === null || roof.width_m === null) return;
  const sides_m2 = roof.length_m * roof.width_m;
  if (Math.abs(sides_m2 - roofPlanArea_m2) <= largestDifference_fraction * roofPlanArea_m2) return;
  const facts = { roof: roof.roofId, given_m2: roofPlanArea_m2, sides_m2 };
  problems.push(
    engineProblem('site.roof_area_differs', { file: 'roofs.csv', siteId, column: 'roofPlanArea_m2' }, facts),
  );
}

/** A slip of the pen that makes a roof larger is too kind, so a very large one is believed only where sides and area say the same. */
function noteVeryLarge(roof: RoofFacts, { siteId, problems }: Notes): void {
  const { length_m, width_m, roofPlanArea_m2: given_m2 } = roof;
  const sides_m2 = length_m === null || width_m === null ? null : length_m * width_m;
  if (given_m2 !== null && sides_m2 !== null && Math.abs(sides_m2 - given_m2) <= largestDifference_fraction * given_m2)
    return;
  const note = (column: string, value: number, most: number, unit: string) => {
    const facts = { roof: roof.roofId, value, most, unit };
    problems.push(engineProblem('site.roof_very_large', { file: 'roofs.csv', siteId, column }, facts));
  };
  if (given_m2 !== null) {
    if (given_m2 > usualPlanArea_m2.most) note('roofPlanArea_m2', given_m2, usualPlanArea_m2.most, 'm2');
    return;
  }
  if (length_m !== null && length_m > usualSide_m.most) note('length_m', length_m, usualSide_m.most, 'm');
  if (width_m !== null && width_m > usualSide_m.most) note('width_m', width_m, usualSide_m.most, 'm');
}

function gutteredShare(roof: RoofFacts, { siteId, problems }: Notes): number {
  const share = roof.gutteredFraction;
  if (share !== null && share >= 0 && share <= 1) return share;
  problems.push(
    engineProblem(
      'site.gutters_assumed',
      { file: 'roofs.csv', siteId, column: 'gutteredFraction' },
      { roof: roof.roofId },
    ),
  );
  return 1;
}

function explainArea(roof: RoofFacts, roofPlanArea_m2: number, working: WorkingLine[]): void {
  const inputs = [workingInput('roof', roof.roofId, 'text')];
  if (roof.roofPlanArea_m2 === roofPlanArea_m2) inputs.push(workingInput('roofPlanArea', roofPlanArea_m2, 'm2'));
  if (roof.length_m !== null) inputs.push(workingInput('length', roof.length_m, 'm'));
  if (roof.width_m !== null) inputs.push(workingInput('width', roof.width_m, 'm'));
  explain(working, { code: 'roof.area', value: roofPlanArea_m2, unit: 'm2', inputs, source: 'survey' });
}

function explainFirstFlush(roof: RoofFacts, drainedArea_m2: number, default_mm: number, notes: Notes): number {
  const { siteId, problems, working } = notes;
  const { firstFlush_mm, from } = firstFlushDepth(roof.diverter, drainedArea_m2, default_mm);
  if (from === 'settings') {
    const facts = { roof: roof.roofId, firstFlush_mm };
    problems.push(
      engineProblem('site.first_flush_assumed', { file: 'diverters.csv', siteId, column: 'firstFlush_mm' }, facts),
    );
  }
  const inputs = [workingInput('roof', roof.roofId, 'text')];
  if (from === 'chamber') {
    inputs.push(workingInput('chamber', roof.diverter?.chamber_L ?? 0, 'L'));
    inputs.push(workingInput('drainedArea', drainedArea_m2, 'm2'));
  }
  if (roof.diverter) inputs.push(workingInput('drainHole', roof.diverter.drainHole, 'text'));
  const source = from === 'settings' ? 'settings' : 'survey';
  return explain(working, { code: 'roof.firstFlush', value: firstFlush_mm, unit: 'mm', inputs, source });
}
