import {
  type DesignSettings,
  type DesignStorm,
  type DrainageFinding,
  type DrainagePartFinding,
  engineProblem,
  explain,
  type FirstFlushFinding,
  type Judged,
  type PartFacts,
  type SiteFacts,
  type Verdict,
  workingInput,
  worstVerdict,
} from '../../kernel/index.ts';
import { downpipeParts } from './downpipeParts.ts';
import { gutterParts } from './gutterParts.ts';
import type { JudgedPart } from './judgedPart.ts';
import { lostOver } from './lostOver.ts';
import { type Notes, placeOf } from './notes.ts';
import { overflowParts } from './overflowParts.ts';
import { type RoofStorm, roofStorms } from './roofStorms.ts';
import { type SiteStorm, siteStorm } from './siteStorm.ts';

/** What drainage is judged by. */
export interface DrainageGiven {
  readonly site: SiteFacts;
  /** The gauge's storm; null where none is known. */
  readonly storm: DesignStorm | null;
  /** The catalogue. */
  readonly parts: readonly PartFacts[];
  readonly settings: DesignSettings;
  /** What was found of its first-flush chambers, to stand beside. */
  readonly firstFlush?: readonly FirstFlushFinding[];
  /** Share of its gauge's rain that falls harder than so much [mm/h]; null where its readings do not tell. */
  readonly shareOverCapacity?: (capacity_mm_per_h: number) => number | null;
}

/**
 * Do gutters, outlets, downpipes and overflows of this site carry the storm? Each part is judged by itself; the worst decides. What cannot be judged
 * leaves the station `unknown`, unless something else is `short`.
 *
 * @param given - the site's facts, the storm [mm/h], catalogue and settings
 * @returns the finding, null where the station is not judged: parts with flows and capacities [L/s] and the smallest that would hold [mm], the
 *   hardest rain all carry [mm/h]; problems and working
 * @problem drainage.no_storm - no storm is known for its gauge
 * @problem drainage.roof_too_steep - a roof is over 70°
 * @problem drainage.pitch_unknown - a pitch was not measured; 45° is taken
 * @problem drainage.valleys - a roof has valleys, whose water comes at one point
 * @problem drainage.gutter_missing - a roof leads to gutters of which none was measured
 * @problem drainage.guttered_share_zero - gutters or downpipes of a roof were measured, and no share of it has gutters
 * @problem drainage.gutter_not_measured - shape, width, depth, sole or length of a gutter is missing
 * @problem drainage.sole_wider - a trapezium is wider at its sole than at its top
 * @problem drainage.gutter_level - a gutter does not fall
 * @problem drainage.gutter_backwards - a gutter falls away from its outlet
 * @problem drainage.fall_unknown - the fall was not measured; it is taken for level
 * @problem drainage.run_impossible - water cannot run so far, or so little, along a gutter
 * @problem drainage.run_too_long - a run is beyond 500 times the gutter's depth
 * @problem drainage.outlet_not_measured - the outlet of a gutter is missing
 * @problem drainage.outlet_wider - an outlet is wider than its gutter
 * @problem drainage.downpipe_missing - a roof has no downpipe rows, so that none is judged
 * @problem drainage.downpipe_not_measured - the bore of a downpipe is missing
 * @problem drainage.overflow_not_measured - the bore of an overflow is missing, so that it is not judged
 * @problem drainage.overflow_at_rim - an overflow is at the rim of its tank or above
 * @problem drainage.overflow_head_assumed - an overflow, a rim or a stand has no height; the pipe is taken to run just full
 * @problem drainage.tank_above_eave - a tank is higher than the eave that is to fill it
 * @problem drainage.rain_lost - rain that fell at the gauge was harder than the gutters carry
 * @law a larger roof, a steeper one or a harder storm never makes a verdict better
 * @definition ours: docs/decisions/0175-what-the-storm-brings.md
 */
export function drainageFinding(given: DrainageGiven): Judged<DrainageFinding> {
  const { site, settings } = given;
  if (!isJudged(site, settings)) return { finding: null, problems: [], working: [] };
  const notes: Notes = { siteId: site.siteId, problems: [], working: [] };
  const storm = stormOf(given, notes);
  const roofs = roofStorms(site, storm, notes);
  const judged: JudgedPart[] = [];
  let isGutterMissing = noteShares(site, notes);
  for (const roof of roofs) {
    const own = partsOfRoof(roof, given, storm, notes);
    judged.push(...own.parts);
    isGutterMissing ||= own.isMissing;
  }
  const overflows = overflowParts(site, roofs, storm, given.parts, notes);
  judged.push(...overflows.parts);
  const isMissing = storm === null || isGutterMissing || overflows.isAboveEave;
  const parts = judged.map(({ finding }) => finding);
  const verdict = worstVerdict([...parts.map((part) => part.verdict), ...(isMissing ? (['unknown'] as const) : [])]);
  const finding: DrainageFinding = {
    verdict,
    storm_mm_per_h: storm?.intensity_mm_per_h ?? null,
    returnPeriod_years: storm?.returnPeriod_years ?? null,
    parts,
    governing: fullest(parts),
    carries_mm_per_h: storm === null || isGutterMissing ? null : carried(parts, storm, notes),
    firstFlush: given.firstFlush ?? [],
    lost_fraction: storm === null ? null : lostOver(roofs, parts, storm, given.shareOverCapacity, notes),
    cappedBy: verdict === 'tight' ? capOf(judged) : null,
  };
  explainVerdict(finding, notes);
  return { finding, problems: notes.problems, working: notes.working };
}

