import type { CostReason } from './costItem.ts';
import { type CostHead, capitalHeads, costHeads } from './heads.ts';
import { compareSwings, spreadsOf } from './wholeLife.ts';
import type { CostSwing, HeadCost, WholeLifeCost, YearlyCost } from './wholeLifeCost.ts';

/**
 * What do all sites cost together, with what the programme pays as one? All of one currency, day, number of years, throws and seed, as one analysis makes them.
 *
 * @param sites - each site's whole-life cost [currency/year], [person]
 * @param own - what is paid for the programme as a whole, and serves nobody by itself [currency/year]; null: nothing is stated, and nothing missed
 * @returns the sum of all [currency/year], [person]; null where there is no site
 * @law the programme is the sum of its sites and its own, in every head and every throw
 * @definition ours: docs/methods/cost.md
 */
export function costsTogether(sites: readonly WholeLifeCost[], own: WholeLifeCost | null): WholeLifeCost | null {
  const [first] = sites;
  if (!first) return null;
  const all = own === null ? sites : [...sites, servingNobody(own)];
  const sum = (of: (one: WholeLifeCost) => number | null) => sumOf(all.map(of));
  const perYear_amount = sum((one) => one.perYear_amount)!;
  const served_people = sum((one) => one.served_people);
  const design_people = sumOf(sites.map((one) => one.design_people));
  const throws = {
    perYear_amount: throwsTogether(all.map((one) => one.throws.perYear_amount))!,
    served_people: throwsTogether(all.map((one) => one.throws.served_people)),
  };
  const heads = headsTogether(sites, own);
  return {
    ...{ currency: first.currency, day: first.day, years_count: first.years_count, heads, perYear_amount },
    ...{ served_people, design_people, throws, ...spreadsOf(throws) },
    isAtLeast: heads.some(({ reasons }) => reasons.length > 0),
    total_amount: sum((one) => one.total_amount)!,
    presentValue_amount: sum((one) => one.presentValue_amount),
    perPersonYear_amount: served_people === null ? null : perYear_amount / served_people,
    perDesignPerson_amount: design_people === null ? null : perYear_amount / design_people,
    swings: swingsTogether(all),
  };
}

function servingNobody(own: WholeLifeCost): WholeLifeCost {
  const nobody = ({ perYear_amount }: YearlyCost): YearlyCost => ({ perYear_amount, served_people: 0 });
  const swings = own.swings.map(({ inputId, low, high }) => ({ inputId, low: nobody(low), high: nobody(high) }));
  const served_people = new Float64Array(own.throws.perYear_amount.length);
  return { ...own, served_people: 0, swings, throws: { ...own.throws, served_people } };
}

/** What is not known of one is not known of all. */
function sumOf(values: readonly (number | null)[]): number | null {
  return values.reduce((sum, value) => (sum === null || value === null ? null : sum + value), 0 as number | null);
}

function throwsTogether(all: readonly (Float64Array | null)[]): Float64Array | null {
  const sum = new Float64Array(all[0]?.length ?? 0);
  for (const one of all) {
    if (one === null) return null;
    for (let draw = 0; draw < sum.length; draw++) sum[draw]! += one[draw]!;
  }
  return sum;
}

/** The heads added up. Cost of capital is known once all capital is, whoever states it. */
function headsTogether(sites: readonly WholeLifeCost[], own: WholeLifeCost | null): readonly HeadCost[] {
  const heads = costHeads.map((head) => headTogether(head, sites, own));
  const capital = heads.filter(({ head }) => capitalHeads.includes(head)).flatMap(({ reasons }) => reasons);
  return heads.map((one) => {
    if (one.head !== 'costOfCapital' || one.reasons.length === 0) return one;
    return withReasons(one, [...one.reasons.filter((reason) => reason === 'interestUnknown'), ...capital]);
  });
}

/** A head that is stated for the programme as a whole need not be stated at every site, nor the other way. */
function headTogether(head: CostHead, sites: readonly WholeLifeCost[], own: WholeLifeCost | null): HeadCost {
  const of = (one: WholeLifeCost) => one.heads.find((each) => each.head === head)!;
  const [atSites, atOwn] = [sites.map(of), own === null ? [] : [of(own)]];
  const isStated = (all: readonly HeadCost[]) =>
    all.length > 0 && all.every(({ reasons }) => !reasons.includes('notStated'));
  const wanted = (all: readonly HeadCost[], isStatedElsewhere: boolean) =>
    all.flatMap(({ reasons }) => reasons).filter((reason) => reason !== 'notStated' || !isStatedElsewhere);
  const known_amount = [...atSites, ...atOwn].reduce((sum, one) => sum + one.known_amount, 0);
  const reasons = [...wanted(atSites, isStated(atOwn)), ...wanted(atOwn, isStated(atSites))];
  return withReasons({ head, known_amount }, reasons);
}

function withReasons(
  { head, known_amount }: Pick<HeadCost, 'head' | 'known_amount'>,
  all: readonly CostReason[],
): HeadCost {
  const reasons = [...new Set(all)];
  return { head, known_amount, reasons, perYear_amount: reasons.length === 0 ? known_amount : null };
}

function swingsTogether(all: readonly WholeLifeCost[]): readonly CostSwing[] {
  const likely = all.reduce<YearlyCost>(added, { perYear_amount: 0, served_people: 0 });
  const sums = new Map<string, { low: YearlyCost; high: YearlyCost }>();
  for (const one of all)
    for (const { inputId, low, high } of one.swings) {
      const sum = sums.get(inputId) ?? { low: likely, high: likely };
      sums.set(inputId, { low: moved(sum.low, one, low), high: moved(sum.high, one, high) });
    }
  return [...sums].map(([inputId, ends]) => ({ inputId, ...ends })).sort(compareSwings);
}

/** A sum in which one member is not likely but at an end. */
function moved(sum: YearlyCost, likely: YearlyCost, end: YearlyCost): YearlyCost {
  const isKnown = sum.served_people !== null && likely.served_people !== null && end.served_people !== null;
  return {
    perYear_amount: sum.perYear_amount - likely.perYear_amount + end.perYear_amount,
    served_people: isKnown ? sum.served_people! - likely.served_people! + end.served_people! : null,
  };
}

function added(sum: YearlyCost, one: YearlyCost): YearlyCost {
  return {
    perYear_amount: sum.perYear_amount + one.perYear_amount,
    served_people: sumOf([sum.served_people, one.served_people]),
  };
}
