import { freeboardRules, loadCautions, loadRules } from '@eavewell/engine';
import { expect, it } from 'vitest';
import { englishTexts } from './catalogues.ts';

it('has a text for every caution, rule and freeboard of loads, and for by whom one is carried', () => {
  const texts = englishTexts.sections['loads'] as Readonly<Record<string, string>>;
  const keys = [
    ...['one', 'two', 'carrier'].map((by) => `by.${by}`),
    ...loadCautions.map((caution) => `caution.${caution}`),
    // Told of a trip by boat beside those of its load.
    ...['noDark', 'weather'].map((caution) => `caution.${caution}`),
    ...loadRules.map((rule) => `rule.${rule}`),
    ...freeboardRules().map(({ rule }) => `freeboard.${rule}`),
  ];
  expect(Object.keys(texts).sort()).toEqual(keys.sort());
  expect(texts['caution.freeboardMark']).toMatch(/no permission/);
});
