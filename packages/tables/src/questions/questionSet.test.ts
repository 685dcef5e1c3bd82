import { describe, expect, it } from 'vitest';
import { inspection } from './inspection.ts';
import { questionSet } from './questionSet.ts';

describe('a set of questions', () => {
  const [first] = inspection.questions;
  const set = (...questions: readonly unknown[]) => questionSet.safeParse({ ...inspection, questions }).success;

  it('takes what fits its kind', () => {
    expect(set(first)).toBe(true);
    expect(set({ ...first, kind: 'number', unit: 'L', choices: [] })).toBe(true);
    expect(set({ ...first, kind: 'text', choices: [] })).toBe(true);
  });

  it.each([
    ['one choice alone', { choices: first!.choices.slice(0, 1) }],
    ['a yes without a no', { kind: 'yesNo' }],
    ['choices of a text', { kind: 'text' }],
    ['a unit of a choice', { unit: 'L' }],
    ['a text instead of its key', { textKey: '<b>Is it clean?</b>' }],
    ['an unknown field', { html: 'x' }],
  ])('refuses %s', (_name, change) => {
    expect(set({ ...first, ...change })).toBe(false);
  });

  it('refuses two questions of one id, and none', () => {
    expect(set(first, first)).toBe(false);
    expect(set()).toBe(false);
  });
});

describe('the round of a site', () => {
  it('asks for screens, lid, standing water, first flush, stand, tie-downs and platform', () => {
    const ids = inspection.questions.map(({ id }) => id);
    for (const wanted of ['gutterScreen', 'inletScreen', 'overflowScreen', 'lid', 'gutterWater', 'firstFlush'])
      expect(ids).toContain(wanted);
    for (const wanted of ['standCracks', 'standLeans', 'standScour', 'tieDowns', 'tapPlatform'])
      expect(ids).toContain(wanted);
  });

  it('has a good answer to every question, and one that is not', () => {
    for (const { choices } of inspection.questions) {
      expect(choices.some(({ meaning }) => meaning === 'good')).toBe(true);
      expect(choices.some(({ meaning }) => meaning !== 'good')).toBe(true);
    }
  });
});
