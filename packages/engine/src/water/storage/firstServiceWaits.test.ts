import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { calendarDay, dayIndexOf, daysInMonth, readIsoDay } from '../../kernel/index.ts';
import { rulesOf } from './dayRules.ts';
import { firstServiceDay } from './firstService.ts';
import { firstServiceWaits, middleWaits } from './firstServiceWaits.ts';

const first = readIsoDay('2003-07-01')!;
const days = 3 * 365 + 200;
const leap = dayIndexOf(2000, 1, 1);

const record = fc.record({
  // Rain on some days, what is asked, and a stretch of the year in which nothing is.
  rain: fc.array(fc.tuple(fc.nat({ max: days - 1 }), fc.integer({ min: 1, max: 300 })), { maxLength: 60 }),
  judged: fc.integer({ min: 1, max: 120 }),
  other: fc.integer({ min: 0, max: 50 }),
  away: fc.tuple(fc.nat({ max: 360 }), fc.nat({ max: 120 })),
  volume: fc.integer({ min: 20, max: 600 }),
  skipped: fc.nat({ max: 4 }),
});

describe('firstServiceWaits', () => {
  it('says for every day of the year what firstServiceDay says of it, under all rules', () => {
    let known = 0;
    let never = 0;
    const rules = [
      rulesOf('drawFirst', null),
      rulesOf('ybs', null),
      rulesOf('yas', null),
      rulesOf('drawFirst', { below_fraction: 0.5, judged_fraction: 0.6, other_fraction: 0 }),
    ];
    fc.assert(
      fc.property(record, fc.constantFrom(...rules), ({ rain, judged, other, away, volume, skipped }, rule) => {
        const isAway = (day: number) => (day + away[0]) % 365 < away[1];
        const balance = {
          inflow_L: new Float64Array(days),
          judged_L: Float64Array.from({ length: days }, (_, day) => (isAway(day) ? 0 : judged)),
          other_L: new Float64Array(days).fill(other),
        };
        for (const [day, litres] of rain) balance.inflow_L[day]! += litres;
        const years = [0, 1, 2].map((year) => ({
          from: 200 + 365 * year,
          to: 565 + 365 * year,
          judged: year !== skipped,
        }));
        const found = middleWaits(firstServiceWaits(balance, first, volume, years, rule));
        expect(found).toHaveLength(366);
        // Some days of the year, and the days around 29 February.
        for (const ofYear of [...Array.from({ length: 7 }, (_, step) => step * 53), 58, 59, 60, 365]) {
          const { month, day } = calendarDay(leap + ofYear);
          const handOver = dayIndexOf(2028, month, Math.min(day, daysInMonth(2028, month)));
          const one = firstServiceDay(balance, first, volume, handOver, years, rule);
          expect(found[ofYear]).toBe(one?.wait_days ?? null);
          if (one === null) never++;
          else known++;
        }
      }),
      { numRuns: 16, seed: 20261126 },
    );
    expect(known).toBeGreaterThan(20);
    expect(never).toBeGreaterThan(20);
  });

  it('is known by hand where the same rain falls every year', () => {
    // 200 L on 30 January; 100 L a day are asked. Handed over on the 30th or before: served on the 31st; on the 31st: a year later.
    const balance = {
      inflow_L: Float64Array.from({ length: 4 * 365 }, (_, day) => (day % 365 === 29 ? 200 : 0)),
      judged_L: new Float64Array(4 * 365).fill(100),
      other_L: new Float64Array(4 * 365),
    };
    const years = [{ from: 0, to: 4 * 365, judged: true }];
    const waits = middleWaits(firstServiceWaits(balance, readIsoDay('2001-01-01')!, 1000, years));
    expect(waits[0]).toBe(30);
    expect(waits[29]).toBe(1);
    expect(waits[30]).toBe(365);
  });
});
