import { readIsoDay } from '@eavewell/engine';
import type { ProgrammeRead } from '@eavewell/formats';
import { problemSentence } from '@eavewell/words';
import { describe, expect, it } from 'vitest';
import { doubted, type Files, good, line, listed, readFiles } from './folder.ts';

const lines = (...rows: readonly string[]) => `${rows.join('\n')}\n`;
const day = (text: string) => readIsoDay(text)!;
const tenDays = Array.from({ length: 10 }, (_, i) => `R-tarn,2020-03-${String(i + 1).padStart(2, '0')},${1 + i / 10}`);

/** The good folder with everything that a rollout is planned from, and no fault. Every place and name is invented. */
const sound: Files = {
  ...good,
  'places.csv': lines(
    'placeId,name,kind,latitude_deg,longitude_deg,changeOver_h,maySleep,filledFrom,filledBy',
    'store,Harbour store,store,-8.5,125.2,,,,',
    'shed,Tarn shed,store,-8.52,125.22,0.5,no,store,truck',
    'jetty,Tarn jetty,landing,-8.52,125.24,,,,',
  ),
  'ways.csv': lines(
    'wayId,name,from,to,mode,length_km,there_h,back_h,limit_kg,porters,weatherArea,riverGaugeId',
    'W1,Harbour road,store,shed,road,6,,,,,coast,',
    'W2,Shed road,shed,jetty,road,4,,,,,coast,',
    'W3,Tarn river,jetty,S001,river,5,1,1.5,400,,hills,R-tarn',
    'W4,Stone path,S001,S002,foot,10,,,,2,hills,',
    'W5,Ferry,jetty,S003,river,42,6,7,,,,',
  ),
  'carriers.csv': lines(
    'carrierId,name,mode,limit_kg,speed_km_per_h,fuel_L_per_km,cost_per_day,currency,priceDate',
    'truck,Truck,truck,3000,25,0.25,60,USD,2026-02-01',
    'boat,Boat,boat,600,,1.2,45,USD,2026-02-01',
  ),
  'closures.csv': lines(
    'closureId,wayId,weatherArea,months,from,to,slower_factor,reason',
    'C1,W3,,1 to 2,,,,flood',
    'C2,,coast,,2027-03-01,2027-03-20,2,works on the bridge',
  ),
  'riverLevels.csv': lines('riverGaugeId,day,level_m', ...tenDays),
  'wayLevels.csv': lines('wayId,carrierId,least_m,greatest_m', 'W3,boat,0.8,3'),
  'crews.csv': lines(
    'crewId,name,base,store,people,skills,calendarId,restDays,mostDaysAway,from,to,cost_per_day,currency,priceDate,porters',
    'east,East crew,store,,5,roofWork;masonry,feasts,sat;sun,14,2027-01-04,,120,USD,2026-02-01,4',
    'west,West crew,jetty,shed,4,,feasts,sun,,,2028-12-31,,,,',
  ),
  'crewCarriers.csv': lines('crewId,carrierId', 'east,truck', 'east,boat', 'west,boat'),
  'workCalendars.csv': lines(
    'calendarId,from,to,works,reason',
    'feasts,2027-04-12,2027-04-16,no,feast of boats',
    'feasts,2027-06-05,2027-06-06,yes,days made up for',
  ),
  'arrivals.csv': lines(
    'arrivalId,store,partId,quantity,dueOn,slipLow_days,slipLikely_days,slipHigh_days',
    'A1,store,tank-5,12,2027-02-10,0,5,20',
    'A2,store,gutter-4,60,2026-11-02,,,',
  ),
  'sites.csv': lines(
    'siteId,name,latitude_deg,longitude_deg,people,gaugeId,rainFactor,handOverDay,place,weatherArea,readyFrom,finishBy,workMonths,priority_factor,priorityReason,agreedOn,installLow_days,installLikely_days,installHigh_days,skill',
    'S001,Upper Tarn,-8.5,125.25,120,G-east,1.1,2027-03-01,,hills,2027-01-10,2027-09-30,4 to 10,2,clinic without water,2026-08-01,1,2,5,masonry',
    'S002,Lower Tarn,-8.55,125.3,85,G-east,,,,,,,,,,,,,,',
    'S003,Ferry Stones,-8.75,125.5,240,G-west,,2027-05-15,jetty,,,,,,,,,,,',
  ),
  'settings.json':
    '{ "programme": "Tarn water", "target": { "longestDryRun_days": 5 }, "currency": "USD", "rolloutStart": "2027-01-04", "mainStore": "store", "mustHold": "yes" }\n',
};

