import { describe, expect, it } from 'vitest';
import { readIsoDay } from '../../kernel/index.ts';
import { readyWays } from './readyWays.ts';
import { levelShares, openChance, weekOf } from './riverChance.ts';
import { asked, place, way } from './ways.testing.ts';

describe('readyWays', () => {
  it('names every fault of a network and keeps what can be used', () => {
    const ready = readyWays(
      asked({
        places: [place('a', -1), place('b')],
        siteIds: ['S1'],
        ways: [
          way('fast', ['a', 'b'], 'road', { length_km: 400, there_h: 2, back_h: 4 }),
          way('lost', ['a', 'nowhere'], 'road', { there_h: 1 }),
          way('odd', ['b', 'S1'], 'foot', { length_km: Number.NaN, limit_kg: -5, porters_count: -1, there_h: 1 }),
        ],
        closures: [
          { ...none, closureId: 'C1', wayId: 'gone' },
          { ...none, closureId: 'C2', wayId: 'odd', slower_factor: 0 },
        ],
        wayLevels: [{ wayId: 'odd', carrierId: 'raft', least_m: 1, greatest_m: null }],
      }),
    );
    expect(ready.problems.map(({ code, facts }) => [code, facts['column'] ?? facts['end'] ?? ''])).toEqual([
      ['ways.figure_unusable', 'changeOver_h'],
      ['ways.hours_contradict', ''],
      ['ways.ends_nowhere', 'nowhere'],
      ['ways.figure_unusable', 'length_km'],
      ['ways.figure_unusable', 'limit_kg'],
      ['ways.figure_unusable', 'porters'],
      ['ways.carrier_unknown', ''],
      ['ways.closure_unused', ''],
      ['ways.figure_unusable', 'slower_factor'],
      ['ways.level_without_gauge', ''],
    ]);
    expect(ready.ways.map(({ way: one }) => one.wayId)).toEqual(['fast', 'odd']);
    // 400 km in 4 h are 100 km an hour; in 2 h they are not.
    expect(ready.ways[0]!.way).toMatchObject({ there_h: null, back_h: 4, length_km: 400 });
    expect(ready.ways[1]!.way).toMatchObject({ length_km: null, limit_kg: 0, porters_count: 0 });
    expect(ready.changeOver_h[0]).toBe(1);
    // Nobody knows how much slower: it is not counted on.
    expect(ready.causes.map(({ causeId, slower_factor }) => [causeId, slower_factor])).toEqual([['C2', Infinity]]);
  });

  it('tells of levels that are too few, once for each gauge', () => {
    const ready = readyWays(
      asked({
        places: [place('a'), place('b')],
        ways: [way('w', ['a', 'b'], 'river', { there_h: 1, riverGaugeId: 'G' })],
        riverLevels: [{ riverGaugeId: 'G', day: 20_000, level_m: 0 }],
        wayLevels: [
          { wayId: 'w', carrierId: 'boat', least_m: 1, greatest_m: null },
          { wayId: 'w', carrierId: 'truck', least_m: 2, greatest_m: null },
        ],
      }),
    );
    expect(ready.problems.map(({ code }) => code)).toEqual(['ways.levels_short']);
    expect(ready.causes).toEqual([]);
  });
});

const none = { wayId: null, weatherArea: null, months: [], from: null, to: null, slower_factor: null, reason: null };

describe('openChance', () => {
  const reading = (text: string, level_m: number) => ({ riverGaugeId: 'G', day: readIsoDay(text)!, level_m });

  it('is the share of days read between the bounds, in weeks read in five years', () => {
    const years = ['2020', '2021', '2022', '2023', '2024'];
    const levels = years.flatMap((year, index) => [reading(`${year}-01-03`, index), reading(`${year}-01-09`, 1)]);
    const chances = openChance([...levels.slice(0, -1)], { least_m: 1, greatest_m: 3 });
    // 0, 1, 2, 3, 4: both bounds count as open. The second week was read in four years alone.
    expect(chances[0]).toBeCloseTo(0.6, 12);
    expect(chances[1]).toBeNull();
    expect(openChance(levels, { least_m: null, greatest_m: 0.5 })[1]).toBe(0);
    const [first, second] = levelShares([...levels.slice(0, -1)], { least_m: 1, greatest_m: 3 });
    expect([first?.below_fraction, first?.above_fraction, second]).toEqual([1 / 5, 1 / 5, null]);
    expect(chances).toHaveLength(52);
  });

  it('takes weeks from 1 January on, the last with the day that is left', () => {
    expect(weekOf(readIsoDay('2027-01-07')!)).toBe(0);
    expect(weekOf(readIsoDay('2027-01-08')!)).toBe(1);
    expect(weekOf(readIsoDay('2027-12-31')!)).toBe(51);
    expect(weekOf(readIsoDay('2028-02-29')!)).toBe(weekOf(readIsoDay('2028-02-28')!));
  });
});
