import { describe, expect, it } from 'vitest';
import type { SiteReport } from './siteFigures.ts';
import { foldedWorking } from './workingFolds.ts';

type Line = SiteReport['working'][number];

const line = (code: string, value: Line['value'], unit: string, inputs: Line['inputs'] = []): Line => ({
  ...{ code, value, unit, inputs },
  ...{ label: code, formula: '', source: 'definition', sourceSaid: '' },
});
const input = (value: number | string, unit: string) => ({ name: 'x', label: 'x', value, unit });

/** A chain of three, twice, among many others. */
const long: readonly Line[] = [
  line('raw', 0.12, 'per_L'),
  line('ill', 0.034, 'fraction', [input(0.12, 'per_L'), input('RIVER', 'text')]),
  line('harm', 0.0005, 'DALY', [input(0.034, 'fraction'), input('RIVER', 'text')]),
  ...Array.from({ length: 12 }, (_, i) => line('other', i, 'count')),
  line('raw', 0.5, 'per_L'),
  line('ill', 0.07, 'fraction', [input(0.5, 'per_L'), input('ROOF', 'text')]),
  line('harm', 0.001, 'DALY', [input(0.07, 'fraction'), input('ROOF', 'text'), input(3, 'count')]),
];

describe('a long working', () => {
  it('has the line asked for first, then those its figures come from, and each line once', () => {
    const { asked, from, others, isFolded } = foldedWorking(long, 'harm ROOF');
    expect([asked, from]).toEqual([[17], [15, 16]]);
    expect(isFolded).toBe(true);
    expect([...asked, ...from, ...others].sort((a, b) => a - b)).toEqual(long.map((_, i) => i));
  });

  it('of a figure of the whole site every line of it is asked for', () => {
    expect(foldedWorking(long, 'harm')).toMatchObject({ asked: [2, 17], from: [0, 1, 15, 16] });
  });

  it('a whole number is the result of no line by itself, and one of another unit is not meant', () => {
    expect(foldedWorking(long, 'harm ROOF').from).not.toContain(6);
    const odd = [...long, line('last', 1, 'x', [input(0.12, 'mm')])];
    expect(foldedWorking(odd, 'last').from).toEqual([]);
  });

  it('is not folded where it is short, or where the line asked for is not in it', () => {
    expect(foldedWorking(long.slice(0, 3), 'harm').isFolded).toBe(false);
    expect(foldedWorking(long, 'nothing').isFolded).toBe(false);
    expect(foldedWorking(long, 'nothing at all').isFolded).toBe(false);
  });
});
