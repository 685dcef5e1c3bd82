import { problemSentence } from '@eavewell/words';
import { describe, expect, it } from 'vitest';
import { doubted, good, line, listed, readFiles } from './folder.ts';
import { faultsOfCrews } from './rolloutCrews.ts';
import { all, but, day, lines, names, sound } from './rolloutFolder.ts';
import { faultsOfPlans } from './rolloutPlans.ts';
import { faultsOfWays } from './rolloutWays.ts';

it('without a fault all of it is joined, and nothing is told', async () => {
  const { problems, notUsed, facts } = await readFiles(sound);
  expect(problems.map(line)).toEqual([]);
  expect(notUsed).toEqual([]);
  const { rollout, settings } = facts;
  expect(settings).toMatchObject({ rolloutStart: day('2027-01-04'), mainStore: 'store', mustHold: true });
  expect(rollout.places[1]).toEqual({
    ...{ placeId: 'shed', name: 'Tarn shed', kind: 'store', latitude_deg: -8.52, longitude_deg: 125.22 },
    ...{ changeOver_h: 0.5, maySleep: false, filledFrom: 'store', filledBy: 'truck' },
    setUp_amount: null,
  });
  expect(rollout.ways.find(({ wayId }) => wayId === 'W3')).toEqual({
    ...{
      wayId: 'W3',
      name: 'Tarn river',
      from: 'jetty',
      to: 'S001',
      mode: 'river',
      length_km: 5,
      there_h: 1,
      back_h: 1.5,
    },
    ...{ limit_kg: 400, limit_L: null, longest_m: null, porters_count: 0, fuel_L_per_km: null },
    ...{ weatherArea: 'hills', riverGaugeId: 'R-tarn' },
  });
  expect(rollout.closures).toEqual([
    {
      closureId: 'C1',
      wayId: 'W3',
      weatherArea: null,
      months: [1, 2],
      from: null,
      to: null,
      slower_factor: null,
      reason: 'flood',
      isToGuessed: false,
    },
    {
      ...{
        closureId: 'C2',
        wayId: null,
        weatherArea: 'coast',
        months: [],
        slower_factor: 2,
        reason: 'works on the bridge',
      },
      ...{ from: day('2027-03-01'), to: day('2027-03-20'), isToGuessed: false },
    },
  ]);
  expect(rollout.riverLevels).toHaveLength(10);
  expect(rollout.riverLevels[3]).toEqual({ riverGaugeId: 'R-tarn', day: day('2020-03-04'), level_m: 1.3 });
  expect(rollout.wayLevels).toEqual([{ wayId: 'W3', carrierId: 'boat', least_m: 0.8, greatest_m: 3 }]);
  expect(rollout.travel).toEqual([
    { carrierId: 'truck', speed_km_per_h: 25, fuel_L_per_km: 0.25, cost_per_day: 60 },
    { carrierId: 'boat', speed_km_per_h: null, fuel_L_per_km: 1.2, cost_per_day: 45 },
  ]);
  expect(rollout.crews).toEqual([
    {
      ...{ crewId: 'east', name: 'East crew', base: 'store', store: 'store', people_count: 5, porters_count: 4 },
      ...{
        skills: ['roofWork', 'masonry'],
        calendarId: 'feasts',
        restDays: [0, 6],
        work_h_per_day: 8,
        mostDaysAway: 14,
      },
      ...{
        maySleepAtSites: true,
        from: day('2027-01-04'),
        to: null,
        pace_factor: 1,
        turnaround_days: 0,
        cost_per_day: 120,
      },
      carrierIds: ['truck', 'boat'],
    },
    {
      ...{ crewId: 'west', name: 'West crew', base: 'jetty', store: 'shed', people_count: 4, porters_count: 0 },
      ...{ skills: [], calendarId: 'feasts', restDays: [0], work_h_per_day: 8, mostDaysAway: null },
      ...{
        maySleepAtSites: true,
        from: null,
        to: day('2028-12-31'),
        pace_factor: 1,
        turnaround_days: 0,
        cost_per_day: null,
      },
      carrierIds: ['boat'],
    },
  ]);
  expect(rollout.calendars[1]).toEqual({
    ...{
      calendarId: 'feasts',
      from: day('2027-06-05'),
      to: day('2027-06-06'),
      works: true,
      reason: 'days made up for',
    },
  });
  expect(rollout.arrivals).toEqual([
    {
      ...{ arrivalId: 'A1', store: 'store', partId: 'tank-5', quantity_count: 12, dueOn: day('2027-02-10') },
      slip_days: { low: 0, likely: 5, high: 20 },
    },
    {
      ...{ arrivalId: 'A2', store: 'store', partId: 'gutter-4', quantity_count: 60, dueOn: day('2026-11-02') },
      slip_days: { low: 0, likely: 0, high: 0 },
    },
  ]);
  expect(rollout.carriersAway).toEqual([
    {
      ...{ awayId: 'B1', carrierId: 'boat', carriers_count: 1, from: day('2027-03-08'), to: day('2027-03-19') },
      reason: 'engine',
    },
    { awayId: 'B2', carrierId: 'truck', carriers_count: 1, from: day('2027-06-01'), to: null, reason: null },
  ]);
  const [first, second] = rollout.plans;
  expect(first).toEqual({
    ...{ planId: 'P1', name: 'First plan', from: day('2027-01-04'), isInForce: true, note: null },
    timedAt: '2026-12-20T08:00:00Z',
    trips: [
      {
        ...{ tripId: 'T1', crewId: 'west', order: 1, notBefore: null, isLocked: false },
        ...{ leaves: day('2027-02-22'), back: day('2027-03-05') },
        ...{ leftOn: day('2027-02-23'), backOn: day('2027-03-06') },
        stops: [{ siteId: 'S001', order: 1, handOver: day('2027-03-01') }],
      },
      {
        ...{ tripId: 'T2', crewId: 'east', order: 1.5, notBefore: day('2027-04-01'), isLocked: true },
        ...{ leaves: day('2027-04-05'), back: day('2027-04-09'), leftOn: null, backOn: null },
        stops: [{ siteId: 'S002', order: 1, handOver: day('2027-04-08') }],
      },
    ],
  });
  expect(second).toMatchObject({ planId: 'P2', isInForce: false, note: 'asked for by the board' });
  expect(second!.trips[0]!.stops.map(({ siteId, order }) => [siteId, order])).toEqual([
    ['S002', 2],
    ['S001', 1],
  ]);
  expect(rollout.work[0]).toEqual({
    ...{ siteId: 'S001', place: 'S001', readyFrom: day('2027-01-10'), finishBy: day('2027-09-30') },
    ...{ workMonths: [4, 5, 6, 7, 8, 9, 10], priority_factor: 2, priorityReason: 'clinic without water' },
    ...{
      area: null,
      agreedOn: day('2026-08-01'),
      install_days: { low: 1, likely: 2, high: 5 },
      skill: 'masonry',
      weatherArea: 'hills',
    },
  });
  expect(rollout.work.map(({ siteId, place }) => `${siteId} ${place}`)).toEqual([
    'S001 S001',
    'S002 S002',
    'S003 jetty',
  ]);
});

