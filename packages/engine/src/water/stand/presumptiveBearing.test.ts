import { expect, it } from 'vitest';
import { groundClasses } from '../../kernel/index.ts';
import { bearingFigures } from './constants.ts';
import { presumptiveBearing } from './presumptiveBearing.ts';

it('takes the lowest of the listings, with its source', () => {
  expect(presumptiveBearing('looseSand')).toEqual({ bearing_kPa: 50, source: 'nbc-canada, table 9.4.4.1' });
  expect(presumptiveBearing('firmClay')!.source).toContain('ibc-2012');
  expect(presumptiveBearing('firmClay')!.bearing_kPa).toBeCloseTo(71.82, 2);
});

it('is never above any listing, and never above that of firmer ground of its kind', () => {
  for (const groundClass of groundClasses)
    for (const { bearing_kPa } of bearingFigures[groundClass])
      expect(presumptiveBearing(groundClass)!.bearing_kPa).toBeLessThanOrEqual(bearing_kPa);
  const of = (name: (typeof groundClasses)[number]) => presumptiveBearing(name)!.bearing_kPa;
  expect(of('softClay')).toBeLessThan(of('firmClay'));
  expect(of('firmClay')).toBeLessThanOrEqual(of('stiffClay'));
  expect(of('looseSand')).toBeLessThan(of('denseSand'));
  expect(of('looseGravel')).toBeLessThan(of('denseGravel'));
  expect(of('softRock')).toBeLessThan(of('rock'));
});

it('has no figure for soft or made ground', () => {
  expect(presumptiveBearing('softOrMadeGround')).toBeNull();
});
