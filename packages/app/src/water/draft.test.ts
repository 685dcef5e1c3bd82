import { expect, it } from 'vitest';
import { formTable } from '../forms/formTables.ts';
import { type DraftStep, emptyDraft, isAsked, noQuestion, withAgain, withoutLast, withStep } from './draft.ts';
import { limits } from './limits.ts';

const people = (count: number): DraftStep => ({ kind: 'people', people: count });

it('takes steps back and makes them again until another is made', () => {
  const two = withStep(withStep(emptyDraft, people(30)), people(40));
  const one = withoutLast(two);
  expect(one.steps).toEqual([people(30)]);
  expect(withAgain(one)).toEqual(two);
  expect(withoutLast(withoutLast(one)).steps).toEqual([]);
  expect(withStep(one, people(50))).toEqual({ steps: [people(30), people(50)], undone: [] });
  expect(withAgain(withStep(one, people(50))).steps).toHaveLength(2);
});

it('brings figures into what the tables take, and makes no step of what is no number', () => {
  expect(withStep(emptyDraft, people(Number.NaN))).toBe(emptyDraft);
  expect(withStep(emptyDraft, people(0.2)).steps).toEqual([people(1)]);
  expect(withStep(emptyDraft, people(Number.POSITIVE_INFINITY)).steps).toEqual([people(100_000)]);
  const roof = { kind: 'gutter', roofId: 'R1', gutteredFraction: 1.4 } as const;
  expect(withStep(emptyDraft, roof).steps).toEqual([{ ...roof, gutteredFraction: 1 }]);
  const tank = { kind: 'tank', tankId: 'T1', volume_L: 0.3 } as const;
  expect(withStep(emptyDraft, tank).steps).toEqual([{ ...tank, volume_L: 51 }]);
});

it('keeps to the limits of the tables', () => {
  for (const { low, high, column } of Object.values(limits)) {
    const { hard, otherUnit, kind } = formTable(column[0])!.columns[column[1]]!;
    expect(high, column[1]).toBe(hard!.high);
    // Values that are taken for another unit are not used either.
    expect(low, column[1]).toBeGreaterThanOrEqual(hard!.low);
    if (otherUnit) expect(low).toBeGreaterThan(otherUnit.high);
    else expect(low, column[1]).toBe(hard!.low);
    expect(kind === 'whole').toBe(column[1] === 'people' || column[1] === 'outlets');
  }
});

it('brings gutters, pipes and heights into what the tables take', () => {
  const gutter = { kind: 'fitting', of: 'gutter', id: 'G1', measure: 'outlets_count', value: 0.2 } as const;
  expect(withStep(emptyDraft, gutter).steps).toEqual([{ ...gutter, value: 1 }]);
  const tap = { kind: 'fitting', of: 'site', id: 'S1', measure: 'tapHeight_m', value: Number.NaN } as const;
  expect(withStep(emptyDraft, tap)).toBe(emptyDraft);
});

it('asks nothing with the rain and the order as they are', () => {
  expect(isAsked(noQuestion)).toBe(false);
  expect(isAsked({ ...noQuestion, order: 'ybs' })).toBe(true);
  expect(isAsked({ ...noQuestion, scenario: { ...noQuestion.scenario, lastYears: 10 } })).toBe(true);
});
