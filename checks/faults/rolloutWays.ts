import { expect } from 'vitest';
import { but, lines, type PlantedRollout, sound, tenDays } from './rolloutFolder.ts';

/** Faults of places, ways, closures and rivers. */
export const faultsOfWays: readonly PlantedRollout[] = [
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
    fault: 'what making a store costs, with its currency and day and without',
    files: but(
      'places.csv',
      ['filledFrom,filledBy', 'filledFrom,filledBy,setUp_amount,currency,priceDate'],
      ['125.2,,,,', '125.2,,,,,900,USD,2026-02-01'],
      ['store,truck', 'store,truck,800,,'],
      ['125.24,,,,', '125.24,,,,,,,'],
    ),
    problems: ['rollout.cost_unfinished warning @ places.csv 3 setUp_amount = "800"'],
    notUsed: [],
    shows: ({ places }) => expect(places.map(({ setUp_amount }) => setUp_amount)).toEqual([900, null, null]),
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
];
