import type { BuiltTank, How, Measure } from './building.ts';
import type { Dimension } from './dimensions.ts';
import type { Frame } from './frame.ts';
import type { PlacedRoof, PlacedStop, PlacedTank } from './layout.ts';
import { tankOf } from './notes.ts';
import type { SectionWords } from './sectionTypes.ts';
import { footOf } from './stand.ts';

/** The less sure of several. */
export const worst = (...all: readonly How[]): How =>
  all.includes('usual') ? 'usual' : all.includes('madeFrom') ? 'madeFrom' : 'measured';

/** Every measure a section could letter, the most telling first by rank. */
export function sectionDimensions(frame: Frame, words: SectionWords): readonly Dimension[] {
  let roofs = 0;
  let tanks = 0;
  return frame.placed.flatMap((one): readonly Dimension[] => {
    if (one.kind === 'roof') {
      const rank = 10 * roofs++;
      if (frame.detail === 'gutter' || frame.detail === 'roof') return pipeDimensions(frame, one, words, rank);
      if (frame.detail !== 'whole') return [];
      return [...roofDimensions(frame, one, words, rank), ...riseDimension(frame, one, words, rank)];
    }
    if (one.kind !== 'tank') return stopDimensions(frame, one, words);
    if (!one.tank || !isAbout(frame, one)) return [];
    return tankDimensions(frame, one, words, 10 * tanks++);
  });
}

/** Does a picture letter a tank? */
const isAbout = ({ detail, all }: Frame, one: PlacedTank): boolean =>
  detail === 'whole' ||
  detail === 'storage' ||
  ((detail === 'settling' || detail === 'stand') && tankOf(all, detail)?.tank === one.tank);

/** The height of the taps, and of the inlet of the treatment unit, where they were measured. */
function stopDimensions(
  { view: { k, y0 }, detail }: Frame,
  { kind, stops, x }: PlacedStop,
  words: SectionWords,
): readonly Dimension[] {
  const isTap = kind === 'tap';
  const height = isTap ? stops.tapHeight_m : stops.unitHeight_m;
  const least_px = isTap || detail === kind ? 4 : 34;
  if (height.how !== 'measured' || height.value * k < least_px || (detail !== 'whole' && detail !== kind)) return [];
  const [end, at] = isTap ? [x + 1.4 * k, x + 2.5 * k] : [x, x - 0.24 * k - 8];
  const run = {
    from: y0,
    to: y0 - height.value * k,
    at,
    ends: [end, end],
    rank: isTap ? 7 : 8,
    isAfter: isTap,
  } as const;
  return [dimension('y', height, words.metres, run)];
}

interface Run {
  readonly from: number;
  readonly to: number;
  readonly at: number;
  readonly ends: readonly [number, number];
  readonly rank: number;
  readonly canChange?: boolean;
  readonly isAfter?: boolean;
}

/** A measure along a run of the picture, in the words for it. */
function dimension(
  along: 'x' | 'y',
  { value, how }: Measure,
  words: (value: number, how: How) => string,
  run: Run,
): Dimension {
  return { canChange: false, ...run, along, text: words(value, how), how };
}

function roofDimensions(
  { view: { k, y0 }, under }: Frame,
  { roof, outline, x }: PlacedRoof,
  words: SectionWords,
  rank: number,
): readonly Dimension[] {
  const eave = y0 - outline.eaveHeight_m * k;
  const width = { from: x, to: x + outline.width_m * k, at: under, ends: [y0 + 4, y0 + 4], rank: rank + 2 } as const;
  const height = { from: y0, to: eave, at: beside(k, x, outline.leftOut_m), ends: [x, x], rank: rank + 3 } as const;
  return [
    dimension('x', roof.width_m, words.roofOverGutters, width),
    dimension('y', roof.eaveHeight_m, words.metres, height),
  ];
}

/** Where heights of a roof stand: left of its eave [px]. */
const beside = (k: number, x: number, out_m: number) => x - out_m * k - 10;

/** From the gutter to the highest point, made from the pitch. */
function riseDimension(
  { view: { k, y0 } }: Frame,
  { roof, outline, x }: PlacedRoof,
  words: SectionWords,
  rank: number,
): readonly Dimension[] {
  const { width_m, pitch_deg, form, isFormKnown } = roof;
  const value = outline.ridgeHeight_m - outline.eaveHeight_m;
  if (form === 'flat' || value * k <= 12) return [];
  const how = worst(width_m.how, pitch_deg.how, isFormKnown ? 'madeFrom' : 'usual');
  const ridgeX = x + outline.top[form === 'oneSlope' ? 0 : 1]![0] * k;
  const [from, to] = [y0 - outline.eaveHeight_m * k, y0 - outline.ridgeHeight_m * k];
  const run = { from, to, at: beside(k, x, outline.leftOut_m), ends: [x, ridgeX], rank: rank + 6 } as const;
  return [dimension('y', { value, how }, words.metres, run)];
}

