import { english, loadLanguage } from '@eavewell/words';
import { expect, it } from 'vitest';
import { saidIn } from './siteReport.ts';

it('says a value that is a word in words, and leaves figures and names as they are', async () => {
  const spanish = await loadLanguage('es');
  expect(saidIn('drinkingAndHandWashing', english)).toEqual({ said: 'drinking and hand washing' });
  expect(saidIn('drinkingAndHandWashing', spanish)).toEqual({ said: 'beber y lavarse las manos' });
  expect(saidIn('corrugatedMetal', spanish).said).not.toMatch(/corrugated|[A-Z]/);
  expect([saidIn('G1', spanish), saidIn(12.5, spanish), saidIn(null, spanish), saidIn({ low: 1 }, spanish)]).toEqual([
    {},
    {},
    {},
    {},
  ]);
});
