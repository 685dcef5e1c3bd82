import { describe, expect, it } from 'vitest';
import { overMonth } from './rowsCompared.ts';

describe('a month of readings laid over the one that stands', () => {
  it('sets the days it has and leaves the others', () => {
    expect(overMonth('1;2;3;4', '_;9')).toBe('1;9;3;4');
    expect(overMonth('1;2', '_;_;_;7')).toBe('1;2;_;7');
    expect(overMonth('_;_;5', '4')).toBe('4;_;5');
  });

  it('takes a reading left empty for what it is', () => {
    expect(overMonth('1;2;3', '_;;')).toBe('1;;');
    expect(overMonth('_', ';_')).toBe(';_');
  });
});
