import { expect, it } from 'vitest';
import { unmeasuredTank } from '../../kernel/index.ts';
import { isUnsigned, standGate } from './standGate.ts';

const signed = { ...unmeasuredTank, standHeight_m: 1.5, signedBy: 'R. Aldane', signedOn: 20_000 };
const ground = { ...unmeasuredTank, standHeight_m: 0 };

it('needs no signature where nothing stands on a stand', () => {
  expect(standGate([], null)).toBe('notNeeded');
  expect(standGate([ground, { ...ground, standHeight_m: null }], null)).toBe('notNeeded');
});

it('is closed without a name, without a day, and with a day to come', () => {
  for (const lacks of [{ signedBy: null }, { signedBy: ' ' }, { signedOn: null }])
    expect(standGate([{ ...signed, ...lacks }], null)).toBe('closed');
  expect(standGate([signed], 19_999)).toBe('closed');
  expect(standGate([signed], 20_000)).toBe('open');
  expect(standGate([signed], null)).toBe('open');
});

it('is closed for a stand whose height was not measured', () => {
  expect(standGate([{ ...unmeasuredTank, standMass_kg: 300 }], null)).toBe('closed');
  expect(standGate([{ ...unmeasuredTank, baseWidth_m: 2 }], null)).toBe('closed');
});

it('is closed by one of several', () => {
  expect(standGate([signed, ground, { ...signed, signedBy: null }], null)).toBe('closed');
  expect(isUnsigned(ground, null)).toBe(false);
});
