import {
  engineProblem,
  type Judged,
  type Problem,
  quantile,
  type Spread,
  type WorkingLine,
} from '../../kernel/index.ts';
import { earlyShare_fraction, lateShare_fraction, middleShare_fraction } from './constants.ts';
import type { CostItem } from './costItem.ts';
import { type CostThrows, costThrows, spentInAll } from './costThrows.ts';
import type { Doubtful } from './doubtful.ts';
import { ends, headCost, headOf, headParts, plainHeads } from './headCosts.ts';
import { capitalHeads } from './heads.ts';
import { levelPresentValue } from './interest.ts';
import { servedPeople } from './peopleServed.ts';
import { usableGiven } from './usableGiven.ts';
import type { CostSwing, HeadCost, WholeLifeCost, WholeLifeGiven, YearlyCost } from './wholeLifeCost.ts';
import { explainCost } from './wholeLifeWorking.ts';

/** A figure's value in one reckoning. */
type Pick = (figure: Doubtful, of: 'amount' | 'life' | 'other') => number;

const likely: Pick = (figure) => figure.likely;

/**
 * What does a site cost over its whole life, a year, and for each person and year of working service?
 *
 * @param given - what money is spent on [currency], when [year], the interest [fraction/year], the people [person] and the share for which the service works [fraction]
 * @param throws - the throws of the analysis, where several sites share them; left out: its own
 * @returns heads, sums [currency/year], cost a person [currency/person/year], range and swings; null where the years are none; problems and working
 * @problem cost.figure_unusable - a figure that nobody can reckon with; it counts as not known
 * @problem cost.capital_stated - cost of capital is stated, so that no interest is reckoned beside it
 * @law what is not known never counts as 0: its head is null and every sum is at least so much; a cheaper thing never raises the cost; the heads add up to the cost a year
 * @source washcost-heads, heads of cost (from memory); docs/methods/cost.md
 */
export function wholeLife(given: WholeLifeGiven, throws?: CostThrows): Judged<WholeLifeCost> {
  const problems: Problem[] = [];
  const usable = usableGiven(given, problems);
  if (usable === null) return { finding: null, problems, working: [] };
  const isStated = usable.items.some(({ head }) => head === 'costOfCapital');
  if (isStated) problems.push(engineProblem('cost.capital_stated', {}));
  const all: WholeLifeGiven = isStated ? { ...usable, interest: null } : usable;
  // Throws that others share rest on the interest that is stated: where that is set aside, they are made anew.
  const shared = all.interest === given.interest ? throws : undefined;
  const working: WorkingLine[] = [];
  const finding = found(all, isStated, shared ?? costThrows(all));
  explainCost(finding, all, working);
  return { finding, problems, working };
}

function found(given: WholeLifeGiven, isStated: boolean, throws: CostThrows): WholeLifeCost {
  const { currency, day, years_count, interest, design_people } = given;
  const { perYear_amount, served_people } = reckoned(given, likely);
  const heads = headsOf(given, perYear_amount, isStated);
  const plain_amount = heads.reduce(
    (sum, one) => sum + (one.head === 'costOfCapital' && !isStated ? 0 : one.known_amount),
    0,
  );
  const thrown = thrownCosts(given, throws);
  return {
    ...{ currency, day, years_count, heads, perYear_amount, served_people, design_people },
    isAtLeast: heads.some(({ reasons }) => reasons.length > 0),
    total_amount: plain_amount * years_count,
    presentValue_amount: interest === null ? null : perYear_amount * levelPresentValue(interest.likely, years_count),
    perPersonYear_amount: served_people === null ? null : perYear_amount / served_people,
    perDesignPerson_amount: design_people === null ? null : perYear_amount / design_people,
    ...spreadsOf(thrown),
    swings: swingsOf(given),
    throws: thrown,
  };
}

/** The cost a year and the people served, every figure at a value of its own. */
function reckoned(given: WholeLifeGiven, pick: Pick): YearlyCost {
  const { years_count, interest, people, growth_fraction_per_year, workingService } = given;
  const rate = interest === null ? 0 : pick(interest, 'other');
  const perYear_amount = given.items.reduce((sum, { amount, pieces_count, timing }) => {
    if (amount === null) return sum;
    const life = timing.kind === 'renewed' && timing.life_years !== null ? pick(timing.life_years, 'life') : null;
    return sum + pieces_count * pick(amount, 'amount') * spentInAll(timing, life, years_count, rate);
  }, 0);
  const served = { people: people ?? 0, growth_fraction_per_year: growth_fraction_per_year ?? 0, years_count };
  const isKnown = people !== null && workingService !== null;
  return { perYear_amount, served_people: isKnown ? servedPeople(served, pick(workingService, 'other')) : null };
}

