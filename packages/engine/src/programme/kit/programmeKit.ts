import { type DayIndex, engineProblem, type Problem } from '../../kernel/index.ts';
import type { KitMarket, KitPart } from './kitFacts.ts';
import { up } from './kitLine.ts';
import type { SiteKit } from './kitOfSite.ts';
import { kitsTogether, type SumLine, uncountedIn } from './kitTogether.ts';
import { compareText, readyRules } from './readyRules.ts';

/** What one of a part costs; null with a reason where that is not known. */
export type PriceOf = (
  partId: string,
) =>
  | { readonly price: { readonly amount: number; readonly currency: string }; readonly reason: null }
  | { readonly price: null; readonly reason: string };

/** A part for all sites together, and what has to be bought of it. */
export interface ProgrammeKitLine extends SumLine {
  /** On hand; null: nobody counted, and all is bought. */
  readonly inStock_count: number | null;
  /** Needed and not on hand; null: not known. */
  readonly short_count: number | null;
  readonly packSize_count: number;
  /** Whole packs that cover what is short, on the sum of all sites, and the pieces in them. */
  readonly packs_count: number | null;
  readonly bought_count: number | null;
  readonly supplier: string | null;
  /** The last day to order; null where nothing is bought, or the day it is needed or its days to arrival are not known. */
  readonly orderBy: DayIndex | null;
  /** Has that day passed, and by how many days? Null: not known. */
  readonly isLate: boolean | null;
  readonly late_days: number | null;
  /** Of one; null where not known, with the reason. */
  readonly price: { readonly amount: number; readonly currency: string } | null;
  readonly reason: string | null;
  /** Of all that is bought, in the currency of its price; null where not known. */
  readonly amount: number | null;
}

/** What is bought of one supplier. */
export interface SupplierOrder {
  /** Null: of parts nobody says who sells. */
  readonly supplier: string | null;
  /** What is bought, by partId. */
  readonly partIds: readonly string[];
  /** Known amounts, one for each currency. */
  readonly sums: readonly { readonly currency: string; readonly amount: number }[];
  /** Parts whose amount is not known: the sums are at least so much. */
  readonly unpriced: readonly string[];
  /** The first day by which something of it must be ordered; null: not known. */
  readonly orderBy: DayIndex | null;
}

/** The kit of a trip or a programme. */
export interface ProgrammeKit {
  /** By partId. */
  readonly lines: readonly ProgrammeKitLine[];
  readonly suppliers: readonly SupplierOrder[];
  readonly sites_count: number;
  /** Of them handed over, so that nothing is wanted. */
  readonly built_count: number;
  readonly problems: readonly Problem[];
}

/**
 * What do the kits of several sites come to, and what of it has to be bought, of whom, by when and for how much? The sum of the sites, part by
 * part; what is needed and not on hand is bought in whole packs on that sum; each part is ordered as many days before it is needed as it
 * takes to arrive.
 *
 * @param kits - kits of the sites [count], each site once: all of a programme, or those of one trip
 * @param market - catalogue with packs and stock [count] and days to arrival [day], rules, and today [day]
 * @param priceOf - what one of a part costs [currency of the price]
 * @param neededOn - the day all is needed on [day]; null: no day is set
 * @returns a line for each part [count, day, currency of its price]; orders by supplier [currency]; problems of rules and orders, and of what
 *   nothing counts
 * @problem kit.part_unknown - a rule names a part that is not in the catalogue
 * @problem kit.rule_unusable - a figure of a rule is under 0, far too large or none
 * @problem kit.condition_unusable - a condition of a rule compares with something that cannot be compared
 * @problem kit.parts_uncounted - parts of the catalogue that nothing counts at any site
 * @problem kit.rules_idle - rules that count nothing at any site
 * @problem kit.order_late - the last day to order has passed
 * @problem kit.lead_time_unknown - how long parts take to arrive is not known
 * @problem kit.stock_unknown - nobody counted the stock of parts, and all of them is bought
 * @law the kit of a programme is the sum of those of its sites, whatever their order
 * @law what is bought and on hand covers what is needed
 * @definition ours: docs/decisions/0245-packs-stock-and-days.md
 */
export function programmeKit(
  kits: readonly SiteKit[],
  market: KitMarket,
  priceOf: PriceOf,
  neededOn: DayIndex | null = null,
): ProgrammeKit {
  const ready = readyRules(market.kit.rules, market.parts);
  const sum = kitsTogether(kits);
  const lines = sum.lines.flatMap((line): ProgrammeKitLine[] => {
    const part = ready.parts.get(line.partId);
    return part === undefined ? [] : [lineOf(line, part, { today: market.today, neededOn }, priceOf)];
  });
  const wanted = kits.filter(({ isBuilt }) => !isBuilt);
  const idle = wanted.length === 0 ? [] : uncountedIn(wanted, ready);
  return {
    lines,
    suppliers: ordersOf(lines),
    sites_count: kits.length,
    built_count: kits.length - wanted.length,
    problems: [...ready.problems, ...idle, ...ofOrders(lines, ready.parts, neededOn)],
  };
}

