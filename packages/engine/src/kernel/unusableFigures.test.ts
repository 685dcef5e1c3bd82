import { expect, it } from 'vitest';
import { unmeasuredRoof, unmeasuredTank } from './buildingFacts.ts';
import type { SiteFacts } from './facts.ts';
import { unmeasuredSite } from './facts.ts';
import { unusableFigures } from './unusableFigures.ts';

const site: SiteFacts = {
  ...unmeasuredSite,
  siteId: 'S1',
  name: 'Made up',
  latitude_deg: null,
  longitude_deg: null,
  siteClass: null,
  target: null,
  people: null,
  peopleCountedOn: null,
  households_count: null,
  growthFraction_per_year: null,
  designYear: null,
  presence: null,
  secondSource: null,
  nearSecondSource: null,
  gaugeId: 'G',
  rainFactor: 1,
  handOverDay: 20_000,
  roofs: [
    {
      ...unmeasuredRoof,
      roofId: 'R1',

      length_m: 10,

      roofPlanArea_m2: 80,

      runoffFraction: 0,
      gutteredFraction: 1,
      diverter: { firstFlush_mm: null, chamber_L: 20, drainHole: 'open', chamberBore_mm: null, drainHole_mm: null },
    },
  ],
  tanks: [
    {
      ...unmeasuredTank,
      tankId: 'T1',
      nominal_L: 5000,

      outletHeight_m: 0,
      overflowHeight_m: 2,
      diameter_m: 1.8,
    },
  ],
  demand: [{ purpose: 'drinking', litres_per_person_per_day: 5, judged: true }],
  ration: null,

  doubts: [],
};

it('names each figure nobody can reckon with, and none that is not known or 0', () => {
  expect(unusableFigures(site)).toEqual([]);
  const [roof] = site.roofs;
  const [tank] = site.tanks;
  const named = unusableFigures({
    ...site,
    households_count: Infinity,
    growthFraction_per_year: Number.NaN,
    rainFactor: Number.NaN,
    handOverDay: 0.5,
    roofs: [
      {
        ...roof!,
        length_m: 1e300,
        diverter: { firstFlush_mm: -1, chamber_L: 5e-324, drainHole: 'open', chamberBore_mm: null, drainHole_mm: null },
      },
    ],
    tanks: [{ ...tank!, diameter_m: Infinity }],
    demand: [{ purpose: 'drinking', litres_per_person_per_day: -5, judged: true }],
  }).map(({ place, facts }) => [place.column, facts['value'], facts['of']]);
  expect(named).toEqual([
    ['rainFactor', 'NaN', ''],
    ['households', 'Infinity', ''],
    ['handOverDay', '0.5', ''],
    ['growthFraction_per_year', 'NaN', ''],
    ['length_m', '1e+300', 'R1'],
    ['firstFlush_mm', '-1', 'R1'],
    ['chamber_L', '5e-324', 'R1'],
    ['diameter_m', 'Infinity', 'T1'],
    ['litres_per_person_per_day', '-5', 'drinking'],
  ]);
});
