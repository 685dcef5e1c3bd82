import { marketOn, moneyOn, type Problem, rowItem, siteCost, throwsFor } from '@eavewell/engine';
import type { ProgrammeRead } from '@eavewell/formats';
import { problemSentence } from '@eavewell/words';
import { expect, it } from 'vitest';
import { changed, type Files, good, line, readFiles } from './folder.ts';

// Prices, rates and costs, from tables that are wrong, to what is told of it; the rest still works.

const day = 'perUnit,source\n';
const rates = (...rows: readonly string[]) => `currency,day,${day}${rows.map((row) => `${row}\n`).join('')}`;
const costs = (...rows: readonly string[]) =>
  `costId,siteId,head,what,amount,low,high,currency,priceDate,per,life_years,source\n${rows.map((row) => `${row}\n`).join('')}`;
const inUsd = '{ "programme": "Tarn water", "currency": "USD", "workingService_fraction": 0.8, "costYears": 10 }\n';

const marketOf = ({ facts }: ProgrammeRead) =>
  marketOn(facts.parts, facts.prices, null, { settings: facts.settings, kit: facts.kit });
const codes = (problems: readonly Problem[]) => problems.map(({ code }) => code);
/** Every problem has its sentence. */
const told = (problems: readonly Problem[]) =>
  problems.map((problem) => {
    const { what, todo } = problemSentence(problem);
    expect(what.length).toBeGreaterThan(20);
    expect(todo.length).toBeGreaterThan(10);
    return what;
  });

function costOf({ facts }: ProgrammeRead) {
  const { settings, kit, parts, prices } = facts;
  const money = moneyOn(settings, kit, 20_500, [...prices, ...kit.costs]);
  const priceOf = () => ({ amount: 10, reason: null });
  const people = { counted_people: 100, grows: null, design_people: 100 };
  const market = { settings, parts, costs: kit.costs, money, priceOf, throws: throwsFor(settings) };
  return siteCost({ siteId: 'S001', lines: [], sets: [], people, market });
}

it('a price in a currency without a rate is named, and all others are as they were', async () => {
  const read = await readFiles({ ...changed('prices.csv', '820,USD', '820,EUR'), 'settings.json': inUsd });
  expect(read.problems).toEqual([]);
  const market = marketOf(read);
  expect(codes(market.problems)).toEqual(['money.rate_missing']);
  expect(told(market.problems)[0]).toContain('EUR');
  expect(market.prices.get('tank-5')!.price).toMatchObject({ amount: 820, currency: 'EUR' });
  expect(market.prices.get('tank-10')!.price).toMatchObject({ amount: 1450, currency: 'USD' });
});

it('a rate of a later day is none', async () => {
  const files = { ...changed('prices.csv', '820,USD', '820,EUR'), 'settings.json': inUsd };
  const late = marketOf(await readFiles({ ...files, 'rates.csv': rates('EUR,2026-02-02,1.1,') }));
  expect(codes(late.problems)).toEqual(['money.rate_missing']);
  const known = marketOf(await readFiles({ ...files, 'rates.csv': rates('EUR,2026-02-01,1.1,') }));
  expect(known.problems).toEqual([]);
  expect(known.prices.get('tank-5')!.price).toMatchObject({ amount: expect.closeTo(902, 9), currency: 'USD' });
});

it('an old rate is used and told', async () => {
  const files = { ...changed('prices.csv', '820,USD', '820,EUR'), 'settings.json': inUsd };
  const market = marketOf(await readFiles({ ...files, 'rates.csv': rates('EUR,2023-01-01,1.1,') }));
  expect(codes(market.problems)).toEqual(['money.rate_old']);
  expect(told(market.problems)[0]).toContain('EUR');
});

it('two prices of one part and day: the row is named', async () => {
  const twice = await readFiles(changed('prices.csv', 'tank-5,2026-02-01,820,USD', 'tank-10,2026-02-01,1500,USD'));
  expect(twice.problems.map(line)).toEqual(['row.key_twice blocker @ prices.csv 3 priceDate = "tank-10 2026-02-01"']);
  expect(marketOf(twice).prices.get('tank-10')!.price).toMatchObject({ amount: 1450 });
});

