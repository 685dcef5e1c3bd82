import type { RoofFacts, SiteFacts, TankFacts } from '@eavewell/engine';
import { expect, test } from 'vitest';
import { svgText } from '../sheet/svgText.ts';
import { buildingOf, paperScale, planOf, sectionOf } from './index.ts';
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
