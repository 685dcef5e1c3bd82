import { describe, expect, it } from 'vitest';
import { readIsoDay } from '../../kernel/index.ts';
import { dryRuns } from './dryRuns.ts';

const first = readIsoDay('2001-01-01')!;
const year = (label: number, from: number, to: number, judged = true) => ({ label, from, to, missing_days: 0, judged });

describe('dryRuns', () => {
  it('lists runs longest first, each once, in the year of its last day', () => {
    const { runs, longestByYear_days } = dryRuns(
      Uint8Array.of(0, 1, 1, 1, 0, 1, 0, 0),
      [year(2001, 0, 3), year(2002, 3, 8)],
      first,
    );
    expect(runs).toEqual([
      { from: first + 1, to: first + 3, days: 3, waterYear: 2002 },
      { from: first + 5, to: first + 5, days: 1, waterYear: 2002 },
    ]);
    expect(longestByYear_days).toEqual([2, 3]);
  });

  it('counts a run across the seam once, with the day it began at the end of the record', () => {
    const { runs } = dryRuns(Uint8Array.of(1, 0, 0, 1, 1), [year(2001, 0, 5)], first);
    expect(runs).toEqual([{ from: first + 3, to: first, days: 3, waterYear: 2001 }]);
  });

  it('a record that is always dry is one run of its whole length', () => {
    const { runs, longestByYear_days } = dryRuns(Uint8Array.of(1, 1, 1), [year(2001, 0, 3)], first);
    expect(runs.map((run) => run.days)).toEqual([3]);
    expect(longestByYear_days).toEqual([3]);
  });

  it('leaves out runs of years that are not judged', () => {
    expect(dryRuns(Uint8Array.of(1, 0), [year(2001, 0, 2, false)], first).runs).toEqual([]);
  });
});