it('letters that are no currency, and a rate of nothing, are named by their cell', async () => {
  const bad = rates('euro,2026-01-01,1.1,', 'EUR,2026-01-01,0,', 'XTS,2026-01-01,-2,');
  const { problems, facts } = await readFiles({ ...good, 'rates.csv': bad });
  expect(problems.map(line)).toEqual([
    'cell.not_a_currency blocker @ rates.csv 2 currency = "euro"',
    'cell.out_of_range blocker @ rates.csv 3 perUnit = "0"',
    'cell.out_of_range blocker @ rates.csv 4 perUnit = "-2"',
  ]);
  expect(facts.kit.rates).toEqual([]);
});

it('old letters after their last day are told', async () => {
  const files: Files = {
    ...changed('prices.csv', '820,USD', '820000,XTO'),
    'settings.json': inUsd,
    'redenominations.csv': 'currency,newCurrency,day,factor,source\nXTO,USD,2025-01-01,1000,\n',
  };
  const market = marketOf(await readFiles(files));
  expect(codes(market.problems)).toEqual(['money.currency_ended']);
  expect(market.prices.get('tank-5')!.price).toMatchObject({ amount: 820, currency: 'USD' });
});

it('a cost without a rate leaves its head unknown, and the others stand', async () => {
  const table = costs(
    'C1,,opEx,caretaker,40,,,USD,2026-01-01,year,,',
    'C2,,directSupport,visits,900,,,EUR,2026-01-01,year,,',
  );
  const read = await readFiles({ ...good, 'settings.json': inUsd, 'costs.csv': table });
  expect(read.problems).toEqual([]);
  const { cost, problems } = costOf(read);
  expect(codes(problems)).toEqual(['money.rate_missing']);
  expect(problems[0]!.place).toMatchObject({ file: 'costs.csv' });
  const heads = Object.fromEntries(
    cost!.heads.map(({ head, perYear_amount, reasons }) => [head, { perYear_amount, reasons }]),
  );
  expect(heads['opEx']).toEqual({ perYear_amount: 40, reasons: [] });
  expect(heads['directSupport']).toEqual({ perYear_amount: null, reasons: ['rateMissing'] });
  expect(cost).toMatchObject({ perYear_amount: 40, isAtLeast: true, perPersonYear_amount: 0.5 });
});

it('a range that is turned is told, and the likely amount stands', async () => {
  const table = costs('C1,,opEx,caretaker,40,50,45,USD,2026-01-01,year,,');
  const read = await readFiles({ ...good, 'settings.json': inUsd, 'costs.csv': table });
  const { cost, problems } = costOf(read);
  expect(codes(problems)).toEqual(['cost.range_turned']);
  expect(told(problems)[0]).toContain('caretaker');
  expect(cost!.perYear_amount).toBe(40);
});

it('a share of service that is turned, and none, are told and never taken for 1', async () => {
  const table = costs('C1,,opEx,caretaker,40,,,USD,2026-01-01,year,,');
  const turned = inUsd.replace('0.8,', '0.8, "workingServiceLow_fraction": 0.9,');
  const { cost, problems } = costOf(await readFiles({ ...good, 'settings.json': turned, 'costs.csv': table }));
  expect(codes(problems)).toEqual(['cost.service_turned']);
  expect(told(problems)).toHaveLength(1);
  expect(cost!.perPersonYear_amount).toBe(0.5);
  const none = inUsd.replace('"workingService_fraction": 0.8, ', '');
  const found = costOf(await readFiles({ ...good, 'settings.json': none, 'costs.csv': table }));
  expect(found.cost).toMatchObject({ perPersonYear_amount: null, perDesignPerson_amount: 0.4 });
});

it('a row of costs for a site that is none is not used, and named', async () => {
  const table = costs('C1,S009,opEx,caretaker,40,,,USD,2026-01-01,year,,', 'C2,,opEx,tests,5,,,USD,2026-01-01,year,,');
  const read = await readFiles({ ...good, 'settings.json': inUsd, 'costs.csv': table });
  expect(read.problems.map(({ place, severity }) => `${place.file} ${place.row} ${severity}`)).toEqual([
    'costs.csv 2 blocker',
  ]);
  expect(read.facts.kit.costs.map(({ costId }) => costId)).toEqual(['C2']);
  const money = moneyOn(read.facts.settings, read.facts.kit, 20_500, []);
  expect(rowItem(read.facts.kit.costs[0]!, money, { start_people: 1, mean_people: 1 }).item.amount!.likely).toBe(5);
});
