import { type SiteFacts, type TankFacts, usableVolume } from '@eavewell/engine';
import { describe, expect, test } from 'vitest';
import { buildingOf, levelShapes, paperScale, sectionOf } from './index.ts';
import {
  downpipe,
  gutter,
  inputOf,
  isWhole,
  lettersOf,
  partOf,
  pathsOf,
  pointsOf,
  roof,
  site,
  span,
  tank,
} from './madeUpBuilding.testing.ts';

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

describe('the water of what is proposed stands in it', () => {
  const joined = { ...tank, tankId: 'T2', joinedTo: 'T1' };
  const heights = (now: SiteFacts, then: SiteFacts, content_L: number) => {
    const section = sectionOf(inputOf(now, 1216, { levels: null, proposed: buildingOf(then) }));
    const ids = then.tanks.map(({ tankId }) => tankId);
    return new Map(
      levelShapes(section, [{ tankIds: ids, content_L }]).map(({ part, shapes }) => {
        // A place for it stands in the section, so that a level can be drawn anew.
        expect(JSON.stringify(section.shapes).split(`"part":"${part}"`)).toHaveLength(2);
        const points = pathsOf(shapes)
          .filter(({ ground }) => ground === 'water')
          .flatMap(({ d }) => pointsOf(d));
        const wide_m = span(points.map(([x]) => x)) / section.pxPerM;
        return [part, { wide_m, high_m: span(points.map(([, y]) => y)) / section.pxPerM }];
      }),
    );
  };

  test('a wider tank: its litres over its own floor', () => {
    const wide = { ...tank, diameter_m: 4, nominal_L: null };
    const { wide_m, high_m } = heights(site({}), site({ tanks: [wide] }), 12_000).get('water:T1')!;
    expect(wide_m).toBeCloseTo(4, 2);
    expect(high_m).toBeCloseTo(0.08 + 12 / ((Math.PI / 4) * 4 ** 2), 2);
  });

  test('a second tank: half in each', () => {
    const found = heights(site({}), site({ tanks: [tank, joined] }), 8000);
    for (const id of ['T1', 'T2'])
      expect(found.get(`water:${id}`)!.high_m).toBeCloseTo(0.08 + 4 / ((Math.PI / 4) * 2.55 ** 2), 2);
  });

  test('one in the place of two: all in it, none in the one that goes', () => {
    const wide = { ...tank, diameter_m: 4, nominal_L: null };
    const found = heights(site({ tanks: [tank, joined] }), site({ tanks: [wide] }), 12_000);
    expect([...found.keys()]).toEqual(['water:T1']);
    expect(found.get('water:T1')!.high_m).toBeCloseTo(0.08 + 12 / ((Math.PI / 4) * 4 ** 2), 2);
  });
});

test('a settling tank whose draw-off is not known holds none of the litres, as none of it are counted', () => {
  const settling = { ...tank, tankId: 'T0', joinedTo: 'T1', role: 'settling', overflowHeight_m: null } as const;
  const facts = site({ tanks: [tank, settling] });
  const counted_L = usableVolume('S1', facts.tanks).tankVolume_L!;
  expect(counted_L).toBeCloseTo(usableVolume('S1', [tank]).tankVolume_L!, 6);
  const section = sectionOf(inputOf(facts, 1216));
  const levels = [{ tankIds: ['T1', 'T0'], content_L: counted_L / 2 }];
  const water = levelShapes(section, levels).find(({ part }) => part === 'water:T1')!;
  const fill = pathsOf(water.shapes).find(({ ground }) => ground === 'water');
  const high_m = span(pointsOf(fill!.d).map(([, y]) => y)) / section.pxPerM;
  const outlet_m = tank.outletHeight_m!;
  expect(high_m).toBeCloseTo(outlet_m + (tank.overflowHeight_m! - outlet_m) / 2, 2);
});

test('the water of a cut-out stands as high as that of the whole', () => {
  const tanks = ['T1', 'T2', 'T3', 'T4'].map((tankId) => ({
    ...tank,
    tankId,
    joinedTo: tankId === 'T1' ? null : 'T1',
  }));
  const over_m = (width: number, detail: 'whole' | 'storage') => {
    const section = sectionOf(inputOf(site({ tanks }), width, { detail }));
    const fill = pathsOf(partOf(section.shapes, 'water:T1')).find(({ ground }) => ground === 'water');
    return span(pointsOf(fill!.d).map(([, y]) => y)) / section.pxPerM;
  };
  expect(over_m(328, 'storage')).toBeCloseTo(over_m(1216, 'whole'), 2);
  expect(over_m(1216, 'whole')).toBeCloseTo(0.08 + 5 / 4 / ((Math.PI / 4) * 2.55 ** 2), 2);
});

test('a cut-out is 40 px to the metre or more', () => {
  for (const detail of ['roof', 'gutter', 'storage', 'treatmentUnit', 'tap'] as const) {
    const section = sectionOf(inputOf(site({}), 328, { detail }));
    expect(section.pxPerM).toBeGreaterThanOrEqual(40);
    expect(section.isCutOut).toBe(true);
  }
});

test('tanks that are alike are lettered once', () => {
  const letters = (tanks: readonly TankFacts[]) =>
    lettersOf(sectionOf(inputOf(site({ tanks }), 1216))).map(({ text }) => text);
  const second = { ...tank, tankId: 'T2', joinedTo: 'T1' };
  expect(letters([tank, second]).filter((text) => text === '«⌀ 2.55 m»')).toHaveLength(1);
  expect(letters([tank, { ...second, diameter_m: 2.1 }])).toEqual(expect.arrayContaining(['«⌀ 2.55 m»', '«⌀ 2.10 m»']));
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
    // Only the figure of the unknown tap, and what dashes mean: nobody measures how the taps stand.
    const known = sectionOf(inputOf(site({ gutters: [gutter], downpipes: [downpipe] }), 1216));
    expect(lettersOf(known).filter(({ text }) => text.includes('not measured'))).toHaveLength(2);
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
