import type { HeadFinding } from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import { english, loadLanguage } from './index.ts';
import type { SettlingSaid } from './sentences/settlingFindings.ts';

const settling: SettlingSaid = {
  tankId: 'T2',
  verdict: 'tight',
  cappedBy: null,
  planArea_m2: 1.131,
  cells_count: 1,
  flowByDay_L_per_s: 0.0208,
  flowInStorm_L_per_s: 1,
  overflowRateByDay_m_per_h: 0.0663,
  overflowRateInStorm_m_per_h: 3.183,
  grain_um: 20,
  sinks_m_per_h: 1.272,
  settledByDay_fraction: 0.95,
  settledInStorm_fraction: 0.285,
  firstTenth_min: 95,
  grains: [],
  sludge_L_per_year: 16,
  cleanAfter_months: 31.4,
};
const head: HeadFinding = {
  tankIds: ['T1'],
  verdict: 'tight',
  cappedBy: null,
  flowWanted_L_per_min: 15,
  lowLevel_m: 2.1,
  fullLevel_m: 4.1,
  fallToTap_m: 1.5,
  fallToUnit_m: 1.3,
  lossToUnit_m: 0.06,
  lossInUnit_m: 0.2,
  lossToTap_m: 0.04,
  flowLow_L_per_min: 16.2,
  flowFull_L_per_min: 29,
  headLeft_m: 1.2,
  headLeftFull_m: 3.2,
  hasHandPump: false,
  pumpAdds_m: null,
  pumpPower_W: null,
  onePerson_L_per_min: null,
  suction_m: null,
  segments: [],
  grade: [],
  leastBore_mm: 41.3,
  leastPartId: null,
  leastPart_mm: null,
};
const pumped: HeadFinding = {
  ...head,
  hasHandPump: true,
  flowLow_L_per_min: 0,
  headLeft_m: -3,
  pumpAdds_m: 4,
  pumpPower_W: 19.6,
  onePerson_L_per_min: 30.6,
};

describe('a settling tank in words', () => {
  const { settling: said } = english.findings;

  it('says what settles, when to clean, and that clay does not', () => {
    expect(said(settling)).toBe(
      'Of grains of 20 µm, 95 % settle while people pump and 28.5 % in the storm. Clean it at least after 31 months: 16 L a year of sludge. Fine clay and germs do not settle: the water is no safer to drink for it.',
    );
    expect(said({ ...settling, settledInStorm_fraction: null })).toMatch(/pump; the storm is not known\./);
    expect(said({ ...settling, settledByDay_fraction: null })).toMatch(/^What settles is not known\. Fine clay/);
    expect(said({ ...settling, cleanAfter_months: null })).not.toMatch(/Clean/);
  });
});

describe('the way to the taps in words', () => {
  const { head: said } = english.findings;

  it('says what comes by itself, and what pipe would hold', () => {
    expect(said(head)).toBe(
      'With every tap open (15 L a minute) and the tank nearly empty, 1.2 m of head is left at the taps; by itself 16.2 L a minute comes. It would hold with pipes of 41.3 mm or more.',
    );
    expect(said({ ...head, leastPartId: 'pipe-50', leastPart_mm: 44 })).toMatch(/more: pipe-50 \(44 mm\)\.$/);
    expect(said({ ...head, headLeft_m: -0.5, flowLow_L_per_min: 0, leastBore_mm: null })).toMatch(
      /0\.5 m of head is missing at the taps; by itself nothing comes\. No wider pipe would do\.$/,
    );
    expect(said({ ...head, verdict: 'holds' })).not.toMatch(/would hold/);
    expect(said({ ...head, headLeft_m: null })).toBe('Whether water comes to the taps is not known.');
  });

  it('says what a person must do at the pump', () => {
    expect(said({ ...pumped, verdict: 'holds' })).toBe(
      'With every tap open (15 L a minute) and the tank nearly empty, the hand pump must add 4 m: 19.6 W at its handle. By itself nothing comes.',
    );
    expect(said(pumped)).toMatch(/One person can keep up 30\.6 L a minute\./);
  });

  it('says as much in Spanish', async () => {
    const spanish = await loadLanguage('es');
    for (const text of [
      spanish.findings.settling(settling),
      spanish.findings.head(head),
      spanish.findings.head(pumped),
    ])
      expect(text).not.toMatch(/undefined|NaN|\{|Fine|pump|tap/);
  });
});
