import { type CostFacts, engineProblem, type Problem } from '../../kernel/index.ts';
import type { MoneyOn } from '../../parts/index.ts';
import { longest_years } from './constants.ts';
import type { CostItem, CostReason, CostTiming } from './costItem.ts';
import { type Doubtful, doubtful } from './doubtful.ts';

/** An item, with what its making brought up. */
export interface CostItemMade {
  readonly item: CostItem;
  readonly problems: readonly Problem[];
}

/**
 * What does a row of the table of costs come to at one site?
 *
 * @param row - the row: amount, low and high [currency], life [year]
 * @param money - the programme's money on the day
 * @param people - people of the site it is counted by: at the start, and in the mean of the years [person]; null: not known
 * @returns the item [currency], its amount null with the reason where it is not known; problems
 * @problem cost.range_turned - low, likely and high do not rise; the likely one stands alone
 * @definition ours: docs/methods/cost.md
 */
export function rowItem(
  row: CostFacts,
  money: MoneyOn,
  people: { readonly start_people: number | null; readonly mean_people: number | null },
): CostItemMade {
  const { costId, what, head, life_years } = row;
  const place = { file: 'costs.csv', ...(row.siteId === null ? {} : { siteId: row.siteId }) };
  const problems: Problem[] = [];
  const figure = amountOf(row, money, place, problems);
  const life = life_years === null ? null : doubtful(`life ${costId}`, life_years, null, null);
  const times = row.per === 'person' ? people.start_people : row.per === 'personYear' ? people.mean_people : 1;
  return {
    item: {
      ...{ itemId: costId, what, head, timing: timingOf(row, life) },
      amount: times === null ? null : figure,
      reason: times === null ? 'peopleUnknown' : figure === null ? 'rateMissing' : null,
      pieces_count: times ?? 1,
    },
    problems,
  };
}

/** The amount with its range, each end converted. */
function amountOf(row: CostFacts, money: MoneyOn, place: Problem['place'], problems: Problem[]): Doubtful | null {
  const inputId = `cost ${row.costId}`;
  const inOne = (amount: number | null) =>
    amount === null ? null : money.convert(amount, row.currency, row.priceDate, place);
  const likely = inOne(row.amount)!;
  problems.push(...likely.problems);
  if (likely.amount === null) return null;
  const ranged = doubtful(inputId, likely.amount, inOne(row.low)?.amount ?? null, inOne(row.high)?.amount ?? null);
  if (ranged === null) problems.push(engineProblem('cost.range_turned', place, { what: row.what }));
  return ranged ?? doubtful(inputId, likely.amount, null, null);
}

function timingOf({ per }: CostFacts, life_years: Doubtful | null): CostTiming {
  if (per === 'year' || per === 'personYear') return { kind: 'yearly' };
  return life_years === null ? { kind: 'once' } : { kind: 'renewed', isBoughtFirst: true, life_years };
}

/** What one of a part costs, in the programme's currency at the prices of the day; or why that is not known. */
export interface PartPrice {
  readonly amount: number | null;
  readonly reason: CostReason | null;
}

/** So many of a part, with its price and how long it lasts. */
export interface PartBought extends PartPrice {
  readonly partId: string;
  readonly name: string;
  /** Null: not known. */
  readonly pieces_count: number | null;
  /** Null: not known. */
  readonly life_years: number | null;
  /** Is it renewed when it is worn out? Else it is bought once: what is renewed of it stands elsewhere. */
  readonly isRenewed: boolean;
}

/**
 * What do so many of a part come to, bought with the kit and renewed when they are worn out?
 *
 * @param bought - the part, how many [count], price of one [currency] and life [year]
 * @returns the item [currency]
 * @definition ours: docs/methods/cost.md
 */
export function partItem({ partId, name, pieces_count, amount, reason, life_years, isRenewed }: PartBought): CostItem {
  const life = life_years === null ? null : doubtful(`life ${partId}`, life_years, null, null);
  return {
    ...{ itemId: partId, what: name, head: 'capExHardware', pieces_count: pieces_count ?? 1 },
    ...priced(partId, pieces_count, { amount, reason }),
    timing: isRenewed ? { kind: 'renewed', isBoughtFirst: true, life_years: life } : { kind: 'once' },
  };
}

/** P10, P50 and P90 of a life. */
export interface LifeSpread {
  readonly p10_years: number;
  readonly p50_years: number;
  readonly p90_years: number;
}

/** A set of cartridges of a unit; the first comes with the kit. */
export interface CartridgeSet extends Omit<PartBought, 'life_years' | 'isRenewed'> {
  /** The unit and its site, so that each set has a life of its own. */
  readonly unitId: string;
  /** How long a set lasts here; null: not known. */
  readonly life: LifeSpread | null;
}

/**
 * What do the cartridges of a unit come to, set after set, as they wear out?
 *
 * @param set - the part, how many make a set [count], price of one [currency], and how long a set lasts [year]
 * @returns the item [currency]
 * @definition ours: the range of the life is that of the forecast of its wear, docs/methods/cost.md
 */
export function cartridgeItem({ unitId, partId, name, pieces_count, amount, reason, life }: CartridgeSet): CostItem {
  return {
    ...{ itemId: `${unitId} ${partId}`, what: name, head: 'capExHardware', pieces_count: pieces_count ?? 1 },
    ...priced(partId, pieces_count, { amount, reason }),
    timing: { kind: 'renewed', isBoughtFirst: false, life_years: life === null ? null : lifeOf(unitId, life) },
  };
}

function lifeOf(unitId: string, { p10_years, p50_years, p90_years }: LifeSpread): Doubtful | null {
  const isRising = p10_years > 0 && p10_years <= p50_years && p50_years <= p90_years;
  const [low, likely, high] = [p10_years, p50_years, p90_years].map((years) => Math.min(years, longest_years));
  return isRising ? { inputId: `life ${unitId}`, low: low!, likely: likely!, high: high!, ends: 'p10p90' } : null;
}

function priced(partId: string, pieces_count: number | null, { amount, reason }: PartPrice) {
  if (pieces_count === null) return { amount: null, reason: 'countUnknown' as const };
  const figure = amount === null ? null : doubtful(`price ${partId}`, amount, null, null);
  return { amount: figure, reason: figure === null ? (reason ?? 'amountUnknown') : null };
}
