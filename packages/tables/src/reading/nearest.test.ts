import { describe, expect, it } from 'vitest';
import { nearest } from './nearest.ts';

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

  it('takes the nearer of two, and the first of equals', () => {
    expect(nearest('school', ['schol1', 'shool'])).toBe('shool');
    expect(nearest('tank-6', ['tank-5', 'tank-7'])).toBe('tank-5');
  });
});