interface OrderDays {
  readonly today: DayIndex | null;
  readonly neededOn: DayIndex | null;
}

function lineOf(line: SumLine, { partId, kit }: KitPart, days: OrderDays, priceOf: PriceOf): ProgrammeKitLine {
  const inStock_count = usable(kit.stock_count);
  const short_count = line.total_count === null ? null : Math.max(0, line.total_count - (inStock_count ?? 0));
  const packSize_count = kit.packSize_count !== null && kit.packSize_count > 0 ? kit.packSize_count : 1;
  const packs_count = short_count === null ? null : up(short_count / packSize_count);
  const bought_count = packs_count === null ? null : packs_count * packSize_count;
  const found = priceOf(partId);
  const isPriced = found.price !== null && Number.isFinite(found.price.amount);
  return {
    ...line,
    ...{ inStock_count, short_count, packSize_count, packs_count, bought_count },
    supplier: kit.supplier?.trim() || null,
    ...orderDays(bought_count, usable(kit.leadTime_days), days),
    ...found,
    amount: isPriced && bought_count !== null ? bought_count * found.price.amount : null,
  };
}

/** When it is ordered at the latest: as many days before it is needed as it takes to arrive. */
function orderDays(
  bought_count: number | null,
  lead_days: number | null,
  { today, neededOn }: OrderDays,
): Pick<ProgrammeKitLine, 'orderBy' | 'isLate' | 'late_days'> {
  if (bought_count === 0) return { orderBy: null, isLate: false, late_days: 0 };
  if (lead_days === null || neededOn === null) return { orderBy: null, isLate: null, late_days: null };
  const orderBy = neededOn - lead_days;
  if (today === null) return { orderBy, isLate: null, late_days: null };
  return { orderBy, isLate: today > orderBy, late_days: Math.max(0, today - orderBy) };
}

function usable(value: number | null): number | null {
  return value !== null && Number.isFinite(value) && value >= 0 ? value : null;
}

/** By supplier, those nobody names last. */
function ordersOf(lines: readonly ProgrammeKitLine[]): readonly SupplierOrder[] {
  const bySupplier = new Map<string | null, ProgrammeKitLine[]>();
  for (const line of lines.filter(({ bought_count }) => bought_count !== 0))
    bySupplier.set(line.supplier, [...(bySupplier.get(line.supplier) ?? []), line]);
  const orders = [...bySupplier].map(([supplier, own]): SupplierOrder => {
    const sums = new Map<string, number>();
    for (const { amount, price } of own)
      if (amount !== null && price !== null) sums.set(price.currency, (sums.get(price.currency) ?? 0) + amount);
    const days = own.flatMap(({ orderBy }) => (orderBy === null ? [] : [orderBy]));
    const inOrder = [...sums].sort(([a], [b]) => compareText(a, b));
    return {
      supplier,
      partIds: own.map(({ partId }) => partId),
      sums: inOrder.map(([currency, amount]) => ({ currency, amount })),
      unpriced: own.filter(({ amount }) => amount === null).map(({ partId }) => partId),
      orderBy: days.length === 0 ? null : Math.min(...days),
    };
  });
  const isLast = ({ supplier }: SupplierOrder) => Number(supplier === null);
  return orders.sort((a, b) => isLast(a) - isLast(b) || compareText(a.supplier ?? '', b.supplier ?? ''));
}

function ofOrders(
  lines: readonly ProgrammeKitLine[],
  parts: ReadonlyMap<string, KitPart>,
  neededOn: DayIndex | null,
): readonly Problem[] {
  const bought = lines.filter(({ bought_count }) => bought_count !== 0);
  const problems: Problem[] = [];
  const tell = (
    code: 'kit.order_late' | 'kit.lead_time_unknown' | 'kit.stock_unknown',
    some: readonly ProgrammeKitLine[],
  ) => {
    const most_days = Math.max(0, ...some.map(({ late_days }) => late_days ?? 0));
    const of = some.map(({ partId }) => partId);
    if (of.length > 0) problems.push(engineProblem(code, { file: 'parts.csv' }, { of, most_days }));
  };
  const isLate = ({ late_days }: ProgrammeKitLine) => late_days !== null && late_days > 0;
  const noLeadTime = ({ partId }: ProgrammeKitLine) => usable(parts.get(partId)?.kit.leadTime_days ?? null) === null;
  tell('kit.order_late', bought.filter(isLate));
  if (neededOn !== null) tell('kit.lead_time_unknown', bought.filter(noLeadTime));
  tell(
    'kit.stock_unknown',
    bought.filter(({ inStock_count }) => inStock_count === null),
  );
  return problems;
}
