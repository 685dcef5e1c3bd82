import type { How } from './building.ts';
import type { Dimension } from './dimensions.ts';
import type { Frame } from './frame.ts';
import type { PlacedRoof, PlacedTank } from './layout.ts';
import type { SectionWords } from './sectionTypes.ts';
import { standOut_m } from './stand.ts';

const worst = (...all: readonly How[]): How =>
  all.includes('usual') ? 'usual' : all.includes('madeFrom') ? 'madeFrom' : 'measured';

/** Every measure a section could letter, the most telling first by rank. */
export function sectionDimensions({ view, placed, under }: Frame, words: SectionWords): readonly Dimension[] {
  let roofs = 0;
  let tanks = 0;
  return placed.flatMap((one): readonly Dimension[] => {
    if (one.kind === 'roof') return roofDimensions(view, one, under, words, roofs++);
    return one.kind === 'tank' && one.tank ? tankDimensions(view, one, under, words, tanks++) : [];
  });
}

type View = Frame['view'];

function roofDimensions(
  { k, y0 }: View,
  { roof, outline, x }: PlacedRoof,
  under: number,
  words: SectionWords,
  nth: number,
): readonly Dimension[] {
  const { width_m, pitch_deg, eaveHeight_m, form, isFormKnown } = roof;
  const at = x - outline.leftOut_m * k - 10;
  const eave = y0 - outline.eaveHeight_m * k;
  const ridge = y0 - outline.ridgeHeight_m * k;
  const ridgeX = x + outline.top[form === 'gable' || form === 'hip' ? 1 : 0]![0] * k;
  const rise_m = outline.ridgeHeight_m - outline.eaveHeight_m;
  const riseHow = worst(width_m.how, pitch_deg.how, isFormKnown ? 'madeFrom' : 'usual');
  const dimensions: Dimension[] = [
    {
      along: 'x',
      from: x,
      to: x + outline.width_m * k,
      at: under,
      ends: [y0 + 4, y0 + 4],
      text: words.roofOverGutters(width_m.value, width_m.how),
      how: width_m.how,
      canChange: false,
      rank: 2 + nth * 10,
    },
    {
      along: 'y',
      from: y0,
      to: eave,
      at,
      ends: [x, x],
      text: words.metres(eaveHeight_m.value, eaveHeight_m.how),
      how: eaveHeight_m.how,
      canChange: false,
      rank: 3 + nth * 10,
    },
  ];
  if (form !== 'flat' && rise_m * k > 12)
    dimensions.push({
      along: 'y',
      from: eave,
      to: ridge,
      at,
      ends: [x, ridgeX],
      text: words.metres(rise_m, riseHow),
      how: riseHow,
      canChange: false,
      rank: 6 + nth * 10,
    });
  return dimensions;
}

function tankDimensions(
  { k, y0 }: View,
  { tank, x }: PlacedTank,
  under: number,
  words: SectionWords,
  nth: number,
): readonly Dimension[] {
  if (!tank) return [];
  const { diameter_m, height_m, standHeight_m } = tank;
  const half = (diameter_m.value / 2) * k;
  const foot = y0 - standHeight_m.value * k;
  const top = foot - height_m.value * k;
  const right = x + half + 0.24 * k + 18;
  const left = x - half - standOut_m * k - 12;
  const dimensions: Dimension[] = [
    {
      along: 'x',
      from: x - half,
      to: x + half,
      at: under,
      ends: [y0 + 0.2 * k, y0 + 0.2 * k],
      text: words.diameter(diameter_m.value, diameter_m.how),
      how: diameter_m.how,
      canChange: true,
      rank: nth * 10,
    },
    {
      along: 'y',
      from: foot,
      to: top,
      at: right,
      ends: [x + half, x + half],
      text: words.metres(height_m.value, height_m.how),
      how: height_m.how,
      canChange: true,
      rank: 1 + nth * 10,
    },
  ];
  if (standHeight_m.value * k > 5)
    dimensions.push({
      along: 'y',
      from: y0,
      to: foot,
      at: left,
      ends: [x - half - standOut_m * k, x - half - standOut_m * k],
      text: words.metres(standHeight_m.value, standHeight_m.how),
      how: standHeight_m.how,
      canChange: false,
      rank: 4 + nth * 10,
    });
  return dimensions;
}
