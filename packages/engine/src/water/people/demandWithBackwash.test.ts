import { expect, it } from 'vitest';
import type { WorkingLine } from '../../kernel/index.ts';
import { demandWithBackwash } from './demandWithBackwash.ts';

const value = {
  judged_L_per_day: 100,
  other_L_per_day: 40,
  judgedHighest_L_per_day: 120,
  judgedByDay_L: Float64Array.of(120, 80),
  otherByDay_L: Float64Array.of(40, 40),
};

it('asks a twentieth more on every day, and writes it down', () => {
  const working: WorkingLine[] = [];
  const more = demandWithBackwash({ ok: true, value, problems: [] }, 0.05, working);
  expect(more.ok && more.value).toEqual({
    judged_L_per_day: 105,
    other_L_per_day: 42,
    judgedHighest_L_per_day: 126,
    judgedByDay_L: Float64Array.of(126, 84),
    otherByDay_L: Float64Array.of(42, 42),
  });
  expect(working).toMatchObject([{ code: 'people.backwash', value: 147, unit: 'L/day' }]);
});

it('changes nothing where nothing goes back or nothing is known', () => {
  const demand = { ok: true, value, problems: [] } as const;
  const none = { ok: false, problems: [] } as const;
  const working: WorkingLine[] = [];
  expect(demandWithBackwash(demand, 0, working)).toBe(demand);
  expect(demandWithBackwash(none, 0.05, working)).toBe(none);
  expect(working).toEqual([]);
});
