import { buildingOf, type How, type SectionWords, type Shape } from '@eavewell/drawing';
import {
  type GutterFacts,
  type RoofFacts,
  type SiteFacts,
  stations,
  type TankFacts,
  unmeasuredGutter,
  unmeasuredRoof,
  unmeasuredSite,
  unmeasuredTank,
} from '@eavewell/engine';
import type { PackItem, PackLoad, SitePackContent } from './content.ts';
import { sectionForPaper } from './sectionForPaper.ts';

/* A site and its pack, made up for the tests beside. */

const roof: RoofFacts = {
  ...unmeasuredRoof,
  roofId: 'R1',
  length_m: 12,
  width_m: 9.4,
  material: 'corrugatedMetal',
  form: 'gable',
  pitch_deg: 20,
  eaveHeight_m: 3.75,
  diverter: { firstFlush_mm: null, chamber_L: 40, chamberBore_mm: 160, drainHole_mm: 3, drainHole: 'open' },
};

const tank: TankFacts = {
  ...unmeasuredTank,
  tankId: 'T1',
  nominal_L: 12_000,
  outletHeight_m: 0.08,
  overflowHeight_m: 2.25,
  diameter_m: 2.55,
  height_m: 2.35,
  standHeight_m: 0.45,
};

const gutter: GutterFacts = {
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

export const site: SiteFacts = {
  ...unmeasuredSite,
  siteId: 'P1',
  name: 'Pellanta, school hall',
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
  gutters: [gutter],
  demand: [],
  ration: null,
  presence: null,
  secondSource: null,
  nearSecondSource: null,
  doubts: [],
};

const length = (value_m: number, how: How) => `${how === 'measured' ? '' : 'about '}${value_m.toFixed(2)} m`;
const mm = (value_m: number) => (value_m * 1000).toFixed(0);

export const sectionWords: SectionWords = {
  metres: length,
  diameter: (value, how) => `ø ${length(value, how)}`,
  roofOverGutters: (value, how) => `roof over gutters ${length(value, how)}`,
  degrees: (value) => `${value.toFixed(0)}°`,
  scaleMark: (value, isLast) => `${value}${isLast ? ' m' : ''}`,
  notMeasured: 'dashed: not measured',
  proposed: 'to be built',
  tankTooHigh: (by) => `${by.toFixed(2)} m too high`,
  guttered: (share) => `${(share * 100).toFixed(0)} % guttered`,
  downpipes: (count) => `${count} downpipes`,
  fall: (value) => `falls ${value ?? '?'} mm/m`,
  fallOver: (drop, run) => `${mm(drop)} mm over ${run.toFixed(2)} m`,
  gutterSize: (width, depth) => `${mm(width)} × ${mm(depth)} mm`,
  outlets: (count, bore) => `${count} outlets ø ${mm(bore)} mm`,
  partSaid: (part, figure) => `${part} ${figure}`,
  bore: (value) => `ø ${mm(value)} mm`,
  larger: (times) => `${times} times as large`,
  chamber: (volume) => `${volume.toFixed(0)} L`,
  holeBlocked: 'hole blocked',
  inletTooHigh: (by) => `${by.toFixed(2)} m over the gutter`,
  inlet: (value) => `inlet ${value.toFixed(2)} m`,
  drawOff: (value) => `draw-off ${value.toFixed(2)} m`,
  overflowAt: (value) => `overflow ${value.toFixed(2)} m`,
  overflow: (count, bore) => `${count} overflow ø ${mm(bore)} mm`,
  overflowWay: 'way of the overflow not known',
  sludge: (value) => `sludge ${value.toFixed(2)} m`,
  cells: (count) => `${count} cells`,
  headLeft: (value) => `${value.toFixed(1)} m left`,
  pumpAdds: (value) => `the pump adds ${value.toFixed(1)} m`,
  ground: () => 'ground not known',
  pads: (count) => `${count} pads`,
  base: (value) => `base ${value.toFixed(2)} m`,
};

const verdicts = {
  roof: 'holds',
  gutter: 'tight',
  settling: 'notJudged',
  stand: 'unknown',
  storage: 'short',
  treatmentUnit: 'holds',
  tap: 'holds',
  cup: 'holds',
} as const;

export const section = sectionForPaper({
  building: buildingOf(site),
  levels: [{ tankIds: ['T1'], content_L: 5000 }],
  stations: verdicts,
  letters: Object.fromEntries(stations.map((one) => [one, { word: `${one} ${verdicts[one]}`, figure: null }])) as never,
  words: sectionWords,
});

export const item = (nth: number): PackItem => ({
  partId: `part-${nth}`,
  what: `pipe number ${nth}`,
  size: '110 mm, 6.0 m',
  count: nth + 1,
  weight_kg: 11.5,
  hands_count: 2,
});

export const load = (loadId: string, items: number, cautions: readonly string[] = []): PackLoad => ({
  loadId,
  carrier: 'boat Tern',
  weight_kg: 450,
  limit_kg: 600,
  longest_m: 6,
  items: Array.from({ length: items }, (_, nth) => item(nth)),
  cautions,
});

const square: readonly Shape[] = [
  { kind: 'path', d: 'M5 5H95V95H5Z', pen: { weight: 'cut', ink: 'ink', dash: 'none' }, ground: 'none' },
];

export const content: SitePackContent = {
  programme: 'Lumevara Rivers',
  siteId: 'P1',
  name: 'Pellanta, school hall',
  people: 90,
  caretaker: 'M. Delvu',
  trip: { tripId: '47', crew: '1', from: '2026-06-11', to: '2026-06-15' },
  finding: 'Short of tank, not of roof. Enough water in 17 of 32 years; of the next ten, likely 2 to 8.',
  way: [
    { mode: 'road', from: 'Halune store', to: 'Tavilo Foot', length_km: 31, time_h: 7 / 6, range_h: null, note: null },
    {
      mode: 'river',
      from: 'Tavilo Foot',
      to: 'landing',
      length_km: 38,
      time_h: 5.5,
      range_h: { low: 4, high: 8 },
      note: 'three rapids',
    },
    { mode: 'foot', from: 'landing', to: 'Pellanta', length_km: 0.6, time_h: 1 / 3, range_h: null, note: null },
  ],
  section: { ...section, measuredOn: '2026-05-14', measuredBy: 'R. Savunta' },
  stations: stations.map((station) => ({
    station,
    verdict: verdicts[station],
    figure: station === 'storage' ? 'dry 21.7 d a year, target at most 18' : null,
    reason: station === 'storage' ? 'In 15 of 32 years the tank ran dry for longer than the target allows.' : null,
    toDo: station === 'storage' ? 'build the second tank' : null,
  })),
  detail: null,
  beforeAnything: ['See the caretaker; count the people.', 'Test the ground where the stand will be.'],
  cautions: ['A full tank weighs 12 t. Do not fill it before a licensed person has passed the ground and the stand.'],
  loads: [load('load 1', 6), load('load 2', 4, ['Chlorine and fuel never travel together. Keep both upright.'])],
  steps: [
    { said: 'Set the tank level, its lid tight.', cautions: ['Lifting: two people from 23 kg up.'] },
    { said: 'Fit the gutters.', cautions: ['Ladder: one out for every four up, held.'] },
    { said: 'Hand over.', cautions: [] },
  ],
  tests: {
    flow_L_per_h: 410,
    taps_count: 3,
    air_kPa: 100,
    airMost_kPa: 150,
    airFall_kPa_per_min: 1.2,
    units: ['U1'],
    samplePlaces: ['tank T1', 'tap 1'],
    residual_mg_per_L: { least: 0.5, most: 1 },
    hasChlorine: true,
  },
  pictures: Array.from({ length: 12 }, (_, nth) => ({
    picture: { width: 100, height: 100, shapes: square },
    title: `picture ${nth + 1}`,
  })),
};

export const options = { printedOn: '2026-06-09', printedAt: '17:20' } as const;
