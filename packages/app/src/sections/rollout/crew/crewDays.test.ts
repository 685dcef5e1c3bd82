import type { RolloutTripAnswer } from '@eavewell/tables';
import { expect, it } from 'vitest';
import { crewForTests, stopForTests, tripForTests } from '../sheetForTests.ts';
import { dayCards } from './dayCards.ts';
import { tripsToRead } from './tripsToRead.ts';
import { ahead, tripsAhead } from './useKeepItineraries.ts';

const leg = (from: string, to: string, day: string, mode: 'road' | 'river' | 'foot') => ({
  ...{ from, to, leaves: day, arrives: day, hours_h: 2, limit_kg: null, limitBy: null },
  ...{ porters_count: 0, said: `${from} to ${to}` },
  stretches: [{ wayId: 'W', from, to, mode, carrierId: null, hours_h: 2, changeOver_h: 0 }],
});
const part = (siteId: string, mass_kg: number) => ({
  ...{ siteId, partId: 'pipe', name: 'Pipe', count: 2, each_count: 1, mass_kg, danger: null },
  ...{ longest_m: 3, lift_people: 1, isPresumed: false },
});
const day = (at: string, sleeps: string | null) => ({ day: at, said: [`on ${at}`], sleeps, siteIds: [] });

const { trips: _, ...crew } = crewForTests('C1', [], { base: 'store', store: 'store' });
const answer: RolloutTripAnswer = {
  ...{ stamp: 's', programme: 'Made up', planId: 'P1', plan: 'Plan', isInForce: true, crew },
  trip: tripForTests('T1', '2026-06-10', '2026-06-14', [
    stopForTests('S1', '2026-06-10', '2026-06-11'),
    stopForTests('S2', '2026-06-12', '2026-06-13'),
  ]),
  legs: [
    leg('store', 'S1', '2026-06-10', 'river'),
    leg('S1', 'S2', '2026-06-12', 'foot'),
    leg('S2', 'store', '2026-06-14', 'river'),
  ],
  aboard: [part('S2', 30), part('S1', 50)],
  ...{ carriers: [], hauls: [], crew_kg: null, fuel_kg: null, cautions: [], places: [] },
  days: [
    day('2026-06-10', 'S1'),
    day('2026-06-11', 'S1'),
    day('2026-06-12', 'S2'),
    day('2026-06-13', 'S2'),
    day('2026-06-14', null),
  ],
};

it('days that are past stand apart, today comes first, and a day on a river says so', () => {
  const { before, coming } = dayCards(answer, '2026-06-12');
  expect(before.map((card) => [card.day, card.isOnRiver])).toEqual([
    ['2026-06-10', true],
    ['2026-06-11', false],
  ]);
  expect(coming.map((card) => [card.day, card.isOnRiver])).toEqual([
    ['2026-06-12', false],
    ['2026-06-13', false],
    ['2026-06-14', true],
  ]);
});

it('what is taken ashore stands on its day, and what is left aboard after each hand-over', () => {
  const { before, coming } = dayCards(answer, '2026-06-12');
  const told = [...before, ...coming].map(({ landed, aboard_kg }) => [landed.map(({ siteId }) => siteId), aboard_kg]);
  expect(told).toEqual([
    [['S1'], null],
    [[], 30],
    [['S2'], null],
    [[], 0],
    [[], null],
  ]);
});

it('what is left aboard is at least so much until the stop is done of whose kit not all is counted', () => {
  const { trip } = answer;
  const stops = trip.stops.map((stop) => ({ ...stop, isKitInPart: stop.siteId === 'S2' }));
  const { before, coming } = dayCards({ ...answer, trip: { ...trip, stops } }, '2026-06-12');
  const told = [...before, ...coming].filter((card) => card.aboard_kg !== null);
  expect(told.map((card) => [card.aboard_kg, card.isAboardInPart])).toEqual([
    [30, true],
    [0, false],
  ]);
});

