import {
  type GutterFacts,
  gutterRun,
  type RoofFacts,
  roofSides,
  type SideFrom,
  type SiteFacts,
} from '@eavewell/engine';
import type { BuiltDiverter, BuiltGutter, BuiltRoof, How, Measure } from './building.ts';
import {
  mostDrawn_count,
  steepest_deg,
  usualBore_m,
  usualEaveHeight_m,
  usualFirstFlush_mm,
  usualGutterDepth_m,
  usualGutterWidth_m,
  usualPitch_deg,
  usualRoofLength_m,
  usualRoofWidth_m,
  usualSoleShare,
} from './constants.ts';
import { countedOr, madeFrom, measured, measuredOr, usual } from './measures.ts';

const mm_per_m = 1000;

/** A roof as it is drawn, with its gutter, downpipes and first flush. */
export function builtRoof(site: SiteFacts, roof: RoofFacts): BuiltRoof {
  const form = roof.form ?? 'gable';
  const pitch = measuredOr(roof.pitch_deg, usualPitch_deg[form]);
  const gutteredFraction = measuredOr(roof.gutteredFraction, 1);
  const downpipes = site.downpipes.filter(({ roofId }) => roofId === roof.roofId);
  const bores = downpipes.flatMap(({ bore_mm }) => (bore_mm !== null && bore_mm > 0 ? [bore_mm / mm_per_m] : []));
  const sides = sidesOf(roof);
  const bore_m = bores.length > 0 ? measured(Math.max(...bores)) : usual(usualBore_m);
  const gutters = site.gutters
    .filter(({ roofId }) => roofId === roof.roofId)
    .map((gutter) => gutterOf(gutter, bore_m.value, sides.length_m.value));
  return {
    roofId: roof.roofId,
    form,
    isFormKnown: roof.form !== null,
    ...sides,
    pitch_deg: { ...pitch, value: Math.min(pitch.value, steepest_deg) },
    eaveHeight_m: measuredOr(roof.eaveHeight_m, usualEaveHeight_m, 0.1),
    gutteredFraction: { ...gutteredFraction, value: Math.min(1, gutteredFraction.value) },
    gutter: widest(gutters) ?? gutterOf(null, bore_m.value, sides.length_m.value),
    gutters,
    downpipeIds: downpipes.map(({ downpipeId }) => downpipeId),
    downpipes_count: downpipes.length > 0 ? measured(downpipes.length) : usual(1),
    bore_m,
    diverter: diverterOf(roof, sides.width_m.value * sides.length_m.value, gutteredFraction.value),
    tankId: roof.tankId,
  };
}

/** Longer and shorter side: as the engine has them; where nothing is known of them, of usual size. */
function sidesOf(roof: RoofFacts): { length_m: Measure; width_m: Measure } {
  const sides = roofSides(roof);
  if (sides === null) return { length_m: usual(usualRoofLength_m), width_m: usual(usualRoofWidth_m) };
  return {
    length_m: { value: sides.length_m, how: howOf[sides.lengthFrom] },
    width_m: { value: sides.width_m, how: howOf[sides.widthFrom] },
  };
}

const howOf: Readonly<Record<SideFrom, How>> = {
  measured: 'measured',
  madeFrom: 'madeFrom',
  areaInProportion: 'madeFrom',
  sideInProportion: 'usual',
};

/** The widest gutter of the roof speaks for all. */
const widest = (gutters: readonly BuiltGutter[]): BuiltGutter | null =>
  gutters.reduce<BuiltGutter | null>(
    (most, one) => (most === null || one.width_m.value > most.width_m.value ? one : most),
    null,
  );

function gutterOf(facts: GutterFacts | null, bore_m: number, eave_m: number): BuiltGutter {
  const width_m = measuredOr(inMetres(facts?.width_mm), usualGutterWidth_m, 0.01);
  const shape = facts?.shape ?? 'halfRound';
  const isRound = shape === 'halfRound' || shape === 'cutPipe';
  const made_m = isRound ? width_m.value / 2 : width_m.value * 0.75;
  const depth_m = measuredOr(inMetres(facts?.depth_mm), width_m.how === 'measured' ? made_m : usualGutterDepth_m, 0.01);
  const sole_m = shape === 'trapezoidal' ? width_m.value * usualSoleShare : width_m.value;
  const run = gutterRun(facts, eave_m);
  const length_m = run?.from === 'measured' ? measured(run.length_m) : usual(run?.length_m ?? eave_m);
  const outlets_count = countedOr(facts?.outlets_count ?? null, 1, mostDrawn_count);
  const fall = facts?.fall_mm_per_m ?? null;
  return {
    shape,
    isShapeKnown: Boolean(facts?.shape),
    width_m,
    depth_m,
    baseWidth_m: measuredOr(inMetres(facts?.baseWidth_mm), sole_m),
    gutterId: facts?.gutterId ?? null,
    length_m,
    fall_mm_per_m: fall !== null && Math.abs(fall) < 1000 ? fall : null,
    outlet_m: measuredOr(inMetres(facts?.outlet_mm), bore_m, 0.005),
    outlets_count,
    isGrated: facts?.outletGrate === 'grated',
    run_m: runOf(facts?.runToOutlet_m ?? null, length_m, outlets_count),
  };
}

/** As measured; else its length, shared among its outlets. */
function runOf(given_m: number | null, length_m: Measure, outlets_count: Measure): Measure {
  if (given_m !== null && given_m > 0 && given_m <= length_m.value) return measured(given_m);
  const how = length_m.how === 'usual' || outlets_count.how === 'usual' ? 'usual' : 'madeFrom';
  return { value: length_m.value / outlets_count.value, how };
}

const inMetres = (value_mm: number | null | undefined): number | null =>
  value_mm === null || value_mm === undefined ? null : value_mm / mm_per_m;

/** What its chamber holds: as stated; else the depth it takes over the plan area that drains to it (1 mm on 1 m² is 1 L). */
function diverterOf({ diverter }: RoofFacts, area_m2: number, share: number): BuiltDiverter | null {
  if (diverter === null) return null;
  const { chamber_L, firstFlush_mm, drainHole } = diverter;
  const bore = inMetres(diverter.chamberBore_mm);
  const depth = (mm: number) => Math.max(0, mm * area_m2 * share);
  let volume: Measure = usual(depth(usualFirstFlush_mm));
  if (chamber_L !== null && chamber_L >= 0) volume = measured(chamber_L);
  else if (firstFlush_mm !== null && firstFlush_mm >= 0) volume = madeFrom(depth(firstFlush_mm));
  const hole = inMetres(diverter.drainHole_mm);
  return {
    chamber_L: volume,
    bore_m: bore !== null && bore > 0 ? bore : null,
    hole_m: hole !== null && hole > 0 ? hole : null,
    isBlocked: drainHole === 'blocked',
  };
}
