import type { StandFinding } from '@eavewell/engine';
import { expect, it } from 'vitest';
import { cautionNames, english, loadLanguage } from './index.ts';

const found: StandFinding = {
  tankId: 'T1',
  verdict: 'holds',
  standHeight_m: 0.5,
  mostHeld_L: 4071,
  massEmpty_kg: 1050,
  massFull_kg: 5114,
  bearing_kPa: 34.84,
  bearingAllowed_kPa: 71.82,
  bearingUse_factor: 0.485,
  windSpeed_m_per_s: 30,
  windForce_N: 763.4,
  empty: { overturning_factor: 1.2, sliding_factor: 0.8 },
  full: { overturning_factor: 6, sliding_factor: 4 },
  loose: null,
  leastHeld_L: 812,
  lacks: [],
  cappedBy: null,
};

it('says what holds, and that it may not be sure', () => {
  const { stand } = english.findings;
  expect(stand(found)).toBe('Tank T1: ground and weight hold it, full and empty, in a wind of 30 m a second.');
  expect(stand({ ...found, verdict: 'tight' })).toContain('margin');
  expect(stand({ ...found, verdict: 'tight', cappedBy: 'stand.fastening_assumed' })).toContain('fastened');
  expect(stand({ ...found, verdict: 'unknown' })).toContain('too little is known');
});

it('says what it fails by, with the water that would keep it standing', () => {
  const { stand } = english.findings;
  const short: StandFinding = { ...found, verdict: 'short', lacks: ['overturning', 'sliding'] };
  expect(stand(short)).toBe(
    'Tank T1: empty, a wind of 30 m a second could tip it (safety 1.2, wanted 1.5); ' +
      'empty, a wind of 30 m a second could push it along (safety 0.8, wanted 1.5). With 820 L left in it, it would stand.',
  );
  expect(stand({ ...short, leastHeld_L: null })).toContain('must be tied down');
  expect(stand({ ...short, lacks: ['bearing', 'sliding'], bearing_kPa: 90 })).toBe(
    'Tank T1: full, it presses on the ground with 90 kPa, and the ground is presumed to carry 71.8 kPa; ' +
      'empty, a wind of 30 m a second could push it along (safety 0.8, wanted 1.5).',
  );
  expect(stand({ ...short, lacks: ['bearing'] })).not.toContain('left in it');
  const notKnown = { overturning_factor: null, sliding_factor: null };
  expect(stand({ ...short, lacks: ['sliding'], empty: notKnown, leastHeld_L: null })).not.toContain('tied down');
});

it('says that water keeps a tank only if it is fastened, where the wind would take it off its stand', async () => {
  const spanish = await loadLanguage('es');
  const loose = { overturning_factor: 4, sliding_factor: 0.1 };
  const short: StandFinding = { ...found, verdict: 'short', lacks: ['sliding'], loose };
  const ifFastened = 'With 820 L left in it, it would stand, but only if the tank is fastened to its stand.';
  expect(english.findings.stand(short)).toContain(ifFastened);
  expect(spanish.findings.stand(short)).toContain('solo si el tanque está sujeto a su soporte');
  // What was not fastened is in the litres already; what stays on by itself asks for nothing.
  for (const one of [{ lacks: ['sliding', 'fastening'] }, { loose: { overturning_factor: 4, sliding_factor: 1.5 } }])
    expect(english.findings.stand({ ...short, ...one } as StandFinding)).toContain(
      'With 820 L left in it, it would stand.',
    );
});

it('says in both languages that a closed gate is not to be filled, and has every caution', async () => {
  const spanish = await loadLanguage('es');
  expect(english.findings.standGate('closed')).toMatch(/do not fill/);
  expect(spanish.findings.standGate('closed')).toMatch(/no lo llene/);
  for (const name of cautionNames) expect(spanish.cautions[name]).not.toBe(english.cautions[name]);
  expect(english.cautions.stand).toMatch(/can kill/);
});
