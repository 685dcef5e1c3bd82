import { describe, expect, it } from 'vitest';
import {
  type Carrier,
  type CostFacts,
  dayIndexOf,
  defaultSettings,
  type KitRule,
  noKit,
  noKitFigures,
  noRollout,
  type PartFacts,
  type ProgrammeFacts,
  type SiteFacts,
  unmeasuredGutter,
  unmeasuredPart,
  unmeasuredRoof,
  unmeasuredSite,
  unmeasuredTank,
} from './kernel/index.ts';
import {
  asInstalled,
  costAtSite,
  kitAtSite,
  kitsBought,
  loadsBy,
  piecesOfKit,
  readyKit,
  setsOf,
  wholeKitAtSite,
} from './programmeKit.ts';

const day = dayIndexOf(2026, 3, 2);

function part(partId: string, kind: string, more: Partial<PartFacts> = {}): PartFacts {
  return { ...unmeasuredPart, partId, kind, name: partId, ...more };
}

const parts: readonly PartFacts[] = [
  part('gutter', 'gutter', { length_m: 4, mass_kg: 6, kit: { ...noKitFigures, life_years: 10 } }),
  part('tank', 'tank', { mass_kg: 90, volume_L: 5000, kit: { ...noKitFigures, life_years: 20 } }),
  part('tap', 'tap', { mass_kg: 0.5, kit: { ...noKitFigures, life_years: 5 } }),
];

const rule = (ruleId: string, partId: string, countedBy: KitRule['countedBy']): KitRule => ({
  ...{ ruleId, partId, countedBy, each_count: 1, rounding: 'up', spare_fraction: 0, leastSpare_count: 0 },
  conditions: [],
});

const person: Carrier = {
  ...{ carrierId: 'P', name: 'person', mode: 'person', limit_kg: 15, limit_L: null, longest_m: null },
  ...{
    stowage_fraction: 1,
    carriers_count: 1,
    freeboard_cm: null,
    leastFreeboard_cm: null,
    freeboardEmpty_cm: null,
    length_m: null,
  },
  ...{ limitSetBy: null, limitSetOn: null },
};

const site: SiteFacts = {
  ...unmeasuredSite,
  ...{
    siteId: 'S1',
    name: 'Made',
    latitude_deg: null,
    longitude_deg: null,
    siteClass: null,
    target: null,
    people: 100,
  },
  ...{ peopleCountedOn: null, households_count: 20, growthFraction_per_year: null, designYear: null, gaugeId: null },
  ...{
    rainFactor: 1,
    handOverDay: null,
    roofs: [{ ...unmeasuredRoof, roofId: 'R1' }],
    demand: [],
    ration: null,
    presence: null,
    secondSource: null,
  },
  ...{ nearSecondSource: null, doubts: [], taps_count: 2 },
  gutters: [{ ...unmeasuredGutter, gutterId: 'G1', roofId: 'R1', length_m: 10 }],
  tanks: [{ ...unmeasuredTank, tankId: 'T1', partId: 'tank' }],
};

/** Ten of a gutter a bar, a hundred a tank, four a tap, all of one day; nothing is paid beside, and money costs nothing. */
function programme(more: Partial<ProgrammeFacts['settings']> = {}, prices = { gutter: 10, tank: 100, tap: 4 }) {
  const facts: ProgrammeFacts = {
    settings: {
      ...defaultSettings,
      currency: 'USD',
      costYears: 20,
      interest_fraction_per_year: 0,
      draws: 200,
      ...more,
    },
    sites: [site],
    gauges: [],
    parts,
    prices: Object.entries(prices).map(([partId, amount]) => ({ partId, priceDate: day, amount, currency: 'USD' })),
    kit: {
      ...noKit,
      rules: [rule('K1', 'gutter', 'gutterMetre'), rule('K2', 'tap', 'tap')],
      carriers: [person],
    },
    rollout: noRollout,
  };
  return readyKit(facts, day);
}

