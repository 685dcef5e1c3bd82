import type { DayIndex, Problem, Spread } from '../../kernel/index.ts';
import { engineProblem, meanYear_days } from '../../kernel/index.ts';
import { type MoneyBasis, moneyIn } from '../../parts/index.ts';
import { longest_years } from './constants.ts';
import type { CostItem, CostReason, CostTiming } from './costItem.ts';
import { type Doubtful, doubtful } from './doubtful.ts';
import type { CostHead } from './heads.ts';

/** A row of the table of costs. */
export interface CostRow {
  readonly costId: string;
  /** Null: of the whole programme, or of every site where it is counted by visit, site or person. */
  readonly siteId: string | null;
  readonly head: CostHead;
  readonly what: string;
  readonly amount: number | null;
  readonly low: number | null;
  readonly high: number | null;
  readonly currency: string;
  readonly priceDate: DayIndex;
  readonly per: 'once' | 'year' | 'visit' | 'site' | 'person';
  /** After which it is bought again; null: never. */
  readonly life_years: number | null;
}

/** What a row of costs is multiplied by, and the money it is wanted in. */
export interface CostRowGiven {
  readonly basis: MoneyBasis;
  readonly day: DayIndex;
  readonly visits_per_year: number | null;
  readonly people: number | null;
}

/** An item, with what its making brought up. */
export interface CostItemMade {
  readonly item: CostItem;
  readonly problems: readonly Problem[];
}

/**
 * What does a row of the table of costs come to at one site, or for the programme as one?
 *
 * @param row - the row: amount, low and high [currency], life [year]
 * @param given - money, day [day], visits [count/year] and people [person] it is counted by
 * @returns the item [currency], its amount null with the reason where it is not known; problems
 * @problem cost.range_turned - low, likely and high do not rise; the likely one stands alone
 * @definition ours: docs/methods/cost.md
 */
export function rowItem(row: CostRow, given: CostRowGiven): CostItemMade {
  const { amount, low, high, currency, priceDate, life_years } = row;
  const place = { file: 'costs.csv', ...(row.siteId === null ? {} : { siteId: row.siteId }) };
  const problems: Problem[] = [];
  const inOne = (one: number | null) => {
    if (one === null) return null;
    const moved = moneyIn({ amount: one, currency, day: priceDate }, given.basis, { day: given.day, place });
    if (problems.length === 0) problems.push(...moved.problems);
    return moved.amount;
  };
  const likely = inOne(amount);
  const inputId = `cost ${row.costId}`;
  const ranged = likely === null ? null : doubtful(inputId, likely, inOne(low), inOne(high));
  if (likely !== null && ranged === null) problems.push(engineProblem('cost.range_turned', place, { what: row.what }));
  const figure = ranged ?? (likely === null ? null : doubtful(inputId, likely, null, null));
  const unpriced: CostReason = amount === null ? 'amountUnknown' : 'rateMissing';
  const life = life_years === null ? null : doubtful(`life ${row.costId}`, life_years, null, null);
  const times = timesOf(row, given);
  const isKnown = typeof times === 'number';
  return {
    item: {
      ...{ itemId: row.costId, what: row.what, head: row.head, timing: timingOf(row, life) },
      amount: isKnown ? figure : null,
      reason: isKnown ? (figure === null ? unpriced : null) : times,
      pieces_count: isKnown ? times : 1,
    },
    problems,
  };
}

function timesOf({ per }: CostRow, { visits_per_year, people }: CostRowGiven): number | CostReason {
  if (per === 'visit') return visits_per_year ?? 'visitsUnknown';
  if (per === 'person') return people ?? 'peopleUnknown';
  return 1;
}

function timingOf({ per }: CostRow, life_years: Doubtful | null): CostTiming {
  if (per === 'year' || per === 'visit') return { kind: 'yearly' };
  return life_years === null ? { kind: 'once' } : { kind: 'renewed', isBoughtFirst: true, life_years };
}

/** So many of a part, with its price and how long it lasts. */
export interface PartBought {
  readonly partId: string;
  readonly name: string;
  readonly pieces_count: number;
  /** Of one, in the programme's currency at the prices of the day; null: not known. */
  readonly amount: number | null;
  readonly reason: CostReason | null;
  /** Null: not known. */
  readonly life_years: number | null;
}

/**
 * What do so many of a part come to, bought with the kit and renewed when they are worn out?
 *
 * @param bought - the part, how many [count], price of one [currency] and life [year]
 * @returns the item [currency]
 * @definition ours: docs/methods/cost.md
 */
export function partItem({ partId, name, pieces_count, amount, reason, life_years }: PartBought): CostItem {
  const life = life_years === null ? null : doubtful(`life ${partId}`, life_years, null, null);
  return {
    ...{ itemId: partId, what: name, head: 'capExHardware', pieces_count, reason },
    amount: amount === null ? null : doubtful(`price ${partId}`, amount, null, null),
    timing: { kind: 'renewed', isBoughtFirst: true, life_years: life },
  };
}

/** A set of cartridges of a unit; the first comes with the kit. */
export interface CartridgeSet extends Omit<PartBought, 'life_years'> {
  /** Of the unit, so that each set has a life of its own. */
  readonly unitId: string;
  /** P10, P50 and P90 of how long a set lasts here; null: not known. */
  readonly life_days: Spread | null;
}

/**
 * What do the cartridges of a unit come to, set after set, as they wear out?
 *
 * @param set - the part, how many make a set [count], price of one [currency], and how long a set lasts [day]
 * @returns the item [currency]
 * @definition ours: the range of the life is that of the forecast of its wear, docs/methods/cost.md
 */
export function cartridgeItem({
  unitId,
  partId,
  name,
  pieces_count,
  amount,
  reason,
  life_days,
}: CartridgeSet): CostItem {
  const years = (days: number) => Math.min(days / meanYear_days, longest_years);
  const isLife =
    life_days !== null && life_days.p10 > 0 && life_days.p10 <= life_days.p50 && life_days.p50 <= life_days.p90;
  const life: Doubtful | null = isLife
    ? {
        inputId: `life ${unitId}`,
        low: years(life_days.p10),
        likely: years(life_days.p50),
        high: years(life_days.p90),
        ends: 'p10p90',
      }
    : null;
  return {
    ...{ itemId: `${unitId} ${partId}`, what: name, head: 'capExHardware', pieces_count, reason },
    amount: amount === null ? null : doubtful(`price ${partId}`, amount, null, null),
    timing: { kind: 'renewed', isBoughtFirst: false, life_years: life },
  };
}
