import {
  type CostItem,
  capitalRecovery,
  costHeads,
  costsTogether,
  costThrows,
  type Doubtful,
  equivalentAnnualCost,
  fuelPerLitre_kg,
  levelPresentValue,
  realInterest,
  spentPerYear,
  type WholeLifeCost,
  type WholeLifeGiven,
  wholeLife,
} from '@eavewell/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const settings = { numRuns: process.env['EAVEWELL_SOAK'] ? 5_000 : 200, seed: 20261126 };

const years = fc.integer({ min: 1, max: 40 });
const interest = fc.double({ min: -0.05, max: 0.4, noNaN: true });

/** A figure whose ends rise. */
const figure = (inputId: string, most: number, least = 0): fc.Arbitrary<Doubtful> =>
  fc
    .tuple(...Array.from({ length: 3 }, () => fc.double({ min: least, max: most, noNaN: true })))
    .map((ends) => ends.sort((a, b) => a - b))
    .map(([low, likely, high]) => ({ inputId, low: low!, likely: likely!, high: high!, ends: 'limits' as const }));

const timing = fc.oneof(
  fc.constant({ kind: 'once' as const }),
  fc.constant({ kind: 'yearly' as const }),
  fc.record({
    kind: fc.constant('renewed' as const),
    isBoughtFirst: fc.boolean(),
    life_years: figure('life', 30, 0.2),
  }),
);
const item: fc.Arbitrary<CostItem> = fc.integer({ min: 0, max: 9 }).chain((number) =>
  fc.record({
    itemId: fc.constant(`item ${number}`),
    what: fc.constant(`item ${number}`),
    head: fc.constantFrom(...costHeads.filter((head) => head !== 'costOfCapital')),
    amount: fc.option(figure(`price ${number}`, 1000), { freq: 8 }),
    reason: fc.constant('noPrice' as const),
    pieces_count: fc.integer({ min: 0, max: 9 }),
    timing,
  }),
);
const given: fc.Arbitrary<WholeLifeGiven> = fc.record({
  // An input has one range wherever it stands.
  items: fc.uniqueArray(item, { selector: ({ itemId }) => itemId, maxLength: 8 }).map((items) =>
    items.map((one) =>
      one.timing.kind === 'renewed'
        ? {
            ...one,
            timing: { ...one.timing, life_years: { ...one.timing.life_years!, inputId: `life ${one.itemId}` } },
          }
        : one,
    ),
  ),
  currency: fc.constant('XTS'),
  day: fc.constant(0),
  years_count: fc.constant(17),
  interest: fc.constant({ inputId: 'interest', low: 0, likely: 0.04, high: 0.1, ends: 'limits' as const }),
  people: fc.double({ min: 1, max: 5000, noNaN: true }),
  growth_fraction_per_year: fc.constantFrom(null, -0.02, 0, 0.03),
  design_people: fc.constant(500),
  workingService: fc.constant({
    inputId: 'workingService',
    low: 0.5,
    likely: 0.8,
    high: 0.95,
    ends: 'limits' as const,
  }),
  draws: fc.constant(40),
  seed: fc.constant(3),
});
const costOf = (all: WholeLifeGiven): WholeLifeCost => wholeLife(all).finding!;
const near = (value: number, wanted: number) =>
  expect(Math.abs(value - wanted)).toBeLessThanOrEqual(1e-9 * (1 + Math.abs(wanted)));

