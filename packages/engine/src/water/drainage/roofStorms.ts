import {
  type EngineProblemCode,
  engineProblem,
  explain,
  type RoofFacts,
  roofPlanArea,
  type SiteFacts,
  workingInput,
} from '../../kernel/index.ts';
import { pitchWhereUnknown_deg } from './constants.ts';
import { effectiveArea_m2 } from './effectiveArea.ts';
import { type Notes, placeOf } from './notes.ts';
import { flowOff, type SiteStorm, type StormFlow } from './siteStorm.ts';

/** A roof that has gutters, and what the storm brings off it. */
export interface RoofStorm {
  readonly roof: RoofFacts;
  /** Null where it is not known, or the roof is a wall to the rain. */
  readonly effectiveArea_m2: number | null;
  readonly flow: StormFlow | null;
  readonly cappedBy: EngineProblemCode | null;
}

/** What does the storm bring off each roof of which any part leads to a gutter? */
export function roofStorms(site: SiteFacts, storm: SiteStorm | null, notes: Notes): readonly RoofStorm[] {
  return site.roofs
    .filter(({ gutteredFraction }) => gutteredFraction !== 0)
    .map((roof) => roofStorm(roof, storm, notes));
}

function roofStorm(roof: RoofFacts, storm: SiteStorm | null, notes: Notes): RoofStorm {
  const { roofId, valleys_count } = roof;
  if (valleys_count !== null && valleys_count > 0)
    notes.problems.push(
      engineProblem('drainage.valleys', placeOf(notes, 'roofs', 'valleys'), { roof: roofId, count: valleys_count }),
    );
  const isPitchKnown = roof.pitch_deg !== null || roof.form === 'flat';
  const pitch_deg = roof.pitch_deg ?? (roof.form === 'flat' ? 0 : pitchWhereUnknown_deg);
  if (!isPitchKnown)
    notes.problems.push(
      engineProblem('drainage.pitch_unknown', placeOf(notes, 'roofs', 'pitch_deg'), { roof: roofId, pitch_deg }),
    );
  const area_m2 = effectiveAreaOf(roof, pitch_deg, notes);
  return {
    roof,
    effectiveArea_m2: area_m2,
    flow: area_m2 === null || storm === null ? null : explainedFlow(roofId, area_m2, storm, notes),
    cappedBy: isPitchKnown ? null : 'drainage.pitch_unknown',
  };
}

/** Null where the plan area is not known, which is told of the roof, or the roof is too steep. */
function effectiveAreaOf(roof: RoofFacts, pitch_deg: number, notes: Notes): number | null {
  const planArea_m2 = roofPlanArea(roof);
  if (planArea_m2 === null) return null;
  const gutteredFraction = roof.gutteredFraction ?? 1;
  const wallAbove_m2 = roof.wallAbove_m2 ?? 0;
  const area_m2 = effectiveArea_m2({ roofPlanArea_m2: planArea_m2, pitch_deg, gutteredFraction, wallAbove_m2 });
  if (area_m2 === null) {
    const place = placeOf(notes, 'roofs', 'pitch_deg');
    notes.problems.push(engineProblem('drainage.roof_too_steep', place, { roof: roof.roofId, pitch_deg }));
    return null;
  }
  return explain(notes.working, {
    code: 'drainage.area',
    value: area_m2,
    unit: 'm2',
    inputs: [
      workingInput('roof', roof.roofId, 'text'),
      workingInput('roofPlanArea', planArea_m2, 'm2'),
      workingInput('pitch', pitch_deg, 'deg'),
      workingInput('gutteredFraction', gutteredFraction, 'fraction'),
      workingInput('wallAbove', wallAbove_m2, 'm2'),
    ],
    source: 'adh-2015, Table 1',
  });
}

function explainedFlow(roofId: string, area_m2: number, storm: SiteStorm, notes: Notes): StormFlow {
  const flow = flowOff(area_m2, storm);
  const { low, high } = flow.flow_L_per_s_range;
  explain(notes.working, {
    code: 'drainage.flow',
    value: flow.flow_L_per_s,
    unit: 'L_per_s',
    inputs: [
      workingInput('roof', roofId, 'text'),
      workingInput('effectiveArea', area_m2, 'm2'),
      workingInput('storm', storm.intensity_mm_per_h, 'mm_per_h'),
      workingInput('flowLow', low, 'L_per_s'),
      workingInput('flowHigh', high, 'L_per_s'),
    ],
    source: 'sri-lanka-sheet, first block',
  });
  return flow;
}
