import { engineProblem, type Problem } from '../../kernel/index.ts';
import {
  largestAmount,
  leastInterest_fraction_per_year,
  longest_years,
  mostInterest_fraction_per_year,
} from './constants.ts';
import type { CostItem } from './costItem.ts';
import type { Doubtful } from './doubtful.ts';
import type { WholeLifeGiven } from './wholeLifeCost.ts';

/** What can be reckoned with of what is given. What cannot is not known, and told. */
export function usableGiven(given: WholeLifeGiven, problems: Problem[]): WholeLifeGiven | null {
  const tell = (what: string, value: unknown) => {
    problems.push(engineProblem('cost.figure_unusable', {}, { what, value: String(value) }));
    return null;
  };
  const { years_count, draws } = given;
  if (!Number.isInteger(years_count) || years_count < 1 || years_count > longest_years)
    return tell('costYears', years_count);
  if (!Number.isInteger(draws) || draws < 1) return tell('draws', draws);
  const within = (figure: Doubtful | null, least: number, most: number) =>
    figure === null || isWithin(figure, least, most) ? figure : tell(figure.inputId, figure.likely);
  const count = (what: string, value: number | null) =>
    value === null || (value > 0 && value <= largestAmount) ? value : tell(what, value);
  const { growth_fraction_per_year: growth } = given;
  const isGrowth = growth === null || (growth > -1 && growth <= 1);
  return {
    ...given,
    interest: within(given.interest, leastInterest_fraction_per_year, mostInterest_fraction_per_year),
    workingService: within(given.workingService, Number.MIN_VALUE, 1),
    people: isGrowth ? count('people', given.people) : tell('growthFraction_per_year', growth),
    growth_fraction_per_year: isGrowth ? growth : null,
    design_people: count('designPeople', given.design_people),
    items: given.items.map((item) => usableItem(item, tell)),
  };
}

function usableItem(item: CostItem, tell: (what: string, value: unknown) => null): CostItem {
  const { amount, pieces_count, timing } = item;
  const isCount = pieces_count >= 0 && pieces_count <= largestAmount;
  const isAmount = amount === null || isWithin(amount, 0, largestAmount);
  const life = timing.kind === 'renewed' ? timing.life_years : null;
  const isLife = life === null || (life.low > 0 && life.low <= life.likely && life.likely <= life.high);
  if (!isCount) tell(item.what, pieces_count);
  if (!isAmount) tell(item.what, amount.likely);
  if (!isLife) tell(item.what, life.likely);
  return {
    ...item,
    ...(isCount && isAmount ? {} : { amount: null, pieces_count: 1, reason: 'amountUnknown' as const }),
    ...(timing.kind === 'renewed' && !isLife ? { timing: { ...timing, life_years: null } } : {}),
  };
}

function isWithin({ low, likely, high }: Doubtful, least: number, most: number): boolean {
  return low >= least && low <= likely && likely <= high && high <= most;
}
