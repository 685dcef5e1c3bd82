import {
  allSizes,
  type Balance,
  balanceUnder,
  type DayOrder,
  dayByDay,
  drawnRecords,
  drawYears,
  dryDaysAt,
  type Ration,
  type RunRules,
  rulesOf,
} from '@eavewell/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const runs = process.env['EAVEWELL_SOAK'] ? 20_000 : 1_000;
const settings = { numRuns: runs, seed: 20261125 };
const litres = (max: number) => fc.double({ min: 0, max, noNaN: true });
const runsBy = (order: DayOrder): fc.Arbitrary<RunRules> =>
  fc.record({ order: fc.constant(order), passes: fc.constantFrom(1, 2), start: fc.constantFrom('empty', 'full') });
const share = fc.constantFrom(0, 0.25, 0.5, 1);
const anyRation: fc.Arbitrary<Ration> = fc.record({
  below_fraction: fc.constantFrom(0, 0.1, 0.3, 0.6, 1),
  judged_fraction: share,
  other_fraction: share,
});
const rationed = (rules: fc.Arbitrary<RunRules>): fc.Arbitrary<RunRules> =>
  fc.tuple(rules, fc.option(anyRation)).map(([one, ration]) => ({ ...one, ration }));
const anyRules = fc.constantFrom<DayOrder>('drawFirst', 'yas', 'ybs').chain(runsBy);

/** Any balance of up to 60 days, in litres with all their bits. */
const anyBalance: fc.Arbitrary<Balance> = fc
  .array(fc.tuple(fc.oneof(fc.constant(0), litres(5000)), litres(900), litres(600)), { minLength: 1, maxLength: 60 })
  .map((days) => ({
    inflow_L: Float64Array.from(days, (day) => day[0]),
    judged_L: Float64Array.from(days, (day) => day[1]),
    other_L: Float64Array.from(days, (day) => day[2]),
  }));

/** Whole litres and one constant demand, so that sums are exact. */
const constantDemand = fc
  .record({
    D: fc.integer({ min: 1, max: 12 }),
    inflow: fc.array(fc.integer({ min: 0, max: 40 }), { minLength: 1, maxLength: 60 }),
  })
  .map(({ D, inflow }) => ({ D, balance: withDemand(inflow, D) }));

/** Any balance of up to 60 days in whole litres, exact in doubles. */
const wholeBalance: fc.Arbitrary<Balance> = fc
  .array(fc.tuple(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 0, max: 9 }), fc.integer({ min: 0, max: 9 })), {
    minLength: 1,
    maxLength: 60,
  })
  .map((days) => ({
    inflow_L: Float64Array.from(days, (day) => day[0]),
    judged_L: Float64Array.from(days, (day) => day[1]),
    other_L: Float64Array.from(days, (day) => day[2]),
  }));

function withDemand(inflow: readonly number[], D: number): Balance {
  return {
    inflow_L: Float64Array.from(inflow),
    judged_L: new Float64Array(inflow.length).fill(D),
    other_L: new Float64Array(inflow.length),
  };
}

function total(values: Float64Array): number {
  return values.reduce((sum, value) => sum + value, 0);
}

function dryDays(balance: Balance, volume: number, rules: RunRules): number {
  return dayByDay(balance, volume, rules).dry.reduce((sum, day) => sum + day, 0);
}

describe('no litre is made or lost', () => {
  it('content before + inflow = taken + spilled + content after, to 1e-9 of the inflow, in all orders, rationed or not', () => {
    fc.assert(
      fc.property(anyBalance, litres(20_000), rationed(anyRules), (balance, volume, rules) => {
        const run = dayByDay(balance, volume, rules, true);
        const inflow = total(balance.inflow_L);
        const out = run.judgedTaken_L + run.otherTaken_L + run.spill_L + run.endContent_L;
        expect(Math.abs(run.startContent_L + inflow - out)).toBeLessThanOrEqual(1e-9 * Math.max(1, inflow));
        const series = run.series!;
        expect(Math.abs(total(series.spill_L) - run.spill_L)).toBeLessThanOrEqual(1e-9 * Math.max(1, inflow));
        series.content_L.forEach((content, day) => {
          expect(content).toBeGreaterThanOrEqual(0);
          expect(content).toBeLessThanOrEqual(volume);
          expect(series.spill_L[day]).toBeGreaterThanOrEqual(-1e-9);
        });
      }),
      settings,
    );
  });
});

