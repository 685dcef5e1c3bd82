import { defaultSettings } from '@eavewell/engine';
import type { FactsAnswer, ReadingsAnswer } from './factsOfAnswer.ts';

const target = { daysMet_fraction: 0.95, longestDryRun_days: 7, goodYears_fraction: 0.8 };
const pipe = { pipeId: 'P1', tankId: null, leg: 'tankToUnit', material: 'plastic' } as const;
const inPipe = { elbows_count: 2, tees_count: null, valves_count: 1, meters_count: null, otherLoss_k: null };

const emptyTreatment = { units: [], cartridges: [], flowReadings: [], pressureTests: [] };
const flowReading = {
  ...{ unitSerial: 'U1', readOn: 20_100, flow_L_per_h: { figure: 'Infinity' as const } },
  ...{ pressure_kPa: 50, waterTemperature_C: null, passed_L: { figure: '-0' as const } },
};
const emptySafety = {
  ...{ rawWater: [], barriers: [], tests: [], unusableTests: [], inspections: [], chlorination: null },
  ...{ skipping_fraction: 0.1, daysOff_per_year: null },
};

/** An answer about a site that stands between two gauges, one of them too far to be read. */
export const factsAnswered = (of = 'a', people: number | null = 40): FactsAnswer => ({
  version: 3,
  designVersion: 3,
  site: {
    ...{ siteId: 'S1', name: 'NaN', latitude_deg: { figure: '-0' }, longitude_deg: 125.25, siteClass: null, target },
    ...{ people, peopleCountedOn: null, households_count: null, growthFraction_per_year: null, designYear: null },
    ...{ gaugeId: null, rainFactor: { figure: 'Infinity' }, handOverDay: 20_000, roofs: [], gutters: [] },
    ...{ downpipes: [], tanks: [], demand: [], ration: null, presence: null, secondSource: null },
    ...{ nearSecondSource: null, doubts: [], pipes: [{ ...pipe, bore_mm: 20, length_m: 12.5, ...inPipe }] },
    ...{ taps_count: 2, tapHeight_m: { figure: '-0' }, unitHeight_m: 0.5, hasHandPump: false, windSpeed_m_per_s: null },
    windExposure: 'openWater',
    doubtsBeside: {
      drainage: [],
      settling: [],
      stand: [{ file: 'tanks.csv', row: 3 }],
      head: [],
      treatment: [],
      safety: [],
    },
    treatment: { ...emptyTreatment, flowReadings: [flowReading] },
    safety: { ...emptySafety, altitude_m: { figure: '-0' } },
  },
  faults: [],
  settings: { ...defaultSettings, programme: 'Tarn', target, windSpeed_m_per_s: 35 },
  parts: [],
  prices: [],
  kit: { rules: [], carriers: [], keptApart: [], rates: [], redenominations: [], costs: [] },
  gauges: [
    {
      ...{ gaugeId: 'G1', name: 'East', latitude_deg: 0, longitude_deg: 125, readingTime: null, normals: [] },
      ...{ file: 'rain/G1.csv', readings: { of, address: `/readings?of=${of}` }, stormCoefficients: null },
      storms: [
        { returnPeriod_years: 20, intensity_mm_per_h: 180, low_mm_per_h: 150, high_mm_per_h: 210, source: null },
      ],
    },
    {
      ...{ gaugeId: 'G2', name: 'West', latitude_deg: 5, longitude_deg: 125, readingTime: null, normals: [] },
      ...{ file: 'rain/G2.csv', readings: null, storms: [], stormCoefficients: null },
    },
  ],
  wantedGauges: [],
});

/** Four daily readings and three of five minutes, the last of which ends at midnight. */
export const readingsAnswered: ReadingsAnswer = {
  gaugeId: 'G1',
  days: [
    [100, 3, 1],
    [99, 1, 1],
  ],
  rows: [
    [2, 2, 0],
    [3, 2, 4],
  ],
  rain_mm: [0.1, null, { figure: 'NaN' }, 12.5],
  short: {
    minutes: [
      [144_605, 2, 5],
      [145_440, 1, 1],
    ],
    intervals: [[5, 3, 0]],
    rain_mm: [4.2, 6.1, 0.3],
  },
};
