import { expect, it } from 'vitest';
import { unmeasuredPart } from '../kernel/index.ts';
import { compareCosts, nothingToBuy, type RemedyCost, remedyCost, type ToBuy } from './cost.ts';
import { marketOn } from './market.ts';

const part = (partId: string, kind: string, length_m: number | null = null) => ({
  ...unmeasuredPart,
  partId,
  kind,
  name: partId,
  volume_L: kind === 'tank' ? 1000 : null,
  length_m,
});
const price = (partId: string, amount: number, currency = 'XTS', priceDate = 10) => ({
  partId,
  priceDate,
  amount,
  currency,
});
const parts = [
  part('tank', 'tank'),
  part('bare', 'tank'),
  part('long', 'gutter', 4),
  part('short', 'gutter', 3),
  part('flush', 'diverter'),
];
const nothing = nothingToBuy;
const hung = (...lengths_m: readonly (number | null)[]) =>
  lengths_m.map((length_m) => ({ gutterId: null, length_m, leastWidth_mm: null, leastDepth_mm: null }));

it('takes whole bars of gutter, of the part that comes cheapest', () => {
  const market = marketOn(parts, [price('long', 20), price('short', 15)], null);
  // 7 m and 4.1 m: of 4 m two whole ones, and one for 3 m and 0.1 m, are 60; of 3 m three whole ones, and one for 1 m and 1.1 m, are 60
  // too, and the name decides; at 14 the short ones are cheaper.
  expect(remedyCost({ ...nothing, gutter_m: hung(7, 4.1) }, market).bought).toMatchObject([
    { partId: 'long', pieces_count: 3 },
  ]);
  const cheaper = marketOn(parts, [price('long', 20), price('short', 14)], null);
  expect(remedyCost({ ...nothing, gutter_m: hung(7, 4.1) }, cheaper)).toMatchObject({ amount: 56, currency: 'XTS' });
  expect(remedyCost({ ...nothing, gutter_m: hung(8) }, market).amount).toBe(40);
});

it('adds tanks, gutter and diverters of one currency, at the prices of the day', () => {
  const market = marketOn(
    parts,
    [price('tank', 400), price('tank', 500, 'XTS', 20), price('tank', 900, 'XTS', 30), price('flush', 50)],
    25,
  );
  expect(remedyCost({ ...nothing, partIds: ['tank', 'tank'], diverters_count: 3 }, market)).toMatchObject({
    amount: 1150,
    currency: 'XTS',
    reason: null,
  });
});

it('has no amount where a price is missing, and says why', () => {
  const market = marketOn(parts, [price('tank', 400), price('bare', 9, 'XTS', 99)], 25);
  const reasonOf = (wanted: Partial<ToBuy>) => {
    const { amount, reason } = remedyCost({ ...nothing, ...wanted }, market);
    expect(amount).toBeNull();
    return reason;
  };
  expect(reasonOf({ partIds: ['tank', 'bare'] })).toBe('onlyLaterPrices');
  expect(reasonOf({ diverters_count: 1 })).toBe('noPrice');
  expect(reasonOf({ gutter_m: hung(3, null) })).toBe('roofLengthUnknown');
  expect(reasonOf({ gutter_m: hung(3) })).toBe('noPrice');
  expect(reasonOf({ partIds: ['none of ours'] })).toBe('noPart');
  const mixed = marketOn(parts, [price('tank', 400), price('flush', 9, 'XXX')], 25);
  expect(remedyCost({ ...nothing, partIds: ['tank'], diverters_count: 1 }, mixed).reason).toBe('rateMissing');
});

