import {
  type DownpipeFacts,
  type GutterFacts,
  groundClasses,
  gutterShapes,
  type PipeFacts,
  pipeMaterials,
  type RoofFacts,
  type SiteFacts,
  type TankFacts,
  unmeasuredRoof,
  unmeasuredTank,
} from '@eavewell/engine';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { BuiltTank } from './building.ts';
import { buildingOf, levelShapes, planOf, type SectionInput, sectionOf } from './index.ts';
import { inputOf, isWhole, letterFaults, pathsOf, pointsOf, site, span, words } from './madeUpBuilding.testing.ts';

const half = (of: fc.Arbitrary<number>) => fc.option(of, { nil: null });
const metres = (least: number, most: number) => half(fc.double({ min: least, max: most, noNaN: true }));

/** Every field as it is. */
const constants = <T extends object>(of: T) =>
  Object.fromEntries(Object.entries(of).map(([key, value]) => [key, fc.constant(value)])) as {
    readonly [K in keyof T]: fc.Arbitrary<T[K]>;
  };

const anyRoof = (roofId: string): fc.Arbitrary<RoofFacts> =>
  fc.record({
    ...constants(unmeasuredRoof),
    roofId: fc.constant(roofId),
    length_m: metres(0.5, 90),
    width_m: metres(0.5, 60),
    roofPlanArea_m2: metres(1, 3000),
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
    ...constants(unmeasuredTank),
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
    inletHeight_m: metres(0, 22),
    overflowBore_mm: metres(0, 900),
    overflows_count: half(fc.integer({ min: 0, max: 40 })),
    overflowScreen: fc.constantFrom('open', 'screened'),
    cells_count: half(fc.integer({ min: 0, max: 40 })),
    groundClass: fc.option(fc.constantFrom(...groundClasses), { nil: null }),
    pads_count: half(fc.integer({ min: 0, max: 60 })),
    padSide_m: metres(0, 6),
    baseWidth_m: metres(0, 25),
  });

const anyGutter = (gutterId: string, roofId: string): fc.Arbitrary<GutterFacts> =>
  fc.record({
    gutterId: fc.constant(gutterId),
    roofId: fc.constant(roofId),
    shape: fc.option(fc.constantFrom(...gutterShapes), { nil: null }),
    width_mm: metres(0, 1200),
    depth_mm: metres(0, 600),
    length_m: metres(0, 90),
    fall_mm_per_m: fc.option(fc.oneof(fc.constant(0), fc.double({ min: -40, max: 40, noNaN: true })), { nil: null }),
    outlet_mm: metres(0, 1500),
    baseWidth_mm: metres(0, 1500),
    outlets_count: half(fc.integer({ min: 0, max: 30 })),
    runToOutlet_m: metres(0, 120),
    bends_count: half(fc.integer({ min: 0, max: 9 })),
    outletGrate: fc.constantFrom('open', 'grated'),
  });

const anyDownpipe = (downpipeId: string, roofId: string): fc.Arbitrary<DownpipeFacts> =>
  fc.record({
    ...constants({ downpipeId, roofId, length_m: null }),
    bore_mm: metres(0, 900),
  });

const anyPipe = (pipeId: string): fc.Arbitrary<PipeFacts> =>
  fc.record({
    ...constants({ pipeId, elbows_count: 1, tees_count: 0, valves_count: 1, meters_count: 0, otherLoss_k: null }),
    tankId: fc.option(fc.constantFrom('T1', 'elsewhere'), { nil: null }),
    leg: fc.constantFrom('tankToUnit', 'unitToTap'),
    bore_mm: metres(0, 900),
    length_m: metres(0, 400),
    material: fc.option(fc.constantFrom(...pipeMaterials), { nil: null }),
  });

