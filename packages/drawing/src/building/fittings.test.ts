import type { PipeFacts, TankFacts } from '@eavewell/engine';
import { describe, expect, test } from 'vitest';
import type { GroupShape } from '../sheet/shapes.ts';
import { buildingOf, planOf, type SectionInput, sectionOf } from './index.ts';
import {
  downpipe,
  flat,
  gutter,
  inputOf,
  lettersOf,
  partOf,
  pathsOf,
  pointsOf,
  roof,
  site,
  span,
  tank,
  words,
} from './madeUpBuilding.testing.ts';

const wide = (facts = site({}), more: Partial<SectionInput> = {}) => sectionOf(inputOf(facts, 1216, more));
const texts = (picture: Parameters<typeof lettersOf>[0]) => lettersOf(picture).map(({ text }) => text);
const ys = (ds: readonly { readonly d: string }[]) => ds.flatMap(({ d }) => pointsOf(d).map(([, y]) => y));
const xs = (ds: readonly { readonly d: string }[]) => ds.flatMap(({ d }) => pointsOf(d).map(([x]) => x));
/** The line of the ground, from how high a tank of 0.45 m on it stands [px]. */
const groundOf = (section: ReturnType<typeof wide>, stand_m = 0.45) =>
  section.waters[0]![0]!.foot + stand_m * section.pxPerM;

describe('the gutter', () => {
  const facts = (more: Partial<typeof gutter>) => site({ gutters: [{ ...gutter, ...more }], downpipes: [downpipe] });
  const detail = (more: Partial<typeof gutter>) => sectionOf(inputOf(facts(more), 328, { detail: 'gutter' }));

  test('large has its width and depth at so many times the scale', () => {
    const picture = detail({ shape: 'rectangular', width_mm: 140, depth_mm: 80 });
    const times = Number(/(\d+) times/.exec(texts(picture).find((text) => text.includes('times as large'))!)![1]);
    const profile = pathsOf(partOf(picture.shapes, 'detail:R1')).find(({ pen }) => pen?.weight === 'cut')!;
    expect(span(xs([profile])) / (times * picture.pxPerM)).toBeCloseTo(0.14, 3);
    expect(span(ys([profile])) / (times * picture.pxPerM)).toBeCloseTo(0.08, 3);
  });

  test('has the hole its water leaves by, also one wider than itself', () => {
    const picture = detail({ width_mm: 100, outlet_mm: 160 });
    const times = Number(/(\d+) times/.exec(texts(picture).find((text) => text.includes('times as large'))!)![1]);
    const stump = pathsOf(partOf(picture.shapes, 'detail:R1')).find(({ pen }) => pen?.weight === 'edge')!;
    expect(span(xs([stump])) / (times * picture.pxPerM)).toBeCloseTo(0.16, 3);
  });

  test('falls along its run as much as it does, to the scale of its length', () => {
    for (const [fall, drop_m] of [
      [5, 0.06],
      [-3, 0.036],
      [0, 0],
    ] as const) {
      const picture = detail({ fall_mm_per_m: fall, length_m: 12, outlets_count: 1 });
      const run = pathsOf(partOf(picture.shapes, 'run:R1'));
      const level = run[0]!;
      const perM = span(xs([level])) / 12;
      const rim = pointsOf(run[1]!.d).slice(0, 2);
      // Paths are written to hundredths of a px.
      expect(Math.abs(rim[1]![1] - rim[0]![1]) / perM).toBeCloseTo(drop_m, 3);
      if (fall !== 0) expect(Math.sign(rim[1]![1] - rim[0]![1])).toBe(Math.sign(fall));
    }
  });

  test('that is level, or falls back, is said so in the whole', () => {
    const said = (fall: number) => lettersOf(wide(facts({ fall_mm_per_m: fall })));
    expect(said(0).find(({ text }) => text === '«level»')?.isStrong).toBe(true);
    expect(said(-3).find(({ text }) => text === '«falls -3 mm/m»')?.isStrong).toBe(true);
    expect(said(5).find(({ text }) => text === '«falls 5 mm/m»')?.isStrong).toBe(false);
  });

  test('in the plan has an arrow the way its water runs, none where it is level', () => {
    const arrow = (fall: number) => {
      const plan = planOf({ building: buildingOf(facts({ fall_mm_per_m: fall })), words, width: 1216 });
      const [path] = pathsOf(partOf(plan.shapes, 'fall:R1'));
      if (!path) return 0;
      const [from, to] = pointsOf(path.d);
      return Math.sign(to![1] - from![1]);
    };
    // Down the page is toward the downpipe at the near end.
    expect([arrow(5), arrow(-5), arrow(0)]).toEqual([1, -1, 0]);
  });
});

