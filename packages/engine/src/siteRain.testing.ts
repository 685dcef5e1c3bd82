import {
  dayIndexOf,
  type GaugeFacts,
  type GaugeNormal,
  noStorms,
  type RoofFacts,
  type SiteFacts,
  unmeasuredRoof,
  unmeasuredSite,
  unmeasuredTank,
} from './kernel/index.ts';

const start = dayIndexOf(2001, 1, 1);
/** So many days from 2001 on, with so much rain every third day. */
export const readings = (days: number, rain_mm = 12, every = 3) =>
  Array.from({ length: days }, (_, i) => ({ day: start + i, rain_mm: i % every === 0 ? rain_mm : 0, row: i + 2 }));
export const twelveYears = dayIndexOf(2013, 1, 1) - start;
export const normals: readonly GaugeNormal[] = Array.from({ length: 12 }, (_, i) => ({
  month: i + 1,
  rain_mm: 120,
  wetDays: 10,
  source: 'An invented weather service',
  yearFrom: 1981,
  yearTo: 2010,
}));
export const gauge = (gaugeId: string, change: Partial<GaugeFacts> = {}): GaugeFacts => ({
  ...noStorms,
  gaugeId,
  name: `Gauge ${gaugeId}`,
  latitude_deg: null,
  longitude_deg: null,
  readingTime: null,
  readings: [],
  normals: [],
  file: `rain/${gaugeId}.csv`,
  ...change,
});
const roof: RoofFacts = {
  ...unmeasuredRoof,
  roofId: 'R1',
  length_m: 12,
  width_m: 10,

  material: 'corrugatedMetal',

  runoffFraction: 0.8,
  gutteredFraction: 1,

  diverter: { firstFlush_mm: 0, chamber_L: null, drainHole: 'open', chamberBore_mm: null, drainHole_mm: null },
};
export const site = (change: Partial<SiteFacts> = {}): SiteFacts => ({
  ...unmeasuredSite,
  siteId: 'S1',
  name: 'Hall',
  latitude_deg: null,
  longitude_deg: null,
  siteClass: null,
  target: null,
  people: 30,
  peopleCountedOn: null,
  households_count: null,
  growthFraction_per_year: null,
  designYear: null,
  presence: null,
  secondSource: null,
  nearSecondSource: null,
  ration: null,
  gaugeId: 'G1',
  rainFactor: 1,
  handOverDay: null,
  roofs: [roof],
  tanks: [{ ...unmeasuredTank, tankId: 'T1', nominal_L: 60_000 }],
  demand: [{ purpose: 'drinking', litres_per_person_per_day: 7.5, judged: true }],

  doubts: [],
  ...change,
});
