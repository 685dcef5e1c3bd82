import { describe, expect, it } from 'vitest';
import { askedOf, withGate, withStanding } from './asked.ts';
import { chosenSites, togetherOf } from './chosenSites.ts';
import { csvOfSites } from './csvOfSites.ts';
import { listNumbersOf } from './listNumbers.ts';
import type { SiteEntry } from './overview.ts';

type Stations = NonNullable<SiteEntry['stations']>;
const notJudged = 'notJudged' as const;
const bare = {
  ...{ siteClass: null, design_people: null, latitude_deg: null, longitude_deg: null, finding: null, withheldBy: null },
  ...{
    figures: null,
    target: null,
    notMended: null,
    decides: null,
    isNotToDrink: null,
    standGate: null,
    hasStorm: null,
  },
};
const site = (
  siteId: string,
  verdict: SiteEntry['verdict'],
  more: Partial<Pick<SiteEntry, 'name' | 'area' | 'people' | 'standGate'>> & {
    cost?: number | null;
    currency?: string;
    stations?: Partial<Stations>;
  } = {},
): SiteEntry => {
  const { name = siteId, area = null, people = 10, cost, currency = 'USD', standGate = null } = more;
  const storage = verdict ?? notJudged;
  const others = { roof: notJudged, gutter: notJudged, settling: notJudged, stand: notJudged, cup: notJudged };
  const stations: Stations = { ...others, storage, treatmentUnit: notJudged, tap: notJudged, ...more.stations };
  const known = cost === undefined || cost === null ? null : currency;
  const remedy: SiteEntry['remedy'] =
    cost === undefined
      ? null
      : {
          about: 'a tank',
          sentence: '',
          verdict: 'holds',
          promiseCut_count: 0,
          amount: cost,
          currency: known,
          noCost: null,
        };
  return {
    ...bare,
    key: siteId,
    siteId,
    name,
    area,
    people,
    verdict,
    stations: verdict && stations,
    remedy,
    standGate,
  };
};

const sites = [
  site('S1', 'short', { name: 'Tarn', area: 'West', cost: 900 }),
  site('S2', 'short', { name: 'Bresolune', cost: null }),
  site('S3', 'unknown', { name: 'Ñandelu', area: 'East', people: null }),
  site('S4', 'tight', { name: 'Ardisund', area: 'West', cost: 20 }),
  site('S5', null, { name: 'Old store' }),
  site('S6', 'holds', { name: 'Éveline', area: 'East' }),
];
const { compare } = new Intl.Collator('en', { numeric: true });
const shown = (of: readonly SiteEntry[], search: Record<string, unknown>, found: Uint32Array | null = null) =>
  [...chosenSites(listNumbersOf(of, compare), askedOf(search), found)].map((at) => of[at]!.siteId);
const ids = (search: Record<string, unknown>, found: Uint32Array | null = null) => shown(sites, search, found);

describe('the sites that are shown', () => {
  it('are those that need her, worst first, unless another verdict is asked for', () => {
    expect(ids({})).toEqual(['S1', 'S2', 'S3', 'S4', 'S5']);
    expect(ids({ verdict: 'holds' })).toEqual(['S6']);
    expect(ids({ verdict: 'tight.holds' })).toEqual(['S4', 'S6']);
  });

  it('are those with trouble at one of seven stations, where one is asked for', () => {
    const list = [
      site('A', 'short', { stations: { storage: 'holds', gutter: 'short' } }),
      site('B', 'tight', { stations: { storage: 'holds', stand: 'tight', settling: 'holds' } }),
      site('C', 'unknown', { stations: { storage: 'short', settling: 'unknown', tap: 'holds' } }),
    ];
    const of = (station: string) => shown(list, { station });
    expect(['gutter', 'settling', 'stand', 'tap'].map(of)).toEqual([['A'], ['C'], ['B'], []]);
    expect(of('cellar')).toEqual(['A', 'B', 'C']);
  });

  it('are all with a closed gate where that is asked, whatever their verdict', () => {
    const list = [
      site('A', 'short', { standGate: 'notNeeded' }),
      site('B', 'holds', { standGate: 'closed' }),
      site('C', 'tight', { standGate: 'open' }),
    ];
    const of = (search: Record<string, unknown>) => shown(list, search);
    expect(of({ gate: 'closed' })).toEqual(['B']);
    expect(of({ gate: 'open' })).toEqual(['C']);
    expect(of({ gate: 'ajar' })).toEqual(['A', 'C']);
    expect(withGate(withGate({}, 'closed'), 'closed')).toEqual({});
  });

  it('are all that a text means, in its order, also those that hold', () => {
    expect(ids({ text: 'x' }, Uint32Array.from([5, 0]))).toEqual(['S6', 'S1']);
    expect(ids({ text: 'x', verdict: 'short' }, Uint32Array.from([5, 0]))).toEqual(['S1']);
  });

  it('may lie in one area, or have trouble at one station', () => {
    expect(ids({ area: 'West' })).toEqual(['S1', 'S4']);
    expect(ids({ station: 'storage' })).toEqual(['S1', 'S2', 'S3', 'S4']);
    expect(ids({ station: 'roof' })).toEqual([]);
  });

  it('stand by cost (what is not known after what is, what nothing mends last), by area or by name', () => {
    expect(ids({ order: 'cheapest' })).toEqual(['S4', 'S1', 'S2', 'S3', 'S5']);
    expect(ids({ order: 'area' })).toEqual(['S3', 'S1', 'S4', 'S2', 'S5']);
    expect(ids({ order: 'name' })).toEqual(['S4', 'S2', 'S3', 'S5', 'S1']);
  });
});

