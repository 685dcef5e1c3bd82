import { loadAppLanguage } from '@eavewell/words/app';
import { describe, expect, it } from 'vitest';
import type { Cup } from './cups.ts';
import { dueWords, needsWords, reasonsOfReport, tallyWords } from './cupWords.ts';
import type { SafetyReport } from './site/safetyFigures.ts';

const words = await loadAppLanguage('en');
const spanish = await loadAppLanguage('es');

const report = {
  ...{ mayDrink: 'notShown', reasons: ['withheld', 'noSample'], notes: [], needsTest: ['none'], failedUnits: [] },
  ...{ withheldBy: [{ file: 'testPortions.csv', row: 48, column: 'positive' }], risks: [], sourceDays: null },
  target_DALY_per_person_per_year: 1e-4,
  waterTests: { last: null, clean_count: 0, unusable: [], tests: [] },
} as unknown as SafetyReport;

const as = (more: object): SafetyReport => ({ ...report, ...more }) as SafetyReport;

describe('why it may be said of one site', () => {
  it('the first reason comes first, the others after it', () => {
    expect(reasonsOfReport(report, words)).toEqual([
      'No more can be said before this is mended: Portions of samples, row 48.',
      'No clean sample since hand-over.',
    ]);
  });

  it('beside a tap nobody is told of tables and rows', () => {
    for (const language of [words, spanish]) {
      const unusable = [
        { testId: 'W1', because: 'portions', at: { file: 'testPortions.csv', row: 48 }, hasGerms: false },
      ];
      const of = as({
        reasons: ['withheld', 'sampleUnusable', 'noSample'],
        waterTests: { ...report.waterTests, unusable },
      });
      const told = reasonsOfReport(of, language, 'paper');
      expect(told).toHaveLength(3);
      expect(told.join(' ')).not.toMatch(/csv|row|fila|48|W1|\.,/);
    }
  });

  it('a row that says no is named once, a file that is no table by its own name', () => {
    const [twice] = reasonsOfReport(as({ withheldBy: [...report.withheldBy, ...report.withheldBy] }), words);
    expect(twice).toMatch(/before this is mended: Portions of samples, row 48\.$/);
    const [odd] = reasonsOfReport(as({ withheldBy: [{ file: 'oddments.csv' }] }), words);
    expect(odd).toMatch(/: oddments\.csv\.$/);
  });

  it('without a reason it is told that something is not known', () => {
    expect(reasonsOfReport(as({ reasons: [] }), words)).toEqual([
      'Something that it depends on is not known; its page says what.',
    ]);
  });

  it('what is told beside a site that is fit stands with the first reason alone', () => {
    const fit = as({
      ...{ mayDrink: 'yes', reasons: ['shown'], notes: ['setOverdue'] },
      waterTests: { ...report.waterTests, clean_count: 2 },
    });
    expect(reasonsOfReport(fit, words)).toEqual([
      'Its barriers keep within the target in the worst likely water, and the last 2 samples were clean. A set of cartridges is overdue.',
    ]);
  });
});

describe('what is due', () => {
  const cupOf = (needsTest: Cup['needsTest']) => ({ cup: { needsTest } as Cup });

  it('every reason for a test is told, and nothing where none is wanted', () => {
    expect(needsWords(cupOf(['failed', 'setOverdue']), words)).toBe(
      'Needs a test: the last sample failed; a set of cartridges is overdue.',
    );
    for (const need of ['failed', 'unitFailed', 'unusable', 'none', 'tooOld', 'setOverdue'] as const)
      expect(needsWords(cupOf([need]), words)).toMatch(/^Needs a test: [a-z -]{10,}\.$/);
    expect(needsWords(cupOf([]), words)).toBe('');
    expect(needsWords({ cup: null }, words)).toBe('');
  });

  it('a set is overdue once its middle day has passed, and from the day after', () => {
    const set = { serial: 'U1', early: '2026-03-02', middle: '2026-06-10', late: '2026-12-20' };
    expect(dueWords(set, '2026-06-11', words)).toBe('overdue, likely since June 2026');
    expect(dueWords(set, '2026-06-10', words)).toBe('from now to 6 months');
    expect(dueWords(set, '2026-01-01', words)).toBe('in 2 to 12 months');
    expect(dueWords({ ...set, early: set.middle, late: set.middle }, '2026-05-10', words)).toBe('in about 1 month');
    expect(dueWords(set, '2026-06-11', spanish)).toContain('junio 2026');
  });
});

it('the one sentence begins with those who must not drink', () => {
  const tally = { all: 60, drink: { no: 4, notShown: 21, yes: 27, notJudged: 8 }, due: { sample: 0, set: 0 } };
  expect(tallyWords(tally, words).first).toBe('Do not drink at 4 sites of 60.');
  expect(tallyWords({ ...tally, drink: { no: 0, notShown: 0, yes: 0, notJudged: 60 } }, words).first).toMatch(
    /^60 of 60 are not judged/,
  );
});
