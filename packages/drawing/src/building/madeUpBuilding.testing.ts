import type {
  DownpipeFacts,
  GutterFacts,
  RoofFacts,
  SiteFacts,
  Station,
  StationVerdict,
  TankFacts,
} from '@eavewell/engine';
import { unmeasuredGutter, unmeasuredRoof, unmeasuredSite, unmeasuredTank } from '@eavewell/engine';
import type { LetterShape, PathShape, Picture, Shape } from '../sheet/shapes.ts';
import { svgText } from '../sheet/svgText.ts';
import { buildingOf, type How, type SectionInput, type SectionWords } from './index.ts';
import { boxOfLetter, overlap } from './placer.ts';

/* Buildings for the tests beside, and what they read in pictures. */

export const roof: RoofFacts = {
  ...unmeasuredRoof,
  roofId: 'R1',
  length_m: 12,
  width_m: 9.4,

  material: 'corrugatedMetal',

  gutteredFraction: 1,
  form: 'gable',
  pitch_deg: 20,
  eaveHeight_m: 3.75,

  diverter: { firstFlush_mm: null, chamber_L: 40, chamberBore_mm: 160, drainHole_mm: 3, drainHole: 'open' },
};

export const tank: TankFacts = {
  ...unmeasuredTank,
  tankId: 'T1',
  nominal_L: 12_000,

  outletHeight_m: 0.08,
  overflowHeight_m: 2.25,
  diameter_m: 2.55,
  height_m: 2.35,
  standHeight_m: 0.45,
};

export const gutter: GutterFacts = {
  ...unmeasuredGutter,
  gutterId: 'G1',
  roofId: 'R1',
  shape: 'halfRound',
  width_mm: 150,
  depth_mm: 75,
  length_m: 12,
  fall_mm_per_m: 5,
  outlet_mm: 90,
};

export const downpipe: DownpipeFacts = { downpipeId: 'D1', roofId: 'R1', bore_mm: 90, length_m: 3 };

export const site = (over: Partial<SiteFacts>): SiteFacts => ({
  ...unmeasuredSite,
  siteId: 'P',
  name: 'Pellanta',
  latitude_deg: null,
  longitude_deg: null,
  siteClass: null,
  target: null,
  people: 90,
  peopleCountedOn: null,
  households_count: null,
  growthFraction_per_year: null,
  designYear: null,
  gaugeId: null,
  rainFactor: 1,
  handOverDay: null,
  roofs: [roof],
  tanks: [tank],

  demand: [],
  ration: null,
  presence: null,
  secondSource: null,
  nearSecondSource: null,
  doubts: [],
  ...over,
});

const mm = (value_m: number) => (value_m * 1000).toFixed(0);
const doubt = (how: How) => (how === 'usual' ? ' not measured' : '');

/** Words that can be told from any other text. */
export const words: SectionWords = {
  metres: (value, how) => `«${value.toFixed(2)} m${how === 'usual' ? ' not measured' : ''}»`,
  diameter: (value, how) => `«⌀ ${value.toFixed(2)} m${how === 'usual' ? ' not measured' : ''}»`,
  roofOverGutters: (value) => `«roof over gutters ${value.toFixed(2)} m»`,
  degrees: (value) => `«${Math.round(value)}°»`,
  scaleMark: (value, isLast) => `«${value}${isLast ? ' m' : ''}»`,
  notMeasured: '«dashed: not measured»',
  proposed: '«blue: proposed»',
  tankTooHigh: (by) => `«the overflow is ${by.toFixed(2)} m over the gutter»`,
  guttered: (fraction) => `«${Math.round(fraction * 100)} % guttered»`,
  northNotKnown: '«north and the places of tanks not measured»',
  downpipes: (count) => `«${count} downpipes»`,
  fall: (value) => (value === null ? '«fall not measured»' : value === 0 ? '«level»' : `«falls ${value} mm/m»`),
  fallOver: (drop, run, how) => `«${(drop * 1000).toFixed(0)} mm over ${run.toFixed(2)} m${doubt(how)}»`,
  gutterSize: (width, depth, how) => `«${mm(width)} × ${mm(depth)} mm${doubt(how)}»`,
  outlets: (count, bore, how, isGrated) =>
    `«${count} outlets ⌀ ${mm(bore)} mm${isGrated ? ', grated' : ''}${doubt(how)}»`,
  partSaid: (part, figure) => `«${part} ${figure.slice(1)}`,
  bore: (value, how) => `«⌀ ${mm(value)} mm${doubt(how)}»`,
  larger: (times) => `«${times} times as large»`,
  chamber: (litres, how, hole) =>
    `«${Math.round(litres)} L${doubt(how)}${hole === null ? '' : `, hole ${mm(hole)} mm`}»`,
  holeBlocked: '«hole blocked»',
  inletTooHigh: (by) => `«the inlet is ${by.toFixed(2)} m over the gutter»`,
  inlet: (value, how) => `«inlet ${value.toFixed(2)} m${doubt(how)}»`,
  drawOff: (value, how) => `«draw-off ${value.toFixed(2)} m${doubt(how)}»`,
  overflowAt: (value, how) => `«overflow ${value.toFixed(2)} m${doubt(how)}»`,
  overflow: (count, bore, how, isScreened) =>
    `«${count} overflows ⌀ ${mm(bore)} mm${doubt(how)}, ${isScreened ? 'screened' : 'open'}»`,
  overflowWay: '«way of the overflow not known»',
  sludge: (value) => `«sludge ${value.toFixed(2)} m»`,
  cells: (count) => `«${count} cells»`,
  headLeft: (value) => `«${value.toFixed(1)} m of head left»`,
  pumpAdds: (value) => `«the pump adds ${value.toFixed(1)} m»`,
  ground: (groundClass) => `«ground: ${groundClass ?? 'not known'}»`,
  pads: (count, side) => `«${count} pads, ${side.toFixed(2)} m»`,
  base: (value, how) => `«base ${value.toFixed(2)} m${doubt(how)}»`,
};