describe('a fault in the tables of the rollout is named, and nothing else is lost', () => {
  it.each([...faultsOfWays, ...faultsOfCrews, ...faultsOfPlans].map((one) => [one.fault, one] as const))(
    '%s',
    async (_, { files, problems, notUsed, left, shows }) => {
      const read = await readFiles(files);
      expect(read.problems.map(line)).toEqual(problems);
      expect(listed(read)).toEqual(notUsed);
      expect(doubted(read)).toEqual([]);
      expect(names(read.facts.rollout)).toEqual({ ...all, ...left });
      const whole = await readFiles(sound);
      expect(read.facts.sites).toEqual(whole.facts.sites);
      expect(read.facts.rollout.work.map(({ siteId }) => siteId)).toEqual(['S001', 'S002', 'S003']);
      shows?.(read.facts.rollout, read);
      for (const problem of read.problems) {
        const { what, todo } = problemSentence(problem);
        for (const text of [what, todo]) expect(text).not.toMatch(/rollout\.[a-z]|undefined|NaN|[{}]/);
      }
    },
  );
});

it('money of another currency becomes that of the programme by the rate of its day', async () => {
  const files = {
    ...but('carriers.csv', ['60,USD', '60,XTS']),
    'rates.csv': lines('currency,day,perUnit', 'XTS,2026-01-15,0.5'),
  };
  const { facts, problems } = await readFiles(files);
  expect(problems.map(line)).toEqual([]);
  expect(facts.rollout.travel[0]!.cost_per_day).toBe(30);
});

it('a way without a length takes that of its line', async () => {
  const coordinates = [
    [125.2, -8.5],
    [125.2, -8.6],
  ];
  const feature = { type: 'Feature', id: 'W1', properties: {}, geometry: { type: 'LineString', coordinates } };
  const files = {
    ...but('ways.csv', ['road,6,', 'road,,']),
    'ways.geojson': JSON.stringify({ type: 'FeatureCollection', features: [feature] }),
  };
  const { facts } = await readFiles(files);
  // A tenth of a degree of a great circle of 6371 km.
  expect(facts.rollout.ways[0]!.length_km).toBeCloseTo((6371.0088 * Math.PI) / 1800, 1);
});

it('a programme that says nothing of a rollout has none, and its sites can be asked for all the same', async () => {
  const { facts } = await readFiles(good);
  const { work, ...others } = facts.rollout;
  for (const rows of Object.values(others)) expect(rows).toEqual([]);
  expect(work.map(({ siteId }) => siteId)).toEqual(['S001', 'S002', 'S003']);
  expect(work[0]).toMatchObject({ place: 'S001', priority_factor: 1, install_days: null });
});
