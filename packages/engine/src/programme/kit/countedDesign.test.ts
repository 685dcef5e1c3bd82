import { expect, it } from 'vitest';
import {
  type CountedBy,
  type SiteFacts,
  unmeasuredGutter,
  unmeasuredRoof,
  unmeasuredSite,
  unmeasuredTank,
  unmeasuredUnit,
} from '../../kernel/index.ts';
import { countedDesign } from './countedDesign.ts';

const bare: SiteFacts = {
  ...unmeasuredSite,
  ...{ siteId: 'S1', name: 'S1', latitude_deg: null, longitude_deg: null, siteClass: null, target: null },
  ...{ people: 40, peopleCountedOn: null, households_count: null, growthFraction_per_year: null, designYear: null },
  ...{ gaugeId: null, rainFactor: 1, handOverDay: null, roofs: [], tanks: [], demand: [], ration: null },
  ...{ presence: null, secondSource: null, nearSecondSource: null, doubts: [] },
};
const roof = { ...unmeasuredRoof, roofId: 'R1', length_m: 9, width_m: 6 };
const of = (site: Partial<SiteFacts>, countedBy: CountedBy) =>
  countedDesign({ ...bare, ...site }, 50)
    .counted.filter((one) => one.countedBy === countedBy)
    .map(({ ofId, things_count, run }) => [ofId, run === null ? things_count : run.length_m, run?.from]);

it('counts the site, its people, and nothing of what nobody counted', () => {
  expect(of({}, 'site')).toEqual([[null, 1, undefined]]);
  expect(of({}, 'person')).toEqual([[null, 40, undefined]]);
  expect(of({}, 'household')).toEqual([[null, null, undefined]]);
  expect(of({}, 'tap')).toEqual([[null, null, undefined]]);
});

it('takes gutters as surveyed; one that nobody measured is as long as its eave', () => {
  const gutters = [
    { ...unmeasuredGutter, gutterId: 'G1', roofId: 'R1', length_m: 8.4, outlets_count: 2, bends_count: 1 },
    { ...unmeasuredGutter, gutterId: 'G2', roofId: 'R1' },
  ];
  const site = { roofs: [roof], gutters };
  expect(of(site, 'gutterMetre')).toEqual([
    ['G1', 8.4, 'measured'],
    ['G2', 9, 'assumed'],
  ]);
  expect(of(site, 'gutterOutlet').map(([, count]) => count)).toEqual([2, 1]);
  expect(of(site, 'gutterBend').map(([, count]) => count)).toEqual([1, null]);
});

it('assumes a gutter along each eave of a roof without one, for the share that is guttered', () => {
  const eaves = (given: Partial<typeof roof>) => of({ roofs: [{ ...roof, ...given }] }, 'gutterMetre');
  expect(eaves({})).toEqual([
    ['R1-1', 9, 'assumed'],
    ['R1-2', 9, 'assumed'],
  ]);
  expect(of({ roofs: [{ ...roof, form: 'oneSlope', gutteredFraction: 0.5 }] }, 'gutterMetre')).toEqual([
    ['R1', 4.5, 'assumed'],
  ]);
  expect(of({ roofs: [{ ...roof, form: 'hip' }] }, 'gutterMetre').map(([, metres]) => metres)).toEqual([9, 9, 6, 6]);
  expect(of({ roofs: [{ ...roof, gutteredFraction: 0 }] }, 'gutter')).toEqual([]);
  expect(of({ roofs: [{ ...unmeasuredRoof, roofId: 'R1' }] }, 'gutterMetre')).toEqual([['R1', 1, undefined]]);
});

it('leaves out what is built, and assumes nothing beside it', () => {
  const gutters = [{ ...unmeasuredGutter, gutterId: 'G1', roofId: 'R1', length_m: 8.4, isBuilt: true }];
  expect(of({ roofs: [roof], gutters }, 'gutter')).toEqual([]);
  expect(of({ roofs: [roof], gutters }, 'downpipe')).toEqual([]);
});

it('takes downpipes as surveyed, else one under each outlet, as long as its eave is high', () => {
  const downpipes = [
    { downpipeId: 'D1', roofId: 'R1', bore_mm: 90, length_m: 3.2 },
    { downpipeId: 'D2', roofId: 'R1', bore_mm: 90, length_m: null },
  ];
  expect(of({ roofs: [roof], downpipes }, 'downpipeMetre')).toEqual([
    ['D1', 3.2, 'measured'],
    ['D2', 3.2, 'assumed'],
  ]);
  const gutters = [{ ...unmeasuredGutter, gutterId: 'G1', roofId: 'R1', outlets_count: 2 }];
  expect(of({ roofs: [{ ...roof, eaveHeight_m: 2.8 }], gutters }, 'downpipeMetre')).toEqual([
    ['G1', 2.8, 'assumed'],
    ['G1-2', 2.8, 'assumed'],
  ]);
});

it('tells a tank from a settling tank, and stands and pads from a tank on the ground', () => {
  const tanks = [
    { ...unmeasuredTank, tankId: 'T1', partId: 'tank-2', standHeight_m: 0.5, pads_count: 4 },
    { ...unmeasuredTank, tankId: 'T2', role: 'settling' as const, standHeight_m: 0 },
  ];
  expect(of({ tanks }, 'tank')).toEqual([['T1', 1, undefined]]);
  expect(of({ tanks }, 'settlingTank')).toEqual([['T2', 1, undefined]]);
  expect(of({ tanks }, 'stand').map(([, count]) => count)).toEqual([1, 0]);
  expect(of({ tanks }, 'standPad').map(([, count]) => count)).toEqual([4, 0]);
});

it('names the set of a unit in use by the part of its cartridges', () => {
  const unit = {
    serial: 'U1',
    partId: 'unit',
    figures: { ...unmeasuredUnit, cartridges_count: 3 },
    installedOn: null,
    removedOn: null,
  };
  const cartridge = {
    serial: 'C1',
    unitSerial: null,
    partId: 'set',
    batch: null,
    installedOn: null,
    removedOn: null,
    reason: null,
  };
  const treatment = { units: [unit], cartridges: [cartridge], flowReadings: [], pressureTests: [] };
  const counted = countedDesign({ ...bare, treatment }, 50).counted.filter(({ ofId }) => ofId === 'U1');
  expect(counted.map(({ countedBy, things_count, partId }) => [countedBy, things_count, partId])).toEqual([
    ['unit', 1, 'unit'],
    ['cartridgeSet', 1, 'set'],
    ['cartridge', 3, null],
  ]);
  const there = { ...treatment, units: [{ ...unit, installedOn: 50 }] };
  expect(countedDesign({ ...bare, treatment: there }, 50).counted.some(({ countedBy }) => countedBy === 'unit')).toBe(
    false,
  );
  expect(countedDesign({ ...bare, treatment: there }, 49).counted.some(({ countedBy }) => countedBy === 'unit')).toBe(
    true,
  );
  const gone = { ...treatment, units: [{ ...unit, removedOn: 9 }] };
  expect(countedDesign({ ...bare, treatment: gone }, 50).counted.some(({ countedBy }) => countedBy === 'unit')).toBe(
    false,
  );
});
