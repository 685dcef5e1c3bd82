import { expect, it } from 'vitest';
import { Annealing, type Turn } from './annealing.ts';
import { loadRules, type SearchRules } from './searchRules.ts';

const rules: SearchRules = {
  ...loadRules,
  ...{ firstTemperature_ratio: 2, lastTemperature_ratio: 0.02, mostStarts_count: 3, triesAJobAndStart_count: 1000 },
  ...{ paceAfter_fraction: 0.02, startsShare_fraction: 0.6, gentler_ratio: 0.5 },
};

/** Temperatures and turns of a search of 100 jobs that makes `tries` in all, polled 100 times. */
function cooled(tries: number) {
  const annealing = new Annealing(rules, 10, 100);
  return Array.from({ length: 101 }, (_, spent) => {
    const turn: Turn = annealing.poll(spent / 100, (tries * spent) / 100);
    return { spent, turn, temperature: annealing.temperature };
  });
}

it('falls once from the first temperature to the last, by the same share each time, where tries are few', () => {
  const all = cooled(150_000);
  expect(all.every(({ turn }) => turn === 'on')).toBe(true);
  expect(all[0]!.temperature).toBeCloseTo(20, 9);
  expect(all[50]!.temperature).toBeCloseTo(2, 9);
  expect(all[100]!.temperature).toBeCloseTo(0.2, 9);
});

it('begins anew as often as there are tries for, then goes on gently from the best', () => {
  const turns = (tries: number) =>
    cooled(tries)
      .filter(({ turn }) => turn !== 'on')
      .map(({ turn, spent }) => [turn, spent]);
  expect(turns(250_000)).toEqual([
    ['anew', 30],
    ['best', 60],
  ]);
  expect(turns(350_000)).toEqual([
    ['anew', 20],
    ['anew', 40],
    ['best', 60],
  ]);
  expect(turns(9_000_000)).toEqual(turns(350_000));
  const all = cooled(250_000);
  expect(all[30]!.temperature).toBeCloseTo(20, 9);
  expect(all[60]!.temperature).toBeCloseTo(10, 9);
  expect(all[100]!.temperature).toBeCloseTo(0.2, 9);
});
