import { expect, it } from 'vitest';
import { defaultSettings, seedFor } from '../../kernel/index.ts';
import { limitsOfStorms_mm, stormDistribution } from './extremeLimits.ts';
import { maximumOnceIn_mm } from './extremes.ts';
import { stormTable } from './stormTable.ts';

const maxima = [61, 88, 54, 97, 70, 65, 120, 58, 73, 81, 66, 92];

it('has the storm of the settings among the return periods, as the design storm has it', () => {
  const table = stormTable(maxima, 'G1', { ...defaultSettings, stormReturnPeriod_years: 30 })!;
  expect(table.rows.map(({ returnPeriod_years }) => returnPeriod_years)).toEqual([2, 5, 10, 20, 30, 50, 100]);
  const row = table.rows[4]!;
  const fit = stormDistribution(maxima)!;
  expect(row.maximum_mm).toBe(maximumOnceIn_mm(fit, 30));
  const [range] = limitsOfStorms_mm(fit, 12, [30], 0.9, seedFor(1, 'storm G1'));
  expect(row.maximum_mm_range).toEqual(range);
});

it('rises from row to row by every method', () => {
  const { rows } = stormTable(maxima, 'G1', defaultSettings)!;
  for (const key of [
    'maximum_mm',
    'gevByLMoments_mm',
    'gevByLikelihood_mm',
    'gumbelByLMoments_mm',
    'gumbelByMoments_mm',
    'gumbelChow_mm',
  ] as const)
    for (let i = 1; i < rows.length; i++) expect(rows[i]![key]!).toBeGreaterThan(rows[i - 1]![key]!);
});

it('is none where nothing can be fitted', () => {
  expect(stormTable([50, 60, 70], 'G1', defaultSettings)).toBeNull();
  expect(stormTable([50, 50, 50, 50, 50], 'G1', defaultSettings)).toBeNull();
  expect(stormTable([], 'G1', defaultSettings)).toBeNull();
});
