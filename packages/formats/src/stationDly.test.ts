import { readStationRain } from '@eavewell/tables';
import { describe, expect, it } from 'vitest';
import { dlyLines } from './stationDly.ts';

/**
 * Lines of the service's file of station USW00003870, Greer, South Carolina, daily rain in tenths of mm. Public domain. Source:
 * ghcn-daily, by way of the test files of the open package ulmo. The sums below were worked out from the lines by hand.
 */
const november1962 =
  'USW00003870196211PRCP    0  0    0  0    0T 0    0  0    0T 0    0  0    0  0   10  0  711  0    0T 0    0  0    0  0    0  0    0  0    0  0    0T 0   23  0  102  0    0T 0   13  0  267  0    0T 0    0  0    0  0   10  0    0  0    0  0    0T 0    0T 0    0  0-9999   ';
const july1976 =
  'USW00003870197607PRCP    0  0    0  0   10  0  305  0   86  0   18  0    8  0    0  0    0  0    0  0    0  0    0  0    0  0    0  0    0T 0    0T 0    0  0    0  0    0  0   20  0    0  0   76  0    0  0    0  0    0  0   25  0    5  0    0T 0  907 S0    0T 0    0  0';

function rainOf(line: string) {
  const { readings, problems } = readStationRain('greer', 'rain/greer.dly', dlyLines(`${line}\n`).lines);
  const known = readings.flatMap(({ rain_mm }) => rain_mm ?? []);
  const total_mm = known.reduce((sum, rain_mm) => sum + rain_mm, 0);
  return { readings, problems, known, total_mm, missing: readings.length - known.length };
}

describe('dlyLines', () => {
  it('counts no day behind the end of a month as missing', () => {
    const { missing, total_mm, known, problems, readings } = rainOf(november1962);
    expect([readings.length, missing]).toEqual([30, 0]);
    expect(total_mm).toBeCloseTo(113.6, 9);
    expect(known.filter((rain_mm) => rain_mm >= 1)).toHaveLength(7);
    expect(problems.find(({ code }) => code === 'station.trace')!.facts['count']).toBe(8);
  });

  it('carries the flag of a failed check, without which the month would be 90.7 mm wetter', () => {
    const { missing, total_mm, problems } = rainOf(july1976);
    expect(missing).toBe(1);
    expect(total_mm).toBeCloseTo(55.3, 9);
    expect(problems.find(({ code }) => code === 'station.failed_check')!.facts).toEqual({
      value: 'S',
      count: 1,
      days: ['1976-07-29'],
    });
    const unflagged = rainOf(july1976.replace('907 S0', '907  0'));
    expect(unflagged.total_mm).toBeCloseTo(146, 9);
  });

  it('knows line ends of every kind, and whether the last line ends', () => {
    for (const end of ['\n', '\r\n', '\r']) {
      const { lines, ended, cut } = dlyLines(`${november1962}${end}${july1976}${end}`);
      expect([lines.map(({ row }) => row), ended, cut]).toEqual([[1, 2], true, null]);
    }
    expect(dlyLines(july1976)).toMatchObject({ ended: false, cut: null });
    expect(dlyLines(july1976.slice(0, 100)).cut).toEqual({ row: 1, line: july1976.slice(0, 100) });
  });

  it.each([
    ['a month that is not', july1976.replace('197607', '197613')],
    ['a line that is too long', `${july1976}${' '.repeat(8)}x`],
    ['a word', 'PRCP'],
  ])('gives no values for %s', (_, line) => {
    expect(dlyLines(`${line}\n`).lines).toEqual([{ row: 1, cells: [line], values: null }]);
  });
});
