import { describe, expect, it } from 'vitest';
import { type TankAhead, unitLitres } from './unitLitres.ts';

const asked = (...litres: number[]) => Float64Array.from(litres);
const tank: TankAhead = {
  tankVolume_L: 100,
  content_L: 20,
  judged_L: asked(10, 10, 10, 10),
  other_L: asked(5, 5, 5, 5),
  covered: null,
  order: 'drawFirst',
  ration: null,
  otherTreated_fraction: 0,
};

describe('what passes the unit', () => {
  it('is what the tank gives of the judged litres', () => {
    const { tank_L, source_L, content_L } = unitLitres(tank, asked(0, 0, 4, 200));
    // 20 − 15, 5 − 5, nothing then 4, 4 − 4 then full.
    expect([...tank_L]).toEqual([10, 5, 0, 4]);
    expect([...source_L]).toEqual([0, 0, 0, 0]);
    expect(content_L).toBe(100);
  });

  it('is the share of the other litres that is treated too', () => {
    expect([...unitLitres({ ...tank, otherTreated_fraction: 1 }, asked(0, 0, 0, 0)).tank_L]).toEqual([15, 5, 0, 0]);
    expect([...unitLitres({ ...tank, otherTreated_fraction: 0.5 }, asked(0, 0, 0, 0)).tank_L]).toEqual([12.5, 5, 0, 0]);
  });

  it('comes from the second source where the tank lacks judged litres, on the days it covers', () => {
    const covered = Uint8Array.of(1, 1, 1, 0);
    expect([...unitLitres({ ...tank, covered }, asked(0, 0, 0, 0)).source_L]).toEqual([0, 5, 10, 0]);
  });

  it('is less where water is rationed', () => {
    const ration = { below_fraction: 0.5, judged_fraction: 0.6, other_fraction: 0 };
    expect([...unitLitres({ ...tank, ration }, asked(0, 0, 0, 0)).tank_L]).toEqual([6, 6, 6, 2]);
  });

  it('may be the rain of the same day, where it comes before it is drawn', () => {
    expect([...unitLitres({ ...tank, content_L: 0, order: 'ybs' }, asked(8, 0, 0, 0)).tank_L]).toEqual([8, 0, 0, 0]);
    expect([...unitLitres({ ...tank, content_L: 0 }, asked(8, 0, 0, 0)).tank_L]).toEqual([0, 8, 0, 0]);
  });
});
