import { describe, expect, it } from 'vitest';
import type { TankFacts } from '../../kernel/index.ts';
import { unmeasuredTank } from '../../kernel/index.ts';
import { usableVolume } from './usableVolume.ts';

const tank = (tankId: string, facts: Partial<TankFacts> = {}): TankFacts => ({
  ...unmeasuredTank,
  tankId,

  ...facts,
});
const codes = (tanks: TankFacts[]) => usableVolume('S1', tanks).problems.map((problem) => problem.code);

describe('usableVolume', () => {
  it('is the cylinder between outlet and overflow', () => {
    // A cylinder 2 m across and 1 m high holds π m³.
    const found = usableVolume('S1', [tank('T1', { diameter_m: 2, outletHeight_m: 0.2, overflowHeight_m: 1.2 })]);
    expect(found.tankVolume_L).toBeCloseTo(Math.PI * 1000, 9);
    expect(found.problems).toEqual([]);
  });

  it('falls back on the stated volume, the site’s own before the catalogue’s, with a warning', () => {
    const found = usableVolume('S1', [tank('T1', { nominal_L: 5000, partVolume_L: 5100 })]);
    expect(found.tankVolume_L).toBe(5000);
    expect(found.problems.map((p) => [p.code, p.severity])).toEqual([['site.tank_volume_stated', 'warning']]);
    expect(usableVolume('S1', [tank('T1', { partVolume_L: 6000 })]).tankVolume_L).toBe(6000);
  });

  it('lets joined tanks share one level at the heights of their stands', () => {
    const two = { diameter_m: 2, outletHeight_m: 0.1, overflowHeight_m: 2.3 };
    const at = (low_m: number | null, high_m: number | null) =>
      usableVolume('S1', [
        tank('T1', { ...two, standHeight_m: low_m }),
        tank('T2', { ...two, joinedTo: 'T1', standHeight_m: high_m }),
      ]);
    // Each is π m² across; a metre apart they share 1.1 to 2.3 m, at one height 0.1 to 2.3 m.
    expect(at(0, 1).tankVolume_L).toBeCloseTo(2 * 1.2 * Math.PI * 1000, 6);
    expect(at(0, 1).problems.map(({ code }) => code)).toContain('site.tank_levels_differ');
    expect(at(0.5, 0.5).tankVolume_L).toBeCloseTo(2 * 2.2 * Math.PI * 1000, 6);
    expect(at(0, null).tankVolume_L).toBeCloseTo(2 * 2.2 * Math.PI * 1000, 6);
    // Three metres apart the lower one spills before the higher one has any.
    expect(at(0, 3).tankVolume_L).toBe(0);
  });

  it('tells that joined tanks are taken as level where nobody measured how high they stand, and of one tank nothing', () => {
    const two = { diameter_m: 2, outletHeight_m: 0.1, overflowHeight_m: 2.3 };
    const told = (...heights: readonly (number | null)[]) =>
      usableVolume(
        'S1',
        heights.map((standHeight_m, i) => tank(`T${i + 1}`, { ...two, standHeight_m, joinedTo: i > 0 ? 'T1' : null })),
      ).problems.map(({ code, severity, place, facts }) => [code, severity, place.column, facts['tanks']]);
    const level = (tanks: readonly string[]) => [['site.tank_stands_level', 'note', 'standHeight_m', tanks]];
    expect(told(null, null)).toEqual(level(['T1', 'T2']));
    expect(told(0.5, null, 0.5)).toEqual(level(['T2']));
    expect([told(0.5, 0.5), told(0, 0), told(null)]).toEqual([[], [], []]);
    // By their stated volumes too: added up, they are taken to fill and empty together.
    expect(codes([tank('T1', { nominal_L: 1000 }), tank('T2', { nominal_L: 1000, joinedTo: 'T1' })])).toContain(
      'site.tank_stands_level',
    );
  });

  it('adds tanks that are joined at the foot, in a chain too', () => {
    const tanks = [
      tank('T3', { nominal_L: 3000, joinedTo: 'T2' }),
      tank('T1', { nominal_L: 1000 }),
      tank('T2', { nominal_L: 2000, joinedTo: 'T1' }),
    ];
    expect(usableVolume('S1', tanks).tankVolume_L).toBe(6000);
  });

  it('holds joined tanks to one level: the lowest overflow and the highest outlet', () => {
    const heights = { diameter_m: 2, outletHeight_m: 0.1, standHeight_m: 0 };
    const found = usableVolume('S1', [
      tank('T1', { ...heights, overflowHeight_m: 2 }),
      tank('T2', { ...heights, overflowHeight_m: 1, joinedTo: 'T1' }),
    ]);
    // Two cylinders of π m² between 0.1 m and 1 m.
    expect(found.tankVolume_L).toBeCloseTo(2 * Math.PI * 900, 6);
    expect(found.problems.map((problem) => problem.code)).toEqual(['site.tank_levels_differ']);
  });

  it('counts of a settling tank what lies between draw-off and overflow, and never its stated volume', () => {
    const heights = { diameter_m: 2, outletHeight_m: 0.8, overflowHeight_m: 1.8 };
    const storing = tank('T1', { nominal_L: 5000 });
    const known = usableVolume('S1', [storing, tank('T2', { ...heights, role: 'settling', joinedTo: 'T1' })]);
    expect(known.tankVolume_L).toBeCloseTo(5000 + Math.PI * 1000, 9);
    // Of one level with the tank it feeds: that one is drawn down to its own outlet, not to the draw-off of the first.
    const measured = tank('T1', { diameter_m: 2, outletHeight_m: 0.1, overflowHeight_m: 1.9 });
    const level = usableVolume('S1', [measured, tank('T2', { ...heights, role: 'settling', joinedTo: 'T1' })]);
    expect(level.tankVolume_L).toBeCloseTo(Math.PI * (1700 + 1000), 9);
    const stated = tank('T2', { nominal_L: 3000, outletHeight_m: 0.8, role: 'settling', joinedTo: 'T1' });
    const found = usableVolume('S1', [storing, stated]);
    expect(found.tankVolume_L).toBe(5000);
    expect(found.problems.map(({ code }) => code)).toEqual(['site.settling_not_counted', 'site.tank_volume_stated']);
    expect(codes([stated])).toEqual(['site.settling_not_counted', 'site.tank_volume_unknown']);
    expect(usableVolume('S1', [stated]).tankVolume_L).toBeNull();
  });

  it('gives no volume without facts, or with an overflow under the outlet', () => {
    expect(codes([tank('T1')])).toEqual(['site.tank_volume_unknown']);
    const upsideDown = tank('T1', { diameter_m: 2, outletHeight_m: 1.2, overflowHeight_m: 0.2, nominal_L: 900 });
    expect(codes([upsideDown])).toEqual(['site.tank_volume_unknown']);
    expect(usableVolume('S1', [upsideDown]).tankVolume_L).toBeNull();
  });

  it('asks for a second look where heights and stated volume are far apart', () => {
    const facts = { diameter_m: 2, outletHeight_m: 0, overflowHeight_m: 1, nominal_L: 5000 };
    expect(codes([tank('T1', facts)])).toEqual(['site.tank_volume_differs']);
    expect(codes([tank('T1', { nominal_L: 5000, partVolume_L: 9000 })])).toContain('site.tank_volume_differs');
  });
});
