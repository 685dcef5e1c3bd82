import { isoDay, readIsoDay } from '@eavewell/engine';
import { chanceFor } from './chance.ts';
import type { LaterTable, Row } from './draft.ts';
import { nearest, type Place } from './islands.ts';
import type { DemoRain } from './rain.ts';
import { areaOf, type RolloutLand, type RolloutWays, riverRows, rolloutWays } from './rolloutWays.ts';
import type { MadeSite } from './sites.ts';
import { cartridgePart, unitParts } from './units.ts';
import { linesText } from './ways.ts';

/** What the demo's rollout is planned from. */
export interface MadeRollout {
  readonly tables: Partial<Record<LaterTable, readonly Row[]>>;
  readonly lines: { readonly path: string; readonly text: string };
  /** Further cells of the rows of sites. */
  readonly cells: ReadonlyMap<string, Row>;
  readonly settings: Row;
}

const [firstDay, pricesOn] = ['2027-01-04', '2026-02-02'] as const;
const stated = { currency: 'USD', priceDate: pricesOn };

/** The plan begins on a day of its own, so that the demo says the same whenever somebody looks at it. Figures invented. */
const settings = {
  ...{ rolloutStart: firstDay, rolloutHorizon_days: 540, mainStore: 'STORE', learning_fraction: 0.93, mustHold: false },
  ...{ installLow_days: 2, installLikely_days: 3, installHigh_days: 6, fuelPrice_per_L: 1.35, closedRain_mm: 60 },
};

const crewRows: readonly Row[] = [
  {
    ...{ crewId: 'north', name: 'crew of the store', base: 'STORE', people: 6, skills: 'roofWork;masonry' },
    ...{ calendarId: 'chain', restDays: 'sun', mostDaysAway: 18, turnaround_days: 1, porters: 12 },
    ...{ cost_per_day: 165, ...stated },
  },
  {
    ...{ crewId: 'south', name: 'crew of the boat', base: 'STORE', people: 5, skills: 'roofWork' },
    ...{ calendarId: 'chain', restDays: 'sun', mostDaysAway: 21, turnaround_days: 2, porters: 8 },
    ...{ pace_factor: 1.1, from: '2027-02-01', cost_per_day: 140, ...stated },
  },
  {
    ...{ crewId: 'shed', name: 'crew of the shed', base: 'FORWARD', store: 'FORWARD', people: 5 },
    ...{ skills: 'roofWork;masonry', calendarId: 'chain', restDays: 'sat;sun', work_h_per_day: 9 },
    ...{ mostDaysAway: 12, turnaround_days: 1, porters: 10, cost_per_day: 150, ...stated },
  },
];

/** The coaster is one, and two crews share it. */
const crewCarrierRows: readonly Row[] = [
  ['north', 'tractor'],
  ['north', 'coaster'],
  ['south', 'tractor'],
  ['south', 'coaster'],
  ['shed', 'tractor'],
  ['shed', 'lighter'],
].map(([crewId = '', carrierId = '']) => ({ crewId, carrierId }));

const calendarRows: readonly Row[] = [
  { calendarId: 'chain', from: '2026-12-24', to: '2027-01-03', works: false, reason: 'end of the year' },
  { calendarId: 'chain', from: '2027-04-12', to: '2027-04-16', works: false, reason: 'feast of the boats' },
  { calendarId: 'chain', from: '2027-05-01', to: '2027-05-02', works: true, reason: 'days made up for' },
  { calendarId: 'chain', from: '2027-12-24', to: '2028-01-03', works: false, reason: 'end of the year' },
];

function closureRows(sea: readonly string[], lastTrack: string): readonly Row[] {
  return [
    ...sea.map((wayId, i) => ({
      ...{ closureId: `SEA${i + 1}`, wayId, months: '1 to 2', slower_factor: 1.6, reason: 'wind and swell' },
    })),
    { closureId: 'LOW', wayId: 'W03', months: '8 to 10', reason: 'too little water' },
    {
      ...{ closureId: 'BRIDGE', wayId: 'W02', from: '2027-03-08', to: '2027-03-19', slower_factor: 2 },
      reason: 'works on the bridge',
    },
    { closureId: 'FLOOD', wayId: lastTrack, months: '1 to 2', reason: 'ford under water' },
  ];
}