describe('from a site to its loads and its cost', () => {
  it('what stands is not brought, and costs all the same', () => {
    const ready = programme();
    const built = { ...site, tanks: site.tanks.map((tank) => ({ ...tank, isBuilt: true })) };
    expect(kitAtSite(built, ready).lines.map(({ partId }) => partId)).toEqual(['gutter', 'tap']);
    expect(kitAtSite({ ...site, handOverDay: day }, ready).lines).toEqual([]);
    expect(wholeKitAtSite({ ...built, handOverDay: day }, ready).lines.map(({ partId }) => partId)).toEqual([
      ...['gutter', 'tank', 'tap'],
    ]);
  });

  it('ten metres are three bars of four, and three bars of 6 kg are two loads of one person', () => {
    const ready = programme();
    const kit = kitAtSite(site, ready);
    expect(kit.lines.find(({ partId }) => partId === 'gutter')?.total_count).toBe(3);
    const pieces = piecesOfKit({ lines: kit.lines.filter(({ partId }) => partId === 'gutter') }, ready);
    const { loads, cannotCarry } = loadsBy(pieces, person, ready);
    expect(loads.map(({ mass_kg }) => mass_kg).sort()).toEqual([12, 6]);
    expect(cannotCarry).toEqual([]);
    expect(loadsBy(piecesOfKit(kit, ready), person, ready).cannotCarry.map(({ partId }) => partId)).toEqual(['tank']);
  });

  it('without interest a year costs each part by its years: 3 bars of 10 over 10 years, a tank over 20, two taps over 5', () => {
    const ready = programme();
    const { cost } = costAtSite(site, [], ready);
    // 30/10 + 100/20 + 8/5 a year, by hand.
    expect(cost?.perYear_amount).toBeCloseTo(3 + 5 + 1.6, 9);
  });

  it('what has to be bought of it comes to the prices there are', () => {
    const ready = programme();
    const bought = kitsBought([kitAtSite(site, ready)], ready, null);
    expect(bought.suppliers.flatMap(({ sums }) => sums)).toEqual([{ currency: 'USD', amount: 3 * 10 + 100 + 2 * 4 }]);
  });
});

it('a unit that is not there yet is new today, or on the day of hand-over where that is to come', () => {
  const unit = { serial: 'U1', partId: null, figures: null, installedOn: null, removedOn: null };
  const planned = { ...site, treatment: { ...site.treatment, units: [unit] } };
  expect(asInstalled(planned, day).treatment.units[0]?.installedOn).toBe(day);
  expect(asInstalled({ ...planned, handOverDay: day + 30 }, day).treatment.units[0]?.installedOn).toBe(day + 30);
  expect(asInstalled(site, day)).toBe(site);
});

it('a set without a date has no life, and one with a date lasts from its first day', () => {
  const ready = programme();
  const found = {
    ...{ serial: 'U1', partId: null, unknownBy: null, litres_L: null, passedSoFar_L: null, readings_count: 0 },
    ...{ endsBy_fraction: { litres: 0, flow: 0, age: 1, failure: 0 }, fouling_ratio: { p10: 1, p50: 1, p90: 1 } },
    futures_count: 1,
  };
  const endsOn = { p10: day + 365, p50: day + 731, p90: day + 1096 };
  const unit = { serial: 'U1', partId: null, figures: null, installedOn: day, removedOn: null };
  const fitted = { treatment: { ...site.treatment, units: [unit] } };
  const setOf = (more: { readonly setSince: number | null; readonly endsOn: typeof endsOn | null }) =>
    setsOf(fitted, { finding: [{ ...found, ...more }] }, ready)[0]!;
  expect(setOf({ setSince: day, endsOn }).life?.p50_years).toBeCloseTo(731 / 365.2425, 12);
  expect(setOf({ setSince: null, endsOn: null }).life).toBeNull();
});

it('reckons in the currency of the latest price of a part, also where a cost of another is later', () => {
  const { facts } = programme({ currency: null });
  const later: CostFacts = {
    ...{
      costId: 'C',
      siteId: null,
      head: 'opEx' as const,
      what: 'C',
      amount: 5,
      low: null,
      high: null,
      currency: 'EUR',
    },
    ...{ priceDate: day + 1, per: 'year' as const, life_years: null, source: null },
  };
  const rates = [{ currency: 'EUR', day, perUnit: 2, source: null }];
  const ready = readyKit({ ...facts, kit: { ...facts.kit, costs: [later], rates } }, day + 1);
  const { cost } = costAtSite(site, [], ready);
  expect(cost?.currency).toBe('USD');
  // As above, and five a year of a currency that buys two.
  expect(cost?.perYear_amount).toBeCloseTo(3 + 5 + 1.6 + 10, 9);
});

it('without a price of a part, money is that of the latest cost, and no cost is moved to a day nobody priced', () => {
  const { facts } = programme({ priceChange_fraction_per_year: 0.1 });
  const cost = (costId: string, priceDate: number): CostFacts => ({
    ...{ costId, siteId: null, head: 'opEx', what: costId, amount: 5, low: null, high: null, currency: 'USD' },
    ...{ priceDate, per: 'year', life_years: null, source: null },
  });
  const only = { ...facts, prices: [], kit: { ...facts.kit, costs: [cost('A', day), cost('B', day)] } };
  // Years later, or on a day nobody knows: five and five as they were paid.
  for (const today of [day + 3650, null]) {
    const found = costAtSite(site, [], readyKit(only, today)).cost!;
    expect(found.day).toBe(day);
    expect(found.heads.find(({ head }) => head === 'opEx')!.known_amount).toBeCloseTo(10, 9);
  }
});