it('trips are read in the order they go, those under way first, those done not at all', () => {
  const trip = (tripId: string, leaves: string, state: 'done' | 'underWay' | 'planned') =>
    tripForTests(tripId, leaves, leaves, [], { state });
  const trips = [
    trip('b', '2026-07-01', 'planned'),
    trip('a', '2026-06-01', 'done'),
    trip('c', '2026-06-20', 'planned'),
    trip('d', '2026-08-01', 'underWay'),
  ];
  expect(tripsToRead(trips).map(({ tripId }) => tripId)).toEqual(['d', 'c', 'b']);
});

it('of every crew the next trip is read ahead before the second of any, and no more than a phone is taken along for', () => {
  const crews = Array.from({ length: 50 }, (_, crew) =>
    crewForTests(
      `C${crew}`,
      Array.from({ length: 6 }, (_, nth) => tripForTests(`C${crew}-${nth}`, `2026-06-1${nth}`, '2026-06-20', [])),
    ),
  );
  const read = tripsAhead({ crews });
  expect(read).toHaveLength(ahead.ofAll);
  expect(new Set(read).size).toBe(ahead.ofAll);
  expect(read.slice(0, 50).every((tripId) => tripId.endsWith('-0'))).toBe(true);
  expect(tripsAhead({ crews: crews.slice(0, 1) })).toEqual(['C0-0', 'C0-1', 'C0-2', 'C0-3']);
});

it('days on which nothing begins stand as one, but for today and where the night is elsewhere', () => {
  const quiet = (at: string, sleeps: string) => ({ day: at, said: [], sleeps, siteIds: [] });
  const days = [
    day('2026-06-10', 'S1'),
    ...['2026-06-11', '2026-06-12', '2026-06-13', '2026-06-14'].map((at) => quiet(at, 'S1')),
    ...['2026-06-15', '2026-06-16'].map((at) => quiet(at, 'S2')),
  ];
  const given = { ...answer, legs: [], aboard: [], trip: { ...answer.trip, stops: [] }, days };
  const { before, coming } = dayCards(given, '2026-06-12');
  const told = (all: typeof before) => all.map((card) => [card.day, card.until, card.days_count]);
  expect(told(before)).toEqual([
    ['2026-06-10', '2026-06-10', 1],
    ['2026-06-11', '2026-06-11', 1],
  ]);
  expect(told(coming)).toEqual([
    ['2026-06-12', '2026-06-12', 1],
    ['2026-06-13', '2026-06-14', 2],
    ['2026-06-15', '2026-06-16', 2],
  ]);
});

it('a day of rest at a landing, of a leg by river, is no day on a river', () => {
  const long = { ...leg('store', 'S1', '2026-06-10', 'river'), arrives: '2026-06-12' };
  const stops = [stopForTests('S1', '2026-06-12', '2026-06-12')];
  const days = ['2026-06-10', '2026-06-11', '2026-06-12'].map((at) => ({
    ...{ day: at, said: [], sleeps: 'landing', isAfloat: at !== '2026-06-11', siteIds: [] },
  }));
  const given = { ...answer, legs: [long], aboard: [], trip: { ...answer.trip, stops }, days };
  const { coming } = dayCards(given, '2026-06-10');
  expect(coming.map((card) => [card.day, card.sleeps, card.isOnRiver])).toEqual([
    ['2026-06-10', 'landing', true],
    ['2026-06-11', 'landing', false],
    ['2026-06-12', 'landing', true],
  ]);
});

it('every day of a leg on a river says so, those between its first and its last too, where nobody knows when its boats are out', () => {
  const long = { ...leg('store', 'S1', '2026-06-10', 'river'), arrives: '2026-06-13' };
  const stops = [stopForTests('S1', '2026-06-13', '2026-06-13')];
  const days = ['2026-06-10', '2026-06-11', '2026-06-12', '2026-06-13', '2026-06-14'].map((at) => ({
    ...{ day: at, said: [], sleeps: 'S1', siteIds: [] },
  }));
  const given = { ...answer, legs: [long], aboard: [], trip: { ...answer.trip, stops }, days };
  const { coming } = dayCards(given, '2026-06-10');
  expect(coming.map((card) => [card.day, card.isOnRiver])).toEqual([
    ['2026-06-10', true],
    ['2026-06-11', true],
    ['2026-06-12', true],
    ['2026-06-13', true],
    ['2026-06-14', false],
  ]);
});
