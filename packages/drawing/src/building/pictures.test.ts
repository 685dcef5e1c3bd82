import type { PipeFacts, RoofFacts, SiteFacts, Station, TankFacts } from '@eavewell/engine';
import { noTreatment, unmeasuredUnit } from '@eavewell/engine';
import { expect, test } from 'vitest';
import { svgText } from '../sheet/svgText.ts';
import { buildingOf, paperScale, planOf, type SectionInput, sectionOf } from './index.ts';
import { downpipe, gutter, inputOf, roof, site, tank, words } from './madeUpBuilding.testing.ts';

/*
 * Odd houses as they are printed. Each picture was looked at when it was kept; a test that fails here says that one changed, not that it is
 * wrong: look at it, then keep it anew with `npx vitest run --project source packages/drawing -u`.
 */
const measured = { gutters: [gutter], downpipes: [downpipe] };
const other = (more: Partial<TankFacts>): TankFacts => ({ ...tank, tankId: 'T2', joinedTo: 'T1', ...more });
const shed: RoofFacts = {
  ...roof,
  roofId: 'R2',
  width_m: 5,
  length_m: 8,
  form: 'oneSlope',
  pitch_deg: 8,
  eaveHeight_m: 3.2,
};
const small: TankFacts = {
  ...tank,
  nominal_L: 2300,
  diameter_m: 1.4,
  height_m: 1.6,
  overflowHeight_m: 1.5,
  standHeight_m: 0.3,
};

const pipe = (pipeId: string, leg: PipeFacts['leg'], bore_mm: number): PipeFacts => ({
  ...{ pipeId, leg, bore_mm, tankId: null, length_m: 6, material: 'plastic' },
  ...{ elbows_count: 2, tees_count: 0, valves_count: 1, meters_count: 0, otherLoss_k: null },
});
const allJudged = inputOf(site({}), 690).stations;

const houses: Readonly<Record<string, SiteFacts>> = {
  'lean-to': site({ ...measured, roofs: [{ ...shed, roofId: 'R1' }], tanks: [small] }),
  'two-roofs-one-tank': site({ ...measured, roofs: [roof, shed] }),
  'two-tanks-apart': site({ ...measured, tanks: [tank, { ...small, tankId: 'T2' }] }),
  'two-tanks-joined-one-settling': site({
    ...measured,
    tanks: [{ ...small, role: 'settling', outletHeight_m: 0.6 }, other({})],
  }),
  'no-stand': site({ ...measured, tanks: [{ ...tank, standHeight_m: 0 }] }),
  'eave-of-6-m': site({ ...measured, roofs: [{ ...roof, eaveHeight_m: 6 }] }),
  'tank-too-high-for-the-eave': site({
    ...measured,
    roofs: [{ ...roof, eaveHeight_m: 2.4 }],
    tanks: [{ ...tank, standHeight_m: 0.7 }],
  }),
  'tiny-roof': site({
    roofs: [{ ...roof, width_m: 2.5, length_m: 3, eaveHeight_m: 2.6 }],
    tanks: [{ ...tank, nominal_L: 10_000, diameter_m: null, height_m: null, overflowHeight_m: null }],
  }),
  'flat-roof': site({ ...measured, roofs: [{ ...roof, form: 'flat', pitch_deg: null, width_m: 7, eaveHeight_m: 3 }] }),
  'nothing-known': site({ roofs: [], tanks: [] }),
};

const pipes: readonly PipeFacts[] = [pipe('P1', 'tankToUnit', 50), pipe('P2', 'unitToTap', 32)];
const hut: RoofFacts = { ...shed, roofId: 'R3', width_m: 3.2, length_m: 4, eaveHeight_m: 2.7 };
const onLegs: TankFacts = {
  ...tank,
  standHeight_m: 1.2,
  groundClass: 'softClay',
  pads_count: 4,
  padSide_m: 0.5,
  baseWidth_m: 2.4,
  overflowBore_mm: 90,
  inletHeight_m: 2.3,
};

/** What comes in with them: flows, sludge, pressure, gates. */
const full = {
  ...measured,
  pipes,
  taps_count: 4,
  tapHeight_m: 0.9,
  unitHeight_m: 0.4,
};
const told: Partial<SectionInput> = {
  partLetters: [
    { part: 'gutter', id: 'G1', text: '«1.56 of 1.20 L/s»', verdict: 'short' },
    { part: 'outlet', id: 'G1', text: '«1.56 of 2.05 L/s»', verdict: 'holds' },
    { part: 'downpipe', id: 'D1', text: '«1.56 of 1.60 L/s»', verdict: 'tight' },
    { part: 'overflow', id: 'T1', text: '«1.56 of 3.10 L/s»', verdict: 'holds' },
    { part: 'pipe', id: 'P2', text: '«0.30 L/s»', verdict: 'holds' },
  ],
};
const heads = (tank_m: number, left_m: number, tap_m: number): Partial<SectionInput> => ({
  headLines: [
    {
      tankIds: ['T1', 'T2'],
      points: [
        { at: 'tank', elevation_m: tank_m, head_m: 0 },
        { at: 'unit', elevation_m: 0.4, head_m: tank_m - 0.4 - 0.05 },
        { at: 'unit', elevation_m: 0.4, head_m: left_m + tap_m - 0.4 + 0.05 },
        { at: 'tap', elevation_m: tap_m, head_m: left_m },
      ],
      pumpAdds_m: left_m < 0 ? -left_m : null,
    },
  ],
});
const settling: TankFacts = {
  ...small,
  role: 'settling',
  outletHeight_m: 0.6,
  inletHeight_m: 1.45,
  cells_count: 2,
  overflowBore_mm: 75,
  overflowScreen: 'screened',
};

