import { type CostHead, costHeads } from '../../kernel/index.ts';
import type { CostReason } from './costItem.ts';
import { headOf } from './headCosts.ts';
import { capitalHeads } from './heads.ts';
import { compareSwings, spreadsOf } from './wholeLife.ts';
import type { CostSwing, HeadCost, WholeLifeCost, YearlyCost } from './wholeLifeCost.ts';

/** Sums so far: one site after the other, so that many sites need no more room than one. */
interface Sums extends YearlyCost {
  readonly total_amount: number;
  readonly presentValue_amount: number | null;
  readonly design_people: number | null;
  readonly heads: ReadonlyMap<CostHead, HeadCost>;
  readonly throws: WholeLifeCost['throws'];
}

/** What an input moves, beside all likely. */
interface Moves {
  low: YearlyCost;
  high: YearlyCost;
}

/**
 * What do sites cost together? All of one currency, day, number of years, throws and seed, as one analysis makes them.
 *
 * @param sites - each site's whole-life cost [currency/year], [person]
 * @returns the sum of all [currency/year], [person]; null where there is no site
 * @law the programme is the sum of its sites, in every head and every throw; what is not known of one is not known of all
 * @definition ours: docs/methods/cost.md
 */
export function costsTogether(sites: Iterable<WholeLifeCost>): WholeLifeCost | null {
  let first: WholeLifeCost | null = null;
  let sums: Sums | null = null;
  const moves = new Map<string, Moves>();
  for (const site of sites) {
    first ??= site;
    sums = sums === null ? sumsOf(site) : added(sums, site);
    for (const swing of site.swings) moves.set(swing.inputId, movedBy(moves.get(swing.inputId), site, swing));
  }
  if (first === null || sums === null) return null;
  const { perYear_amount, served_people, design_people, throws, total_amount, presentValue_amount } = sums;
  const heads = capitalKnown(costHeads.map((head) => sums.heads.get(head)!));
  return {
    ...{ currency: first.currency, day: first.day, years_count: first.years_count, heads, throws },
    ...{ perYear_amount, served_people, design_people, total_amount, presentValue_amount, ...spreadsOf(throws) },
    isAtLeast: heads.some(({ reasons }) => reasons.length > 0),
    perPersonYear_amount: served_people === null ? null : perYear_amount / served_people,
    perDesignPerson_amount: design_people === null ? null : perYear_amount / design_people,
    swings: [...moves]
      .map(([inputId, { low, high }]) => ({ inputId, low: plus(sums, low), high: plus(sums, high) }))
      .sort(compareSwings),
  };
}

function sumsOf(site: WholeLifeCost): Sums {
  const { perYear_amount, served_people } = site.throws;
  return {
    ...site,
    heads: new Map(site.heads.map((head) => [head.head, head])),
    // Of its own: the others are added to it.
    throws: { perYear_amount: perYear_amount.slice(), served_people: served_people?.slice() ?? null },
  };
}

function added(sums: Sums, site: WholeLifeCost): Sums {
  return {
    ...plus(sums, site),
    total_amount: sums.total_amount + site.total_amount,
    presentValue_amount: sumOf(sums.presentValue_amount, site.presentValue_amount),
    design_people: sumOf(sums.design_people, site.design_people),
    heads: new Map(site.heads.map((head) => [head.head, headPlus(sums.heads.get(head.head)!, head)])),
    throws: {
      perYear_amount: addTo(sums.throws.perYear_amount, site.throws.perYear_amount)!,
      served_people: addTo(sums.throws.served_people, site.throws.served_people),
    },
  };
}

function headPlus(sum: HeadCost, { known_amount, least_amount, most_amount, reasons }: HeadCost): HeadCost {
  const all = {
    known_amount: sum.known_amount + known_amount,
    least_amount: sum.least_amount + least_amount,
    most_amount: sum.most_amount + most_amount,
  };
  return headOf(sum.head, all, [...sum.reasons, ...reasons]);
}

/** Cost of capital lacks what the capital of any site lacks. */
function capitalKnown(heads: readonly HeadCost[]): readonly HeadCost[] {
  const capital = heads.filter(({ head }) => capitalHeads.includes(head)).flatMap(({ reasons }) => reasons);
  return heads.map((one) => {
    if (one.head !== 'costOfCapital' || one.reasons.length === 0) return one;
    const interest: readonly CostReason[] = one.reasons.filter((reason) => reason === 'interestUnknown');
    return headOf(one.head, one, [...interest, ...capital]);
  });
}

function addTo(sum: Float64Array | null, more: Float64Array | null): Float64Array | null {
  if (sum === null || more === null) return null;
  for (let draw = 0; draw < sum.length; draw++) sum[draw]! += more[draw]!;
  return sum;
}

function sumOf(a: number | null, b: number | null): number | null {
  return a === null || b === null ? null : a + b;
}

function plus(a: YearlyCost, b: YearlyCost): YearlyCost {
  return {
    perYear_amount: a.perYear_amount + b.perYear_amount,
    served_people: sumOf(a.served_people, b.served_people),
  };
}

/** What an input moves so far, and at one site more. */
function movedBy(sum: Moves | undefined, likely: YearlyCost, { low, high }: CostSwing): Moves {
  const beside = (end: YearlyCost): YearlyCost => ({
    perYear_amount: end.perYear_amount - likely.perYear_amount,
    served_people:
      end.served_people === null || likely.served_people === null ? null : end.served_people - likely.served_people,
  });
  const [atLow, atHigh] = [beside(low), beside(high)];
  return sum === undefined ? { low: atLow, high: atHigh } : { low: plus(sum.low, atLow), high: plus(sum.high, atHigh) };
}
