import { expect, it } from 'vitest';
import type { CostHead } from '../../kernel/index.ts';
import type { CostItem } from './costItem.ts';
import { costsTogether } from './costsTogether.ts';
import { doubtful } from './doubtful.ts';
import { wholeLife } from './wholeLife.ts';
import type { WholeLifeCost, WholeLifeGiven } from './wholeLifeCost.ts';

const figure = (inputId: string, likely: number, low: number | null = null, high: number | null = null) =>
  doubtful(inputId, likely, low, high)!;
const item = (itemId: string, head: CostHead, amount: number | null, more: Partial<CostItem> = {}): CostItem => ({
  itemId,
  what: itemId,
  head,
  amount: amount === null ? null : figure(`price ${itemId}`, amount),
  reason: amount === null ? 'noPrice' : null,
  pieces_count: 1,
  timing: { kind: 'once' },
  ...more,
});
const yearly = { timing: { kind: 'yearly' } } as const;
const renewed = (life: number | null, isBoughtFirst = true) => ({
  timing: { kind: 'renewed', isBoughtFirst, life_years: life === null ? null : figure('life', life) } as const,
});
const items = [
  item('tank', 'capExHardware', 1000, renewed(10)),
  item('survey', 'capExSoftware', 200),
  item('caretaker', 'opEx', 30, yearly),
  item('visits', 'directSupport', 20, yearly),
  item('office', 'indirectSupport', 0, yearly),
];
const given: WholeLifeGiven = {
  items,
  currency: 'XTS',
  day: 0,
  years_count: 20,
  interest: figure('interest', 0.05),
  people: 100,
  growth_fraction_per_year: null,
  design_people: 120,
  workingService: figure('workingService', 0.8),
  draws: 200,
  seed: 1,
};
const cost = (more: Partial<WholeLifeGiven> = {}): WholeLifeCost => wholeLife({ ...given, ...more }).finding!;
const head = (found: WholeLifeCost, name: CostHead) => found.heads.find((one) => one.head === name)!;

it('spreads all that is spent over the years, with interest as a head of its own', () => {
  const found = cost();
  // By hand: the tank is bought at 0 and at 10; capital recovery of 20 years at 5 % is 0.0802426.
  const recovery = 0.05 / (1 - 1.05 ** -20);
  const perYear = recovery * (1000 + 1000 * 1.05 ** -10 + 200) + 50;
  expect(found.perYear_amount).toBeCloseTo(perYear, 9);
  expect(found.heads.map(({ perYear_amount }) => perYear_amount)).toEqual([
    50,
    10,
    30,
    50,
    20,
    0,
    expect.closeTo(perYear - 160, 9),
  ]);
  expect(found).toMatchObject({ isAtLeast: false, total_amount: 3200, served_people: 80 });
  expect(found.presentValue_amount).toBeCloseTo(perYear / recovery, 6);
  expect(found.perPersonYear_amount).toBeCloseTo(perYear / 80, 9);
  expect(found.perDesignPerson_amount).toBeCloseTo(perYear / 120, 9);
});

it('never takes what is missing for nothing', () => {
  const found = cost({ items: [...items.slice(0, 4), item('pump', 'capExHardware', null)] });
  expect(found.isAtLeast).toBe(true);
  expect(head(found, 'capExHardware')).toMatchObject({ perYear_amount: null, known_amount: 50, reasons: ['noPrice'] });
  expect(head(found, 'indirectSupport')).toMatchObject({ perYear_amount: null, reasons: ['notStated'] });
  expect(head(found, 'costOfCapital')).toMatchObject({ perYear_amount: null, reasons: ['noPrice'] });
  expect(head(cost({ items: [...items, item('unit', 'capExHardware', 5, renewed(null))] }), 'capManEx')).toMatchObject({
    perYear_amount: null,
    known_amount: 50,
    reasons: ['lifeUnknown'],
  });
});

it('has no cost a person where people or service are not known, and never takes service for whole', () => {
  expect(cost({ workingService: null })).toMatchObject({
    perPersonYear_amount: null,
    served_people: null,
    perPersonYearSpread_amount: null,
  });
  expect(cost({ people: null })).toMatchObject({ perPersonYear_amount: null });
  expect(cost({ workingService: null }).perDesignPerson_amount).not.toBeNull();
  expect(cost({ design_people: null }).perDesignPerson_amount).toBeNull();
});

it('adds amounts as they are where no interest is known, and says at least', () => {
  const found = cost({ interest: null });
  expect(found.perYear_amount).toBe(160);
  expect(found).toMatchObject({ isAtLeast: true, presentValue_amount: null });
  expect(head(found, 'costOfCapital')).toMatchObject({
    perYear_amount: null,
    known_amount: 0,
    reasons: ['interestUnknown'],
  });
});

it('reckons no interest beside a cost of capital that is stated', () => {
  const { finding, problems } = wholeLife({ ...given, items: [...items, item('loan', 'costOfCapital', 25, yearly)] });
  expect(problems.map(({ code }) => code)).toEqual(['cost.capital_stated']);
  expect(finding!.perYear_amount).toBe(185);
  expect(head(finding!, 'costOfCapital')).toMatchObject({ perYear_amount: 25, reasons: [] });
  expect(finding!.total_amount).toBe(3700);
});