function isJudged({ gutters, downpipes }: SiteFacts, { judgeDrainage }: DesignSettings): boolean {
  if (judgeDrainage === 'whereMeasured') return gutters.length + downpipes.length > 0;
  return judgeDrainage === 'always';
}

function stormOf({ site, storm, settings }: DrainageGiven, notes: Notes): SiteStorm | null {
  if (storm !== null) return siteStorm(storm, site.rainFactor, settings, notes);
  const facts = { returnPeriod_years: settings.stormReturnPeriod_years };
  notes.problems.push(engineProblem('drainage.no_storm', placeOf(notes, 'storms'), facts));
  return null;
}

/** Is there a roof that no share of leads to a gutter, though gutters or downpipes of it were measured? One of both is wrong. */
function noteShares({ roofs, gutters, downpipes }: SiteFacts, notes: Notes): boolean {
  const measured = new Set([...gutters, ...downpipes].map(({ roofId }) => roofId));
  const wrong = roofs.filter(({ roofId, gutteredFraction }) => gutteredFraction === 0 && measured.has(roofId));
  for (const { roofId: roof } of wrong)
    notes.problems.push(
      engineProblem('drainage.guttered_share_zero', placeOf(notes, 'roofs', 'gutteredFraction'), { roof }),
    );
  return wrong.length > 0;
}

/** The gutters, outlets and downpipes of a roof; missing where none of its gutters was measured. */
function partsOfRoof(roof: RoofStorm, { site, parts }: DrainageGiven, storm: SiteStorm | null, notes: Notes) {
  const { roofId } = roof.roof;
  const gutters = site.gutters.filter((gutter) => gutter.roofId === roofId);
  const isMissing = gutters.length === 0;
  if (isMissing)
    notes.problems.push(engineProblem('drainage.gutter_missing', placeOf(notes, 'gutters'), { roof: roofId }));
  const downpipes = site.downpipes.filter((downpipe) => downpipe.roofId === roofId);
  return {
    isMissing,
    parts: [...gutterParts(roof, gutters, storm, parts, notes), ...downpipeParts(roof, downpipes, storm, parts, notes)],
  };
}

/** The place of the part that the storm fills most; null where none is known. */
function fullest(parts: readonly DrainagePartFinding[]): number | null {
  let found: number | null = null;
  let most = -1;
  parts.forEach(({ use_fraction }, index) => {
    if (use_fraction === null || use_fraction <= most) return;
    most = use_fraction;
    found = index;
  });
  return found;
}

/** The rain at which the fullest part is just full; null where one is not known. */
function carried(parts: readonly DrainagePartFinding[], storm: SiteStorm, notes: Notes): number | null {
  const uses = parts.map(({ use_fraction }) => use_fraction);
  const known = uses.filter((use) => use !== null);
  const most = Math.max(0, ...known);
  if (known.length < uses.length || most === 0) return null;
  return explain(notes.working, {
    code: 'drainage.carries',
    value: storm.intensity_mm_per_h / most,
    unit: 'mm_per_h',
    inputs: [workingInput('storm', storm.intensity_mm_per_h, 'mm_per_h'), workingInput('fullestUse', most, 'fraction')],
    source: 'definition',
  });
}

/** The assumption that alone keeps the station from holding; null where a figure does. */
function capOf(judged: readonly JudgedPart[]) {
  const tight = judged.filter(({ finding }) => finding.verdict === 'tight');
  return tight.some(({ cappedBy }) => cappedBy === null) ? null : (tight[0]?.cappedBy ?? null);
}

function explainVerdict({ verdict, parts, governing }: DrainageFinding, notes: Notes): Verdict {
  const part = governing === null ? null : parts[governing]!;
  return explain(notes.working, {
    code: 'drainage.verdict',
    value: verdict,
    unit: 'text',
    inputs: part
      ? [
          workingInput('fullestPart', part.part, 'text'),
          workingInput('partId', part.id, 'text'),
          workingInput('storm', part.flow_L_per_s!, 'L_per_s'),
          workingInput('flowHigh', part.flow_L_per_s_range!.high, 'L_per_s'),
          workingInput('capacity', part.capacity_L_per_s!, 'L_per_s'),
        ]
      : [],
    source: 'definition',
  });
}
