import { describe, expect, it } from 'vitest';
import { writtenDegrees } from './writtenDegrees.ts';

describe('writtenDegrees', () => {
  it.each([
    ['7.45.30', 7.758333],
    ['-7.45.30', -7.758333],
    ["7°45'", 7.75],
    ['7°45\'30"', 7.758333],
    ['7° 45′ 30″ S', -7.758333],
    ["125°15'W", -125.25],
    ['S 7 45.5', -7.758333],
    ['7:45:30', 7.758333],
    ['8 30 0', 8.5],
    ['7º45’30’’', 7.758333],
    ["0°30'S", -0.5],
    ['8.5 S', -8.5],
    ['N8.5', 8.5],
    ['8.5°', 8.5],
    ['125.25E', 125.25],
  ])('%s is %d', (text, degrees) => {
    expect(writtenDegrees(text)).toBe(degrees);
  });

  it.each(["7°60'", '7°45\'60"', 'S 7 45 N', '-7.5 S', '7.45.30.15', 'x', '12m', '1 200 300', '1,5', '', '-', '°'])(
    '%s is none',
    (text) => {
      expect(writtenDegrees(text)).toBeNull();
    },
  );
});
