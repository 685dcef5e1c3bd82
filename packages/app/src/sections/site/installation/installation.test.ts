import { type GutterFacts, unmeasuredGutter, unmeasuredTank } from '@eavewell/engine';
import { installationSteps, stepsOf } from '@eavewell/tables';
import { loadAppLanguage } from '@eavewell/words/app';
import { expect, it } from 'vitest';
import { siteWith } from '../../../water/siteForTests.ts';
import { heightsToSetOut } from './heightsToSetOut.ts';
import { partsToFit } from './partsToFit.ts';

const gutter: Omit<GutterFacts, 'gutterId'> = {
  ...unmeasuredGutter,
  roofId: 'R1',
  shape: 'halfRound',
  width_mm: 150,
  depth_mm: 75,
  length_m: 12,
  outlet_mm: 90,
};
const words = await loadAppLanguage('en');

it('the fall of a gutter is told over its run: its length, shared among its outlets, unless the run was measured', () => {
  const site = siteWith({
    tanks: [],
    gutters: [
      { ...gutter, gutterId: 'G1', fall_mm_per_m: 5, outlets_count: 2 },
      { ...gutter, gutterId: 'G2', fall_mm_per_m: 5, runToOutlet_m: 10 },
      { ...gutter, gutterId: 'G3', length_m: null, fall_mm_per_m: 0 },
    ],
  });
  const falls = heightsToSetOut(site, words).filter(({ what }) => what === 'fall of gutter');
  expect(falls.map(({ ids, value }) => [ids.join(), value])).toEqual([
    ['G1', '30 mm over 6.00 m (5 mm/m)'],
    ['G2', '50 mm over 10.00 m (5 mm/m)'],
    ['G3', '…… mm over …… m (0 mm/m)'],
  ]);
});

it('heights of a tank are told over its foot and over the ground; alike tanks stand in one line', () => {
  const tank = { ...unmeasuredTank, standHeight_m: 0.5, inletHeight_m: 2, outletHeight_m: 0.1, overflowHeight_m: 1.9 };
  const site = siteWith({
    tanks: [
      { ...tank, tankId: 'T1' },
      { ...tank, tankId: 'T2' },
    ],
  });
  expect(heightsToSetOut(site, words)).toContainEqual({
    ids: ['T1', 'T2'],
    what: 'overflow of tank',
    value: '1.90 m; over the ground 2.40 m',
  });
});

it('alike parts stand in one line with the ids of all; what was not measured is left to be written in', () => {
  const site = siteWith({
    tanks: [],
    gutters: [
      { ...gutter, gutterId: 'G1' },
      { ...gutter, gutterId: 'G2' },
      { ...unmeasuredGutter, gutterId: 'G3', roofId: 'R1' },
    ],
  });
  expect(partsToFit(site, words).map(({ ids, what, size, amount }) => [ids.join(), what, size, amount])).toEqual([
    ['G1,G2', 'half-round gutter', '150 × 75 mm', '12.00 m'],
    ['G1,G2', 'outlet of gutter', 'ø 90 mm', '1'],
    ['G3', 'gutter', '…… × …… mm', '…… m'],
    ['G3', 'outlet of gutter', 'ø …… mm', '1'],
  ]);
});

const unmeasuredUnitOf = (serial: string) => ({
  ...{ serial, partId: null, figures: null, installedOn: null, removedOn: null as number | null },
});

it('steps come in their order with the cautions of the site, none of them lost', () => {
  const site = siteWith({});
  const said = (caution: 'height' | 'fragileRoof' | 'stand' | 'lifting') => ({ caution, said: '' });
  const all = ['height', 'fragileRoof', 'stand', 'lifting'] as const;
  const closed = stepsOf(site, { cautions: all.map(said), standGate: { gate: 'closed', said: '' } });
  expect(closed.map(({ step }) => step)).toEqual(
    installationSteps.filter((step) => step !== 'flush' && step !== 'unit'),
  );
  const unit = { ...unmeasuredUnitOf('U1') };
  const withUnit = { ...site, treatment: { ...site.treatment, units: [unit] } };
  const open = { cautions: [], standGate: { gate: 'closed' as const, said: '' } };
  expect(stepsOf(withUnit, open).map(({ step }) => step)).toContain('unit');
  // One that was taken away is not set again.
  const gone = { ...withUnit, treatment: { ...withUnit.treatment, units: [{ ...unit, removedOn: 5 }] } };
  expect(stepsOf(gone, open).map(({ step }) => step)).not.toContain('unit');
  expect(closed.find(({ step }) => step === 'gutters')?.cautions).toEqual(['height', 'ladder', 'fragileRoof']);
  expect(closed.at(-1)).toEqual({ step: 'drink', cautions: ['drinking'] });
  // Without a stand there is no step to sign; a caution of its ground still stands on the sheet.
  const none = stepsOf(site, { cautions: all.map(said), standGate: { gate: 'notNeeded', said: '' } });
  expect(none[0]).toEqual({ step: 'tank', cautions: ['stand', 'lifting'] });
  for (const steps of [closed, none]) {
    const told = steps.flatMap(({ cautions }) => cautions);
    expect([...told].sort()).toEqual(['drinking', 'fragileRoof', 'height', 'ladder', 'lifting', 'stand']);
  }
});
