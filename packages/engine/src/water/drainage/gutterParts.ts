import { type EngineProblemCode, explain, type GutterFacts, type PartFacts, workingInput } from '../../kernel/index.ts';
import { gutterRoughness_factor, levelBelow_mm_per_m } from './constants.ts';
import { type GutterCapacity, gutterCapacity } from './gutterCapacity.ts';
import { gutterFaults, runOf_m } from './gutterFaults.ts';
import { gutterSection, type SectionFacts } from './gutterSection.ts';
import { type JudgedPart, judgedPart } from './judgedPart.ts';
import type { Notes } from './notes.ts';
import { headAtOutlet_mm, outletCapacity_L_per_s } from './outletCapacity.ts';
import type { RoofStorm } from './roofStorms.ts';
import { type SiteStorm, type StormFlow, shareOf } from './siteStorm.ts';
import type { PartCarrying } from './smallestThatHolds.ts';
import { uniformVelocity_m_per_s } from './uniformVelocity.ts';

/** The gutters of one roof and their outlets, judged. */
export function gutterParts(
  roof: RoofStorm,
  gutters: readonly GutterFacts[],
  storm: SiteStorm | null,
  parts: readonly PartFacts[],
  notes: Notes,
): readonly JudgedPart[] {
  const all_m = gutters.reduce<number | null>(
    (sum, { length_m }) => (sum === null || length_m === null ? null : sum + length_m),
    0,
  );
  return gutters.flatMap((gutter) => {
    const share = gutters.length === 1 ? 1 : all_m === null || all_m === 0 ? null : gutter.length_m! / all_m;
    const caps = [storm?.cappedBy ?? null, roof.cappedBy];
    return oneGutter(gutter, shareOf(roof.flow, share), caps, parts, notes);
  });
}

function oneGutter(
  gutter: GutterFacts,
  flow: StormFlow | null,
  caps: readonly (EngineProblemCode | null)[],
  parts: readonly PartFacts[],
  notes: Notes,
): readonly JudgedPart[] {
  const { gutterId: id, roofId, length_m, outlets_count } = gutter;
  const faults = gutterFaults(gutter, notes);
  const run_m = runOf_m(gutter);
  /** Of all its water, what has come together where it runs fullest, and what one outlet gets. */
  const fullest = run_m === null || length_m === null ? null : Math.min(1, run_m / length_m);
  const atOutlet = fullest === null ? null : Math.max(fullest, 1 / (outlets_count ?? 1));
  const capacity = faults.gutter || run_m === null ? null : explainedGutter(gutter, run_m, notes);
  const outlet_L_per_s = faults.outlet ? null : explainedOutlet(gutter, notes);
  return [
    judgedPart({
      ...{ part: 'gutter', id, roofId },
      flow: shareOf(flow, fullest),
      capacity_L_per_s: capacity?.capacity_L_per_s ?? null,
      caps: [...caps, gutter.fall_mm_per_m === null ? 'drainage.fall_unknown' : null],
      choices: run_m === null ? [] : guttersOf(parts, run_m, gutter.bends_count ?? 0),
    }),
    judgedPart({
      ...{ part: 'outlet', id, roofId },
      flow: shareOf(flow, atOutlet),
      capacity_L_per_s: outlet_L_per_s,
      caps,
      choices: outletsOf(parts, gutter),
    }),
  ];
}