const but = (file: string, ...changes: readonly (readonly [from: string, to: string])[]): Files => {
  const text = changes.reduce((before, [from, to]) => {
    expect(before.split(from), from).toHaveLength(2);
    return before.replace(from, () => to);
  }, String(sound[file]));
  return { ...sound, [file]: text };
};

it('without a fault all of it is joined, and nothing is told', async () => {
  const { problems, notUsed, facts } = await readFiles(sound);
  expect(problems.map(line)).toEqual([]);
  expect(notUsed).toEqual([]);
  const { rollout, settings } = facts;
  expect(settings).toMatchObject({ rolloutStart: day('2027-01-04'), mainStore: 'store', mustHold: true });
  expect(rollout.places[1]).toEqual({
    ...{ placeId: 'shed', name: 'Tarn shed', kind: 'store', latitude_deg: -8.52, longitude_deg: 125.22 },
    ...{ changeOver_h: 0.5, maySleep: false, filledFrom: 'store', filledBy: 'truck' },
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
      ...{ from: day('2027-03-01'), to: day('2027-03-20') },
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
  expect(rollout.work[0]).toEqual({
    ...{ siteId: 'S001', place: 'S001', readyFrom: day('2027-01-10'), finishBy: day('2027-09-30') },
    ...{ workMonths: [4, 5, 6, 7, 8, 9, 10], priority_factor: 2, priorityReason: 'clinic without water' },
    ...{
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

type Rollout = ProgrammeRead['facts']['rollout'];
const names = ({ places, ways, closures, riverLevels, wayLevels, crews, calendars, arrivals }: Rollout) => ({
  ...{ places: places.length, ways: ways.length, closures: closures.length, riverLevels: riverLevels.length },
  ...{ wayLevels: wayLevels.length, crews: crews.length, calendars: calendars.length, arrivals: arrivals.length },
});
const all = { places: 3, ways: 5, closures: 2, riverLevels: 10, wayLevels: 1, crews: 2, calendars: 2, arrivals: 2 };

interface Planted {
  readonly fault: string;
  readonly files: Files;
  /** Every problem, as `line` writes it. */
  readonly problems: readonly string[];
  readonly notUsed: readonly string[];
  /** How many rows of the rollout are left, where that is not all. */
  readonly left?: Partial<typeof all>;
  readonly shows?: (rollout: Rollout, read: ProgrammeRead) => void;
}

const planted: readonly Planted[] = [
  {
    fault: 'a way from a place to itself',
    files: but('ways.csv', ['shed,jetty,road', 'shed,shed,road']),
    problems: ['rollout.way_to_itself blocker @ ways.csv 3 to = "shed"'],
    notUsed: ['ways.csv 3 whole rollout.way_to_itself'],
    left: { ways: 4 },
  },
  {
    fault: 'a way of which nobody says where it ends and how it is gone',
    files: but('ways.csv', ['S001,S002,foot', 'S001,,']),
    problems: ['rollout.way_unfinished warning @ ways.csv 5 to = "W4"'],
    notUsed: [],
    left: { ways: 4 },
  },
  {
    fault: 'a way to a place that is not there',
    files: but('ways.csv', ['shed,jetty,road', 'shed,jety,road']),
    problems: ['link.unknown_place blocker @ ways.csv 3 to = "jety"'],
    notUsed: ['ways.csv 3 to link.unknown_place'],
    left: { ways: 4 },
  },
  {
    fault: 'a place with the id of a site: its ways lead to the site',
    files: but('places.csv', ['shed,Tarn shed', 'S002,Tarn shed']),
    problems: [
      'link.unknown_store blocker @ crews.csv 3 store = "shed"',
      'link.site_and_place blocker @ places.csv 3 placeId = "S002"',
      'link.unknown_place blocker @ ways.csv 2 to = "shed"',
      'link.unknown_place blocker @ ways.csv 3 from = "shed"',
    ],
    notUsed: [
      'crews.csv 3 store link.unknown_store',
      'ways.csv 2 to link.unknown_place',
      'ways.csv 3 from link.unknown_place',
    ],
    left: { places: 2, ways: 3 },
    shows: ({ crews }) => expect(crews[1]!.store).toBe('jetty'),
  },
  {
    fault: 'a gauge in the river that nobody read',
    files: but('ways.csv', ['hills,R-tarn', 'hills,R-tarm']),
    problems: ['link.unknown_river_gauge blocker @ ways.csv 4 riverGaugeId = "R-tarm"'],
    notUsed: ['ways.csv 4 riverGaugeId link.unknown_river_gauge'],
    shows: ({ ways }) => expect(ways[2]!.riverGaugeId).toBeNull(),
  },
  {
    fault: 'stores that fill each other in a circle',
    files: but('places.csv', ['125.2,,,,', '125.2,,,shed,truck']),
    problems: [
      'rollout.stores_in_circle blocker @ places.csv 2 filledFrom = "shed"',
      'rollout.stores_in_circle blocker @ places.csv 3 filledFrom = "store"',
    ],
    notUsed: ['places.csv 2 filledFrom rollout.stores_in_circle', 'places.csv 3 filledFrom rollout.stores_in_circle'],
    shows: ({ places }) => expect(places.map(({ filledFrom }) => filledFrom)).toEqual([null, null, null]),
  },
  {
    fault: 'a store that fills itself',
    files: but('places.csv', ['no,store,truck', 'no,shed,truck']),
    problems: ['rollout.stores_in_circle blocker @ places.csv 3 filledFrom = "shed"'],
    notUsed: ['places.csv 3 filledFrom rollout.stores_in_circle'],
  },
  {
    fault: 'a forward store filled from nowhere, by nothing that is there',
    files: but('places.csv', ['no,store,truck', 'no,stor,lorry']),
    problems: [
      'link.unknown_store blocker @ places.csv 3 filledFrom = "stor"',
      'link.unknown_carrier blocker @ places.csv 3 filledBy = "lorry"',
    ],
    notUsed: ['places.csv 3 filledFrom link.unknown_store', 'places.csv 3 filledBy link.unknown_carrier'],
  },
  {
    fault: 'a forward store of which nobody says by what it is filled',
    files: but('places.csv', ['no,store,truck', 'no,store,']),
    problems: ['rollout.store_without_carrier warning @ places.csv 3 filledFrom = "store"'],
    notUsed: [],
  },
  {
    fault: 'a closure of no way and no area',
    files: but('closures.csv', ['C1,W3,', 'C1,,']),
    problems: ['rollout.closure_of_nothing blocker @ closures.csv 2 wayId = "C1"'],
    notUsed: ['closures.csv 2 whole rollout.closure_of_nothing'],
    left: { closures: 1 },
  },
  {
    fault: 'a closure of a way that is not there, and one of an area nothing is of',
    files: but('closures.csv', ['C1,W3,', 'C1,W33,'], ['coast', 'cost']),
    problems: [
      'link.unknown_way blocker @ closures.csv 2 wayId = "W33"',
      'link.area_unused warning @ closures.csv 3 weatherArea = "cost"',
    ],
    notUsed: ['closures.csv 2 whole link.unknown_way'],
    left: { closures: 1 },
  },
  {
    fault: 'closures with months and dates, and with neither',
    files: but('closures.csv', ['1 to 2,,', '1 to 2,2027-01-01,2027-02-28'], ['2027-03-01,2027-03-20', ',']),
    problems: [
      'rollout.closure_when blocker @ closures.csv 2 months = "C1"',
      'rollout.closure_when blocker @ closures.csv 3 months = "C2"',
    ],
    notUsed: ['closures.csv 2 whole rollout.closure_when', 'closures.csv 3 whole rollout.closure_when'],
    left: { closures: 0 },
  },
  {
    fault: 'a closure with one date alone',
    files: but('closures.csv', ['2027-03-01,2027-03-20', '2027-03-01,']),
    problems: ['rollout.closure_when blocker @ closures.csv 3 months = "C2"'],
    notUsed: ['closures.csv 3 whole rollout.closure_when'],
    left: { closures: 1 },
  },
  {
    fault: 'a closure that ends before it begins',
    files: but('closures.csv', ['2027-03-01,2027-03-20', '2027-03-20,2027-03-01']),
    problems: ['rollout.dates_turned blocker @ closures.csv 3 to = "C2"'],
    notUsed: ['closures.csv 3 whole rollout.dates_turned'],
    left: { closures: 1 },
  },
  {
    fault: 'a reading of a river in centimetres among metres',
    files: but('riverLevels.csv', ['2020-03-04,1.3', '2020-03-04,130'], ['2020-03-08,1.7', '2020-03-08,170']),
    problems: ['rollout.level_unlikely blocker @ riverLevels.csv 5 level_m = "130"'],
    notUsed: ['riverLevels.csv 5 whole rollout.level_unlikely', 'riverLevels.csv 9 whole rollout.level_unlikely'],
    left: { riverLevels: 8 },
  },
  {
    fault: 'levels of a river that are no numbers, or those of a mountain top',
    files: but('riverLevels.csv', ['2020-03-04,1.3', '2020-03-04,high'], ['2020-03-08,1.7', '2020-03-08,-999']),
    problems: [
      'cell.not_a_number blocker @ riverLevels.csv 5 level_m = "high"',
      'cell.out_of_range blocker @ riverLevels.csv 9 level_m = "-999"',
    ],
    notUsed: ['riverLevels.csv 5 whole cell.not_a_number', 'riverLevels.csv 9 whole cell.out_of_range'],
    left: { riverLevels: 8 },
  },
  {
    fault: 'limits of a carrier in centimetres where the gauge reads metres',
    files: but('wayLevels.csv', ['0.8,3', '80,300']),
    problems: [
      'rollout.limit_unlikely warning @ wayLevels.csv 2 least_m = "80"',
      'rollout.limit_unlikely warning @ wayLevels.csv 2 greatest_m = "300"',
    ],
    notUsed: [],
    shows: ({ wayLevels }) => expect(wayLevels[0]).toMatchObject({ least_m: 80, greatest_m: 300 }),
  },
  {
    fault: 'a gauge that reads centimetres throughout, where the limits are metres',
    files: {
      ...sound,
      'riverLevels.csv': lines(
        'riverGaugeId,day,level_m',
        ...tenDays.map((row, i) => row.replace(/[^,]*$/, `${100 + 10 * i}`)),
      ),
    },
    problems: [
      'rollout.limit_unlikely warning @ wayLevels.csv 2 least_m = "0.8"',
      'rollout.limit_unlikely warning @ wayLevels.csv 2 greatest_m = "3"',
    ],
    notUsed: [],
  },
  {
    fault: 'limits of a carrier the wrong way round, and of a carrier and a way that are not there',
    files: but('wayLevels.csv', ['W3,boat,0.8,3', 'W3,boat,3,0.8\nW3,bot,,2\nW33,boat,,2']),
    problems: [
      'link.unknown_way blocker @ wayLevels.csv 4 wayId = "W33"',
      'link.unknown_carrier blocker @ wayLevels.csv 3 carrierId = "bot"',
      'rollout.levels_turned blocker @ wayLevels.csv 2 least_m = "3"',
    ],
    notUsed: [
      'wayLevels.csv 4 whole link.unknown_way',
      'wayLevels.csv 3 whole link.unknown_carrier',
      'wayLevels.csv 2 whole rollout.levels_turned',
    ],
    left: { wayLevels: 0 },
  },
  {
    fault: 'a crew whose base is nowhere',
    files: but('crews.csv', ['East crew,store,', 'East crew,stores,']),
    problems: ['link.unknown_place blocker @ crews.csv 2 base = "stores"'],
    notUsed: ['crews.csv 2 whole link.unknown_place'],
    left: { crews: 1 },
  },
  {
    fault: 'a crew without a base',
    files: but('crews.csv', ['East crew,store,', 'East crew,,']),
    problems: ['cell.missing blocker @ crews.csv 2 base = ""'],
    notUsed: ['crews.csv 2 whole cell.missing'],
    left: { crews: 1 },
  },
  {
    fault: 'a crew that leaves before it comes',
    files: but('crews.csv', ['2027-01-04,,120', '2027-01-04,2026-12-01,120']),
    problems: ['rollout.dates_turned blocker @ crews.csv 2 to = "east"'],
    notUsed: ['crews.csv 2 whole rollout.dates_turned'],
    left: { crews: 1 },
  },
  {
    fault: 'days of the week in words',
    files: but('crews.csv', ['sat;sun', 'Saturday and Sunday'], ['feasts,sun', 'feasts,Sunday']),
    problems: [
      'cell.not_weekdays blocker @ crews.csv 2 restDays = "Saturday and Sunday"',
      'cell.not_weekdays blocker @ crews.csv 3 restDays = "Sunday"',
    ],
    notUsed: ['crews.csv 2 restDays cell.not_weekdays', 'crews.csv 3 restDays cell.not_weekdays'],
    shows: ({ crews }, { problems }) => {
      expect(crews.map(({ restDays }) => restDays)).toEqual([[], []]);
      expect(problems.map(({ facts }) => facts['likely'])).toEqual(['', 'sun']);
    },
  },
  {
    fault: 'a calendar that is not there, and periods of one that share a day',
    files: {
      ...but('workCalendars.csv', ['2027-06-05', '2027-04-16']),
      'crews.csv': but('crews.csv', ['masonry,feasts', 'masonry,feast'])['crews.csv']!,
    },
    problems: [
      'rollout.calendar_overlaps blocker @ workCalendars.csv 3 from = "feasts"',
      'link.unknown_work_calendar blocker @ crews.csv 2 calendarId = "feast"',
    ],
    notUsed: [
      'workCalendars.csv 3 whole rollout.calendar_overlaps',
      'crews.csv 2 calendarId link.unknown_work_calendar',
    ],
    left: { calendars: 1 },
  },
  {
    fault: 'a period of a calendar that ends before it begins',
    files: but('workCalendars.csv', ['2027-04-12,2027-04-16', '2027-04-16,2027-04-12']),
    problems: ['rollout.dates_turned blocker @ workCalendars.csv 2 to = "feasts"'],
    notUsed: ['workCalendars.csv 2 whole rollout.dates_turned'],
    left: { calendars: 1 },
  },
  {
    fault: 'a crew whose only carrier is not there',
    files: but('crewCarriers.csv', ['west,boat', 'west,barge\nnorth,boat']),
    problems: [
      'link.unknown_crew blocker @ crewCarriers.csv 5 crewId = "north"',
      'link.unknown_carrier blocker @ crewCarriers.csv 4 carrierId = "barge"',
      'rollout.crew_without_carrier warning @ crews.csv 3 crewId = "west"',
    ],
    notUsed: ['crewCarriers.csv 5 whole link.unknown_crew', 'crewCarriers.csv 4 whole link.unknown_carrier'],
    shows: ({ crews }) => expect(crews[1]!.carrierIds).toEqual([]),
  },
  {
    fault: 'goods that are no part, go nowhere, or are fewer than none',
    files: but(
      'arrivals.csv',
      ['store,tank-5,12', 'store,tank-55,12'],
      ['A2,store,gutter-4,60,2026-11-02,,,', 'A2,stores,gutter-4,60,2026-11-02,,,\nA3,store,gutter-4,-5,2026-11-02,,,'],
    ),
    problems: [
      'cell.out_of_range blocker @ arrivals.csv 4 quantity = "-5"',
      'link.unknown_store blocker @ arrivals.csv 3 store = "stores"',
      'link.unknown_part blocker @ arrivals.csv 2 partId = "tank-55"',
    ],
    notUsed: [
      'arrivals.csv 4 whole cell.out_of_range',
      'arrivals.csv 3 whole link.unknown_store',
      'arrivals.csv 2 whole link.unknown_part',
    ],
    left: { arrivals: 0 },
  },
  {
    fault: 'goods that are later at the least than at the most',
    files: but('arrivals.csv', ['0,5,20', '20,5,0']),
    problems: ['rollout.range_turned blocker @ arrivals.csv 2 slipLikely_days = "5"'],
    notUsed: ['arrivals.csv 2 slipLikely_days rollout.range_turned'],
    shows: ({ arrivals }) => expect(arrivals[0]!.slip_days).toEqual({ low: 0, likely: 0, high: 0 }),
  },
  {
    fault: 'a cost without a currency, one without a day',
    files: {
      ...but('carriers.csv', ['60,USD', '60,']),
      'crews.csv': but('crews.csv', ['120,USD,2026-02-01', '120,USD,'])['crews.csv']!,
    },
    problems: [
      'rollout.cost_unfinished warning @ carriers.csv 2 cost_per_day = "60"',
      'rollout.cost_unfinished warning @ crews.csv 2 cost_per_day = "120"',
    ],
    notUsed: [],
    shows: ({ travel, crews }) => expect([travel[0]!.cost_per_day, crews[0]!.cost_per_day]).toEqual([null, null]),
  },
  {
    fault: 'a cost of a currency there is no rate of: not known, and never the same number',
    files: but('carriers.csv', ['60,USD', '60,XTS']),
    problems: ['money.rate_missing warning @ carriers.csv 2 cost_per_day = undefined'],
    notUsed: [],
    shows: ({ travel }) => expect(travel.map(({ cost_per_day }) => cost_per_day)).toEqual([null, 45]),
  },
  {
    fault: 'a site that hangs on nothing',
    files: but('sites.csv', ['2027-05-15,jetty', '2027-05-15,jety']),
    problems: ['link.unknown_place blocker @ sites.csv 4 place = "jety"'],
    notUsed: ['sites.csv 4 place link.unknown_place'],
    shows: ({ work }) => expect(work[2]!.place).toBe('S003'),
  },
  {
    fault: 'a site to be handed over before it is ready',
    files: but('sites.csv', ['2027-09-30', '2027-01-09']),
    problems: ['rollout.deadline_before_ready warning @ sites.csv 2 finishBy = "2027-01-09"'],
    notUsed: [],
  },
  {
    fault: 'a site that comes first, and nobody says why',
    files: but('sites.csv', ['clinic without water', '']),
    problems: ['rollout.priority_unexplained warning @ sites.csv 2 priorityReason = 2'],
    notUsed: [],
  },
  {
    fault: 'days of work the wrong way round, and a skill no crew has',
    files: but('sites.csv', ['1,2,5,masonry', '5,2,1,plumbing']),
    problems: [
      'rollout.range_turned blocker @ sites.csv 2 installLikely_days = "2"',
      'link.skill_unused warning @ sites.csv 2 skill = "plumbing"',
    ],
    notUsed: ['sites.csv 2 installLikely_days rollout.range_turned'],
    shows: ({ work }) => expect(work[0]!.install_days).toBeNull(),
  },
  {
    fault: 'cells of a site that cannot be read: its water is judged all the same',
    files: but('sites.csv', ['4 to 10,2,', 'dry season,many,'], ['2027-01-10', 'soon']),
    problems: [
      'cell.not_a_date blocker @ sites.csv 2 readyFrom = "soon"',
      'cell.not_months blocker @ sites.csv 2 workMonths = "dry season"',
      'cell.not_a_number blocker @ sites.csv 2 priority_factor = "many"',
    ],
    notUsed: [
      'sites.csv 2 readyFrom cell.not_a_date',
      'sites.csv 2 workMonths cell.not_months',
      'sites.csv 2 priority_factor cell.not_a_number',
    ],
    shows: ({ work }) => expect(work[0]).toMatchObject({ readyFrom: null, workMonths: [], priority_factor: 1 }),
  },
  {
    fault: 'settings of the rollout that cannot be used',
    files: but('settings.json', ['"2027-01-04"', '"04/01/2027", "installLow_days": 9'], ['"store"', '"stores"']),
    problems: [
      'settings.wrong_value blocker @ settings.json - rolloutStart = "\\"04/01/2027\\""',
      'rollout.range_turned blocker @ settings.json - installLikely_days = 2',
      'link.unknown_store blocker @ settings.json - mainStore = "stores"',
    ],
    notUsed: [],
    shows: (_, { facts: { settings } }) => {
      expect(settings).toMatchObject({ rolloutStart: null, mainStore: null });
      expect([settings.installLow_days, settings.installLikely_days, settings.installHigh_days]).toEqual([1, 2, 4]);
    },
  },
];

describe('a fault in the tables of the rollout is named, and nothing else is lost', () => {
  it.each(planted.map((one) => [one.fault, one] as const))(
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
