import { loadAppLanguage } from '@eavewell/words/app';
import { expect, it } from 'vitest';
import { notedOf } from './noted.ts';

it('what was noted beside a sample is told with its unit; what is no number stands as it was written', async () => {
  const words = await loadAppLanguage('en');
  const row = (testId: string, own: Readonly<Record<string, string>>) => ({
    ...{ table: 'waterTests', key: testId },
    cells: { siteId: 'S1', testId, ...own },
  });
  const all = [
    row('W1', { freeChlorine_mg_per_L: '0.3', turbidity_NTU: 'cloudy', laboratory: 'Dela' }),
    row('W2', { turbidity_NTU: '4.5' }),
  ];
  const noted = notedOf(all, 'S1', words);
  expect(noted('W1')).toEqual({ chlorine: '0.3 mg/L', turbidity: 'cloudy', by: 'Dela' });
  expect(noted('W2')).toEqual({ chlorine: '', turbidity: '4.5 NTU', by: '' });
  expect(noted('W3')).toEqual({ chlorine: '', turbidity: '', by: '' });
});
