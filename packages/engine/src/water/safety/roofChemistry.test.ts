import { describe, expect, it } from 'vitest';
import { type CollectionGiven, collectionWarnings, overGuideline } from './roofChemistry.ts';

const clean: CollectionGiven = {
  material: 'tile',
  flashing: 'none',
  nails: 'other',
  paint: 'none',
  timber: 'none',
  isTarred: false,
  isNearFumes: false,
  isUnderTreesOrBirds: false,
  water_pH: 7,
};
const codes = (more: Partial<CollectionGiven>) => collectionWarnings({ ...clean, ...more }).map(({ code }) => code);

describe('collectionWarnings', () => {
  it('has none for a tiled roof where everything was looked at', () => {
    expect(codes({})).toEqual([]);
  });

  it.each([
    [{ flashing: 'lead' }, ['leadFlashing']],
    [{ nails: 'leadHeaded' }, ['leadNails']],
    [{ paint: 'lead' }, ['leadPaint']],
    [{ paint: 'notKnown' }, ['paintNotKnown']],
    [{ timber: 'copperChromeArsenic' }, ['treatedTimber']],
    [{ isTarred: true }, ['tar']],
    [{ material: 'shingle' }, ['tar']],
    [{ isNearFumes: true }, ['fumes']],
    [{ isUnderTreesOrBirds: true }, ['treesOrBirds']],
    [{ material: 'fibreCement' }, ['asbestosDust']],
    [{ material: 'corrugatedMetal' }, ['zincHidesGerms']],
    [{ material: 'corrugatedMetal', paint: 'forDrinkingWater' }, []],
  ] as const)('warns of %o', (more, wanted) => {
    expect(codes(more)).toEqual(wanted);
  });

  it('takes what nobody looked at for no proof', () => {
    expect(codes({ flashing: null })).toEqual(['leadNotLookedFor']);
    expect(codes({ nails: null })).toEqual(['leadNotLookedFor']);
    expect(codes({ material: 'corrugatedMetal', paint: null })).toEqual(['leadNotLookedFor', 'zincHidesGerms']);
  });

  it('warns of acid water where there is metal, and asks for its pH where it was not measured', () => {
    expect(codes({ flashing: 'lead', water_pH: 6.4 })).toEqual(['leadFlashing', 'acidWithMetal']);
    expect(codes({ flashing: 'lead', water_pH: 6.5 })).toEqual(['leadFlashing']);
    expect(codes({ nails: 'leadHeaded', water_pH: null })).toEqual(['leadNails', 'acidityNotMeasured']);
    expect(codes({ water_pH: 5 })).toEqual([]);
  });

  it('says what to test for', () => {
    const [timber] = collectionWarnings({ ...clean, timber: 'copperChromeArsenic' });
    expect(timber!.tests).toEqual(['arsenic', 'chromium', 'copper']);
  });
});

describe('overGuideline', () => {
  it('names what is over, those that harm first; the value itself is not over', () => {
    const over = overGuideline({ zinc: 3.1, lead: 0.011, copper: 2, cadmium: null });
    expect(over).toEqual([
      { substance: 'lead', measured_mg_per_L: 0.011, most_mg_per_L: 0.01, basis: 'health' },
      { substance: 'zinc', measured_mg_per_L: 3.1, most_mg_per_L: 3, basis: 'taste' },
    ]);
    expect(overGuideline({})).toEqual([]);
  });
});
