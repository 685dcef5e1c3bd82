import { loadAppLanguage } from '@eavewell/words/app';
import { describe, expect, it } from 'vitest';
import { crewForTests, sheetForTests, stopForTests, tripForTests } from '../sheetForTests.ts';
import {
  byWayOf,
  crewWords,
  goingNext,
  haulValues,
  leavingNext,
  lookOf,
  statesOf,
  tripLabel,
  waitWords,
} from './tripWords.ts';

const english = await loadAppLanguage('en');
await english.more();
const stops = [
  stopForTests('A', '2026-06-09', '2026-06-11', { people: 120 }),
  stopForTests('B', '2026-06-12', '2026-06-17', { people: 185 }),
];
const trip = tripForTests('T1', '2026-06-08', '2026-06-19', stops, { nights_count: 11 });
const broken = [{ kind: 'noWay', siteId: null, said: 'No way is open.' }];

describe('how a trip is drawn', () => {
  it('is by the gravest that is true of it, and a fact once it is done', () => {
    expect(lookOf(trip)).toBe('planned');
    expect(lookOf({ ...trip, isTight: true })).toBe('tight');
    expect(lookOf({ ...trip, isTight: true, broken })).toBe('broken');
    expect(lookOf({ ...trip, state: 'underWay' })).toBe('underWay');
    expect(lookOf({ ...trip, state: 'underWay', isTight: true })).toBe('tight');
    expect(lookOf({ ...trip, state: 'done', isTight: true, broken })).toBe('done');
  });
});

describe('a trip in words', () => {
  it('says crew, days, sites, people and nights', () => {
    expect(tripLabel(trip, { name: 'Crew 1' }, english)).toBe(
      'Crew 1: leaves 8 June 2026, back 19 June 2026; 2 sites, 305 people, 11 nights',
    );
  });

  it('says what is the matter with it', () => {
    const said = tripLabel({ ...trip, isTight: true, isLocked: true, isOverdue: true }, { name: 'Crew 1' }, english);
    expect(said.endsWith('11 nights; tight, overdue, locked')).toBe(true);
    expect(statesOf({ ...trip, isTight: true, broken }, english)).toEqual(['cannot be as planned']);
  });

  it('says what it waits for, and nothing where it does not wait', () => {
    expect(waitWords({ ...trip, waitsFor: 'stock', waited_days: 3 }, english)).toBe('waits 3 days for goods');
    expect(waitWords({ ...trip, waitsFor: 'stock', waited_days: 0 }, english)).toBe(
      'leaves as soon as its crew is free',
    );
  });

  it('names the ways it goes out by, or says what kind they are', () => {
    const leg = { from: 'b', to: 'a', leaves: null, arrives: null, hours_h: 3, wayIds: ['w1', 'w2'] };
    const way = (wayId: string, name: string | null) => ({
      ...{ wayId, name, mode: 'river' as const, from: 'a', to: 'b', line_deg: null },
    });
    const going = { ...trip, legs: [leg] };
    expect(byWayOf(going, { ways: [way('w1', 'Tavilo'), way('w2', 'Tavilo'), way('w3', 'Brenna')] }, english)).toBe(
      'Tavilo',
    );
    expect(byWayOf(going, { ways: [way('w1', null)] }, english)).toBe('river');
    expect(byWayOf(trip, { ways: [] }, english)).toBe('');
  });
});

describe('crews in words', () => {
  it('say from when on they are there where that is after the plan begins', () => {
    expect(crewWords(crewForTests('1', []), { from: '2026-06-10' }, english)).toBe('4 people, longboat');
    expect(crewWords(crewForTests('1', [], { from: '2026-06-22' }), { from: '2026-06-10' }, english)).toBe(
      '4 people, longboat, from 22 June 2026',
    );
  });
});

describe('who leaves next', () => {
  it('is told by the day, of all crews, without those that left', () => {
    const of = (tripId: string, leaves: string, state: 'done' | 'underWay' | 'planned' = 'planned') =>
      tripForTests(tripId, leaves, leaves, [], { state });
    const sheet = sheetForTests([
      crewForTests('1', [of('a', '2026-06-01', 'done'), of('b', '2026-06-20'), of('c', '2026-07-20')]),
      crewForTests('2', [of('d', '2026-06-08', 'underWay'), of('e', '2026-06-18')]),
    ]);
    expect(leavingNext(sheet).map(({ trip: { tripId } }) => tripId)).toEqual(['e', 'b', 'c']);
  });
});

describe('goods that are brought before a trip', () => {
  const haul = {
    ...{ haulId: 'b-shed', store: 'shed', from: 'port', carrierId: 'boat', by: 'Longboat', forTrip: 'b' },
    ...{ leaves: '2026-06-18', arrives: '2026-06-19', back: null, trips_count: 2, kg: 900, fuel_L: 40, fuel_kg: 30 },
    ...{ loaded_kg: 930, limit_kg: 500, left_kg: 70 },
    runs: [
      { leaves: '2026-06-18', arrives: '2026-06-18', returns: '2026-06-18', back: '2026-06-18' },
      { leaves: '2026-06-19', arrives: '2026-06-19', returns: null, back: null },
    ],
  };
  const of = (tripId: string, leaves: string) => tripForTests(tripId, leaves, leaves, []);
  const sheet = sheetForTests([crewForTests('1', [of('a', '2026-06-18'), of('b', '2026-06-20')])], {
    hauls: [haul, { ...haul, haulId: 'x', forTrip: 'gone' }],
    places: [
      { placeId: 'port', name: 'Rovufane', kind: null, latitude_deg: null, longitude_deg: null },
      { placeId: 'shed', name: 'Wendomey shed', kind: null, latitude_deg: null, longitude_deg: null },
    ],
  });

  it('stand among the trips by the day they leave, before the trips of that day', () => {
    const said = goingNext(sheet).map((one) => (one.kind === 'haul' ? one.haul.haulId : one.of.trip.tripId));
    expect(said).toEqual(['b-shed', 'a', 'b']);
  });

  it('are told with what brings them, from where to where, and when', () => {
    expect(english.say('rolloutBands.haul', haulValues(haul, sheet, english))).toBe(
      '18 June 2026: Longboat brings goods from Rovufane to Wendomey shed, 2 runs; all there 19 June 2026.',
    );
  });
});
