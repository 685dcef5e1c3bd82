import { loadAppLanguage } from '@eavewell/words/app';
import { expect, it } from 'vitest';
import { questionSaid } from './questionSaid.ts';

const asItWas = { wetDays_fraction: 1, wetDayRain_fraction: 1, lastYears: null };

it('says everything that is asked, and nothing else', async () => {
  const words = await loadAppLanguage('en');
  const all = questionSaid(
    { scenario: { wetDays_fraction: 0.9, wetDayRain_fraction: 1.25, lastYears: 12 }, order: 'ybs' },
    words,
  );
  for (const part of ['not the record', '90 %', '125 %', 'last 12 years', 'generous']) expect(all).toContain(part);
  const one = questionSaid({ scenario: { ...asItWas, wetDays_fraction: 0.8 }, order: null }, words);
  expect(one).toContain('80 %');
  for (const part of ['rain of a wet day', 'years', 'order']) expect(one).not.toContain(part);
});

it('says nothing where nothing is asked', async () => {
  expect(questionSaid({ scenario: asItWas, order: null }, await loadAppLanguage('es'))).toBeNull();
});
