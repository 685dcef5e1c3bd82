import { expect, it } from 'vitest';
import type { WorkingLine } from '../../kernel/index.ts';
import { yearlyInflow_L } from './yearlyInflow.ts';

const years = [
  { label: 2001, from: 0, to: 2, missing_days: 0, judged: true },
  { label: 2002, from: 2, to: 4, missing_days: 2, judged: false },
  { label: 2003, from: 4, to: 6, missing_days: 0, judged: true },
];

it('is the mean over judged years only, and is written down', () => {
  const working: WorkingLine[] = [];
  const litres = yearlyInflow_L(Float64Array.of(1, 2, 100, 100, 3, 4), { years }, [], working);
  expect(litres).toBe(5);
  expect(working).toMatchObject([{ code: 'roof.inflow', value: 5, unit: 'L/year' }]);
});

it('refuses a record without a judged year', () => {
  expect(() => yearlyInflow_L(Float64Array.of(1), { years: [] }, [], [])).toThrow(RangeError);
});
