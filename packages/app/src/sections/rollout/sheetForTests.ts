import type { RolloutSheet, SheetCandidate, SheetCrew, SheetStop, SheetTrip } from '@eavewell/tables';

/** A stop of a trip that is planned: arrived at, handed over, people. */
export function stopForTests(
  siteId: string,
  arrives: string | null,
  handOver: string | null,
  more: Partial<SheetStop> = {},
): SheetStop {
  return {
    ...{ siteId, name: `Site ${siteId}`, people: 100, arrives, starts: arrives, handOver, served: handOver },
    ...{
      futures: null,
      kept: null,
      isHandedOver: false,
      isWayUp: true,
      isKitInPart: false,
      isUnweighed: false,
      isUntreated: false,
    },
    ...more,
  };
}

/** A planned trip of which nothing is said but its days and stops. */
export function tripForTests(
  tripId: string,
  leaves: string,
  back: string,
  stops: readonly SheetStop[],
  more: Partial<SheetTrip> = {},
): SheetTrip {
  return {
    ...{ tripId, leaves, back, stops: [...stops], state: 'planned', order: 1, notBefore: null, isLocked: false },
    ...{
      nights_count: 0,
      waitsFor: 'nothing',
      waited_days: 0,
      kg: 0,
      loaded_kg: 0,
      litres: 0,
      cost: 0,
      fuel_L: 0,
      legs: [],
    },
    ...{ broken: [], isTight: false, tightSaid: null, isOverdue: false, overdueSaid: null, said: `Trip ${tripId}` },
    ...more,
  };
}

/** A crew with its trips. */
export function crewForTests(crewId: string, trips: readonly SheetTrip[], more: Partial<SheetCrew> = {}): SheetCrew {
  return {
    ...{ crewId, name: `Crew ${crewId}`, people: 4, base: 'Base', store: 'Store', goesBy: 'longboat', from: null },
    trips: [...trips],
    ...more,
  };
}

/** A sheet of the rollout with these crews and nothing else. */
export function sheetForTests(crews: readonly SheetCrew[], more: Partial<RolloutSheet> = {}): RolloutSheet {
  return {
    ...{ programme: 'Made up', version: 1, stamp: 's', day: '2026-06-10', from: '2026-06-10', until: '2026-12-27' },
    ...{ currency: null, plans: [], planId: null, changedSince: null, sentence: 'All drink.', rest: '', provisos: [] },
    ...{ sites_count: 0, people_count: 0, finish: null, futures: 'none', waiting: null, cost: 0, fuel_L: 0 },
    ...{ isCostAtLeast: false, served: [], servedBefore_people: 0, servedByWeek: [], moneyByMonth: [] },
    ...{ crews: [...crews], crewsLeftOut: [], strips: [], hauls: [], stock: [], places: [], ways: [] },
    ...{ candidates: [], broken: [], problems: [] },
    ...more,
  };
}

/** A stop of a trip, of a village with 120 people that is reached on 10 June. */
export const stopWith = (change: Partial<SheetStop>): SheetStop => ({
  siteId: 'V1',
  name: 'Vennaro',
  people: 120,
  arrives: '2027-06-09',
  starts: '2027-06-10',
  handOver: '2027-06-11',
  served: '2027-06-12',
  futures: { p10: '2027-06-10', p50: '2027-06-14', p90: '2027-07-03' },
  kept: null,
  isHandedOver: false,
  isWayUp: true,
  isKitInPart: false,
  isUnweighed: false,
  isUntreated: false,
  ...change,
});

/** A trip from Monday 7 to Wednesday 16 June that waits for nothing. */
export const tripWith = (change: Partial<SheetTrip>): SheetTrip => ({
  tripId: 'T1',
  state: 'planned',
  order: 1,
  notBefore: null,
  isLocked: false,
  leaves: '2027-06-07',
  back: '2027-06-16',
  nights_count: 9,
  waitsFor: 'nothing',
  waited_days: 0,
  kg: 900,
  loaded_kg: 945,
  litres: 2000,
  cost: 700,
  fuel_L: 60,
  stops: [stopWith({})],
  legs: [],
  broken: [],
  isTight: false,
  tightSaid: null,
  overdueSaid: null,
  isOverdue: false,
  said: '',
  ...change,
});

/** A crew of four that goes by boat. */
export const crewWith = (change: Partial<SheetCrew>): SheetCrew => ({
  crewId: 'C2',
  name: 'Crew 2',
  people: 4,
  base: 'base',
  store: 'base',
  goesBy: 'longboat',
  from: '2027-06-01',
  trips: [tripWith({})],
  ...change,
});

/** A site that is planned. */
export const candidateWith = (change: Partial<SheetCandidate>): SheetCandidate => ({
  siteId: 'V1',
  name: 'Vennaro',
  area: 'Upper Tavilo',
  people: 120,
  verdict: 'holds',
  priority_factor: 1,
  priorityReason: null,
  agreedOn: '2027-01-10',
  readyFrom: null,
  finishBy: null,
  tripId: 'T1',
  reason: null,
  isUntreated: false,
  said: 'Planned.',
  ...change,
});

/** A plan of one crew with one trip, made on 1 June 2027. */
export const sheetWith = (change: Partial<RolloutSheet>): RolloutSheet => ({
  programme: 'Lumevara',
  version: 1,
  stamp: '1',
  day: '2027-06-01',
  from: '2027-06-01',
  until: '2027-08-01',
  currency: null,
  plans: [],
  planId: 'P1',
  changedSince: null,
  sentence: '',
  rest: '',
  provisos: [],
  sites_count: 1,
  people_count: 120,
  finish: null,
  futures: 'there',
  waiting: null,
  cost: 0,
  isCostAtLeast: false,
  fuel_L: 0,
  served: [],
  servedBefore_people: 0,
  servedByWeek: [],
  moneyByMonth: [],
  crews: [crewWith({})],
  crewsLeftOut: [],
  strips: [],
  hauls: [],
  stock: [],
  places: [],
  ways: [],
  candidates: [candidateWith({})],
  broken: [],
  problems: [],
  ...change,
});