const anySite: fc.Arbitrary<SiteFacts> = fc
  .record({
    roofs: fc
      .integer({ min: 0, max: 4 })
      .chain((count) => fc.tuple(...Array.from({ length: count }, (_, nth) => anyRoof(`R${nth + 1}`)))),
    tanks: fc
      .integer({ min: 0, max: 5 })
      .chain((count) => fc.tuple(...Array.from({ length: count }, (_, nth) => anyTank(`T${nth + 1}`)))),
    gutters: fc.oneof(fc.constant([]), fc.tuple(anyGutter('G1', 'R1'), anyGutter('G2', 'R1'), anyGutter('G3', 'R2'))),
    downpipes: fc.oneof(fc.constant([]), fc.tuple(anyDownpipe('D1', 'R1'), anyDownpipe('D2', 'R2'))),
    pipes: fc.oneof(fc.constant([]), fc.tuple(anyPipe('P1'), anyPipe('P2'), anyPipe('P3'))),
    taps_count: half(fc.integer({ min: 0, max: 40 })),
    tapHeight_m: metres(0, 40),
    unitHeight_m: metres(0, 40),
    hasHandPump: fc.option(fc.boolean(), { nil: null }),
  })
  .map((some) => site(some));

/** What is told of it: flows, sludge, pressure, gates, and which station is pressed. */
const anyTold: fc.Arbitrary<Partial<SectionInput>> = fc.record({
  pressed: fc.constantFrom('gutter', 'storage', null),
  partLetters: fc.array(
    fc.record({
      part: fc.constantFrom('gutter', 'outlet', 'downpipe', 'overflow', 'pipe'),
      id: fc.constantFrom('G1', 'G2', 'D1', 'T1', 'T2', 'P1', 'elsewhere'),
      text: fc.constantFrom('«1.56 of 1.20 L/s»', '«overflow, both of them together: 12.56 of 10.20 L/s»'),
      verdict: fc.constantFrom('holds', 'tight', 'short', 'unknown', 'notJudged'),
    }),
    { maxLength: 6 },
  ),
  sludge: fc.array(
    fc.record({ tankId: fc.constantFrom('T1', 'T2'), height_m: fc.double({ min: 0, max: 9, noNaN: true }) }),
    {
      maxLength: 2,
    },
  ),
  gates: fc.array(
    fc.record({
      tankId: fc.constantFrom('T1', 'T2', 'T3'),
      gate: fc.constantFrom('closed', 'open'),
      words: fc.constantFrom('«not signed: do not fill»', '«signed by somebody on some day of some year»'),
    }),
    { maxLength: 3 },
  ),
  headLines: fc.array(
    fc.record({
      tankIds: fc.constant(['T1', 'T2']),
      points: fc.array(
        fc.record({
          at: fc.constantFrom('tank', 'unit', 'tap'),
          elevation_m: fc.double({ min: -5, max: 40, noNaN: true }),
          head_m: fc.double({ min: -90, max: 90, noNaN: true }),
        }),
        { maxLength: 5 },
      ),
      pumpAdds_m: metres(0, 60),
    }),
    { maxLength: 2 },
  ),
});

const anyDetail = fc.constantFrom<NonNullable<SectionInput['detail']>>(
  ...(['whole', 'whole', 'whole', 'roof', 'gutter', 'settling', 'storage', 'stand', 'treatmentUnit', 'tap'] as const),
);

const anyWidth = fc.constantFrom(280, 328, 640, 690, 1216, 1600);

test('on any building: no letter outside or on another, nothing that is not a number', { timeout: 60_000 }, () => {
  fc.assert(
    fc.property(anySite, anyWidth, anyDetail, anyTold, (facts, width, detail, told) => {
      const section = sectionOf(inputOf(facts, width, { ...told, detail }));
      expect(letterFaults(section)).toEqual([]);
      expect(isWhole(section)).toBe(true);
      const plan = planOf({ building: buildingOf(facts), words, width });
      expect(letterFaults(plan)).toEqual([]);
      expect(isWhole(plan)).toBe(true);
    }),
    { numRuns: 150, seed: 20_260_601 },
  );
});