describe('the orders of the day keep their rank', () => {
  it('drawFirst(C − D) ≤ yas(C) ≤ drawFirst(C) ≤ ybs(C) on total yield, at constant demand, one and two passes', () => {
    fc.assert(
      fc.property(
        constantDemand,
        fc.integer({ min: 0, max: 80 }),
        fc.constantFrom(1, 2),
        ({ D, balance }, C, passes) => {
          const taken = (order: DayOrder, volume: number) =>
            volume < 0 ? 0 : dayByDay(balance, volume, { order, passes, start: 'empty' }).judgedTaken_L;
          expect(taken('drawFirst', C - D)).toBeLessThanOrEqual(taken('yas', C));
          expect(taken('yas', C)).toBeLessThanOrEqual(taken('drawFirst', C));
          expect(taken('drawFirst', C)).toBeLessThanOrEqual(taken('ybs', C));
        },
      ),
      settings,
    );
  });
});

describe('more never means less', () => {
  for (const order of ['drawFirst', 'ybs'] as const) {
    // Whole litres: a day a last bit short of its demand is dry in one tank and not in the next.
    it(`a larger tank never has more dry days, ${order}`, () => {
      const volumes = fc.integer({ min: 0, max: 200 });
      fc.assert(
        fc.property(wholeBalance, volumes, volumes, runsBy(order), (balance, volume, more, rules) => {
          expect(dryDays(balance, volume + more, rules)).toBeLessThanOrEqual(dryDays(balance, volume, rules));
        }),
        settings,
      );
    });

    it(`more roof never has more dry days in a tank of any size, ${order}`, () => {
      fc.assert(
        fc.property(wholeBalance, fc.integer({ min: 2, max: 5 }), runsBy(order), (balance, times, rules) => {
          const larger = { ...balance, inflow_L: balance.inflow_L.map((litre) => litre * times) };
          const [less, more] = [balance, larger].map((b) => allSizes(b, { ...rules, order }).critical_L);
          more!.forEach((critical, day) => {
            expect(critical).toBeLessThanOrEqual(less![day]!);
          });
        }),
        settings,
      );
    });
  }

  it('under yas more roof can mean more dry days: the counter-example stays', () => {
    const rules: RunRules = { order: 'yas', passes: 1, start: 'empty' };
    const inflow = [1, 12, 0, 3, 10, 0];
    const larger = inflow.map((litre) => litre * 1.25);
    expect(dryDays(withDemand(inflow, 4), 7, rules)).toBe(4);
    expect(dryDays(withDemand(larger, 4), 7, rules)).toBe(5);
  });
});

/** Rain on one day in four and something asked of both kinds: tanks that run low. */
const seldomRain: fc.Arbitrary<Balance> = fc
  .array(
    fc.tuple(
      fc.oneof({ weight: 3, arbitrary: fc.constant(0) }, { weight: 1, arbitrary: fc.integer({ min: 0, max: 60 }) }),
      fc.integer({ min: 1, max: 6 }),
      fc.integer({ min: 1, max: 6 }),
    ),
    { minLength: 8, maxLength: 60 },
  )
  .map((days) => ({
    inflow_L: Float64Array.from(days, (day) => day[0]),
    judged_L: Float64Array.from(days, (day) => day[1]),
    other_L: Float64Array.from(days, (day) => day[2]),
  }));