type Odd = readonly [SiteFacts, Partial<SectionInput>];
/** Houses whose gutters, pipes, stands and settling tanks are odd, with what is told of them. */
const odd: Record<string, Odd> = {
  'gutter-level': [
    site({ ...full, gutters: [{ ...gutter, fall_mm_per_m: 0 }] }),
    { ...told, ...heads(0.53, -0.4, 0.9) },
  ],
  'gutter-falls-back': [
    site({ ...full, gutters: [{ ...gutter, shape: 'rectangular', fall_mm_per_m: -3 }] }),
    { ...told, pressed: 'gutter' },
  ],
  'outlet-wider-than-gutter': [
    site({
      ...full,
      gutters: [
        {
          ...gutter,
          width_mm: 100,
          depth_mm: 60,
          shape: 'trapezoidal',
          outlet_mm: 150,
          outletGrate: 'grated',
          outlets_count: 2,
        },
      ],
    }),
    { ...told, pressed: 'gutter' },
  ],
  'tank-on-a-stand-not-signed': [
    site({ ...full, tanks: [onLegs] }),
    {
      ...heads(1.28, 0.2, 0.9),
      stations: { ...allJudged, stand: 'unknown' },
      gates: [{ tankId: 'T1', gate: 'closed', words: '«not signed: do not fill»' }],
    },
  ],
  'taps-over-the-tank': [site({ ...full, tapHeight_m: 3.4, unitHeight_m: 1.1 }), heads(0.53, -3.1, 3.4)],
  'settling-tank-of-two-cells': [
    site({ ...full, tanks: [settling, other({ groundClass: 'denseGravel' })] }),
    { sludge: [{ tankId: 'T1', height_m: 0.22 }], stations: { ...allJudged, settling: 'tight' } },
  ],
  'three-roofs': [
    site({
      ...full,
      roofs: [{ ...roof, diverter: roof.diverter && { ...roof.diverter, drainHole: 'blocked' } }, shed, hut],
      gutters: [gutter, { ...gutter, gutterId: 'G2', roofId: 'R2', fall_mm_per_m: 3 }],
    }),
    told,
  ],
};

/** A unit of two cartridges, and what is said beside it. */
const unit = (cartridges_count: number | null): SiteFacts['treatment'] => ({
  ...noTreatment,
  units: [
    {
      ...{ serial: 'U1', partId: 'X', installedOn: null, removedOn: null },
      figures: { ...unmeasuredUnit, cartridges_count },
    },
  ],
});
const treated: Partial<SectionInput> = {
  stations: { ...allJudged, treatmentUnit: 'tight', cup: 'short' },
  unitLetters: ['«310 L/h, worn 150»', '«48 kPa»', '«due Jan to Nov 2027»'],
};
odd['unit-of-two-cartridges'] = [site({ ...full, treatment: unit(2) }), treated];

for (const [name, [facts, more]] of Object.entries(odd)) {
  test(`the section of a house: ${name}`, async () => {
    const { pxPerM } = paperScale(buildingOf(facts), 690);
    await expect(svgText(sectionOf(inputOf(facts, 690, { pxPerM, ...more })), name)).toMatchFileSnapshot(
      `./pictures/${name}.svg`,
    );
  });
}

/** Cut-outs as a phone shows them. */
const cutOuts: readonly (readonly [string, Station])[] = [
  ['outlet-wider-than-gutter', 'gutter'],
  ['settling-tank-of-two-cells', 'settling'],
  ['tank-on-a-stand-not-signed', 'stand'],
  ['taps-over-the-tank', 'tap'],
  ['unit-of-two-cartridges', 'treatmentUnit'],
  ['unit-of-two-cartridges', 'cup'],
];
for (const [name, detail] of cutOuts)
  test(`the cut-out at the ${detail} of a house: ${name}`, async () => {
    const [facts, more] = odd[name]!;
    await expect(svgText(sectionOf(inputOf(facts, 328, { ...more, detail })), name)).toMatchFileSnapshot(
      `./pictures/${detail}-of-${name}.svg`,
    );
  });

for (const [name, facts] of Object.entries(houses))
  test(`the section of a house: ${name}`, async () => {
    const { pxPerM } = paperScale(buildingOf(facts), 690);
    const section = sectionOf(inputOf(facts, 690, { pxPerM }));
    await expect(svgText(section, name)).toMatchFileSnapshot(`./pictures/${name}.svg`);
  });

test('the plan of a school with three downpipes', async () => {
  const downpipes = ['D1', 'D2', 'D3'].map((downpipeId) => ({ ...downpipe, downpipeId }));
  const building = buildingOf(site({ ...measured, downpipes }));
  const plan = planOf({ building, words, width: 690 });
  await expect(svgText(plan, 'plan')).toMatchFileSnapshot('./pictures/plan-three-downpipes.svg');
});
