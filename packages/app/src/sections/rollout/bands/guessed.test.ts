import { describe, expect, it } from 'vitest';
import { unsureAfter } from './guessed.ts';

const span = (from: string, to: string, isToGuessed = false) => ({
  ...({ from, to, isToGuessed, kind: 'closed', said: 'closed' } as const),
});

describe('days after a guessed last day', () => {
  it('are two weeks', () => {
    const guess = span('2026-06-01', '2026-06-20', true);
    expect(unsureAfter(guess, { spans: [guess] })).toEqual({ from: '2026-06-21', to: '2026-07-04' });
  });

  it('are none where the last day is known', () => {
    const known = span('2026-06-01', '2026-06-20');
    expect(unsureAfter(known, { spans: [known] })).toBeNull();
  });

  it('end where the way closes again, not where it is slower alone', () => {
    const guess = span('2026-06-01', '2026-06-20', true);
    const spans = [span('2026-05-01', '2026-05-02'), guess, span('2026-06-25', '2026-07-10')];
    expect(unsureAfter(guess, { spans })).toEqual({ from: '2026-06-21', to: '2026-06-24' });
    const slower = { ...span('2026-06-21', '2026-08-01'), kind: 'slower' as const };
    expect(unsureAfter(guess, { spans: [guess, slower] })).toEqual({ from: '2026-06-21', to: '2026-07-04' });
    const slowerGuess = { ...guess, kind: 'slower' as const };
    expect(unsureAfter(slowerGuess, { spans: [slowerGuess, slower] })).toBeNull();
  });
});
