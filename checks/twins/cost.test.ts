import { type CostItem, type CostTiming, doubtful, type WholeLifeGiven, wholeLife } from '@eavewell/engine';
import fc from 'fast-check';
import { expect, it } from 'vitest';

// Whole-life cost by closed forms, against a ledger: everything is paid with borrowed money on its own day, the debt grows with interest, and the cost a year is paid in at each
// year's end. After the last one nothing must be owed.

interface Payment {
  readonly after_years: number;
  readonly amount: number;
}

/** Every payment of a thing, one by one. */
function paymentsOf(amount: number, timing: CostTiming, years: number): readonly Payment[] {
  const payments: Payment[] = [];
  if (timing.kind === 'yearly') for (let year = 1; year <= years; year++) payments.push({ after_years: year, amount });
  if (timing.kind === 'once' || (timing.kind === 'renewed' && timing.isBoughtFirst))
    payments.push({ after_years: 0, amount });
  if (timing.kind === 'renewed') {
    const life = timing.life_years!.likely;
    for (let set = 1; set * life < years - 1e-7; set++) payments.push({ after_years: set * life, amount });
  }
  return payments;
}

/** What is owed after the last year, and all that was paid for. */
function ledger(payments: readonly Payment[], perYear_amount: number, years: number, interest: number) {
  const paidIn = Array.from({ length: years }, (_, year) => ({ after_years: year + 1, amount: -perYear_amount }));
  const inOrder = [...payments, ...paidIn].sort((a, b) => a.after_years - b.after_years);
  let [owed, now] = [0, 0];
  for (const { after_years, amount } of inOrder) {
    owed = owed * (1 + interest) ** (after_years - now) + amount;
    now = after_years;
  }
  return { owed: owed * (1 + interest) ** (years - now), spent: payments.reduce((sum, { amount }) => sum + amount, 0) };
}

const timing = fc.oneof(
  fc.constant<CostTiming>({ kind: 'once' }),
  fc.constant<CostTiming>({ kind: 'yearly' }),
  fc.record({
    kind: fc.constant('renewed' as const),
    isBoughtFirst: fc.boolean(),
    life_years: fc
      .oneof(fc.integer({ min: 1, max: 12 }), fc.double({ min: 0.3, max: 30, noNaN: true }))
      .map((life) => doubtful('life', life, null, null)!),
  }),
);
const item: fc.Arbitrary<CostItem> = fc.record({
  itemId: fc.constant('thing'),
  what: fc.constant('thing'),
  head: fc.constantFrom('capExHardware', 'opEx', 'directSupport'),
  amount: fc.double({ min: 0, max: 1e4, noNaN: true }).map((amount) => doubtful('price', amount, null, null)!),
  reason: fc.constant(null),
  pieces_count: fc.constant(1),
  timing,
});

it('pays off a ledger of every payment, with interest, to the last day', () => {
  let renewals = 0;
  fc.assert(
    fc.property(
      fc.array(item, { minLength: 1, maxLength: 6 }),
      fc.integer({ min: 1, max: 30 }),
      fc.oneof(fc.constant(0), fc.double({ min: -0.03, max: 0.25, noNaN: true })),
      (items, years_count, i) => {
        const given: WholeLifeGiven = {
          ...{ items, currency: 'XTS', day: 0, years_count, interest: doubtful('interest', i, null, null) },
          ...{ people: 90, growth_fraction_per_year: null, design_people: null },
          ...{ workingService: doubtful('workingService', 0.8, null, null), draws: 3, seed: 1 },
        };
        const found = wholeLife(given).finding!;
        const payments = items.flatMap((one) => paymentsOf(one.amount!.likely, one.timing, years_count));
        renewals += payments.length;
        const { owed, spent } = ledger(payments, found.perYear_amount, years_count, i);
        const scale = (1 + spent) * (1 + Math.max(0, i)) ** years_count;
        expect(Math.abs(owed)).toBeLessThan(1e-9 * scale);
        expect(Math.abs(found.total_amount - spent)).toBeLessThan(1e-9 * (1 + spent));
        for (const thrown of found.throws.perYear_amount)
          expect(Math.abs(thrown - found.perYear_amount)).toBeLessThan(1e-9 * (1 + spent));
      },
    ),
    { numRuns: 300, seed: 20261126 },
  );
  expect(renewals).toBeGreaterThan(2000);
});