describe('interest', () => {
  it('is nothing in the limit', () => {
    fc.assert(
      fc.property(years, fc.double({ min: -1e-9, max: 1e-9, noNaN: true }), (n, i) => {
        near(capitalRecovery(i, n), 1 / n);
      }),
      settings,
    );
    expect(capitalRecovery(0, 8) * 1000).toBe(125);
  });

  it('a level amount costs itself; capital costs more with interest, less over more years', () => {
    fc.assert(
      fc.property(years, interest, fc.double({ min: 0, max: 1e6, noNaN: true }), (n, i, amount) => {
        near(equivalentAnnualCost([], amount, i), amount);
        near(amount * levelPresentValue(i, n) * capitalRecovery(i, n), amount);
        expect(capitalRecovery(i + 0.01, n)).toBeGreaterThan(capitalRecovery(i, n));
        expect(capitalRecovery(i, n + 1)).toBeLessThan(capitalRecovery(i, n));
      }),
      settings,
    );
  });

  it('a life that goes into the years is capital recovery of that life', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 6 }), interest, (life, times, i) => {
        const spent = spentPerYear({ kind: 'renewed', isBoughtFirst: true }, life, life * times, i);
        near(spent.first_factor + spent.renewals_factor, capitalRecovery(i, life));
      }),
      settings,
    );
  });

  // Worked by hand from published inputs: ranges of rural water costing over 20 years at 5 %.
  it('annualises the ranges of a borehole with a hand pump', () => {
    const annual = [
      [20, 3],
      [61, 6],
    ].map(([capital, yearly]) => equivalentAnnualCost([{ amount: capital!, life_years: 20 }], yearly!, 0.05));
    expect(annual[0]).toBeCloseTo(4.60485, 5);
    expect(annual[1]).toBeCloseTo(10.8948, 4);
    expect(annual[0]! * levelPresentValue(0.05, 20)).toBeCloseTo(57.38663, 5);
    expect(annual[1]! * levelPresentValue(0.05, 20)).toBeCloseTo(135.77326, 5);
    expect(realInterest(0.12, 0.05)).toBeCloseTo(0.0666667, 7);
  });

  // Worked by hand from published heats and shares.
  it('boils a litre with so much wood, bottled gas and kerosene', () => {
    expect(fuelPerLitre_kg(15.6, 0.1, 20)).toBeCloseTo(0.22915, 5);
    expect(fuelPerLitre_kg(15.6, 0.2, 20)).toBeCloseTo(0.11458, 5);
    expect(fuelPerLitre_kg(47.3, 0.55, 20)).toBeCloseTo(0.013741, 6);
    expect(fuelPerLitre_kg(43.8, 0.5, 20)).toBeCloseTo(0.016323, 6);
  });
});

