import { loadAppLanguage } from '@eavewell/words/app';
import { expect, it } from 'vitest';
import { stopWith } from '../sheetForTests.ts';
import { massAboard } from './massAboard.ts';

const english = await loadAppLanguage('en');
await english.more();

it('a load is at least so much where a kit is counted in part, or a part of it has no mass', () => {
  const told = (change: Parameters<typeof stopWith>[0]) =>
    massAboard(412.4, { stops: [stopWith({}), stopWith(change)] }, english);
  expect(told({})).toBe('412 kg');
  expect(told({ isKitInPart: true })).toBe('at least 412 kg');
  expect(told({ isUnweighed: true })).toBe('at least 412 kg');
});
