import { describe, expect, it } from 'vitest';
import { csvLine } from './csvLine.ts';

describe('csvLine', () => {
  it('leaves what is not known empty, and never writes 0 for it', () => {
    expect(csvLine(['a', null, 0])).toBe('a,,0\n');
  });

  it('quotes what needs quotes, and guards what a spreadsheet would run', () => {
    expect(csvLine(['a "b", c', '=1+1', '-3.25'])).toBe(`"a ""b"", c",'=1+1,-3.25\n`);
  });

  it('refuses a number that is none', () => {
    expect(() => csvLine([Number.NaN])).toThrow(/NaN/);
  });
});
