import type {
  DownpipeFacts,
  GutterFacts,
  RoofFacts,
  SiteFacts,
  Station,
  StationVerdict,
  TankFacts,
} from '@eavewell/engine';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { LetterShape, PathShape, Picture, Shape } from '../sheet/shapes.ts';
import { svgText } from '../sheet/svgText.ts';
import {
  buildingOf,
  levelShapes,
  paperScale,
  planOf,
  type SectionInput,
  type SectionWords,
  sectionOf,
} from './index.ts';
import { boxOfLetter, overlap } from './placer.ts';

const roof: RoofFacts = {
  roofId: 'R1',
  length_m: 12,
  width_m: 9.4,
  roofPlanArea_m2: null,
  material: 'corrugatedMetal',
  runoffFraction: null,
  gutteredFraction: 1,
  form: 'gable',
  pitch_deg: 20,
  eaveHeight_m: 3.75,
  tankId: null,
  diverter: { firstFlush_mm: null, chamber_L: 40, chamberBore_mm: 160, drainHole_mm: 3, drainHole: 'open' },
};

const tank: TankFacts = {
  tankId: 'T1',
  nominal_L: 12_000,
  partVolume_L: null,
  outletHeight_m: 0.08,
  overflowHeight_m: 2.25,
  diameter_m: 2.55,
  height_m: 2.35,
  standHeight_m: 0.45,
  joinedTo: null,
  role: 'storage',
  peopleFraction: null,
};

const gutter: GutterFacts = {
  gutterId: 'G1',
  roofId: 'R1',
  shape: 'halfRound',
  width_mm: 150,
  depth_mm: 75,
  length_m: 12,
  fall_mm_per_m: 5,
  outlet_mm: 90,
};

const downpipe: DownpipeFacts = { downpipeId: 'D1', roofId: 'R1', bore_mm: 90, length_m: 3 };

const site = (over: Partial<SiteFacts>): SiteFacts => ({
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
  gutters: [],
  downpipes: [],
  demand: [],
  ration: null,
  presence: null,
  secondSource: null,
  nearSecondSource: null,
  doubts: [],
  ...over,
});

/** Words that can be told from any other text. */
const words: SectionWords = {
  metres: (value, how) => `«${value.toFixed(2)} m${how === 'usual' ? ' not measured' : ''}»`,
  diameter: (value, how) => `«⌀ ${value.toFixed(2)} m${how === 'usual' ? ' not measured' : ''}»`,
  roofOverGutters: (value) => `«roof over gutters ${value.toFixed(2)} m»`,
  degrees: (value) => `«${Math.round(value)}°»`,
  scaleMark: (value, isLast) => `«${value}${isLast ? ' m' : ''}»`,
  notMeasured: '«dashed: not measured»',
  proposed: '«blue: proposed»',
  tankTooHigh: (by) => `«the overflow is ${by.toFixed(2)} m over the gutter»`,
  guttered: (fraction) => `«${Math.round(fraction * 100)} % guttered»`,
  downpipes: (count) => `«${count} downpipes»`,
};

const verdicts: Record<Station, StationVerdict> = {
  roof: 'holds',
  gutter: 'tight',
  storage: 'short',
  treatmentUnit: 'notJudged',
  tap: 'unknown',
};

const letters: SectionInput['letters'] = {
  roof: { word: '«roof holds»', figure: null },
  gutter: { word: '«gutter tight»', figure: '«1.56 L/s»' },
  storage: { word: '«tank short»', figure: '«dry 22 days a year»' },
  treatmentUnit: { word: '«unit not judged»', figure: null },
  tap: { word: '«tap unknown»', figure: '«not measured»' },
};

const inputOf = (facts: SiteFacts, width: number, more: Partial<SectionInput> = {}): SectionInput => {
  const building = buildingOf(facts);
  const levels = building.bodies.map(({ tankIds }) => ({ tankIds, content_L: 5000 }));
  return { building, levels, stations: verdicts, letters, words, width, ...more };
};

