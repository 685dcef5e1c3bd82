import { describe, expect, it } from 'vitest';
import { labourerPower_W } from './labourerPower.ts';

describe('labourerPower_W', () => {
  it('is 187, 97.7 and 77 W for 12 minutes, 4 and 8 hours, and never under 0', () => {
    expect(labourerPower_W(12)).toBeCloseTo(187, 0);
    expect(labourerPower_W(240)).toBeCloseTo(97.7, 1);
    expect(labourerPower_W(480)).toBeCloseTo(77, 0);
    expect(labourerPower_W(1e9)).toBe(0);
  });
});