const verdicts: Record<Station, StationVerdict> = {
  roof: 'holds',
  gutter: 'tight',
  settling: 'notJudged',
  stand: 'notJudged',
  storage: 'short',
  treatmentUnit: 'notJudged',
  tap: 'unknown',
  cup: 'notJudged',
};

const letters: SectionInput['letters'] = {
  roof: { word: '«roof holds»', figure: null },
  gutter: { word: '«gutter tight»', figure: '«1.56 L/s»' },
  settling: { word: '«settling not judged»', figure: null },
  stand: { word: '«stand not judged»', figure: null },
  storage: { word: '«tank short»', figure: '«dry 22 days a year»' },
  treatmentUnit: { word: '«unit not judged»', figure: null },
  tap: { word: '«tap unknown»', figure: '«not measured»' },
  cup: { word: '«cup not judged»', figure: null },
};

export const inputOf = (facts: SiteFacts, width: number, more: Partial<SectionInput> = {}): SectionInput => {
  const building = buildingOf(facts);
  const levels = building.bodies.map(({ tankIds }) => ({ tankIds, content_L: 5000 }));
  return { building, levels, stations: verdicts, letters, words, width, ...more };
};

export const flat = (shapes: readonly Shape[]): readonly Exclude<Shape, { kind: 'group' }>[] =>
  shapes.flatMap((shape) => (shape.kind === 'group' ? flat(shape.shapes) : [shape]));
export const lettersOf = (picture: Picture) =>
  flat(picture.shapes).filter((one): one is LetterShape => one.kind === 'letter');
export const pathsOf = (shapes: readonly Shape[]) =>
  flat(shapes).filter((one): one is PathShape => one.kind === 'path');

export function partOf(shapes: readonly Shape[], part: string): readonly Shape[] {
  return shapes.flatMap((shape) => {
    if (shape.kind !== 'group') return [];
    return shape.part === part ? shape.shapes : partOf(shape.shapes, part);
  });
}

const numbersOf = (d: string) => [...d.matchAll(/-?\d+(?:\.\d+)?(?:e-?\d+)?/g)].map(Number);

/** Corners of a path of straight lines. */
export const pointsOf = (d: string) => {
  const all = numbersOf(d);
  return Array.from({ length: all.length / 2 }, (_, nth) => [all[2 * nth]!, all[2 * nth + 1]!] as const);
};

export const span = (values: readonly number[]) => Math.max(...values) - Math.min(...values);

/** Everything wrong with the letters of a picture: outside it, over one another, or not of the words given. */
export function letterFaults(picture: Picture): readonly string[] {
  const all = lettersOf(picture);
  const boxes = all.map(boxOfLetter);
  return all.flatMap((letter, index) => {
    const box = boxes[index]!;
    const faults: string[] = [];
    if (!/^«.*»$/.test(letter.text)) faults.push(`${letter.text} is no word that was given`);
    if (box.x < 0 || box.y < 0 || box.x + box.width > picture.width || box.y + box.height > picture.height)
      faults.push(`${letter.text} stands outside`);
    for (let other = 0; other < index; other++)
      if (overlap(box, boxes[other]!) > 0) faults.push(`${letter.text} covers ${all[other]!.text}`);
    return faults;
  });
}

export function isWhole(picture: Picture): boolean {
  const text = svgText(picture, 'section');
  return (
    !/NaN|Infinity|undefined|null/.test(text) &&
    picture.handles.every((one) => Number.isFinite(one.x + one.y + one.width + one.height + one.perPx))
  );
}