const flat = (shapes: readonly Shape[]): readonly Exclude<Shape, { kind: 'group' }>[] =>
  shapes.flatMap((shape) => (shape.kind === 'group' ? flat(shape.shapes) : [shape]));
const lettersOf = (picture: Picture) => flat(picture.shapes).filter((one): one is LetterShape => one.kind === 'letter');
const pathsOf = (shapes: readonly Shape[]) => flat(shapes).filter((one): one is PathShape => one.kind === 'path');

function partOf(shapes: readonly Shape[], part: string): readonly Shape[] {
  return shapes.flatMap((shape) => {
    if (shape.kind !== 'group') return [];
    return shape.part === part ? shape.shapes : partOf(shape.shapes, part);
  });
}

const numbersOf = (d: string) => [...d.matchAll(/-?\d+(?:\.\d+)?(?:e-?\d+)?/g)].map(Number);

/** Corners of a path of straight lines. */
const pointsOf = (d: string) => {
  const all = numbersOf(d);
  return Array.from({ length: all.length / 2 }, (_, nth) => [all[2 * nth]!, all[2 * nth + 1]!] as const);
};

const span = (values: readonly number[]) => Math.max(...values) - Math.min(...values);

/** Everything wrong with the letters of a picture: outside it, over one another, or not of the words given. */
function letterFaults(picture: Picture): readonly string[] {
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

function isWhole(picture: Picture): boolean {
  const text = svgText(picture, 'section');
  return (
    !/NaN|Infinity|undefined|null/.test(text) &&
    picture.handles.every((one) => Number.isFinite(one.x + one.y + one.width + one.height + one.perPx))
  );
}

describe('lengths are true', () => {
  const section = sectionOf(inputOf(site({}), 1216));
  const k = section.pxPerM;

  test('of the tank: outside height, diameter, stand', () => {
    const wall = pathsOf(partOf(section.shapes, 'tank:T1')).find(
      ({ pen, ground }) => pen?.weight === 'cut' && ground === 'none',
    );
    const points = pointsOf(wall!.d);
    expect(span(points.map(([, y]) => y)) / k).toBeCloseTo(2.35, 3);
    expect(span(points.map(([x]) => x)) / k).toBeCloseTo(2.55, 3);
    const stand = pathsOf(partOf(section.shapes, 'stand:T1')).find(({ ground }) => ground === 'paper');
    expect(span(pointsOf(stand!.d).map(([, y]) => y)) / k).toBeCloseTo(0.45, 3);
  });

  test('of the roof: width eave to eave and rise of the pitch', () => {
    const sheet = pathsOf(partOf(section.shapes, 'roof:R1')).filter(
      ({ pen, ground }) => pen?.weight === 'cut' && ground === 'none',
    );
    const points = pointsOf(sheet[sheet.length - 1]!.d);
    // The sheet laps 30 mm into the gutter at either eave.
    const lap = 2 * 0.03 * Math.cos((20 * Math.PI) / 180);
    expect(span(points.map(([x]) => x)) / k).toBeCloseTo(9.4 + lap, 2);
    expect(span(points.map(([, y]) => y)) / (span(points.map(([x]) => x)) / 2)).toBeCloseTo(
      Math.tan((20 * Math.PI) / 180),
      2,
    );
  });

  test('of the first flush: its pipe holds what the chamber does', () => {
    const water = pathsOf(partOf(section.shapes, 'diverter:R1')).filter(({ ground }) => ground === 'water');
    const litres = water.map(({ d }) => {
      const points = pointsOf(d);
      const bore = span(points.map(([x]) => x)) / k;
      return (Math.PI / 4) * bore ** 2 * (span(points.map(([, y]) => y)) / k) * 1000;
    });
    expect(litres.reduce((sum, one) => sum + one, 0)).toBeCloseTo(40, 0);
  });

  test('of the water: its level is the litres over the outlet', () => {
    const area_m2 = (Math.PI / 4) * 2.55 ** 2;
    for (const content_L of [0, 1, 3000, 11_000]) {
      const [water] = levelShapes(section, [{ tankIds: ['T1'], content_L }]);
      const fill = pathsOf(water!.shapes).find(({ ground }) => ground === 'water');
      const high_m = span(pointsOf(fill!.d).map(([, y]) => y)) / k;
      expect(high_m).toBeCloseTo(0.08 + content_L / 1000 / area_m2, 3);
    }
  });

  test('on paper at the scale that is stated', () => {
    const building = buildingOf(site({}));
    const { oneTo, pxPerM } = paperScale(building, 690);
    expect(pxPerM).toBeCloseTo(96 / 0.0254 / oneTo, 9);
    expect(sectionOf(inputOf(site({}), 690, { pxPerM })).pxPerM).toBeCloseTo(pxPerM, 9);
  });
});

test('water asked for by level alone is that of the section', () => {
  const input = inputOf(site({ tanks: [tank, { ...tank, tankId: 'T2', joinedTo: 'T1', outletHeight_m: 0.3 }] }), 1216);
  const section = sectionOf(input);
  for (const one of levelShapes(section, input.levels)) expect(partOf(section.shapes, one.part!)).toEqual(one.shapes);
  expect(levelShapes(section, null).every(({ shapes }) => shapes.length === 0)).toBe(true);
});

describe('what was not measured', () => {
  test('is drawn dashed and lettered so', () => {
    const unknown = site({
      tanks: [
        { ...tank, nominal_L: null, diameter_m: null, height_m: null, overflowHeight_m: null, standHeight_m: null },
      ],
      roofs: [{ ...roof, length_m: null, width_m: null, pitch_deg: null, form: null, eaveHeight_m: null }],
    });
    const section = sectionOf(inputOf(unknown, 1216));
    const texts = lettersOf(section).map(({ text }) => text);
    expect(texts).toContain('«dashed: not measured»');
    expect(texts.filter((text) => text.endsWith(' m not measured»')).length).toBeGreaterThan(2);
    const wall = pathsOf(partOf(section.shapes, 'tank:T1')).find(
      ({ pen, ground }) => pen?.weight === 'cut' && ground === 'none',
    );
    expect(wall?.pen?.dash).toBe('unknown');
    const known = sectionOf(inputOf(site({ gutters: [gutter], downpipes: [downpipe] }), 1216));
    expect(lettersOf(known).filter(({ text }) => text.includes('not measured'))).toHaveLength(1);
  });

  test('a site of which nothing is known is drawn', () => {
    const section = sectionOf(inputOf(site({ roofs: [], tanks: [] }), 1216));
    expect(section.waters).toHaveLength(1);
    expect(section.handles).toEqual([]);
    expect(isWhole(section)).toBe(true);
  });

  test('a roof known by its area keeps its area', () => {
    const [body] = buildingOf(
      site({ roofs: [{ ...roof, length_m: null, width_m: null, roofPlanArea_m2: 84 }] }),
    ).bodies;
    const { length_m, width_m } = body!.roofs[0]!;
    expect(length_m.value * width_m.value).toBeCloseTo(84, 9);
    expect([length_m.how, width_m.how]).toEqual(['madeFrom', 'madeFrom']);
  });

  test('a tank known by its volume holds it', () => {
    const bare = { ...tank, diameter_m: null, height_m: null, overflowHeight_m: null, outletHeight_m: null };
    const made = buildingOf(site({ tanks: [bare] })).bodies[0]!.tanks[0]!;
    const between_m = made.overflowHeight_m.value - made.outletHeight_m.value;
    expect((Math.PI / 4) * made.diameter_m.value ** 2 * between_m * 1000).toBeCloseTo(12_000, 6);
    expect(made.diameter_m.how).toBe('madeFrom');
  });
});

test('a tank whose overflow stands over the gutter is said to be too high, and no other', () => {
  const said = (facts: SiteFacts) =>
    lettersOf(sectionOf(inputOf(facts, 1216))).filter(({ text }) => text.includes('over the gutter»'));
  const high = site({
    roofs: [{ ...roof, eaveHeight_m: 2.4 }],
    tanks: [{ ...tank, height_m: 3.2, overflowHeight_m: 3, standHeight_m: 0.6 }],
  });
  expect(said(high).map(({ text }) => text)).toEqual(['«the overflow is 1.20 m over the gutter»']);
  expect(said(site({}))).toEqual([]);
});

test('what is proposed is drawn dashed blue beside what stands', () => {
  const second: TankFacts = { ...tank, tankId: 'new', joinedTo: 'T1' };
  const now = site({});
  const input = inputOf(now, 1216, { proposed: buildingOf({ ...now, tanks: [tank, second] }) });
  const section = sectionOf(input);
  const drawn = pathsOf(partOf(section.shapes, 'proposed:tank:new'));
  expect(drawn.length).toBeGreaterThan(0);
  expect(drawn.every(({ pen }) => pen?.dash === 'proposed' && pen.ink === 'water')).toBe(true);
  expect(partOf(section.shapes, 'tank:new')).toEqual([]);
  expect(lettersOf(section).map(({ text }) => text)).toContain('«blue: proposed»');
  const same = sectionOf({ ...input, proposed: buildingOf(now) });
  expect(same.shapes).toEqual(sectionOf(inputOf(now, 1216)).shapes);
});

test('what is taken hold of says what a px is worth', () => {
  const section = sectionOf(inputOf(site({}), 1216));
  const byName = new Map(section.handles.map((one) => [one.name, one]));
  expect(byName.get('tank:T1:height')).toMatchObject({ along: 'y', perPx: 1 / section.pxPerM });
  expect(byName.get('tank:T1:diameter')).toMatchObject({ along: 'x', perPx: 1 / section.pxPerM });
  expect(byName.get('roof:R1:gutter')?.along).toBe('x');
});

const half = (of: fc.Arbitrary<number>) => fc.option(of, { nil: null });
const metres = (least: number, most: number) => half(fc.double({ min: least, max: most, noNaN: true }));

const anyRoof = (roofId: string): fc.Arbitrary<RoofFacts> =>
  fc.record({
    roofId: fc.constant(roofId),
    length_m: metres(0.5, 90),
    width_m: metres(0.5, 60),
    roofPlanArea_m2: metres(1, 3000),
    material: fc.constant(null),
    runoffFraction: fc.constant(null),
    gutteredFraction: metres(0, 1),
    form: fc.option(fc.constantFrom('gable', 'oneSlope', 'hip', 'flat'), { nil: null }),
    pitch_deg: metres(0, 75),
    eaveHeight_m: metres(0.5, 30),
    tankId: fc.option(fc.constantFrom('T1', 'T2', 'T3', 'elsewhere'), { nil: null }),
    diverter: fc.option(
      fc.record({
        firstFlush_mm: metres(0, 10),
        chamber_L: metres(0, 2000),
        chamberBore_mm: metres(20, 1000),
        drainHole_mm: fc.constant(null),
        drainHole: fc.constantFrom('open', 'blocked'),
      }),
      { nil: null },
    ),
  });

const anyTank = (tankId: string): fc.Arbitrary<TankFacts> =>
  fc.record({
    tankId: fc.constant(tankId),
    nominal_L: metres(1, 500_000),
    partVolume_L: metres(1, 500_000),
    outletHeight_m: metres(0, 3),
    overflowHeight_m: metres(0, 20),
    diameter_m: metres(0.2, 20),
    height_m: metres(0.2, 20),
    standHeight_m: metres(0, 10),
    joinedTo: fc.option(fc.constantFrom('T1', 'T2', 'T3'), { nil: null }),
    role: fc.constantFrom('storage', 'settling'),
    peopleFraction: fc.constant(null),
  });

const anySite: fc.Arbitrary<SiteFacts> = fc
  .record({
    roofs: fc
      .integer({ min: 0, max: 4 })
      .chain((count) => fc.tuple(...Array.from({ length: count }, (_, nth) => anyRoof(`R${nth + 1}`)))),
    tanks: fc
      .integer({ min: 0, max: 5 })
      .chain((count) => fc.tuple(...Array.from({ length: count }, (_, nth) => anyTank(`T${nth + 1}`)))),
  })
  .map((some) => site(some));

const anyWidth = fc.constantFrom(280, 328, 640, 690, 1216, 1600);

test('on any building: no letter outside or on another, nothing that is not a number', { timeout: 60_000 }, () => {
  fc.assert(
    fc.property(
      anySite,
      anyWidth,
      fc.constantFrom<SectionInput['detail']>('whole', 'whole', 'roof', 'gutter', 'storage', 'treatmentUnit', 'tap'),
      (facts, width, detail) => {
        const section = sectionOf(inputOf(facts, width, { detail: detail ?? 'whole' }));
        expect(letterFaults(section)).toEqual([]);
        expect(isWhole(section)).toBe(true);
        const plan = planOf({ building: buildingOf(facts), words, width });
        expect(letterFaults(plan)).toEqual([]);
        expect(isWhole(plan)).toBe(true);
      },
    ),
    { numRuns: 150, seed: 20_260_601 },
  );
});

test('on any building: lines of the whole stay inside the picture, and both tanks and roofs are there', {
  timeout: 60_000,
}, () => {
  fc.assert(
    fc.property(anySite, anyWidth, (facts, width) => {
      const section = sectionOf(inputOf(facts, width));
      for (const { part, shapes } of section.shapes.filter((one) => one.kind === 'group')) {
        if (part === null) continue;
        for (const { d } of pathsOf(shapes)) {
          if (/[AQC]/.test(d)) continue;
          for (const [x, y] of pointsOf(d)) {
            expect(x).toBeGreaterThanOrEqual(-1);
            expect(x).toBeLessThanOrEqual(width + 1);
            expect(y).toBeGreaterThanOrEqual(-1);
            expect(y).toBeLessThanOrEqual(section.height + 1);
          }
        }
      }
      const parts = new Set(section.shapes.flatMap((one) => (one.kind === 'group' ? [one.part] : [])));
      for (const { roofId } of facts.roofs) expect(parts).toContain(`roof:${roofId}`);
      for (const { tankId } of facts.tanks) expect(parts).toContain(`tank:${tankId}`);
    }),
    { numRuns: 150, seed: 7 },
  );
});

test('on any building: the litres drawn are the litres there are', () => {
  fc.assert(
    fc.property(anySite, fc.double({ min: 0, max: 1, noNaN: true }), (facts, share) => {
      const section = sectionOf(inputOf(facts, 1216));
      for (const places of section.waters) {
        const tanks = places.map(({ tank: one }) => one);
        const room_L = tanks.reduce((sum, { usable_L }) => sum + usable_L.value, 0);
        const levels = [{ tankIds: tanks.map(({ tankId }) => tankId), content_L: share * room_L }];
        const groups = levelShapes({ waters: [places], pxPerM: section.pxPerM }, levels);
        const drawn_L = groups.reduce((sum, group, index) => {
          const { outletHeight_m, overflowHeight_m, usable_L } = tanks[index]!;
          const fill = pathsOf(group.shapes).find(({ ground }) => ground === 'water')!;
          const high_m = span(pointsOf(fill.d).map(([, y]) => y)) / section.pxPerM;
          const between_m = overflowHeight_m.value - outletHeight_m.value;
          return sum + (usable_L.value * (high_m - outletHeight_m.value)) / between_m;
        }, 0);
        // Paths are written to hundredths of a px.
        const finest_m = 0.02 / section.pxPerM;
        const doubt_L = tanks.reduce(
          (sum, { usable_L, overflowHeight_m, outletHeight_m }) =>
            sum + (usable_L.value * finest_m) / (overflowHeight_m.value - outletHeight_m.value),
          1e-6 * room_L,
        );
        expect(Math.abs(drawn_L - share * room_L)).toBeLessThanOrEqual(doubt_L);
      }
    }),
    { numRuns: 100, seed: 11 },
  );
});
