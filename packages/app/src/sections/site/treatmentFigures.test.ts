import { loadAppLanguage, unitLetters } from '@eavewell/words/app';
import { expect, it } from 'vitest';
import type { SiteReport } from './siteFigures.ts';
import { alike, cupFigures, dueFigure, unitFigures } from './treatmentFigures.ts';

const words = await loadAppLanguage('en');

const unit: SiteReport['treatment'][number] = {
  ...{ serial: 'U1', partId: 'X', verdict: 'tight', cappedBy: null, finding: '', drive: 'handPump' },
  ...{ pressure_kPa: 48, waterTemperature_C: 20, flowClean_L_per_h: 420, flowNow_L_per_h: 310, flowWorn_L_per_h: 150 },
  ...{ resistanceNow_ratio: 1.3, pumpPower_W: 35, strokes_per_min: 30, handForce_N: 100, asked_L_per_day: 1850 },
  ...{ treated_L_per_day: 1887, backwash_min_per_day: 10, hoursNeeded_h: 6.1, hoursNeededWorn_h: 12.6 },
  peaks: [
    { peak: 'morning', asked_L: 700, possible_L: 310, lastWait_min: 22, lastWaitWorn_min: null },
    { peak: 'evening', asked_L: 700, possible_L: 310, lastWait_min: 30, lastWaitWorn_min: 70 },
  ],
  ...{ meanWait_min: 9, unitHead_m: 1.2, pressureTest: null },
};
const spread = { p10: 1, p50: 1, p90: 1 };
const wear: NonNullable<SiteReport['wear']>[number] = {
  ...{ serial: 'U1', partId: 'X', finding: '', setSince: null, unknownBy: null, litres_L: null, passedSoFar_L: null },
  endsOn: { p10: '2027-01-01', p50: '2027-04-03', p90: '2027-11-02' },
  endsBy_fraction: { litres: 0.2, flow: 0.8, age: 0, failure: 0 },
  ...{ fouling_ratio: spread, readings_count: 0, futures_count: 100 },
};

it('the figures of a unit are those of now beside those of a worn set; the longest wait counts, and one without end', () => {
  const figures = unitFigures(unit, words).map(({ value, likely }) => `${value} | ${likely}`);
  expect(figures).toEqual([
    'U1 passes 310 L an hour | worn: 150 L an hour',
    'U1 runs 6.1 hours on the day that asks for most | worn: 12.6 hours',
    'U1: the last in line waits 30 min | worn: longer than the day',
  ]);
});

it('what is not known has no figure', () => {
  const unknown = { ...unit, flowNow_L_per_h: null, hoursNeeded_h: null, peaks: [] };
  expect(unitFigures(unknown, words)).toEqual([]);
  expect(dueFigure({ ...wear, endsOn: null }, words)).toBeNull();
  expect(unitLetters({ treatment: [{ ...unit, serial: null }], wear: null }, words)).toEqual([]);
});

it('the cup is told by the germ that does most harm, to two digits', () => {
  const risk = (pathogen: 'rotavirus' | 'campylobacter', typical: number, high: number) => ({
    pathogen,
    waters: [{ secondSourceId: null, days_per_year: 365, raw_per_L: 1, rawHigh_per_L: 2, drinking_per_L: 1e-5 }],
    ...{ infection_per_year: 0.1, illness_per_year: 0.05, fromSkipping_fraction: 0, needed_log10: 2 },
    ...{ DALY_per_person_per_year: typical, DALYHigh_per_person_per_year: high },
  });
  const risks = [risk('rotavirus', 0.00123456, 0.0456), risk('campylobacter', 1e-6, 1e-5)];
  const safety = { risks, target_DALY_per_person_per_year: 1e-4 } as NonNullable<SiteReport['safety']>;
  expect(cupFigures(safety, words)).toEqual([
    {
      ...{
        code: 'safety.daly',
        of: 'rotavirus',
        value: 'viruses (rotavirus): 1,200 healthy years lost a year per million people',
      },
      likely: 'up to 46,000 healthy years lost a year per million people',
      target: 'at most 100 healthy years lost a year per million people',
    },
  ]);
  expect(cupFigures({ ...safety, risks: [] }, words)).toEqual([]);
});

it('a set is due about its middle day, and the drawing says flow, pressure and day', () => {
  expect(dueFigure(wear, words)).toMatchObject({
    value: 'cartridges of U1 due about 3 April 2027',
    likely: 'likely 1 January 2027 to 2 November 2027',
  });
  expect(unitLetters({ treatment: [unit], wear: [wear] }, words)).toEqual([
    '310 L an hour',
    '48 kPa',
    'due 3 April 2027',
  ]);
});

it('units of which the very same is told stand together, named by the first; one that runs longer stands alone', () => {
  const units = [
    unit,
    { ...unit, serial: 'U2' },
    { ...unit, serial: 'U3', hoursNeeded_h: 7.4 },
    { ...unit, serial: 'U4' },
  ];
  const groups = alike(units, words);
  expect(groups.map(({ serial, others_count }) => [serial, others_count])).toEqual([
    ['U1', 2],
    ['U3', 0],
  ]);
  expect(unitFigures(groups[0]!, words)[0]!.value).toMatch(/^U1 .*2.* passes? 310 L an hour$/);
  // What is told of none of them is no difference: digits that are not shown.
  expect(alike([unit, { ...unit, serial: 'U2', hoursNeeded_h: 6.1000001 }], words)).toHaveLength(1);
  expect(alike([], words)).toEqual([]);
});
