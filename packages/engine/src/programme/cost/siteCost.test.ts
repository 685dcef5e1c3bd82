import { expect, it } from 'vitest';
import { type CostHead, defaultSettings, unmeasuredPart } from '../../kernel/index.ts';
import { moneyOn } from '../../parts/index.ts';
import {
  type CostMarket,
  costsBeside,
  interestOf,
  programmeCost,
  type SiteCost,
  siteCost,
  throwsFor,
} from './siteCost.ts';

const settings = {
  ...defaultSettings,
  ...{ currency: 'XTS', costYears: 10, draws: 100 },
  ...{ workingService_fraction: 0.8, interest_fraction_per_year: 0 },
};
const row = (costId: string, head: CostHead, amount: number, siteId: string | null = null) => ({
  ...{ costId, siteId, head, what: costId, amount, low: null, high: null, currency: 'XTS', priceDate: 0 },
  ...{ per: 'year' as const, life_years: null, source: null },
});
const part = (partId: string, life_years: number | null) => ({
  ...{ ...unmeasuredPart, partId, kind: 'tank', name: partId },
  kit: { ...unmeasuredPart.kit, life_years },
});
const market: CostMarket = {
  settings,
  parts: [part('tank', 5), part('set', null)],
  costs: [
    row('survey', 'capExSoftware', 3),
    row('caretaker', 'opEx', 20),
    row('road', 'directSupport', 7, 'S2'),
    row('office', 'indirectSupport', 0),
  ],
  money: moneyOn(settings, { rates: [], redenominations: [] }, 0, []),
  priceOf: (partId) =>
    partId === 'tank'
      ? { amount: 100, reason: null }
      : partId === 'set'
        ? { amount: 30, reason: null }
        : { amount: null, reason: 'noPrice' },
  throws: throwsFor(settings),
};
const tank = { partId: 'tank', name: 'Tank', kind: 'tank', total_count: 2, isAtLeast: false };
const given = {
  siteId: 'S1',
  lines: [tank, { partId: 'set', name: 'Set', kind: 'cartridge', total_count: 1, isAtLeast: false }],
  sets: [
    { unitSerial: 'U1', partId: 'set', life: { p10_years: 1.5, p50_years: 2, p90_years: 3 }, cartridges_count: 3 },
  ],
  people: { counted_people: 50, grows: null, design_people: 60 },
  market,
};
const heads = ({ cost }: SiteCost) =>
  Object.fromEntries(cost!.heads.map(({ head, known_amount }) => [head, known_amount]));
const reasons = ({ cost }: SiteCost) => Object.fromEntries(cost!.heads.map((one) => [one.head, one.reasons]));

it('adds kit, renewals, sets of cartridges and costs of the site', () => {
  const found = siteCost({ ...given, siteId: 'S2' });
  // Over ten years: two tanks, again after five; a set now, and after 2, 4, 6 and 8 years.
  expect(heads(found)).toEqual({
    capExHardware: 23,
    capExSoftware: 3,
    opEx: 20,
    capManEx: 32,
    directSupport: 7,
    indirectSupport: 0,
    costOfCapital: 0,
  });
  expect(found.cost).toMatchObject({ isAtLeast: false, served_people: 40, perYear_amount: 85 });
  expect(found.cost!.perPersonYear_amount).toBeCloseTo(85 / 40, 12);
  expect(found.cost!.swings.map(({ inputId }) => inputId)).toEqual(['life set @S2 U1']);
  expect(found.problems).toEqual([]);
});

it('renews three cartridges of a set where the kit counts them one by one', () => {
  const counts = [{ countedBy: 'cartridge' as const, ofIds: ['U1'], counted_count: 3, needed_count: 3 }];
  const single = { partId: 'set', name: 'Cartridge', kind: 'cartridge', total_count: 3, isAtLeast: false, counts };
  // Three of 30 after 2, 4, 6 and 8 of ten years, and two tanks of 100 again after five.
  expect(heads(siteCost({ ...given, lines: [tank, single] })).capManEx).toBeCloseTo((4 * 3 * 30 + 200) / 10, 9);
});

it('buys spares once: they are not worn, and not renewed', () => {
  const spared = siteCost({ ...given, lines: [{ ...tank, total_count: 3, spare_count: 1 }] });
  // Three tanks of 100 now, two again after five of ten years; sets of 30 after 2, 4, 6 and 8.
  expect(heads(spared)).toMatchObject({ capExHardware: 30, capManEx: 20 + 12 });
  // Spares alone, of a life nobody knows: nothing of them is renewed.
  const alone = siteCost({ ...given, sets: [], lines: [{ ...tank, partId: 'set', kind: 'tank', spare_count: 2 }] });
  expect(heads(alone)).toMatchObject({ capExHardware: 6, capManEx: 0 });
  expect(reasons(alone).capExHardware).toEqual([]);
  expect(reasons(alone).capManEx).toEqual(['notStated']);
});

it('keeps costs of another site out, and says which head nobody stated', () => {
  expect(heads(siteCost(given)).directSupport).toBe(0);
  expect(reasons(siteCost(given)).directSupport).toEqual(['notStated']);
});

