import { describe, expect, it } from 'vitest';
import { english, loadLanguage } from './index.ts';
import type { TreatmentSaid } from './sentences/treatmentFindings.ts';

const unit: TreatmentSaid = {
  serial: 'U1',
  partId: 'unit-3',
  verdict: 'tight',
  cappedBy: null,
  drive: 'handPump',
  pressure_kPa: 89.4,
  waterTemperature_C: 20,
  flowClean_L_per_h: 1039.2,
  flowNow_L_per_h: 805,
  flowWorn_L_per_h: 569.2,
  resistanceNow_ratio: 1.67,
  pumpPower_W: 40,
  strokes_per_min: 16.9,
  handForce_N: 158,
  asked_L_per_day: 1500,
  treated_L_per_day: 1579,
  backwash_min_per_day: 10,
  hoursNeeded_h: 2.13,
  hoursNeededWorn_h: 3.5,
  peaks: [
    { peak: 'morning', asked_L: 600, possible_L: 805, lastWait_min: 4, lastWaitWorn_min: 15.9 },
    { peak: 'evening', asked_L: 600, possible_L: 805, lastWait_min: 5, lastWaitWorn_min: 15.9 },
  ],
  meanWait_min: 3.3,
  unitHead_m: 9.2,
  pressureTest: null,
};
const test: TreatmentSaid['pressureTest'] = {
  testedOn: '2027-09-01',
  pressure_kPa: 100,
  smallestSeen_um: 2.91,
  supports_log10: 4.02,
  fallLimit_kPa_per_min: 1.05,
};

describe('a treatment unit in words', () => {
  const { treatment: said } = english.findings;

  it('says what passes, how long that takes, and how it is with a worn set', () => {
    expect(said(unit)).toBe(
      'Unit U1 passes 805 L an hour with one person at its pump, as it was last measured. On the day that asks for most, 1,500 L take 2.13 hours. In the busiest hour the last in line waits 5 min. When the set is due to be changed, and with more asked, it is 3.5 hours and a wait of 15.9 min.',
    );
    expect(said({ ...unit, resistanceNow_ratio: null, drive: 'gravity' })).toMatch(
      /by the fall of the water alone, taken as clean\./,
    );
  });

  it('says it where nobody waits, a line does not end, or nothing passes', () => {
    const peaks = unit.peaks.map((peak) => ({ ...peak, lastWait_min: 0, lastWaitWorn_min: null }));
    expect(said({ ...unit, peaks })).toMatch(
      /nobody waits in line\. When .* 3\.5 hours, and the line does not end that day\.$/,
    );
    const endless = unit.peaks.map((peak) => ({ ...peak, lastWait_min: null }));
    expect(said({ ...unit, peaks: endless })).toMatch(/the line does not end that day\. When/);
    expect(said({ ...unit, hoursNeeded_h: null })).toMatch(/do not pass at all\.$/);
    expect(said({ ...unit, hoursNeededWorn_h: null })).toMatch(/with more asked, the litres do not pass at all\.$/);
    expect(said({ ...unit, flowWorn_L_per_h: null })).not.toMatch(/When the set/);
  });

  it('says what is not known', () => {
    expect(said({ ...unit, serial: null })).toBe('There is no treatment unit.');
    const unknown = { ...unit, verdict: 'unknown', flowNow_L_per_h: null } as const;
    expect(said(unknown)).toBe('Whether treatment unit U1 keeps up is not known: the warnings say what is missing.');
    expect(said({ ...unit, cappedBy: 'treatment.taps_unknown' })).toMatch(
      /It is tight because of what is not known\.$/,
    );
  });

  it('says of a test what it sees, and that it says nothing of viruses', () => {
    expect(said({ ...unit, pressureTest: test })).toMatch(
      /The test with air of 1 September 2027 sees holes of 2\.91 µm and more, and its fall supports 4\.02 steps of ten of what is larger; it says nothing of viruses\.$/,
    );
    expect(said({ ...unit, pressureTest: { ...test, supports_log10: null } })).toMatch(
      /and more; it says nothing of viruses\.$/,
    );
  });

  it('says as much in Spanish', async () => {
    const spanish = await loadLanguage('es');
    for (const one of [
      unit,
      { ...unit, pressureTest: test },
      { ...unit, serial: null },
      { ...unit, hoursNeeded_h: null },
    ])
      expect(spanish.findings.treatment(one)).not.toMatch(/undefined|NaN|\{|pump|litres|hours|WRITE/);
  });
});