describe('heights are true', () => {
  test('of an inlet and an overflow of a measured bore', () => {
    const section = wide(site({ tanks: [{ ...tank, inletHeight_m: 1.9, overflowBore_mm: 120 }] }));
    const { foot } = section.waters[0]![0]!;
    const carrier = pathsOf(partOf(section.shapes, 'carrier:R1'));
    const low = Math.max(...ys(carrier));
    // The lower edge of the pipe is half of its bore under its axis.
    expect((foot - low) / section.pxPerM).toBeCloseTo(1.9 - 0.075 / 2, 2);
    const edges = pathsOf(partOf(section.shapes, 'tank:T1')).filter(({ ground }) => ground === 'paper');
    const overflow = edges.find(({ d }) => {
      const points = pointsOf(d);
      return points.length === 6 && Math.abs((points[0]![1] - points[5]![1]) / section.pxPerM) > 0.1;
    })!;
    const [first, last] = [pointsOf(overflow.d)[0]!, pointsOf(overflow.d)[5]!];
    expect(Math.abs(first[1] - last[1]) / section.pxPerM).toBeCloseTo(0.12, 2);
    expect((foot - (first[1] + last[1]) / 2) / section.pxPerM).toBeCloseTo(2.25, 2);
  });

  test('of taps and of the inlet of the treatment unit, each with its pipe at its bore', () => {
    const pipe: PipeFacts = {
      ...{ pipeId: 'P1', tankId: null, leg: 'tankToUnit', bore_mm: 110, length_m: 4, material: 'plastic' },
      ...{ elbows_count: 0, tees_count: 0, valves_count: 0, meters_count: 0, otherLoss_k: null },
    };
    for (const [tap_m, unit_m] of [
      [0.9, 0.4],
      [2.6, 1.2],
      [0.5, 0.2],
    ] as const) {
      const section = wide(site({ tapHeight_m: tap_m, unitHeight_m: unit_m, pipes: [pipe] }));
      const ground = groundOf(section);
      const taps = pathsOf(partOf(section.shapes, 'tap')).filter(({ pen }) => pen?.weight === 'edge');
      const spouts = taps.filter(({ pen }) => pen?.ink === 'ink');
      expect((ground - Math.max(...ys(spouts))) / section.pxPerM).toBeCloseTo(tap_m, 2);
      const feed = pathsOf(partOf(section.shapes, 'feed')).find(({ pen }) => pen === null)!;
      const ends = pointsOf(feed.d).filter(([x]) => x === Math.max(...xs([feed])));
      expect((ground - (ends[0]![1] + ends[1]![1]) / 2) / section.pxPerM).toBeCloseTo(unit_m, 2);
      expect(Math.abs(ends[0]![1] - ends[1]![1]) / section.pxPerM).toBeCloseTo(0.11, 2);
    }
  });

  test('of what settled, under the draw-off', () => {
    const settling: TankFacts = { ...tank, role: 'settling', outletHeight_m: 0.6, cells_count: 3 };
    const section = wide(site({ tanks: [settling] }), { sludge: [{ tankId: 'T1', height_m: 0.25 }] });
    const layer = pathsOf(partOf(section.shapes, 'tank:T1')).find(({ ground }) => ground === 'mark')!;
    expect(span(ys([layer])) / section.pxPerM).toBeCloseTo(0.25, 3);
    const walls = pathsOf(partOf(section.shapes, 'tank:T1')).filter(
      ({ pen }) => pen?.weight === 'cut' && pen.dash === 'unknown',
    );
    expect(walls).toHaveLength(2);
    expect(texts(section)).toEqual(expect.arrayContaining(['«0.60 m»']));
  });

  test('of the line of pressure: the head over each point', () => {
    const points = [
      { at: 'tank', elevation_m: 0.5, head_m: 1.2 },
      { at: 'unit', elevation_m: 0.3, head_m: 1.1 },
      { at: 'tap', elevation_m: 0.9, head_m: 0.4 },
    ] as const;
    const section = wide(site({}), { headLines: [{ tankIds: ['T1'], points }] });
    const [path] = pathsOf(partOf(section.shapes, 'headLine'));
    const heights = pointsOf(path!.d).map(([, y]) => (groundOf(section) - y) / section.pxPerM);
    [1.7, 1.4, 1.4, 1.3].forEach((height, nth) => {
      expect(heights[nth]).toBeCloseTo(height, 2);
    });
    expect(texts(section)).toContain('«0.4 m of head left»');
    const pumped = wide(site({}), { headLines: [{ tankIds: ['T1'], points, pumpAdds_m: 2 }] });
    expect(texts(pumped)).toContain('«the pump adds 2.0 m»');
  });
});

