import { loadAppLanguage } from '@eavewell/words/app';
import { expect, test } from 'vitest';
import { measureEntry } from './measureEntry.ts';

const limits = { least: 200, most: 500_000, step: 500, decimals: 0 };
const small = { least: 0, most: 20, step: 0.5, decimals: 1 };

test('comma and point are both taken', async () => {
  const { numbers } = await loadAppLanguage('en');
  expect(measureEntry('7.5', small, numbers.parse)).toEqual({ kind: 'value', value: 7.5 });
  expect(measureEntry('7,5', small, numbers.parse)).toEqual({ kind: 'value', value: 7.5 });
});

test('a number that may be two is the one that a tank can have', async () => {
  const { numbers } = await loadAppLanguage('es');
  expect(measureEntry('12.000', limits, numbers.parse)).toEqual({ kind: 'value', value: 12_000 });
  expect(measureEntry('1.500', small, numbers.parse)).toEqual({ kind: 'value', value: 1.5 });
});

test('what is no number, or none a tank can have, is said and not used', async () => {
  const { numbers } = await loadAppLanguage('en');
  expect(measureEntry('twelve', limits, numbers.parse)).toEqual({ kind: 'wrong', why: 'number' });
  expect(measureEntry('12', limits, numbers.parse)).toEqual({ kind: 'wrong', why: 'range' });
  expect(measureEntry(' ', limits, numbers.parse)).toEqual({ kind: 'empty' });
});

test('people are counted whole', async () => {
  const { numbers } = await loadAppLanguage('en');
  const people = { least: 1, most: 100_000, step: 1, decimals: 0, isWhole: true };
  expect(measureEntry('1,500', people, numbers.parse)).toEqual({ kind: 'value', value: 1500 });
  expect(measureEntry('1.500', people, numbers.parse)).toEqual({ kind: 'value', value: 1500 });
  expect(measureEntry('12.5', people, numbers.parse)).toEqual({ kind: 'wrong', why: 'whole' });
});

test('of a number that may be two, both are told', async () => {
  const { numbers } = await loadAppLanguage('en');
  const litres = { least: 0, most: 5000, step: 0.5, decimals: 2 };
  const told = { kind: 'wrong', why: 'either', readings: [1500, 1.5] };
  expect(measureEntry('1,500', litres, numbers.parse)).toEqual(told);
  expect(measureEntry('1,500', { ...litres, most: 1 }, numbers.parse)).toEqual({ kind: 'wrong', why: 'range' });
});