it('puts sets of cartridges by their life: a year or less to running', () => {
  const cartridges = item('set', 'capExHardware', 90, renewed(0.5, false));
  const found = cost({ items: [...items, cartridges] });
  expect(head(found, 'opEx').perYear_amount).toBeCloseTo(30 + (39 * 90) / 20, 9);
  expect(head(found, 'capExHardware').perYear_amount).toBe(50);
});

it('shows the range, and what each input alone moves, the widest first', () => {
  const doubted = [
    { ...items[0]!, amount: figure('price tank', 1000, 900, 1500) },
    { ...items[2]!, amount: figure('cost caretaker', 30, 0, 90) },
    ...items.slice(3),
  ];
  const found = cost({ items: doubted, workingService: figure('workingService', 0.8, 0.7, 0.95) });
  expect(found.swings.map(({ inputId }) => inputId)).toEqual(['cost caretaker', 'price tank', 'workingService']);
  const [caretaker, , service] = found.swings;
  expect(caretaker!.high.perYear_amount - caretaker!.low.perYear_amount).toBeCloseTo(90, 9);
  expect([service!.low.served_people, service!.high.served_people]).toEqual([70, 95]);
  const { p10, p50, p90 } = found.perYearSpread_amount;
  expect(p10 < p50 && p50 < p90).toBe(true);
  expect(cost().perYearSpread_amount.p10).toBeCloseTo(cost().perYear_amount, 9);
});

it('answers figures that nobody can reckon with', () => {
  for (const years_count of [0, -1, 1.5, Number.NaN, 5000]) {
    const { finding, problems } = wholeLife({ ...given, years_count });
    expect(finding).toBeNull();
    expect(problems.map(({ code }) => code)).toEqual(['cost.figure_unusable']);
  }
  const wrong = [item('tank', 'capExHardware', -5), item('pipe', 'capExHardware', 5, { pieces_count: Number.NaN })];
  const { finding, problems } = wholeLife({
    ...given,
    items: wrong,
    people: -3,
    workingService: figure('workingService', 0),
  });
  expect(problems.length).toBe(4);
  expect(finding).toMatchObject({ perYear_amount: 0, isAtLeast: true, perPersonYear_amount: null });
  expect(head(finding!, 'capExHardware')).toMatchObject({ perYear_amount: null, reasons: ['amountUnknown'] });
});

it('explains each head and every step to the cost a person', () => {
  const { working } = wholeLife(given);
  expect(working.map(({ code }) => code)).toEqual([
    ...Array.from({ length: 6 }, () => 'cost.head'),
    ...[
      'cost.capitalRecovery',
      'cost.costOfCapital',
      'cost.perYear',
      'cost.peopleYears',
      'cost.perPersonYear',
      'cost.perDesignPerson',
    ],
  ]);
});

it('adds up sites, and says of all what one lacks', () => {
  const sites = [cost(), cost({ people: 300, items: items.slice(0, 4) })];
  const all = costsTogether(sites)!;
  expect(all.perYear_amount).toBeCloseTo(2 * sites[0]!.perYear_amount, 9);
  expect(all).toMatchObject({ served_people: 320, design_people: 240, isAtLeast: true });
  expect(head(all, 'capExHardware')).toMatchObject({ perYear_amount: 100, reasons: [] });
  expect(head(all, 'costOfCapital').reasons).toEqual([]);
  expect(head(all, 'indirectSupport')).toMatchObject({ perYear_amount: null, known_amount: 0, reasons: ['notStated'] });
  expect(sites[0]!.throws.perYear_amount[0]).toBeCloseTo(sites[0]!.perYear_amount, 9);
  expect(costsTogether([])).toBeNull();
  expect(costsTogether([...sites, cost({ workingService: null })])!.perPersonYear_amount).toBeNull();
});

it('tells the least and the most of each head', () => {
  const doubted = [{ ...items[0]!, amount: figure('price tank', 1000, 900, 1500) }, ...items.slice(1)];
  const found = cost({ items: doubted });
  expect(head(found, 'capExHardware')).toMatchObject({ known_amount: 50, least_amount: 45, most_amount: 75 });
  const capital = head(found, 'costOfCapital');
  expect(capital.least_amount < capital.known_amount && capital.known_amount < capital.most_amount).toBe(true);
});

it('does not know the cost of capital of all where one site states it and it is not known there', () => {
  const stated = cost({ items: [...items, item('loan', 'costOfCapital', null, yearly)] });
  expect(head(stated, 'costOfCapital')).toMatchObject({ perYear_amount: null, reasons: ['noPrice'] });
  const all = costsTogether([cost(), stated])!;
  expect(head(all, 'costOfCapital')).toMatchObject({ perYear_amount: null, reasons: ['noPrice'] });
  expect(all.isAtLeast).toBe(true);
});