describe('rationing', () => {
  const volumes = fc.integer({ min: 0, max: 120 });

  it('giving all that is asked below the mark is the plain run, to the last bit', () => {
    const mark = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(anyBalance, litres(20_000), anyRules, mark, (balance, volume, rules, below_fraction) => {
        const ration = { below_fraction, judged_fraction: 1, other_fraction: 1 };
        const { rationedDays, series, ...run } = dayByDay(balance, volume, { ...rules, ration }, true);
        const { rationedDays: none, series: plainSeries, ...plain } = dayByDay(balance, volume, rules, true);
        expect(run).toEqual(plain);
        // Only which days were below the mark differs.
        expect({ ...series, rationed: null }).toEqual({ ...plainSeries, rationed: null });
        expect(none).toBe(0);
        expect(rationedDays).toBeLessThanOrEqual(balance.inflow_L.length);
      }),
      settings,
    );
  });

  for (const order of ['drawFirst', 'ybs'] as const)
    it(`holding back the other litres never makes more dry days, ${order}`, () => {
      let fewer = 0;
      fc.assert(
        fc.property(seldomRain, volumes, runsBy(order), anyRation, (balance, volume, rules, ration) => {
          const some = dryDays(balance, volume, { ...rules, ration: { ...ration, judged_fraction: 1 } });
          const all = dryDays(balance, volume, rules);
          expect(some).toBeLessThanOrEqual(all);
          if (some < all) fewer++;
        }),
        settings,
      );
      expect(fewer).toBeGreaterThan(settings.numRuns / 10);
    });

  it('a day that cuts the judged litres is dry', () => {
    const ration = { below_fraction: 0.5, judged_fraction: 0.5, other_fraction: 0 };
    const run = dayByDay(
      withDemand([8, 0, 0, 0], 2),
      10,
      { order: 'drawFirst', passes: 1, start: 'empty', ration },
      true,
    );
    // 8 and 6 L in the morning are over the mark of 5 L, 4 L is not: one of two litres is given.
    expect([...run.series!.judgedTaken_L]).toEqual([0, 2, 2, 1]);
    expect([...run.dry]).toEqual([1, 0, 0, 1]);
    expect(run.rationedDays).toBe(2);
  });
});

describe('the net balance', () => {
  it('run as drawFirst has the dry days and contents of ybs on the whole one', () => {
    fc.assert(
      fc.property(wholeBalance, fc.integer({ min: 0, max: 200 }), runsBy('ybs'), (balance, volume, rules) => {
        const whole = dayByDay(balance, volume, rules, true);
        const net = dayByDay(
          balanceUnder(balance, rulesOf('ybs', null)),
          volume,
          { ...rules, order: 'drawFirst' },
          true,
        );
        expect(net.dry).toEqual(whole.dry);
        expect(net.series!.content_L).toEqual(whole.series!.content_L);
        expect(net.series!.spill_L).toEqual(whole.series!.spill_L);
        expect(net.otherShortDays).toBe(whole.otherShortDays);
      }),
      settings,
    );
  });
});

describe('counting years', () => {
  it('a year that is not judged never changes the count of the others', () => {
    const critical = Float64Array.of(9, 1, 9, 9, 1, 9);
    const year = (label: number, from: number, judged: boolean) => ({
      label,
      from,
      to: from + 3,
      missing_days: 0,
      judged,
    });
    expect([...dryDaysAt(critical, [year(2001, 0, true), year(2002, 3, false)], [4])]).toEqual([2]);
    expect([...dryDaysAt(critical, [year(2001, 0, true), year(2002, 3, true)], [4])]).toEqual([4]);
  });
});

describe('years drawn again', () => {
  /** A whole balance cut into years of about so many days, the first drawn drier and the last wetter besides. */
  const cut = (balance: Balance, days: number) => {
    const years = [];
    for (let from = 0; from < balance.inflow_L.length; from += days)
      years.push({
        label: from,
        from,
        to: Math.min(balance.inflow_L.length, from + days),
        missing_days: 0,
        judged: true,
      });
    const pool = [
      ...years.map((year) => ({ year, inflowFactor: 1 })),
      { year: years[0]!, inflowFactor: 0.5 },
      { year: years.at(-1)!, inflowFactor: 2 },
    ];
    return { pool, drawn: drawYears(years.length, 12, 5) };
  };

  it('a larger tank, or more roof, never gives more dry days or fewer good years in any draw', () => {
    const volumes = fc.integer({ min: 0, max: 200 });
    const limits = fc.integer({ min: 0, max: 4 });
    const lengths = fc.integer({ min: 3, max: 20 });
    fc.assert(
      fc.property(wholeBalance, volumes, volumes, limits, lengths, (balance, volume, more, limit, days) => {
        const { pool, drawn } = cut(balance, days);
        const larger = { ...balance, inflow_L: balance.inflow_L.map((litres) => litres * 2) };
        const before = drawnRecords(balance, pool, volume, limit, drawn);
        for (const after of [
          drawnRecords(balance, pool, volume + more, limit, drawn),
          drawnRecords(larger, pool, volume, limit, drawn),
        ])
          for (let draw = 0; draw < drawn.draws; draw++) {
            expect(after.dryDays_per_year[draw]).toBeLessThanOrEqual(before.dryDays_per_year[draw]!);
            expect(after.goodYears_fraction[draw]).toBeGreaterThanOrEqual(before.goodYears_fraction[draw]!);
          }
      }),
      settings,
    );
  });
});