describe('whole-life cost', () => {
  it('heads add up to the cost a year, and no head is 0 because it is not known', () => {
    fc.assert(
      fc.property(given, (all) => {
        const found = costOf(all);
        near(
          found.heads.reduce((sum, { known_amount }) => sum + known_amount, 0),
          found.perYear_amount,
        );
        for (const { perYear_amount, known_amount, reasons } of found.heads)
          expect(perYear_amount).toBe(reasons.length === 0 ? known_amount : null);
        const isUnknown = all.items.some(({ amount }) => amount === null);
        if (isUnknown) expect(found.isAtLeast).toBe(true);
      }),
      settings,
    );
  });

  it('a cheaper thing never raises the cost, nor does a longer life', () => {
    fc.assert(
      fc.property(given, fc.nat(7), fc.double({ min: 0, max: 1, noNaN: true }), (all, which, share) => {
        const one = all.items[which];
        if (!one?.amount) return;
        const { amount } = one;
        const less = { ...amount, low: amount.low * share, likely: amount.likely * share, high: amount.high * share };
        const cheaper = { ...all, items: all.items.map((each) => (each === one ? { ...one, amount: less } : each)) };
        const [before, after] = [costOf(all), costOf(cheaper)];
        expect(after.perYear_amount).toBeLessThanOrEqual(before.perYear_amount * (1 + 1e-12));
        after.throws.perYear_amount.forEach((value, draw) => {
          expect(value).toBeLessThanOrEqual(before.throws.perYear_amount[draw]! * (1 + 1e-12));
        });
        if (one.timing.kind !== 'renewed' || one.timing.life_years === null) return;
        const life = one.timing.life_years;
        const longer = { ...life, likely: life.likely * 1.5, low: life.low, high: life.high * 2 };
        const lasting = { ...one, timing: { ...one.timing, life_years: longer } };
        const kept = costOf({ ...all, items: all.items.map((each) => (each === one ? lasting : each)) });
        expect(kept.perYear_amount).toBeLessThanOrEqual(before.perYear_amount * (1 + 1e-12));
      }),
      settings,
    );
  });

  it('swings go the way of their input, the widest first', () => {
    let seen = 0;
    fc.assert(
      fc.property(given, (all) => {
        const found = costOf(all);
        const width = ({ low, high }: WholeLifeCost['swings'][number]) =>
          Math.abs(high.perYear_amount / high.served_people! - low.perYear_amount / low.served_people!);
        found.swings.forEach((swing, place) => {
          if (place > 0) expect(width(swing)).toBeLessThanOrEqual(width(found.swings[place - 1]!));
          const [low, likely, high] = [swing.low.perYear_amount, found.perYear_amount, swing.high.perYear_amount];
          const slack = 1e-9 * (1 + likely);
          seen++;
          if (swing.inputId.startsWith('price')) expect(low <= likely + slack && likely <= high + slack).toBe(true);
          if (swing.inputId.startsWith('life')) expect(low >= likely - slack && likely >= high - slack).toBe(true);
          if (swing.inputId === 'workingService') {
            near(low, high);
            expect(swing.low.served_people!).toBeLessThan(swing.high.served_people!);
          }
        });
      }),
      settings,
    );
    expect(seen).toBeGreaterThan(200);
  });

  it('the programme is the sum of its sites, in every head and throw', () => {
    fc.assert(
      fc.property(fc.array(given, { minLength: 1, maxLength: 4 }), (sites) => {
        const throws = costThrows(sites[0]!);
        const found = sites.map((site) => wholeLife(site, throws).finding!);
        const all = costsTogether(found)!;
        const sum = (of: (one: WholeLifeCost) => number) => found.reduce((total, one) => total + of(one), 0);
        near(
          all.perYear_amount,
          sum((one) => one.perYear_amount),
        );
        near(
          all.total_amount,
          sum((one) => one.total_amount),
        );
        near(
          all.served_people!,
          sum((one) => one.served_people!),
        );
        all.heads.forEach((head, place) => {
          for (const of of ['known_amount', 'least_amount', 'most_amount'] as const)
            near(
              head[of],
              sum((one) => one.heads[place]![of]),
            );
        });
        all.throws.perYear_amount.forEach((value, draw) => {
          near(
            value,
            sum((one) => one.throws.perYear_amount[draw]!),
          );
        });
        // An input that only one site has moves the sum as it moves that site.
        for (const { inputId, high } of all.swings) {
          const own = found.flatMap((one) =>
            one.swings
              .filter((swing) => swing.inputId === inputId)
              .map((swing) => swing.high.perYear_amount - one.perYear_amount),
          );
          near(
            high.perYear_amount - all.perYear_amount,
            own.reduce((total, one) => total + one, 0),
          );
        }
      }),
      { ...settings, numRuns: 40 },
    );
  });

  it('throws and the likely cost lie between least and most, where interest is sure', () => {
    fc.assert(
      fc.property(given, (all) => {
        const found = costOf({ ...all, interest: { ...all.interest!, low: 0.04, high: 0.04 } });
        const [least, most] = (['least_amount', 'most_amount'] as const).map((of) =>
          found.heads.reduce((sum, head) => sum + head[of], 0),
        );
        const slack = 1e-9 * (1 + most!);
        for (const value of [found.perYear_amount, ...found.throws.perYear_amount])
          expect(value >= least! - slack && value <= most! + slack).toBe(true);
      }),
      settings,
    );
  });

  it('the middle of the throws lies between the ends of all inputs', () => {
    fc.assert(
      fc.property(given, (all) => {
        const { p10, p50, p90 } = costOf(all).perPersonYearSpread_amount!;
        expect(p10 <= p50 && p50 <= p90).toBe(true);
      }),
      settings,
    );
  });
});
