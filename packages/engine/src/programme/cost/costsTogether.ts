import { type CostHead, costHeads } from '../../kernel/index.ts';
import { inputAnywhere } from './doubtful.ts';
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

/** Adds up sites, one after the other. */
export interface CostSum {
  readonly add: (site: WholeLifeCost) => void;
  /** Null where none was added. */
  readonly sum: () => WholeLifeCost | null;
}

/**
 * Begins a sum of sites. All are of one currency, day, number of years, throws and seed, as one analysis makes them. An input that is thrown for each site by itself, as the life of a set of cartridges, is one in the swings of the sum: at its low end everywhere.
 *
 * @returns how a site is added, and the sum of all so far [currency/year], [person]
 * @law the sum is that of the sites, in every head and every throw; what is not known of one is not known of all
 * @definition ours: docs/methods/cost.md
 */
export function costSum(): CostSum {
  let first: WholeLifeCost | null = null;
  let sums: Sums | null = null;
  const moves = new Map<string, Moves>();
  return {
    add: (site) => {
      first ??= site;
      sums = sums === null ? sumsOf(site) : added(sums, site);
      for (const swing of site.swings) {
        const name = inputAnywhere(swing.inputId);
        moves.set(name, movedBy(moves.get(name), site, swing));
      }
    },
    sum: () => (first === null || sums === null ? null : wholeOf(first, sums, moves)),
  };
}

/**
 * What do sites cost together?
 *
 * @param sites - each site's whole-life cost [currency/year], [person]
 * @returns the sum of all [currency/year], [person]; null where there is no site
 * @definition ours: costSum of all
 */
export function costsTogether(sites: Iterable<WholeLifeCost>): WholeLifeCost | null {
  const all = costSum();
  for (const site of sites) all.add(site);
  return all.sum();
}

function wholeOf(first: WholeLifeCost, sums: Sums, moves: ReadonlyMap<string, Moves>): WholeLifeCost {
  const { perYear_amount, served_people, design_people, throws, total_amount, presentValue_amount } = sums;
  const heads = capitalKnown(costHeads.map((head) => sums.heads.get(head)!));
  const swings = [...moves].map(([inputId, { low, high }]) => ({
    inputId,
    low: plus(sums, low),
    high: plus(sums, high),
  }));
  return {
    ...{ currency: first.currency, day: first.day, years_count: first.years_count, heads, throws },
    ...{ perYear_amount, served_people, design_people, total_amount, presentValue_amount, ...spreadsOf(throws) },
    isAtLeast: heads.some(({ reasons }) => reasons.length > 0),
    perPersonYear_amount: served_people === null ? null : perYear_amount / served_people,
    perDesignPerson_amount: design_people === null ? null : perYear_amount / design_people,
    swings: swings.sort(compareSwings),
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

/** Cost of capital lacks what that of any site lacks, and what the capital of any site lacks. */
function capitalKnown(heads: readonly HeadCost[]): readonly HeadCost[] {
  const capital = heads.filter(({ head }) => capitalHeads.includes(head)).flatMap(({ reasons }) => reasons);
  return heads.map((one) => {
    if (one.head !== 'costOfCapital' || one.reasons.length === 0) return one;
    return headOf(one.head, one, [...one.reasons, ...capital]);
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
