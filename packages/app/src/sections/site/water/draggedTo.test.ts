import { expect, test } from 'vitest';
import { draggedTo, nextStep } from './draggedTo.ts';

const rim = { least: 0.15, most: 20, step: 0.05, decimals: 2 };

test('a hand that trembles moves nothing, not even to the next step', () => {
  expect(draggedTo(2.86, 0, rim)).toBe(2.86);
  expect(draggedTo(2.86, -0.02, rim)).toBe(2.86);
});

test('what is dragged stands at whole steps, within its limits', () => {
  expect(draggedTo(2.86, 0.06, rim)).toBe(2.9);
  expect(draggedTo(2.86, -0.03, rim)).toBe(2.85);
  expect(draggedTo(2.86, 900, rim)).toBe(20);
  expect(draggedTo(2.86, -900, rim)).toBe(0.15);
});

test('steps of a tenth leave no dust of binary figures', () => {
  expect(nextStep(0.2 + 0.1, { least: 0, most: 10, step: 0.1, decimals: 2 })).toBe(0.3);
});
