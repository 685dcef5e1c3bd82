import { type DayIndex, engineProblem, type Problem } from '../../kernel/index.ts';
import type { KitPart } from './kitFacts.ts';
import { up } from './kitLine.ts';
import type { KitSum, SumLine } from './kitTogether.ts';
import { compareText } from './readyRules.ts';

/** What one of a part costs; null with a reason where that is not known. */
export type PriceOf = (
  partId: string,
) => { readonly amount: number; readonly currency: string } | { readonly amount: null; readonly reason: string };

/** A part to be bought. */
export interface Purchase {
  readonly partId: string;
  readonly needed_count: number | null;
  /** On hand; null: nobody counted, and all is bought. */
  readonly stock_count: number | null;
  /** Needed and not on hand. */
  readonly short_count: number | null;
  readonly isAtLeast: boolean;
  readonly packSize_count: number;
  /** Whole packs that cover what is short, on the sum of all sites. */
  readonly packs_count: number | null;
  readonly bought_count: number | null;
  /** The last day to order; null where the day it is needed, or the days to arrival, are not known. */
  readonly orderBy: DayIndex | null;
  /** Days since that day has passed; 0: there is time; null: not known. */
  readonly late_days: number | null;
  /** Of one; null where not known, with the reason. */
  readonly price: ReturnType<PriceOf>;
  /** Of all that is bought; null where not known. */
  readonly amount: number | null;
  readonly currency: string | null;
}

/** What is bought of one supplier. */
export interface SupplierOrder {
  /** Null: of parts nobody says who sells. */
  readonly supplier: string | null;
  readonly purchases: readonly Purchase[];
  /** Known amounts, one for each currency. */
  readonly sums: readonly { readonly currency: string; readonly amount: number }[];
  /** Parts with no price: the sums are at least so much. */
  readonly unpriced: readonly string[];
  /** The first day by which something of it must be ordered; null: not known. */
  readonly orderBy: DayIndex | null;
}

/** When things are needed, and which day it is. */
export interface OrderDays {
  readonly today: DayIndex;
  /** Null: no day is set yet. */
  readonly neededOn: DayIndex | null;
}

/**
 * What has to be bought, of whom, by when and for how much? What is needed and not on hand, in whole packs on the sum of all sites; each part
 * is ordered as many days before it is needed as it takes to arrive.
 *
 * @param sum - kits of several sites together [count]
 * @param parts - the catalogue: packs and stock [count], days to arrival [day]
 * @param days - today, and the day all is needed on
 * @param priceOf - what one of a part costs [currency of the price]
 * @returns by supplier: parts with what is short and packs [count], last days to order [day], amounts [currency]; problems
 * @problem kit.order_late - the last day to order has passed
 * @problem kit.lead_time_unknown - how long parts take to arrive is not known
 * @problem kit.stock_unknown - nobody counted the stock of parts, and all of them is bought
 * @law what is bought and on hand covers what is needed
 * @definition ours: docs/decisions/0245-packs-stock-and-days.md
 */
export function purchasesOf(
  sum: KitSum,
  parts: readonly KitPart[],
  days: OrderDays,
  priceOf: PriceOf,
): { readonly orders: readonly SupplierOrder[]; readonly problems: readonly Problem[] } {
  const byId = new Map(parts.map((part) => [part.partId, part]));
  const bySupplier = new Map<string | null, Purchase[]>();
  for (const line of sum.lines) {
    const part = byId.get(line.partId);
    if (part === undefined) continue;
    const supplier = part.supplier?.trim() || null;
    bySupplier.set(supplier, [...(bySupplier.get(supplier) ?? []), purchaseOf(line, part, days, priceOf)]);
  }
  const orders = [...bySupplier].map(([supplier, purchases]) => orderOf(supplier, purchases));
  orders.sort(
    (a, b) =>
      Number(a.supplier === null) - Number(b.supplier === null) || compareText(a.supplier ?? '', b.supplier ?? ''),
  );
  return {
    orders,
    problems: told(
      orders.flatMap(({ purchases }) => purchases),
      byId,
      days,
    ),
  };
}

function purchaseOf(line: SumLine, part: KitPart, { today, neededOn }: OrderDays, priceOf: PriceOf): Purchase {
  const needed_count = line.total_count;
  const stock_count = usable(part.stock_count);
  const short_count = needed_count === null ? null : Math.max(0, needed_count - (stock_count ?? 0));
  const packSize_count = part.packSize_count !== null && part.packSize_count > 0 ? part.packSize_count : 1;
  const packs_count = short_count === null ? null : up(short_count / packSize_count);
  const bought_count = packs_count === null ? null : packs_count * packSize_count;
  const lead_days = usable(part.leadTime_days);
  const orderBy = neededOn === null || lead_days === null ? null : neededOn - lead_days;
  const isBought = bought_count !== null && bought_count > 0;
  const price = priceOf(part.partId);
  const isPriced = price.amount !== null && Number.isFinite(price.amount);
  return {
    partId: part.partId,
    ...{ needed_count, stock_count, short_count, isAtLeast: line.isAtLeast, packSize_count, packs_count, bought_count },
    orderBy,
    late_days: orderBy === null || !isBought ? (isBought ? null : 0) : Math.max(0, today - orderBy),
    price,
    amount: isPriced && bought_count !== null ? bought_count * price.amount : null,
    currency: isPriced ? price.currency : null,
  };
}

function usable(value: number | null): number | null {
  return value !== null && Number.isFinite(value) && value >= 0 ? value : null;
}

function orderOf(supplier: string | null, purchases: readonly Purchase[]): SupplierOrder {
  const sums = new Map<string, number>();
  const bought = purchases.filter(({ bought_count }) => bought_count !== 0);
  for (const { amount, currency } of bought)
    if (amount !== null && currency !== null) sums.set(currency, (sums.get(currency) ?? 0) + amount);
  const days = bought.flatMap(({ orderBy }) => (orderBy === null ? [] : [orderBy]));
  return {
    supplier,
    purchases,
    sums: [...sums]
      .map(([currency, amount]) => ({ currency, amount }))
      .sort((a, b) => compareText(a.currency, b.currency)),
    unpriced: bought.filter(({ amount }) => amount === null).map(({ partId }) => partId),
    orderBy: days.length === 0 ? null : Math.min(...days),
  };
}

function told(
  purchases: readonly Purchase[],
  parts: ReadonlyMap<string, KitPart>,
  { neededOn }: OrderDays,
): readonly Problem[] {
  const bought = purchases.filter(({ bought_count }) => bought_count !== 0);
  const problems: Problem[] = [];
  const tell = (code: 'kit.order_late' | 'kit.lead_time_unknown' | 'kit.stock_unknown', some: readonly Purchase[]) => {
    const of = some.map(({ partId }) => partId).sort(compareText);
    const most_days = Math.max(0, ...some.map(({ late_days }) => late_days ?? 0));
    if (of.length > 0) problems.push(engineProblem(code, { file: 'parts.csv' }, { of, most_days }));
  };
  tell(
    'kit.order_late',
    bought.filter(({ late_days }) => late_days !== null && late_days > 0),
  );
  const isUnknown = ({ partId }: Purchase) => usable(parts.get(partId)?.leadTime_days ?? null) === null;
  if (neededOn !== null) tell('kit.lead_time_unknown', bought.filter(isUnknown));
  tell(
    'kit.stock_unknown',
    bought.filter(({ stock_count }) => stock_count === null),
  );
  return problems;
}