/** In the cut-out at the gutter: the first-flush pipe, and outside it the height of the gutter. */
function pipeDimensions(
  { view: { k, y0 }, under, width }: Frame,
  { roof, outline, x }: PlacedRoof,
  words: SectionWords,
  rank: number,
): readonly Dimension[] {
  const { chamber, branchHeight_m, rightPipe_m, rightOut_m, eaveHeight_m, width_m } = outline;
  const right = x + (width_m + rightOut_m) * k;
  const ends = [x + (rightPipe_m + 0.1) * k, x + (rightPipe_m + 0.1) * k] as const;
  const eave = { from: y0, to: y0 - eaveHeight_m * k, at: right + 44, ends, rank } as const;
  const across = { from: x, to: x + width_m * k, at: under, ends: [y0 + 4, y0 + 4], rank: rank + 2 } as const;
  const dimensions = [
    dimension('y', roof.eaveHeight_m, words.metres, eave),
    // The width only where both its ends are seen.
    ...(x > 0 && x + width_m * k < width ? [dimension('x', roof.width_m, words.roofOverGutters, across)] : []),
  ];
  if (chamber && roof.diverter) {
    const top = branchHeight_m - 0.05;
    const how = roof.diverter.bore_m === null ? 'usual' : worst(roof.diverter.chamber_L.how, 'madeFrom');
    const run = { from: y0 - (top - chamber.length_m) * k, to: y0 - top * k, at: right + 18, ends, rank: rank + 1 };
    dimensions.push(dimension('y', { value: chamber.length_m, how }, words.metres, run));
  }
  return dimensions;
}

function tankDimensions(
  frame: Frame,
  { tank, x, isRepeat, isRepeated }: PlacedTank,
  words: SectionWords,
  rank: number,
): readonly Dimension[] {
  if (!tank) return [];
  const { view, under, detail } = frame;
  const { k, y0 } = view;
  const { diameter_m, height_m, standHeight_m, overflowHeight_m } = tank;
  const [left, right] = [x - (diameter_m.value / 2) * k, x + (diameter_m.value / 2) * k];
  const foot = y0 - standHeight_m.value * k;
  const inner = right + 0.24 * k + 18;
  const isDetail = detail === 'storage' || detail === 'settling';
  const isStand = detail === 'stand';
  const across: Run = { from: left, to: right, at: under, ends: [y0 + 0.2 * k, y0 + 0.2 * k], rank, canChange: true };
  const up: Run = {
    from: foot,
    to: foot - height_m.value * k,
    at: isDetail ? inner + 28 : inner,
    ends: [right, right],
    rank: rank + 1,
    canChange: true,
  };
  const dimensions = [
    ...(isRepeat || isStand ? [] : [dimension('x', diameter_m, words.diameter, across)]),
    ...(isRepeated ? [] : [dimension('y', height_m, words.metres, up)]),
  ];
  if (isStand) {
    const { base_m } = tank.stand;
    const half = (base_m.value / 2) * k;
    dimensions.push(dimension('x', base_m, words.base, { ...across, from: x - half, to: x + half, canChange: false }));
  }
  if (isDetail && !isRepeated) {
    const to = foot - overflowHeight_m.value * k;
    const run: Run = { from: foot, to, at: inner, ends: [right, right], rank: rank + 5 };
    dimensions.push(dimension('y', overflowHeight_m, words.metres, run));
  }
  return isRepeat ? dimensions : [...dimensions, ...leftDimensions(frame, { tank, x }, words, rank)];
}

/** Left of a tank, over one another: its stand and its draw-off; outside them its inlet, which must stay apart from the draw-off. */
function leftDimensions(
  { view: { k, y0 }, detail }: Frame,
  { tank, x }: { readonly tank: BuiltTank; readonly x: number },
  words: SectionWords,
  rank: number,
): readonly Dimension[] {
  const { diameter_m, standHeight_m, outletHeight_m, inletHeight_m, role } = tank;
  const foot = y0 - standHeight_m.value * k;
  const left = x - (diameter_m.value / 2) * k;
  const edge = x - Math.max(footOf(tank), diameter_m.value / 2) * k;
  const dimensions: Dimension[] = [];
  const isDetail = detail === 'storage' || detail === 'settling';
  const up = (height_m: Measure, at: number, rankMore: number): Run => ({
    from: foot,
    to: foot - height_m.value * k,
    at,
    ends: [left, left],
    rank: rank + rankMore,
  });
  if (standHeight_m.value * k > 5) {
    const run: Run = { from: y0, to: foot, at: edge - 12, ends: [edge, edge], rank: rank + 4 };
    dimensions.push(dimension('y', standHeight_m, words.metres, run));
  }
  if (isDetail || (role === 'settling' && detail === 'whole' && outletHeight_m.value * k > 5))
    dimensions.push(dimension('y', outletHeight_m, words.metres, up(outletHeight_m, edge - 12, 3)));
  if (isDetail && inletHeight_m !== null)
    dimensions.push(dimension('y', inletHeight_m, words.metres, up(inletHeight_m, edge - 34, 2)));
  return dimensions;
}
