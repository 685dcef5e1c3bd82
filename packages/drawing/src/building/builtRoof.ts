import type { RoofFacts, SiteFacts } from '@eavewell/engine';
import type { BuiltDiverter, BuiltGutter, BuiltRoof, Measure } from './building.ts';
import {
  steepest_deg,
  usualBore_m,
  usualEaveHeight_m,
  usualFirstFlush_mm,
  usualGutterDepth_m,
  usualGutterWidth_m,
  usualPitch_deg,
  usualRoofLength_m,
  usualRoofProportion,
  usualRoofWidth_m,
} from './constants.ts';
import { madeFrom, measured, measuredOr, usual } from './measures.ts';

const mm_per_m = 1000;

/** A roof as it is drawn, with its gutter, downpipes and first flush. */
export function builtRoof(site: SiteFacts, roof: RoofFacts): BuiltRoof {
  const form = roof.form ?? 'gable';
  const pitch = measuredOr(roof.pitch_deg, usualPitch_deg[form]);
  const gutteredFraction = measuredOr(roof.gutteredFraction, 1);
  const downpipes = site.downpipes.filter(({ roofId }) => roofId === roof.roofId);
  const bores = downpipes.flatMap(({ bore_mm }) => (bore_mm !== null && bore_mm > 0 ? [bore_mm / mm_per_m] : []));
  const sides = sidesOf(roof);
  return {
    roofId: roof.roofId,
    form,
    isFormKnown: roof.form !== null,
    ...sides,
    pitch_deg: { ...pitch, value: Math.min(pitch.value, steepest_deg) },
    eaveHeight_m: measuredOr(roof.eaveHeight_m, usualEaveHeight_m, 0.1),
    gutteredFraction: { ...gutteredFraction, value: Math.min(1, gutteredFraction.value) },
    gutter: gutterOf(site, roof),
    downpipes_count: downpipes.length > 0 ? measured(downpipes.length) : usual(1),
    bore_m: bores.length > 0 ? measured(Math.max(...bores)) : usual(usualBore_m),
    diverter: diverterOf(roof, sides.width_m.value * sides.length_m.value, gutteredFraction.value),
    tankId: roof.tankId,
  };
}

/** Longer and shorter side: as measured; else from the area and one side; else from the area, three to two; else usual. */
function sidesOf({ length_m, width_m, roofPlanArea_m2 }: RoofFacts): { length_m: Measure; width_m: Measure } {
  const [a, b, area_m2] = [length_m, width_m, roofPlanArea_m2].map((value) =>
    value !== null && value > 0 && value < Infinity ? value : null,
  ) as [number | null, number | null, number | null];
  const of = (one: Measure, other: Measure) =>
    one.value >= other.value ? { length_m: one, width_m: other } : { length_m: other, width_m: one };
  if (a !== null && b !== null) return of(measured(a), measured(b));
  const side = a ?? b;
  if (side !== null && area_m2 !== null) return of(measured(side), madeFrom(area_m2 / side));
  if (side !== null) return of(measured(side), usual(side / usualRoofProportion));
  if (area_m2 === null) return { length_m: usual(usualRoofLength_m), width_m: usual(usualRoofWidth_m) };
  const wide_m = Math.sqrt(area_m2 / usualRoofProportion);
  return { length_m: madeFrom(area_m2 / wide_m), width_m: madeFrom(wide_m) };
}

/** The widest gutter of the roof speaks for all. */
function gutterOf({ gutters }: SiteFacts, { roofId }: RoofFacts): BuiltGutter {
  const own = gutters.filter((gutter) => gutter.roofId === roofId);
  const wide = own.reduce<(typeof own)[number] | null>(
    (most, one) => (most === null || (one.width_mm ?? 0) > (most.width_mm ?? 0) ? one : most),
    null,
  );
  const width_m = measuredOr(inMetres(wide?.width_mm), usualGutterWidth_m, 0.01);
  const isRound = wide?.shape === 'halfRound' || wide?.shape === 'cutPipe' || !wide?.shape;
  const made_m = isRound ? width_m.value / 2 : width_m.value * 0.75;
  const depth_m = measuredOr(inMetres(wide?.depth_mm), width_m.how === 'measured' ? made_m : usualGutterDepth_m, 0.01);
  return { shape: wide?.shape ?? 'halfRound', isShapeKnown: Boolean(wide?.shape), width_m, depth_m };
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
  return { chamber_L: volume, bore_m: bore !== null && bore > 0 ? bore : null, isBlocked: drainHole === 'blocked' };
}