test('on any building: lines of the whole stay inside the picture, and both tanks and roofs are there', {
  timeout: 60_000,
}, () => {
  fc.assert(
    fc.property(anySite, anyWidth, anyTold, (facts, width, told) => {
      const section = sectionOf(inputOf(facts, width, told));
      for (const { part, shapes } of section.shapes.filter((one) => one.kind === 'group')) {
        if (part === null) continue;
        for (const { d } of pathsOf(shapes)) {
          if (/[AQC]/.test(d)) continue;
          const isIn = ([x, y]: readonly [number, number]) =>
            x >= -1 && x <= width + 1 && y >= -1 && y <= section.height + 1;
          // One word on all of them: some thousand points a picture.
          expect(pointsOf(d).filter((point) => !isIn(point))).toEqual([]);
        }
      }
      const parts = new Set(section.shapes.flatMap((one) => (one.kind === 'group' ? [one.part] : [])));
      for (const { roofId } of facts.roofs) expect(parts).toContain(`roof:${roofId}`);
      for (const { tankId } of facts.tanks) expect(parts).toContain(`tank:${tankId}`);
    }),
    { numRuns: 150, seed: 7 },
  );
});

/** Of a settling tank nothing is counted but what was measured over its draw-off: docs/methods/storage.md, usable volume. */
const countedIn_L = ({ role, usable_L }: BuiltTank) =>
  role === 'settling' && usable_L.how !== 'madeFrom' ? 0 : usable_L.value;

test('on any building: the litres drawn are the litres there are', () => {
  fc.assert(
    fc.property(anySite, fc.double({ min: 0, max: 1, noNaN: true }), (facts, share) => {
      const section = sectionOf(inputOf(facts, 1216));
      for (const places of section.waters) {
        const tanks = places.map(({ tank: one }) => one);
        const room_L = tanks.reduce((sum, one) => sum + countedIn_L(one), 0);
        // A body of water of which nothing is counted is not judged: there is no content to draw.
        if (room_L === 0) continue;
        const levels = [{ tankIds: tanks.map(({ tankId }) => tankId), content_L: share * room_L }];
        const groups = levelShapes({ waters: [places], pxPerM: section.pxPerM }, levels);
        const drawn_L = groups.reduce((sum, group, index) => {
          const { outletHeight_m, overflowHeight_m } = tanks[index]!;
          const fill = pathsOf(group.shapes).find(({ ground }) => ground === 'water')!;
          const high_m = span(pointsOf(fill.d).map(([, y]) => y)) / section.pxPerM;
          const between_m = overflowHeight_m.value - outletHeight_m.value;
          return sum + (countedIn_L(tanks[index]!) * (high_m - outletHeight_m.value)) / between_m;
        }, 0);
        // Paths are written to hundredths of a px.
        const finest_m = 0.02 / section.pxPerM;
        const doubt_L = tanks.reduce(
          (sum, one) => sum + (countedIn_L(one) * finest_m) / (one.overflowHeight_m.value - one.outletHeight_m.value),
          1e-6 * room_L,
        );
        expect(Math.abs(drawn_L - share * room_L)).toBeLessThanOrEqual(doubt_L);
      }
    }),
    { numRuns: 100, seed: 11 },
  );
});

test('on any building with anything proposed, at any scale asked for: the same', { timeout: 60_000 }, () => {
  fc.assert(
    fc.property(
      anySite,
      anySite,
      anyWidth,
      fc.option(fc.double({ min: 2, max: 200, noNaN: true }), { nil: null }),
      (facts, other, width, pxPerM) => {
        const proposedWords = ['«second tank»', '«12,000 L, $1,480»'];
        const input = inputOf(facts, width, { proposed: buildingOf(other), proposedWords, pxPerM });
        const section = sectionOf(input);
        expect(letterFaults(section)).toEqual([]);
        expect(isWhole(section)).toBe(true);
        if (pxPerM !== null) expect(section.pxPerM).toBeLessThanOrEqual(pxPerM);
        // The same facts always give the same picture.
        expect(sectionOf(input)).toEqual(section);
      },
    ),
    { numRuns: 80, seed: 5 },
  );
});
