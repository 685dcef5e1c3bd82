import { expect, test } from 'vitest';
import { conditionIsUsable } from './kitConditions.ts';

test.each([
  ['people', 'atLeast', '40', true],
  ['people', 'is', 'many', false],
  ['people', 'atMost', ' ', false],
  ['handPump', 'is', 'yes', true],
  ['handPump', 'is', 'maybe', false],
  ['handPump', 'atLeast', 'yes', false],
  ['roofMaterial', 'isNot', 'thatch', true],
  ['roofMaterial', 'is', 'gold', false],
  ['siteClass', 'is', 'any word', true],
] as const)('a condition on %s that %s %s can be told: %s', (field, how, value, usable) => {
  expect(conditionIsUsable({ field, test: how, value })).toBe(usable);
});
