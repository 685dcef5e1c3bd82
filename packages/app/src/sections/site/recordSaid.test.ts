import { loadAppLanguage } from '@eavewell/words/app';
import { expect, test } from 'vitest';
import { recordSaid } from './recordSaid.ts';

const input = (name: string, value: number | string, unit = 'text') => ({ name, value, unit, label: name });
const line = (code: string, value: number, inputs: ReturnType<typeof input>[] = []) =>
  ({ code, value, unit: 'day', label: code, formula: '', inputs, source: '' }) as never;
const years = (judged: number, whole = judged) =>
  line('rain.years', judged, [
    input('wholeYears', whole, 'year'),
    input('firstDay', '1992-07-01'),
    input('lastDay', '2023-06-30'),
  ]);
const of = (judgedYears: number) => [{ judgedYears }] as never;

test('a whole record says how long it is, and what no record of that length can tell', async () => {
  const said = recordSaid({ working: [years(31)], storages: of(31) }, await loadAppLanguage('en'));
  expect(said).toHaveLength(2);
  expect(said[0]).toContain('31 years');
  expect(said[0]).toContain('1992');
  expect(said[1]).toContain('once in 45 years');
  // Other sentences may stand between: it names the years it speaks of.
  expect(said[1]).toContain('In 31 years');
});

test('filled days, years left out and gauges elsewhere are each said', async () => {
  const working = [years(20, 23), line('rain.filled', 212), line('rain.byDistance', 0.5), line('rain.byDistance', 0.5)];
  const said = recordSaid({ working, storages: of(20) }, await loadAppLanguage('en')).join(' ');
  expect(said).toContain('212 d');
  expect(said).toContain('3 years');
  expect(said).toContain('2 gauges');
});

test('the drought that is as likely as not missing: missed by 20 years and by 14 with the chance of a half', async () => {
  const words = await loadAppLanguage('en');
  const rarity = (judged: number) =>
    Number(/once in (\d+)/.exec(recordSaid({ working: [years(judged)], storages: of(judged) }, words).at(-1)!)![1]);
  for (const judged of [1, 5, 14, 20, 31]) {
    const chance = (of_years: number) => (1 - 1 / of_years) ** judged;
    expect(chance(rarity(judged) - 0.5)).toBeLessThanOrEqual(0.5);
    expect(chance(rarity(judged) + 0.5)).toBeGreaterThanOrEqual(0.5);
  }
});

test('made-up rain says that nobody measured it', async () => {
  const working = [years(100), line('rain.made', 36_500)];
  const said = recordSaid({ working, storages: of(100) }, await loadAppLanguage('es'));
  expect(said).toHaveLength(1);
  expect(said[0]).toContain('100');
});

test('a site without rain says nothing', async () => {
  expect(recordSaid({ working: [], storages: [] }, await loadAppLanguage('en'))).toEqual([]);
});