it('never takes a missing price, count or life for nothing', () => {
  const lines = [
    { ...tank, isAtLeast: true },
    { ...tank, partId: 'odd', total_count: 3 },
  ];
  expect(reasons(siteCost({ ...given, lines })).capExHardware).toEqual(['countUnknown', 'noPrice']);
  const sets = [{ unitSerial: 'U1', partId: null, life: null, cartridges_count: null }];
  expect(reasons(siteCost({ ...given, sets })).capManEx).toEqual(['lifeUnknown']);
  const unit = { ...tank, partId: 'unit', kind: 'treatmentUnit' };
  expect(reasons(siteCost({ ...given, sets: [], lines: [unit] })).capManEx).toEqual(['lifeUnknown']);
  expect(reasons(siteCost({ ...given, sets: [] })).capManEx).toEqual(['lifeUnknown']);
  expect(
    siteCost({ ...given, people: { ...given.people, counted_people: null } }).cost!.perPersonYear_amount,
  ).toBeNull();
});

it('lets people grow from their count to the day, and on', () => {
  const grows = { growthFraction_per_year: 0.02, countYear: 1968 };
  const found = siteCost({ ...given, people: { ...given.people, grows } });
  const start = 50 * 1.02 ** 2;
  const mean = (start * (1.02 ** 10 - 1)) / 0.02 / 10;
  expect(found.cost!.served_people).toBeCloseTo(0.8 * mean, 9);
});

it('has no cost where nothing states a currency', () => {
  const money = moneyOn({ ...settings, currency: null }, { rates: [], redenominations: [] }, 0, []);
  expect(siteCost({ ...given, market: { ...market, money } }).cost).toBeNull();
});

it('tells a share of service that is turned', () => {
  const turned = { ...settings, workingServiceLow_fraction: 0.9 };
  const { problems, cost } = siteCost({ ...given, market: { ...market, settings: turned } });
  expect(problems.map(({ code }) => code)).toEqual(['cost.service_turned']);
  expect(cost!.served_people).toBe(40);
});

it('is the sum of its sites, and counts those without a cost', () => {
  const sites = [siteCost(given), siteCost({ ...given, siteId: 'S2' }), { ...siteCost(given), cost: null }];
  const all = programmeCost(sites, market);
  expect(all).toMatchObject({ sites_count: 3, unknown_count: 1, ofServed_count: 2 });
  const nobody = siteCost({ ...given, people: { ...given.people, counted_people: null } });
  const some = programmeCost([...sites, nobody], market);
  expect(some.cost!.perPersonYear_amount).toBeNull();
  expect(some.ofServed).toEqual(all.cost);
  expect(all.cost!.perYear_amount).toBeCloseTo(78 + 85, 9);
  expect(all.cost!.swings.map(({ inputId }) => inputId)).toEqual(['life set']);
  expect(programmeCost([], market).cost).toBeNull();
});

it('has nothing beside where nothing is stated', () => {
  const beside = costsBeside(defaultSettings, 'XTS');
  expect(Object.values(beside).map(({ perPersonYear_amount }) => perPersonYear_amount)).toEqual([null, null, null]);
  const stated = {
    ...settings,
    pipedScheme_amount_per_person: 100,
    pipedScheme_years: 20,
    pipedScheme_amount_per_person_per_year: 4,
  };
  expect(costsBeside(stated, 'XTS').pipedScheme.perPersonYear_amount).toBe(9);
});

it('takes inflation out of interest where it is stated', () => {
  expect(interestOf({ interest_fraction_per_year: null, inflation_fraction_per_year: 0.1 })).toBeNull();
  expect(interestOf({ interest_fraction_per_year: 0.1, inflation_fraction_per_year: null })!.likely).toBe(0.1);
  expect(interestOf({ interest_fraction_per_year: 0.12, inflation_fraction_per_year: 0.05 })!.likely).toBeCloseTo(
    1 / 15,
    12,
  );
});

it('counts a cost by person and year for the people of the years, as they grow', () => {
  const each = { ...row('committee', 'directSupport', 2), per: 'personYear' as const };
  const once = { ...row('training', 'capExSoftware', 30), per: 'person' as const };
  const grows = { growthFraction_per_year: 0.1, countYear: 1970 };
  const two = { ...settings, costYears: 2 };
  const found = siteCost({
    ...{ siteId: 'S1', lines: [], sets: [], people: { counted_people: 100, grows, design_people: null } },
    market: { ...market, settings: two, costs: [each, once], throws: throwsFor(two) },
  });
  // 100 people in the first year and 110 in the second: 105 in the mean, at 2 each; what is paid once is for the 100 at the start, over two years.
  expect(heads(found)).toMatchObject({ directSupport: expect.closeTo(210, 9), capExSoftware: expect.closeTo(1500, 9) });
  expect(found.cost!.served_people).toBeCloseTo(105 * 0.8, 9);
  expect(found.cost!.perPersonYear_amount).toBeCloseTo((210 + 1500) / 84, 9);
});