/** Goods on two ships: one is there when it says, the other is a month late as often as not. For sixty sites. */
const shipments: readonly {
  readonly dueOn: string;
  readonly slip?: Row;
  readonly goods: readonly (readonly [string, number])[];
}[] = [
  {
    dueOn: '2027-02-01',
    goods: [
      ['toolbox', 24],
      ['sample-bottles', 18],
      ['tap-20', 30],
      ['cement-25', 60],
      ['gutter-4m', 80],
    ],
  },
  {
    dueOn: '2027-03-15',
    slip: { slipLow_days: 0, slipLikely_days: 12, slipHigh_days: 50 },
    goods: [
      ['downpipe-3m', 90],
      ['diverter-pipe', 24],
      ['hypochlorite-1', 24],
      [cartridgePart, 28],
      [unitParts.plain, 8],
      ['tank-4500', 6],
      ['tank-7500', 6],
      ['pipe-26', 30],
    ],
  },
];
const sitesOfShipments = 60;

function arrivalRows(sites: number): readonly Row[] {
  const times = Math.max(1, Math.ceil((2 * sites) / sitesOfShipments) / 2);
  return shipments.flatMap(({ dueOn, slip = {}, goods }, ship) =>
    goods.map(([partId, count], i) => ({
      ...{
        arrivalId: `SHIP${ship + 1}-${i + 1}`,
        store: 'STORE',
        partId,
        quantity: Math.ceil(count * times),
        dueOn,
        ...slip,
      },
    })),
  );
}

/** What each site asks for. One has not agreed yet, and one comes first. */
function siteCells(seed: number, sites: readonly MadeSite[], islands: readonly Place[]): ReadonlyMap<string, Row> {
  const clinic = sites.find(({ kind }) => kind === 'clinic') ?? sites[0];
  return new Map(
    sites.map((site, i) => {
      const { siteId, kind, place } = site;
      const chance = chanceFor(seed, `readiness of ${siteId}`);
      const ready = chance.share() < 0.4 ? chance.whole(0, 110) : null;
      const isFirst = site === clinic;
      const cells: Row = {
        weatherArea: areaOf(nearest(place, islands)),
        readyFrom: ready === null ? null : laterDay(firstDay, ready),
        finishBy: chance.share() < 0.2 ? laterDay('2027-07-31', chance.whole(0, 120)) : null,
        workMonths: kind === 'school' && chance.share() < 0.25 ? '4 to 8;12' : null,
        agreedOn: i === sites.length - 1 ? null : laterDay('2026-06-01', chance.whole(0, 150)),
        ...(isFirst ? { priority_factor: 3, priorityReason: 'patients come from all the island' } : {}),
        ...(chance.share() < 0.2 ? { installLow_days: 3, installLikely_days: 5, installHigh_days: 9 } : {}),
        ...(chance.share() < 0.2 ? { skill: 'masonry' } : {}),
      };
      return [siteId, cells];
    }),
  );
}

const laterDay = (day: string, days: number): string => isoDay(readIsoDay(day)! + days);

/** The rollout of the demo: its store, a forward store, the sea between, a river that falls, crews, goods, and what sites ask for. */
export function madeRollout(land: RolloutLand, rain: DemoRain, clean: boolean): MadeRollout {
  const { seed, sites, islands, known } = land;
  const added = rolloutWays(land);
  const made = [...known.made, ...added.made];
  const sea = seaOf(added);
  return {
    tables: {
      places: [...known.places, ...added.places],
      ways: made.map(({ wayId, row }) => ({ wayId, ...row })),
      closures: closureRows(sea, added.made.at(-1)!.wayId),
      riverLevels: riverRows(seed, rain.dates, rain.gauges.at(-1)!, clean),
      wayLevels: [
        { wayId: added.river, carrierId: 'lighter', least_m: 0.6, greatest_m: 3.6 },
        { wayId: added.river, carrierId: 'coaster', least_m: 1.4, greatest_m: 3.2 },
      ],
      ...{ crews: crewRows, crewCarriers: crewCarrierRows, workCalendars: calendarRows },
      arrivals: arrivalRows(sites.length * 2.5),
    },
    lines: linesText(made),
    cells: siteCells(seed, sites, islands),
    settings,
  };
}

/** Ways over the sea: by boat, and no river. */
function seaOf({ made, river }: RolloutWays): readonly string[] {
  return made.flatMap(({ wayId, row }) => (row['mode'] === 'river' && wayId !== river ? [wayId] : []));
}
