import { describe, expect, it } from 'vitest';
import { changes, nearest } from './nearest.ts';

describe('nearest', () => {
  it.each([
    ['peopel', ['name', 'people'], 'people'],
    ['PEOPLE', ['name', 'people'], 'people'],
    ['roof plan area (m2)', ['length_m', 'roofPlanArea_m2'], 'roofPlanArea_m2'],
    ['G-wset', ['G-east', 'G-west'], 'G-west'],
    ['rainfall', ['people', 'name'], null],
    ['S3', ['S1', 'S2'], null],
    ['', ['S1'], null],
    ['abc', [], null],
  ])('of %j among %j is %j', (written, known, expected) => {
    expect(nearest(written, known)).toBe(expected);
  });

  // Every change counts one, wherever it stands; a swap of neighbours counts one too.
  it('counts changes, and stops counting past the most', () => {
    expect(changes('tarn', 'tarn', 2)).toBe(0);
    expect(changes('uper tarn', 'upper tarn', 2)).toBe(1);
    expect(changes('puper tarn', 'upper tarn', 2)).toBe(1);
    expect(changes('puper tran', 'upper tarn', 2)).toBe(2);
    expect(changes('puper tranx', 'upper tarn', 3)).toBe(3);
    expect(changes('abcdefgh', 'stuvwxyz', 3)).toBe(4);
    expect(changes('xxxabcdefgh', 'abcdefghyyy', 6)).toBe(6);
    expect(changes('xxxabcdefgh', 'abcdefghyyy', 5)).toBe(6);
  });

  it('takes the nearer of two, and the first of equals', () => {
    expect(nearest('school', ['schol1', 'shool'])).toBe('shool');
    expect(nearest('tank-6', ['tank-5', 'tank-7'])).toBe('tank-5');
  });
});
