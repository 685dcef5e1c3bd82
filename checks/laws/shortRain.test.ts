import {
  fiveMinuteMaxima,
  fixedWindowFactor,
  greatestIntensity_mm_per_h,
  rainByIntensity,
  type ShortReading,
  shareOverCapacity_fraction,
} from '@eavewell/engine';
import fc from 'fast-check';
import { describe, it } from 'vitest';

const runs = process.env['EAVEWELL_SOAK'] ? 10_000 : 500;
const settings = { numRuns: runs, seed: 20261126 };
const near = (a: number, b: number, within = 1e-9) => Math.abs(a - b) <= within * (1 + Math.abs(b));

describe('short rain', () => {
  const firstDay = 11_323;
  /** Two years with a dry minute or rain on any of so many minutes of the days in the middle of their months. */
  const record = fc
    .array(fc.array(fc.constantFrom(0, 0, 0.2, 0.5, 1, 3), { minLength: 12, maxLength: 40 }), {
      minLength: 24,
      maxLength: 24,
    })
    .map((showers) =>
      showers.map((rain_mm, i) => ({ day: firstDay + 15 + Math.round(i * 30.4), rain_mm: [...rain_mm, 0.2] })),
    );
  const rowsOf = (showers: readonly { readonly day: number; readonly rain_mm: readonly number[] }[]): ShortReading[] =>
    showers.flatMap(({ day, rain_mm }) =>
      rain_mm.flatMap((rain, minute) =>
        rain === 0 ? [] : [{ day, minuteOfDay: 600 + minute, interval_min: 1, rain_mm: rain }],
      ),
    );

  it('the most of each year is that of every window of five minutes', () => {
    fc.assert(
      fc.property(record, (showers) => {
        const { maxima: found } = fiveMinuteMaxima(rowsOf(showers));
        if (found.length !== 2) return false;
        return found.every(({ measured_mm, depth_mm }, i) => {
          const own = showers.slice(12 * i, 12 * (i + 1));
          const dense = own.map(({ rain_mm }) => [0, 0, 0, 0, ...rain_mm, 0, 0, 0, 0]);
          const most = Math.max(...dense.map((rain_mm) => (greatestIntensity_mm_per_h(rain_mm, 1, 5)! * 5) / 60));
          return near(measured_mm, most) && near(depth_mm, most * fixedWindowFactor(5));
        });
      }),
      { ...settings, numRuns: runs / 5 },
    );
  });

  it('the order of the rows changes nothing, and twice the rain gives twice the maxima', () => {
    fc.assert(
      fc.property(record, (showers) => {
        const rows = rowsOf(showers);
        const one = fiveMinuteMaxima(rows);
        const reversed = fiveMinuteMaxima([...rows].reverse());
        const twice = fiveMinuteMaxima(rows.map((row) => ({ ...row, rain_mm: 2 * row.rain_mm })));
        return (
          JSON.stringify(reversed) === JSON.stringify(one) &&
          twice.maxima.every(({ depth_mm }, i) => near(depth_mm, 2 * one.maxima[i]!.depth_mm))
        );
      }),
      { ...settings, numRuns: runs / 5 },
    );
  });

  it('a longer window of whole shorter ones is never harder', () => {
    const depths = fc.array(fc.double({ min: 0, max: 20, noNaN: true }), { minLength: 12, maxLength: 60 });
    fc.assert(
      fc.property(depths, fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 3 }), (depths_mm, short, times) => {
        const long = greatestIntensity_mm_per_h(depths_mm, 5, 5 * short * times)!;
        return long <= greatestIntensity_mm_per_h(depths_mm, 5, 5 * short)! * (1 + 1e-12);
      }),
      settings,
    );
  });

  it('what is lost over a gutter is what each interval has above it', () => {
    fc.assert(
      fc.property(record, fc.double({ min: 0, max: 300, noNaN: true }), (showers, capacity) => {
        const rows = rowsOf(showers);
        let [all, over] = [0, 0];
        for (const { rain_mm } of rows) {
          all += rain_mm;
          over += Math.max(0, rain_mm - capacity / 60);
        }
        return near(shareOverCapacity_fraction(rainByIntensity(rows)!, capacity), over / all);
      }),
      { ...settings, numRuns: runs / 5 },
    );
  });

  it('a gutter that carries more never loses more', () => {
    fc.assert(
      fc.property(
        record,
        fc.tuple(fc.double({ min: 0, max: 300, noNaN: true }), fc.double({ min: 0, max: 300, noNaN: true })),
        (showers, [a, b]) => {
          const rows = rainByIntensity(rowsOf(showers))!;
          const [less, more] = [Math.min(a, b), Math.max(a, b)];
          const [lost, kept] = [shareOverCapacity_fraction(rows, less), shareOverCapacity_fraction(rows, more)];
          return kept <= lost && lost <= 1 && kept >= 0 && shareOverCapacity_fraction(rows, 0) === 1;
        },
      ),
      settings,
    );
  });
});
