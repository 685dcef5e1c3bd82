import {
  airDensity_kg_per_m3,
  airViscosity_Pas,
  erlangMeanWait_min,
  erlangWaiting_fraction,
  leastTestPressure_kPa,
  roundAndWetted,
  strokeFlow_L_per_min,
  waterSurfaceTension_N_per_m,
  waterViscosity_Pas,
} from '@eavewell/engine';
import type { PublishedFile } from './published.ts';

const milli = 1e3;
const kPa_per_psi = 6.894757;

/** Surface tension against vapour [mN/m]. */
export const surfaceTension: PublishedFile = {
  source: 'nbs-nrc-1984',
  method: 'waterSurfaceTension_N_per_m',
  rows: [
    { t: 10, printed: '74.22' },
    { t: 20, printed: '72.74' },
    {
      t: 30,
      printed: '71.20',
      tolerance: { value: 0.006, reason: 'the book holds an older equation, 0.006 above that of 2014' },
    },
    { t: 40, printed: '69.60' },
  ].map(({ t, printed, tolerance }) => ({
    place: `page 267, surface tension at ${t} °C [mN/m]`,
    inputs: { temperature_C: t },
    printed,
    got: () => waterSurfaceTension_N_per_m(t) * milli,
    ...(tolerance ? { tolerance } : {}),
  })),
};

export const standardAir: PublishedFile = {
  source: 'us-standard-atmosphere-1976',
  method: 'airViscosity_Pas',
  rows: [
    {
      place: 'sea level, 15 °C, viscosity [10⁻⁵ Pa·s]',
      inputs: { temperature_C: 15 },
      printed: '1.7894',
      got: () => airViscosity_Pas(15) * 1e5,
      fromMemory: true,
    },
    {
      place: 'sea level, 15 °C, density [kg/m³]',
      inputs: { temperature_C: 15, pressure_kPa: 101.325 },
      printed: '1.2250',
      got: () => airDensity_kg_per_m3(15, 101.325),
      method: 'airDensity_kg_per_m3',
      fromMemory: true,
    },
  ],
};

/** What the printed polynomial 1.784 − 0.0575 T + 0.0011 T² − 0.00001 T³ makes of temperatures [mPa·s], and the viscosity by IAPWS. */
const polynomial = [
  [5, '1.5228', 1.5182],
  [20, '0.9940', 1.0016],
  [25, '0.8778', 0.89],
  [30, '0.7790', 0.7972],
  [35, '0.6903', 0.7191],
  [40, '0.6040', 0.6527],
] as const;

export const manualViscosity: PublishedFile = {
  source: 'epa-815-r-06-009',
  method: 'waterViscosity_Pas',
  rows: polynomial.map(([t, printed, value]) => ({
    place: `viscosity at ${t} °C, worked out from the printed polynomial [mPa·s]`,
    inputs: { temperature_C: t },
    printed,
    got: () => waterViscosity_Pas(t) * milli,
    follows: {
      value,
      tolerance: 1e-4,
      reason: 'the polynomial is 0.3 % high at 5 °C and 1.4, 2.3, 4.0 and 7.5 % low at 25, 30, 35 and 40 °C (IAPWS)',
    },
    fromMemory: true,
  })),
};

export const testPressure: PublishedFile = {
  source: 'epa-815-r-06-009',
  method: 'leastTestPressure_kPa',
  rows: [
    {
      place: 'chapter 4, least pressure for a defect of 3 µm at 5 °C [psi]',
      inputs: { defect_um: 3, temperature_C: 5, shape: 1, contact_deg: 0 },
      printed: '14.5',
      got: () => leastTestPressure_kPa(3, 5, roundAndWetted, 0) / kPa_per_psi,
      fromMemory: true,
    },
  ],
};

export const rainPump: PublishedFile = {
  source: 'whitehead-2001',
  method: 'strokeFlow_L_per_min',
  rows: [
    {
      place: 'summary, 70 strokes a minute, with the litres a stroke to three digits that follow from it [L/min]',
      inputs: { strokes_per_min: 70, stroke_L: 0.214 },
      printed: '15',
      got: () => strokeFlow_L_per_min(70, 0.214),
    },
  ],
};

/** Load, servers, share that waits as tested by others. */
export const waitingTests: PublishedFile = {
  source: 'erlang-tests',
  method: 'erlangWaiting_fraction',
  rows: (
    [
      [123, 132, '0.3211'],
      [12_345, 12_421, '0.3812'],
      [1000, 900, '1'],
      [1, 1, '1'],
    ] as const
  ).map(([load, servers, printed]) => ({
    place: `wait probability, ${load} erlangs, ${servers} agents`,
    inputs: { load, servers },
    printed,
    got: () => erlangWaiting_fraction(load, servers),
  })),
};

const s_per_min = 60;

export const waitingExamples: PublishedFile = {
  source: 'erlang-pages',
  method: 'erlangMeanWait_min',
  rows: [
    {
      place: '360 calls in half an hour, 4 min each, 55 agents: probability of waiting',
      inputs: { load: 48, servers: 55 },
      printed: '0.239',
      got: () => erlangWaiting_fraction(48, 55),
      method: 'erlangWaiting_fraction',
      fromMemory: true,
    },
    {
      place: '360 calls in half an hour, 4 min each, 55 agents: average speed of answer [s]',
      inputs: { comers_per_min: 12, filling_min: 4, servers: 55 },
      printed: '8.2',
      got: () => erlangMeanWait_min(12, 4, 55) * s_per_min,
      fromMemory: true,
    },
    {
      place: '100 calls in half an hour, 3 min each, 14 agents: probability a call waits [%]',
      inputs: { load: 10, servers: 14 },
      printed: '17.4',
      got: () => erlangWaiting_fraction(10, 14) * 100,
      method: 'erlangWaiting_fraction',
      fromMemory: true,
    },
    {
      place: '100 calls in half an hour, 3 min each, 14 agents: average speed of answer [s]',
      inputs: { comers_per_min: 100 / 30, filling_min: 3, servers: 14 },
      printed: '7.8',
      got: () => erlangMeanWait_min(100 / 30, 3, 14) * s_per_min,
      fromMemory: true,
    },
  ],
};

export const treatmentFiles: readonly PublishedFile[] = [
  manualViscosity,
  rainPump,
  standardAir,
  surfaceTension,
  testPressure,
  waitingExamples,
  waitingTests,
];
