import type { RolloutSheet, SheetCrew, SheetStop, SheetTrip } from '@eavewell/tables';

/** A stop of a trip that is planned: arrived at, handed over, people. */
export function stopForTests(
  siteId: string,
  arrives: string | null,
  handOver: string | null,
  more: Partial<SheetStop> = {},
): SheetStop {
  return {
    ...{ siteId, name: `Site ${siteId}`, people: 100, arrives, starts: arrives, handOver, served: handOver },
    ...{ futures: null, kept: null, isHandedOver: false, isWayUp: true },
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
    ...{ nights_count: 0, waitsFor: 'nothing', waited_days: 0, kg: 0, litres: 0, cost: 0, fuel_L: 0, legs: [] },
    ...{ broken: [], isTight: false, tightSaid: null, isOverdue: false, said: `Trip ${tripId}` },
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
    ...{ currency: null, plans: [], planId: null, changedSince: null, sentence: 'All drink.', rest: '' },
    ...{ sites_count: 0, people_count: 0, finish: null, futures: 'none', waiting: null, cost: 0, fuel_L: 0 },
    ...{ isCostAtLeast: false, served: [], servedBefore_people: 0, servedByWeek: [], moneyByMonth: [] },
    ...{ crews: [...crews], crewsLeftOut: [], strips: [], hauls: [], stock: [], places: [], ways: [] },
    ...{ candidates: [], broken: [], problems: [] },
    ...more,
  };
}
