import { expect, it } from 'vitest';
import {
  defaultSettings,
  noSafety,
  noTreatment,
  type PressureTest,
  pathogens,
  type SiteFacts,
  unmeasuredRoof,
  unmeasuredSite,
  unmeasuredUnit,
} from './kernel/index.ts';
import { otherStations } from './siteStations.ts';

const today = 20_100;
const reductions = {
  ...{ bacteria_log10: 6, viruses_log10: 6, protozoa_log10: 6 },
  ...{ evidence: 'challengeTest', source: 'An invented laboratory' },
} as const;
const figures = { ...unmeasuredUnit, ratedFlow_L_per_h: 600, ratedPressure_kPa: 60, reductions };
const clean = {
  ...{ kind: 'tubes', volume_mL: 100, portions_count: 1, positive_count: 0, colonies_count: null },
  ...{ uncountable_count: 0, uncountableFrom_count: null },
} as const;
const sample = (takenOn: number, positive_count: number) => ({
  ...{ testId: `W${takenOn}`, takenOn, point: 'tap', portions: [{ ...clean, positive_count }] },
  ...{ turbidity_NTU: null, freeChlorine_mg_per_L: null, pH: null, waterTemperature_C: null, laboratory: null },
});
const air = (testedOn: number, fall_kPa_per_min: number): PressureTest => ({
  ...{ unitSerial: 'U1', testedOn, pressure_kPa: 100, fall_kPa_per_min, airVolume_L: 2 },
});

function mayDrink(
  tests: readonly object[],
  pressureTests: readonly PressureTest[],
  judgeTreatment: 'never' | 'always',
) {
  const site = {
    ...unmeasuredSite,
    ...{ siteId: 'S1', roofs: [{ ...unmeasuredRoof, roofId: 'R1' }], tanks: [], gutters: [], downpipes: [], pipes: [] },
    ...{ secondSource: null, hasHandPump: true, handOverDay: 19_000 },
    treatment: {
      ...noTreatment,
      units: [{ serial: 'U1', partId: 'unit', installedOn: 19_000, removedOn: null, figures }],
      pressureTests,
    },
    safety: {
      ...noSafety,
      tests,
      rawWater: pathogens.map((pathogen) => ({
        ...{ secondSourceId: null, pathogen, typical_per_L: 0.0001, low_per_L: null, high_per_L: 0.0003, source: 'x' },
      })),
    },
  } as unknown as SiteFacts;
  const found = otherStations(site, {
    settings: { ...defaultSettings, judgeTreatment, skipping_fraction: 0, daysOff_per_year: 0 },
    ...{ parts: [], storm: null, stormTold: null, rainByIntensity: null, demandHighest_L_per_day: new Map() },
    ...{ sourceDays: null, today },
  });
  return [found.verdicts.cup, found.safety!.mayDrink, found.problems.some(({ code }) => code === 'site.dated_ahead')];
}

it('lets no sample and no test with air of a day to come hide what was found', () => {
  const [good, bad] = [sample(20_050, 0), sample(20_000, 1)];
  expect(mayDrink([good], [], 'always')).toEqual(['holds', 'yes', false]);
  expect(mayDrink([bad, sample(21_000, 0)], [], 'always')).toEqual(['short', 'no', true]);
  expect(mayDrink([good], [air(20_000, 50), air(21_000, 0.0001)], 'always')).toEqual(['tight', 'notShown', true]);
});

it('lists a sample of a day to come, and lets one that held E. coli keep the cup from being called fit', () => {
  const ahead = (positive: number) => mayDrink([sample(20_050, 0), sample(21_000, positive)], [], 'always');
  expect(ahead(0)).toEqual(['holds', 'yes', true]);
  expect(ahead(1)).toEqual(['unknown', 'notShown', true]);
});

it('knows what a test with air showed where nobody asks whether the unit keeps up', () => {
  expect(mayDrink([sample(20_050, 0)], [air(20_000, 50)], 'never')).toEqual(['tight', 'notShown', false]);
});