it('of one name keep their order, and stand last without one; of one cost likewise', () => {
  const more = [
    ...sites,
    site('S7', 'short', { name: 'Tarn', cost: 20 }),
    site('S8', 'tight', { name: '', cost: 3, currency: 'AUD' }),
  ];
  expect(shown(more, { order: 'name' }).slice(-3)).toEqual(['S1', 'S7', 'S8']);
  expect(shown(more, { order: 'name', verdict: 'tight.holds' })).toEqual(['S4', 'S6', 'S8']);
  expect(shown(more, { order: 'name', area: 'Nowhere' })).toEqual([]);
  // Sums in two currencies are not compared: each stands among its own.
  expect(shown(more, { order: 'cheapest' }).slice(0, 4)).toEqual(['S8', 'S4', 'S7', 'S1']);
});

it('tell their areas by name, with how many sites lie in each, and how many gates are closed', () => {
  const more = [
    ...sites,
    site('S9', 'holds', { area: 'East 10', standGate: 'closed' }),
    site('S10', 'holds', { area: 'East 9' }),
  ];
  const { areas, closed_count } = listNumbersOf(more, compare);
  expect([areas, closed_count]).toEqual([
    [
      ['East', 2],
      ['East 9', 1],
      ['East 10', 1],
      ['West', 2],
    ],
    1,
  ]);
});

it('are none of a list that is shorter than the one a text was looked for in', () => {
  expect(ids({ text: 'x' }, Uint32Array.from([17, 0]))).toEqual(['S1']);
});

describe('an address', () => {
  it('that says what is not known is read without it', () => {
    expect(askedOf({ verdict: 'bad', station: 'moon', order: 'worst', text: '  ', area: 7, x: 1 })).toEqual({
      area: '7',
    });
    expect(askedOf({ verdict: 'holds.short.bad', text: 12 })).toEqual({ verdict: 'short.holds', text: '12' });
  });

  it('gains and loses a verdict', () => {
    expect(withStanding({}, 'tight')).toEqual({ verdict: 'tight' });
    expect(withStanding({ verdict: 'tight', area: 'West' }, 'short')).toEqual({ verdict: 'short.tight', area: 'West' });
    expect(withStanding({ verdict: 'tight' }, 'tight')).toEqual({});
  });
});

it('chosen sites come to people and costs by currency; what is not known is counted, never 0', () => {
  const more = [...sites, site('S7', 'short', { cost: 5, currency: 'KES' }), site('S8', 'short', { cost: 0 })];
  expect(
    togetherOf(
      listNumbersOf(more, compare),
      Uint32Array.from(more, (_, place) => place),
    ),
  ).toEqual({
    people: 70,
    withoutPeople_count: 1,
    sums: [
      { amount: 920, currency: 'USD' },
      { amount: 5, currency: 'KES' },
    ],
    withoutCost_count: 3,
  });
});

it('a cell that a spreadsheet would take for a formula is not one, and a number below 0 stays a number', async () => {
  const odd = { ...site('S9', 'holds', { name: '=1+1' }), latitude_deg: -9.5 };
  const [head, row] = (await csvOfSites([odd])).replace('\uFEFF', '').split('\r\n');
  const cells = Object.fromEntries(head!.split(',').map((column, i) => [column, row!.split(',')[i]]));
  expect(cells['name']).toMatch(/^"?'=1\+1"?$/);
  expect(cells['latitude_deg']).toBe('-9.5');
  expect(cells['area']).toBe('');
});