/** What it carries, written down with its waterway and, where it falls, what an even slope would carry. */
function explainedGutter(gutter: GutterFacts, run_m: number, notes: Notes): GutterCapacity | null {
  const found = gutterCapacity(gutter, run_m, gutter.bends_count ?? 0);
  if (found === null) return null;
  const named = workingInput('gutter', gutter.gutterId, 'text');
  const { waterway_mm2, rule, nominal_L_per_s, long_factor, bends_factor } = found;
  explain(notes.working, {
    code: 'drainage.waterway',
    value: waterway_mm2,
    unit: 'mm2',
    inputs: [
      named,
      workingInput('shape', gutter.shape!, 'text'),
      workingInput('width', gutter.width_mm!, 'mm'),
      workingInput('depth', gutter.depth_mm!, 'mm'),
      ...(gutter.shape === 'trapezoidal' ? [workingInput('sole', gutter.baseWidth_mm!, 'mm')] : []),
    ],
    source: 'definition',
  });
  explain(notes.working, {
    code: 'drainage.gutter',
    value: found.capacity_L_per_s,
    unit: 'L_per_s',
    inputs: [
      named,
      workingInput('gutterRule', rule, 'text'),
      workingInput('nearSquare', gutter.depth_mm! / gutter.width_mm!, 'factor'),
      workingInput('nominalFlow', nominal_L_per_s, 'L_per_s'),
      workingInput('runToOutlet', run_m, 'm'),
      workingInput('longFactor', long_factor, 'factor'),
      workingInput('bendsFactor', bends_factor, 'factor'),
    ],
    source: 'en-12056-3, 5.1 (from memory)',
  });
  explainUniform(gutter, waterway_mm2, notes);
  return found;
}

/** What a slope steep enough to count would carry, were it not fed all along: told, never credited. */
function explainUniform(gutter: GutterFacts, area_mm2: number, notes: Notes): void {
  const { fall_mm_per_m } = gutter;
  const section = gutterSection(gutter);
  if (section === null || fall_mm_per_m === null || fall_mm_per_m < levelBelow_mm_per_m) return;
  const radius_m = area_mm2 / section.wetted_mm / 1000;
  const speed_m_per_s = uniformVelocity_m_per_s(radius_m, fall_mm_per_m, gutterRoughness_factor);
  explain(notes.working, {
    code: 'drainage.uniform',
    value: (area_mm2 / 1000) * speed_m_per_s,
    unit: 'L_per_s',
    inputs: [
      workingInput('gutter', gutter.gutterId, 'text'),
      workingInput('fall', fall_mm_per_m, 'mm_per_m'),
      workingInput('roughness', gutterRoughness_factor, 'factor'),
    ],
    source: 'warwick-dtu, gutter page',
  });
}

function explainedOutlet(gutter: GutterFacts, notes: Notes): number {
  const head_mm = headAtOutlet_mm(gutter.depth_mm!);
  return explain(notes.working, {
    code: 'drainage.outlet',
    value: outletCapacity_L_per_s(gutter.outlet_mm!, head_mm, gutter.outletGrate),
    unit: 'L_per_s',
    inputs: [
      workingInput('gutter', gutter.gutterId, 'text'),
      workingInput('outletBore', gutter.outlet_mm!, 'mm'),
      workingInput('headAtOutlet', head_mm, 'mm'),
      workingInput('grate', gutter.outletGrate, 'text'),
    ],
    source: 'en-12056-3, Table 7 (from memory)',
  });
}

/** The gutters of the catalogue, and what each would carry on this run. */
function guttersOf(parts: readonly PartFacts[], run_m: number, bends_count: number): readonly PartCarrying[] {
  return parts.flatMap(({ partId, kind, shape, topWidth_mm, baseWidth_mm, depth_mm }) => {
    if (kind !== 'gutter') return [];
    const facts: SectionFacts = { shape, width_mm: topWidth_mm, depth_mm, baseWidth_mm };
    const found = gutterCapacity(facts, run_m, bends_count);
    return found === null ? [] : [{ partId, size_mm: topWidth_mm!, capacity_L_per_s: found.capacity_L_per_s }];
  });
}

/** The outlets of the catalogue that this gutter has room for. */
function outletsOf(parts: readonly PartFacts[], gutter: GutterFacts): readonly PartCarrying[] {
  const { width_mm, depth_mm, outletGrate } = gutter;
  if (depth_mm === null || width_mm === null) return [];
  return parts.flatMap(({ partId, kind, bore_mm }) => {
    if (kind !== 'outlet' || bore_mm === null || bore_mm > width_mm) return [];
    const capacity_L_per_s = outletCapacity_L_per_s(bore_mm, headAtOutlet_mm(depth_mm), outletGrate);
    return [{ partId, size_mm: bore_mm, capacity_L_per_s }];
  });
}
