import { describe, expect, it } from 'vitest';
import { type RoofLooked, roofWarnings } from './roofWarnings.ts';

const clean: RoofLooked = {
  material: 'tile',
  coating: 'none',
  hasLead: false,
  hasAsbestos: false,
  isUnderTrees: false,
};

describe('roofWarnings', () => {
  it.each([
    [{}, []],
    [{ hasLead: true }, ['safety.lead']],
    [{ hasLead: null }, ['safety.lead_not_looked_for']],
    [{ coating: 'unknownPaint' }, ['safety.coating']],
    [{ coating: 'bitumen' }, ['safety.coating']],
    [{ coating: 'forDrinkingWater' }, []],
    [{ hasAsbestos: true }, ['safety.asbestos']],
    [{ material: 'fibreCement' }, []],
    [{ material: 'fibreCement', hasAsbestos: null }, ['safety.asbestos']],
    [{ isUnderTrees: true }, ['safety.trees']],
    [{ isUnderTrees: null }, []],
    [{ material: 'corrugatedMetal' }, ['safety.bare_metal']],
    [{ material: 'corrugatedMetal', coating: null }, ['safety.bare_metal']],
    [{ material: 'corrugatedMetal', coating: 'forDrinkingWater' }, []],
  ] as const)('of %o are %o', (more, wanted) => {
    expect(roofWarnings({ ...clean, ...more })).toEqual(wanted);
  });
});