describe('the stand', () => {
  const onPads: TankFacts = { ...tank, standHeight_m: 1.2, pads_count: 4, padSide_m: 0.5, baseWidth_m: 2.9 };

  test('on pads: so far between their outer edges, each of its side', () => {
    const section = wide(site({ tanks: [onPads] }));
    const [pads] = pathsOf(partOf(section.shapes, 'stand:T1'));
    const boxes = pads!.d.split('Z').filter((one) => one !== '');
    expect(boxes).toHaveLength(2);
    expect(span(xs([pads!])) / section.pxPerM).toBeCloseTo(2.9, 2);
    expect(span(xs([{ d: boxes[0]! }])) / section.pxPerM).toBeCloseTo(0.5, 2);
    const plan = planOf({ building: buildingOf(site({ tanks: [onPads] })), words, width: 1216 });
    const [above] = pathsOf(partOf(plan.shapes, 'stand:T1'));
    expect(above!.d.split('Z').filter((one) => one !== '')).toHaveLength(4);
  });

  test('the ground under it is hatched by its kind and named, where somebody said what it is', () => {
    const hatch = (groundClass: TankFacts['groundClass']) => wide(site({ tanks: [{ ...onPads, groundClass }] }));
    expect(partOf(hatch(null).shapes, 'ground:T1')).toEqual([]);
    const [clay, sand] = (['softClay', 'denseSand'] as const).map((one) =>
      pathsOf(partOf(hatch(one).shapes, 'ground:T1')),
    );
    expect(clay![0]!.d).not.toBe(sand![0]!.d);
    const detail = sectionOf(
      inputOf(site({ tanks: [{ ...onPads, groundClass: 'softClay' }] }), 328, { detail: 'stand' }),
    );
    expect(texts(detail)).toEqual(expect.arrayContaining(['«ground: softClay»', '«4 pads, 0.50 m»', '«base 2.90 m»']));
  });

  test('not signed: a band across its tank, and no other', () => {
    const gates = [{ tankId: 'T1', gate: 'closed', words: '«not signed: do not fill»' }] as const;
    for (const detail of ['whole', 'storage', 'stand'] as const) {
      const picture = sectionOf(inputOf(site({ tanks: [onPads] }), detail === 'whole' ? 1216 : 328, { gates, detail }));
      expect(flat(partOf(picture.shapes, 'gate:T1')).filter(({ kind }) => kind === 'letter')).toHaveLength(1);
    }
    const open = wide(site({ tanks: [onPads] }), { gates: [{ ...gates[0], gate: 'open', words: '«signed»' }] });
    expect(partOf(open.shapes, 'gate:T1')).toEqual([]);
  });
});

describe('marks', () => {
  const markOf = (
    facts: Parameters<typeof inputOf>[0],
    station: string,
    stations: Partial<SectionInput['stations']>,
  ) => {
    const input = inputOf(facts, 1216);
    const section = sectionOf({ ...input, stations: { ...input.stations, ...stations } });
    return section.shapes.find(
      (one): one is GroupShape => one.kind === 'group' && one.station === station && one.part === null,
    );
  };

  test('of what settles stand where a tank is for it; of the stand where there is one, or where one is judged', () => {
    const settling = site({ tanks: [{ ...tank, role: 'settling' }] });
    expect(markOf(settling, 'settling', { settling: 'short' })!.shapes.length).toBeGreaterThan(0);
    expect(markOf(site({}), 'settling', {})).toBeUndefined();
    const flatTank = site({ tanks: [{ ...tank, standHeight_m: 0 }] });
    expect(markOf(flatTank, 'stand', {})).toBeUndefined();
    expect(markOf(flatTank, 'stand', { stand: 'unknown' })!.shapes.length).toBeGreaterThan(0);
  });
});

test('a blocked hole of a first flush is said, and a flow that is too much', () => {
  const blocked = site({
    roofs: [{ ...roof, diverter: { ...roof.diverter!, drainHole: 'blocked' } }],
    gutters: [gutter],
  });
  const flow = { part: 'gutter', id: 'G1', text: '«1.56 of 1.20 L/s»', verdict: 'short' } as const;
  const section = wide(blocked, { partLetters: [flow] });
  expect(texts(section)).toEqual(expect.arrayContaining(['«hole blocked»', '«gutter 1.56 of 1.20 L/s»']));
  expect(texts(wide(blocked, { partLetters: [{ ...flow, verdict: 'holds' }] }))).not.toContain(
    '«gutter 1.56 of 1.20 L/s»',
  );
});

test('the gutter has its detail circle in the whole while it is pressed, and not else', () => {
  const facts = site({ gutters: [gutter] });
  expect(partOf(wide(facts, { pressed: 'gutter' }).shapes, 'detail:R1').length).toBeGreaterThan(0);
  expect(partOf(wide(facts, { pressed: 'storage' }).shapes, 'detail:R1')).toEqual([]);
});
