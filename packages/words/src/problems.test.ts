import { engineProblems, type Problem } from '@eavewell/engine';
import { recordProblems } from '@eavewell/records';
import { tableProblems } from '@eavewell/tables';
import { describe, expect, it } from 'vitest';
import { english, problemSentence } from './index.ts';
import { problemSentences } from './sentences/problemSentences.ts';

const catalogue = { ...engineProblems, ...recordProblems, ...tableProblems };
const codes = Object.keys(catalogue) as (keyof typeof catalogue)[];

/** Every fact any problem carries. */
const everyFact: Problem['facts'] = {
  value: '7,5',
  expected: 'number 0 to 10 [mm]',
  unit: 'mm',
  column: 'firstFlush_mm',
  likely: '7.5',
  low: '0',
  high: '10',
  count: 3,
  cells: 4,
  columns: 6,
  missing: ['width_m', 'material'],
  readings: ['2001-02-01', '2001-01-02'],
  choices: ['open', 'blocked'],
  found: 'siteId, name',
  firstRow: 4,
  lastRow: 90,
  reason: 'access denied',
  years: ['1998', '2004'],
  roof: 'R1',
  tank: 'T1',
  tanks: ['T1', 'T2'],
  other: 'g1',
  others: ['G2', 'G3'],
  key: 'draws',
  used: 1000,
  number: 3,
  stated_L: 10000,
  measured_L: 8200,
  outlet_m: 1.2,
  overflow_m: 0.4,
};

const made = (code: keyof typeof catalogue, facts: Problem['facts']): Problem => ({
  code,
  severity: catalogue[code],
  place: { file: 'roofs.csv', row: 14, column: 'length_m', day: '2010-07-20' },
  facts,
});

describe('problem sentences', () => {
  it('has as many sentences as there are codes', () => {
    expect(Object.keys(problemSentences).sort()).toEqual([...codes].sort());
    expect(codes.length).toBeGreaterThan(80);
  });

  for (const code of codes) {
    it(`${code} says what is wrong and what to do`, () => {
      for (const facts of [everyFact, {}, { value: '' }]) {
        const { what, todo } = problemSentence(made(code, facts));
        for (const text of [what, todo]) {
          expect(text.length).toBeGreaterThan(7);
          expect(text).not.toMatch(/undefined|NaN|\[object|null| {2}|\.\./);
          expect(text).toMatch(/^["A-Z0-9(]|^settings\.json|^columns\.json|^datapackage\.json/);
          expect(text).toMatch(/[.?]$/);
        }
      }
    });
  }

  it('names the value found and what to write', () => {
    const { what, todo } = problemSentence(made('cell.decimal_comma', everyFact));
    expect(what).toBe('"7,5" has a decimal comma.');
    expect(todo).toBe('Write 7.5 with a point.');
  });

  it('cuts a value that is too long to read', () => {
    const { what } = problemSentence(made('cell.not_a_number', { value: 'x'.repeat(5000) }));
    expect(what.length).toBeLessThan(100);
  });

  it('refuses a code it does not know', () => {
    expect(() => problemSentence({ ...made('rain.none', {}), code: 'rain.unheard' })).toThrow(/rain\.unheard/);
  });

  it('says where', () => {
    expect(english.place({ file: 'roofs.csv', row: 14, column: 'length_m' })).toBe('roofs.csv, row 14, length_m');
    expect(english.place({})).toBe('the folder');
  });
});
