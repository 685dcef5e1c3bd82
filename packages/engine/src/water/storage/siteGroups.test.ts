import { describe, expect, it } from 'vitest';
import type { RoofFacts, TankFacts } from '../../kernel/index.ts';
import { unmeasuredRoof, unmeasuredTank } from '../../kernel/index.ts';
import { siteGroups } from './siteGroups.ts';

const tank = (tankId: string, peopleFraction: number | null = null, joinedTo: string | null = null): TankFacts => ({
  ...unmeasuredTank,
  tankId,
  nominal_L: 1000,

  joinedTo,

  peopleFraction,
});
const roof = (roofId: string, tankId: string | null = null, gutteredFraction: number | null = 1): RoofFacts => ({
  ...unmeasuredRoof,
  roofId,

  roofPlanArea_m2: 50,

  gutteredFraction,
  tankId,
});
const read = (tanks: TankFacts[], roofs: RoofFacts[]) => siteGroups({ siteId: 'S1', tanks, roofs });
const codes = (tanks: TankFacts[], roofs: RoofFacts[]) => read(tanks, roofs).problems.map(({ code }) => code);
const two = [roof('R1', 'T1'), roof('R2', 'T2')];

describe('siteGroups', () => {
  it('asks nothing more of a site with one body of water', () => {
    const joined = read([tank('T1'), tank('T2', null, 'T1')], [roof('R1'), roof('R2')]);
    expect(joined.problems).toEqual([]);
    expect(joined.groups).toMatchObject([{ tankIds: ['T1', 'T2'], roofIds: ['R1', 'R2'], peopleFraction: 1 }]);
    expect(codes([], [])).toEqual(['site.tank_none']);
    expect(codes([tank('T1', 0.6)], [])).toEqual(['site.tank_shares_sum']);
  });

  it('gives each body of water its roofs and its share, said of any of its tanks', () => {
    const tanks = [tank('T3'), tank('T1', 0.4, 'T3'), tank('T2', 0.6)];
    const found = read(tanks, [roof('R1', 'T1'), roof('R2', 'T2'), roof('R3', 'T3'), roof('R4', null, 0)]);
    expect(found.problems).toEqual([]);
    expect(found.groups).toMatchObject([
      { tankIds: ['T1', 'T3'], roofIds: ['R1', 'R3'], peopleFraction: 0.4 },
      { tankIds: ['T2'], roofIds: ['R2'], peopleFraction: 0.6 },
    ]);
  });

  it('never guesses a share', () => {
    const none = read([tank('T1'), tank('T2')], two);
    expect(none.problems).toMatchObject([{ code: 'site.tank_shares_unknown', facts: { tanks: ['T1', 'T2'] } }]);
    expect(none.groups.map(({ peopleFraction }) => peopleFraction)).toEqual([null, null]);
    expect(read([tank('T1', 1), tank('T2')], two).problems).toMatchObject([{ facts: { tanks: ['T2'] } }]);
    const over = read([tank('T1', 0.5), tank('T2', 0.506)], two);
    expect(over.problems).toMatchObject([{ code: 'site.tank_shares_sum', facts: { sum_fraction: 1.006 } }]);
    const joined = [tank('T1', 0.5), tank('T3', 0.4, 'T1'), tank('T2', 0.5)];
    expect(read(joined, two).problems).toMatchObject([
      { code: 'site.tank_shares_differ', severity: 'blocker', facts: { tanks: ['T1', 'T3'] } },
    ]);
  });

  it('takes thirds as they are written, and serves everybody', () => {
    const thirds = ['T1', 'T2', 'T3'].map((tankId) => tank(tankId, 0.333));
    const found = read(thirds, [...two, roof('R3', 'T3')]);
    expect(found.problems).toEqual([]);
    expect(found.groups.reduce((sum, group) => sum + group.peopleFraction!, 0)).toBeCloseTo(1, 15);
  });

  it('asks where every gutter leads once there are several', () => {
    const tanks = [tank('T1', 0.5), tank('T2', 0.5)];
    const odd = [...two, roof('R3'), roof('R4', 'T9'), roof('R5', null, null)];
    expect(read(tanks, odd).problems).toMatchObject(
      ['R3', 'R4', 'R5'].map((one) => ({ code: 'site.roof_tank_unknown', severity: 'blocker', facts: { roof: one } })),
    );
  });

  it('warns of a tank without a roof, and leaves a reserve out', () => {
    const tanks = [tank('T1', 0.7), tank('T2', 0.3), tank('T3', 0)];
    const found = read(tanks, [roof('R1', 'T1'), roof('R3', 'T3')]);
    expect(found.problems).toMatchObject([
      { code: 'site.tank_no_roof', severity: 'warning', facts: { tanks: ['T2'] } },
      { code: 'site.tank_reserve', severity: 'note', facts: { tanks: ['T3'] } },
    ]);
    expect(found.groups.map(({ tankIds }) => tankIds)).toEqual([['T1'], ['T2']]);
  });
});
