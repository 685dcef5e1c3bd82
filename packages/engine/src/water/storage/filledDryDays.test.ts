import { expect, it } from 'vitest';
import { filledDay, neighbourDay } from '../../kernel/index.ts';
import { filledDryDays } from './filledDryDays.ts';

it('counts the dry days of judged years, and those whose rain was filled either way', () => {
  const series = {
    dry: Uint8Array.of(1, 1, 0, 1, 1, 1),
    state: Uint8Array.of(0, filledDay, filledDay, neighbourDay, filledDay, 0),
  };
  const years = [
    { from: 0, to: 4, judged: true },
    { from: 4, to: 6, judged: false },
  ];
  expect(filledDryDays(series, years)).toEqual({ dryDays: 3, filledDryDays: 2 });
});