it('has the price of another site where the catalogue has a kit, and never one of water fetched and treated', () => {
  const market = marketOn(parts, [price('tank', 400)], 25);
  expect(remedyCost({ ...nothing, partIds: ['tank'], otherSites_count: 1 }, market)).toMatchObject({
    amount: null,
    reason: 'otherSite',
    bought: [{ partId: 'tank', pieces_count: 1 }],
  });
  const kits = ['dear', 'cheap', 'bare kit'].map((partId) => ({ ...parts[0]!, partId, kind: 'site' }));
  const withKits = marketOn([...parts, ...kits], [price('tank', 400), price('dear', 9000), price('cheap', 7000)], 25);
  expect(remedyCost({ ...nothing, partIds: ['tank'], otherSites_count: 1 }, withKits)).toMatchObject({ amount: 7400 });
  expect(remedyCost({ ...nothing, otherSites_count: 1 }, marketOn(kits, [], 25)).reason).toBe('noPrice');
  expect(remedyCost({ ...nothing, isSourceUsed: true }, withKits)).toMatchObject({
    amount: null,
    reason: 'secondSource',
  });
});

it('costs 0 where nothing is bought, and puts costs that are not known last', () => {
  const free = remedyCost(nothing, marketOn([], [], null));
  expect(free).toEqual({ amount: 0, currency: null, reason: null, bought: [] });
  const cost = (amount: number | null, currency: string | null = 'XTS'): RemedyCost => ({
    amount,
    currency,
    reason: null,
    bought: [],
  });
  const unknown = cost(null, null);
  const sorted = [unknown, cost(5, 'XXX'), cost(90), free, cost(7)].sort(compareCosts);
  expect(sorted).toEqual([free, cost(7), cost(90), cost(5, 'XXX'), unknown]);
});

it('buys named parts by whole bars, and by the piece; a piece or a run without a length has no cost', () => {
  const market = marketOn(parts, [price('long', 20), price('flush', 7), price('tank', 100)], null);
  const runs = (partId: string, ...runs_m: readonly (number | null)[]) => ({ ...nothing, runs: [{ partId, runs_m }] });
  // 7 m and 4.1 m of bars of 4 m: two whole ones, and one for 3 m and 0.1 m.
  expect(remedyCost(runs('long', 7, 4.1), market)).toMatchObject({ amount: 60 });
  expect(remedyCost({ ...nothing, pieces: [{ partId: 'flush', pieces_count: 3 }] }, market)).toMatchObject({
    amount: 21,
  });
  expect(remedyCost(runs('long', 7, null), market)).toMatchObject({ amount: null, reason: 'runLengthUnknown' });
  expect(remedyCost(runs('tank', 7), market)).toMatchObject({ amount: null, reason: 'pieceLengthUnknown' });
  expect(remedyCost(runs('none', 7), market)).toMatchObject({ amount: null, reason: 'noPart' });
});

it('adds prices of several currencies where rates allow, and picks the cheaper of two whatever its letters', () => {
  const basis = {
    settings: { currency: 'XTS', priceChange_fraction_per_year: null, oldRate_days: 92 },
    kit: { rates: [{ currency: 'XXX', day: 5, perUnit: 3, source: null }], redenominations: [] },
  };
  const prices = [price('tank', 400), price('flush', 9, 'XXX'), price('long', 20), price('short', 7, 'AAA')];
  const market = marketOn(parts, prices, 25, basis);
  expect(remedyCost({ ...nothing, partIds: ['tank'], diverters_count: 1 }, market)).toMatchObject({
    amount: 427,
    currency: 'XTS',
    reason: null,
  });
  // No rate: it stays what it is, and alone it has a cost.
  expect(remedyCost({ ...nothing, pieces: [{ partId: 'short', pieces_count: 2 }] }, market)).toMatchObject({
    amount: 14,
    currency: 'AAA',
  });
  expect(remedyCost({ ...nothing, partIds: ['tank', 'short'] }, market)).toMatchObject({ reason: 'rateMissing' });
  const dearLong = marketOn(parts, [price('long', 20), price('short', 5, 'XXX')], 25, basis);
  expect(remedyCost({ ...nothing, gutter_m: hung(3) }, dearLong).bought).toMatchObject([
    { partId: 'short', amount: 15 },
  ]);
});

it('is what it was where all is of one currency and no change is stated', () => {
  const prices = [price('tank', 0.1), price('flush', 0.2)];
  const settings = { currency: null, priceChange_fraction_per_year: null, oldRate_days: 92 };
  const basis = { settings, kit: { rates: [], redenominations: [] } };
  expect(marketOn(parts, prices, 25, basis)).toEqual(marketOn(parts, prices, 25));
});