function headsOf(given: WholeLifeGiven, perYear_amount: number, isStated: boolean): readonly HeadCost[] {
  const { items, years_count, interest } = given;
  const parts = headParts(items, years_count);
  const heads = plainHeads(parts, isRenewalKnown(items));
  if (isStated) {
    const stated = parts.filter(({ head }) => head === 'costOfCapital');
    return [...heads, headCost('costOfCapital', stated, [])];
  }
  // Interest is reckoned on what is bought at the start and renewed: it is not known while any of that is not.
  const capital = heads.filter(({ head }) => capitalHeads.includes(head));
  const reasons = interest === null ? (['interestUnknown'] as const) : capital.flatMap((one) => one.reasons);
  const over = (whole_amount: number, of: 'known_amount' | 'least_amount' | 'most_amount') =>
    whole_amount - heads.reduce((sum, one) => sum + one[of], 0);
  const at = (end: 'least' | 'most') =>
    reckoned(given, (figure, of) => (of === 'other' ? figure.likely : ends[end](figure, of))).perYear_amount;
  const sums = {
    known_amount: over(perYear_amount, 'known_amount'),
    least_amount: over(at('least'), 'least_amount'),
    most_amount: over(at('most'), 'most_amount'),
  };
  return [...heads, headOf('costOfCapital', sums, reasons)];
}

/** Are there things that wear out, each with a life that is known? */
function isRenewalKnown(items: readonly CostItem[]): boolean {
  const renewed = items.flatMap(({ timing }) => (timing.kind === 'renewed' ? [timing] : []));
  return renewed.length > 0 && renewed.every(({ life_years }) => life_years !== null);
}

function thrownCosts(given: WholeLifeGiven, throws: CostThrows): WholeLifeCost['throws'] {
  const perYear_amount = new Float64Array(throws.draws);
  for (const { amount, pieces_count, timing } of given.items) {
    if (amount === null) continue;
    const [amounts, spent] = [throws.valuesOf(amount), throws.spentOf(timing)];
    for (let draw = 0; draw < throws.draws; draw++)
      perYear_amount[draw]! += pieces_count * amounts[draw]! * spent[draw]!;
  }
  const { people, workingService, years_count, growth_fraction_per_year } = given;
  if (people === null || workingService === null) return { perYear_amount, served_people: null };
  const all_people = servedPeople({ people, growth_fraction_per_year: growth_fraction_per_year ?? 0, years_count }, 1);
  return { perYear_amount, served_people: throws.valuesOf(workingService).map((share) => share * all_people) };
}

/**
 * How far do a cost a year and a cost a person range, throw by throw?
 *
 * @param thrown - the throws of both [currency/year], [person]
 * @returns P10, P50 and P90 of each [currency/year], [currency/person/year]
 * @source hyndman-fan-1996, definition 7
 */
export function spreadsOf({ perYear_amount, served_people }: WholeLifeCost['throws']) {
  const perPerson = served_people === null ? null : perYear_amount.map((amount, draw) => amount / served_people[draw]!);
  return {
    perYearSpread_amount: spreadOf(perYear_amount),
    perPersonYearSpread_amount: perPerson === null ? null : spreadOf(perPerson),
  };
}

function spreadOf(values: Float64Array): Spread {
  const sorted = Float64Array.from(values).sort();
  const [p10, p50, p90] = [earlyShare_fraction, middleShare_fraction, lateShare_fraction].map((share) =>
    quantile(sorted, share),
  );
  return { p10: p10!, p50: p50!, p90: p90! };
}

function swingsOf(given: WholeLifeGiven): readonly CostSwing[] {
  const inputs = new Map<string, true>();
  for (const figure of figuresOf(given)) if (figure.low < figure.high) inputs.set(figure.inputId, true);
  const swings = [...inputs.keys()].map((inputId) => ({
    inputId,
    low: reckoned(given, (figure) => (figure.inputId === inputId ? figure.low : figure.likely)),
    high: reckoned(given, (figure) => (figure.inputId === inputId ? figure.high : figure.likely)),
  }));
  return swings.sort(compareSwings);
}

function figuresOf({ items, interest, workingService }: WholeLifeGiven): readonly Doubtful[] {
  const figures = items.flatMap(({ amount, timing }) =>
    amount === null ? [] : [amount, timing.kind === 'renewed' ? timing.life_years : null],
  );
  return [...figures, interest, workingService].filter((figure) => figure !== null);
}

/**
 * Which of two swings is told first? The one that moves the cost a person more, else the cost a year; then by name.
 *
 * @param a - a swing [currency/year], [person]
 * @param b - another [currency/year], [person]
 * @returns under 0 where a comes first, over 0 where b does [number]
 * @definition ours
 */
export function compareSwings(a: CostSwing, b: CostSwing): number {
  return widthOf(b) - widthOf(a) || (a.inputId < b.inputId ? -1 : Number(a.inputId > b.inputId));
}

function widthOf({ low, high }: CostSwing): number {
  const perPerson = ({ perYear_amount, served_people }: YearlyCost) => perYear_amount / (served_people ?? 1);
  return Math.abs(perPerson(high) - perPerson(low));
}
