import { describe, expect, test } from 'vitest';
import { crewAwayEntry } from './crewAway.ts';
import {
  againEntry,
  backEntry,
  backLaterEntry,
  brokeEntry,
  cameEntry,
  goodsLaterEntry,
  handOverField,
  laterEntry,
  leftEntry,
  mendedTrip,
} from './happenedChanges.ts';
import { openArrivals } from './happenedRows.ts';

const today = '2031-06-10';
const row = (table: string, key: string, cells: Readonly<Record<string, string>>) => ({ table, key, cells });
const trip = row('planTrips', 'P1/T1', { planId: 'P1', tripId: 'T1', crewId: 'C1', order: '1', leaves: '2031-06-01' });
const left = row('planTrips', 'P1/T1', { ...trip.cells, leftOn: '2031-06-02', back: '2031-06-12' });
const stopOf = (siteId: string, handOverDay?: string) => ({
  stop: row('planStops', `P1/${siteId}`, { planId: 'P1', siteId, tripId: 'T1', order: '1' }),
  site: row('sites', siteId, { siteId, name: siteId, ...(handOverDay === undefined ? {} : { handOverDay }) }),
});
const faultsOf = ({ faults }: { readonly faults: readonly { readonly field: string }[] }) =>
  faults.map(({ field }) => field);

describe('a trip', () => {
  test('left: one cell of its row, with what stood before', () => {
    expect(leftEntry(trip, { leftOn: '2031-06-02' }, today)).toEqual({
      faults: [],
      changes: [
        {
          ...{ kind: 'edited', table: 'planTrips', key: 'P1/T1' },
          ...{ before: { leftOn: null }, after: { leftOn: '2031-06-02' } },
        },
      ],
    });
    expect(faultsOf(leftEntry(trip, { leftOn: null }, today))).toEqual(['leftOn']);
    // Tomorrow has not happened; today may have.
    expect(leftEntry(trip, { leftOn: '2031-06-11' }, today).faults[0]?.key).toBe('rolloutHappened.fault_future');
    expect(leftEntry(trip, { leftOn: today }, today).changes).toHaveLength(1);
    // Not before the plan begins, nor before the crew was back.
    const early = leftEntry(trip, { leftOn: '2020-05-01' }, today, '2031-05-30');
    expect([early.changes, early.faults.map(({ field, key }) => [field, key])]).toEqual([
      [],
      [['leftOn', 'rolloutHappened.fault_before']],
    ]);
  });

  test('is back: its sites are handed over, or leave the trip so that they can be planned', () => {
    const stops = [stopOf('S1'), stopOf('S2'), stopOf('S3', '2031-06-03')];
    const cells = { leftOn: '2031-06-02', backOn: '2031-06-09', [handOverField('S1')]: '2031-06-05' };
    const { changes, faults } = backEntry(trip, stops, cells, today);
    expect(faults).toEqual([]);
    expect(changes.map(({ kind, table, key }) => `${kind} ${table} ${key}`)).toEqual([
      'edited planTrips P1/T1',
      'edited sites S1',
      'removed planStops P1/S2',
    ]);
    expect(changes[0]).toMatchObject({ after: { leftOn: '2031-06-02', backOn: '2031-06-09' } });
    expect(changes[1]).toMatchObject({ before: { handOverDay: null }, after: { handOverDay: '2031-06-05' } });
    expect(changes[2]).toMatchObject({ before: stops[1]!.stop.cells });
  });

  test('cannot be back before it left, nor hand over before, and nothing is written of it then', () => {
    const cells = { leftOn: '2031-06-05', backOn: '2031-06-04', [handOverField('S1')]: '2031-06-04' };
    const entry = backEntry(trip, [stopOf('S1')], cells, today);
    expect(faultsOf(entry)).toEqual(['backOn', handOverField('S1')]);
    expect(entry.faults[0]).toMatchObject({ key: 'rolloutHappened.fault_before', values: { day: '2031-06-05' } });
    expect(entry.changes).toEqual([]);
    expect(faultsOf(backEntry(trip, [], { backOn: '2031-06-04' }, today))).toEqual(['leftOn']);
    const late = { leftOn: '2031-06-05', backOn: '2031-06-09', [handOverField('S1')]: '2031-06-20' };
    expect(faultsOf(backEntry(trip, [stopOf('S1')], late, today))).toEqual([handOverField('S1')]);
  });

  test('leaves or comes back later: no day that is past', () => {
    expect(laterEntry(trip, { notBefore: '2031-06-20' }, today).changes[0]).toMatchObject({
      after: { notBefore: '2031-06-20' },
    });
    expect(faultsOf(laterEntry(trip, { notBefore: '2031-06-09' }, today))).toEqual(['notBefore']);
    expect(backLaterEntry(left, { back: '2031-06-15' }, today).changes[0]).toMatchObject({
      ...{ before: { back: '2031-06-12' }, after: { back: '2031-06-15' } },
    });
    expect(faultsOf(backLaterEntry(left, { back: null }, today))).toEqual(['back']);
  });

  test('entered wrongly is mended: a day emptied, another put in, never a trip back that did not leave', () => {
    expect(mendedTrip(left, { leftOn: null, backOn: null }, today).changes).toMatchObject([
      { before: { leftOn: '2031-06-02' }, after: { leftOn: null } },
    ]);
    expect(faultsOf(mendedTrip(left, { leftOn: null, backOn: '2031-06-09' }, today))).toEqual(['leftOn']);
    // As it stands: nothing is changed.
    expect(mendedTrip(left, { leftOn: '2031-06-02' }, today)).toEqual({ changes: [], faults: [] });
  });
});

describe('what carries, what is closed, who is away', () => {
  const boats = row('carriers', 'longboat', { carrierId: 'longboat', name: 'Longboat', count: '2' });
  const away = row('carriersAway', 'A4', { awayId: 'A4', carrierId: 'longboat', from: '2031-06-01' });

  test('a carrier breaks: a row with the next name; no more of them than there are', () => {
    const cells = { carrierId: 'longboat', from: today, reason: 'propeller' };
    expect(brokeEntry([boats, away], cells).changes).toEqual([
      {
        ...{ kind: 'added', table: 'carriersAway', key: 'A5' },
        after: { awayId: 'A5', carrierId: 'longboat', from: today, reason: 'propeller' },
      },
    ]);
    expect(brokeEntry([boats], { ...cells, count: '3' }).faults[0]).toMatchObject({
      ...{ field: 'count', values: { count: 2 } },
    });
    expect(faultsOf(brokeEntry([boats], {}))).toEqual(['carrierId', 'from']);
    expect(faultsOf(brokeEntry([boats], { ...cells, to: '2031-06-09' }))).toEqual(['to']);
  });

  test('it is there again: the last day without is the day before', () => {
    expect(againEntry([away], { again: '2031-07-01' }).changes[0]).toMatchObject({
      ...{ before: { to: null }, after: { to: '2031-06-30' } },
    });
    expect(againEntry([away], { again: '2031-06-02' }).changes[0]).toMatchObject({ after: { to: '2031-06-01' } });
    expect(faultsOf(againEntry([away], { again: '2031-06-01' }))).toEqual(['again']);
  });

  test('a crew is away: its own calendar says so; one that others share is copied first', () => {
    const crews = [row('crews', 'C1', { calendarId: 'feasts' }), row('crews', 'C2', { calendarId: 'feasts' })];
    const feast = { calendarId: 'feasts', from: '2031-12-24', to: '2031-12-26', works: 'no' };
    const days = [row('workCalendars', 'feasts/2031-12-24', feast)];
    const cells = { crewId: 'C1', from: '2031-06-12', to: '2031-06-14', reason: 'ill' };
    const own = { from: '2031-06-12', to: '2031-06-14', works: 'no', reason: 'ill' };
    expect(crewAwayEntry([...crews, ...days], cells).changes).toEqual([
      {
        ...{ kind: 'added', table: 'workCalendars', key: 'C1/2031-12-24' },
        after: { ...feast, calendarId: 'C1' },
      },
      { kind: 'added', table: 'workCalendars', key: 'C1/2031-06-12', after: { ...own, calendarId: 'C1' } },
      {
        ...{ kind: 'edited', table: 'crews', key: 'C1' },
        ...{ before: { calendarId: 'feasts' }, after: { calendarId: 'C1' } },
      },
    ]);
    expect(crewAwayEntry([crews[0]!, ...days], cells).changes).toEqual([
      { kind: 'added', table: 'workCalendars', key: 'feasts/2031-06-12', after: { ...own, calendarId: 'feasts' } },
    ]);
    const none = crewAwayEntry([row('crews', 'C1', {})], cells).changes;
    expect(none.map(({ table, key }) => `${table} ${key}`)).toEqual(['workCalendars C1/2031-06-12', 'crews C1']);
    expect(faultsOf(crewAwayEntry([crews[0]!, ...days], { ...cells, from: '2031-12-24', to: '2031-12-24' }))).toEqual([
      'from',
    ]);
    expect(faultsOf(crewAwayEntry(crews, {}))).toEqual(['crewId', 'from', 'to']);
    expect(faultsOf(crewAwayEntry(crews, { ...cells, to: '2031-06-11' }))).toEqual(['to']);
  });
});

describe('goods', () => {
  const promised = { store: 'main', partId: 'tank', quantity: '40', dueOn: '2031-06-01', slipHigh_days: '20' };
  const arrival = row('arrivals', 'AR07', { arrivalId: 'AR07', ...promised });

  test('came as promised: the day it came, and no more lateness', () => {
    expect(cameEntry(arrival, [arrival], { cameOn: '2031-06-08', quantity: '40' }, today).changes).toEqual([
      {
        ...{ kind: 'edited', table: 'arrivals', key: 'AR07' },
        before: { dueOn: '2031-06-01', slipHigh_days: '20' },
        after: { dueOn: '2031-06-08', slipHigh_days: null },
      },
    ]);
  });

  test('fewer came: the rest is an arrival of its own on its day, or comes no more', () => {
    const cells = { cameOn: '2031-06-08', quantity: '12.5', rest: 'on', restOn: '2031-07-20' };
    const { changes, asks } = cameEntry(arrival, [arrival], cells, today);
    expect(asks).toBeUndefined();
    expect(changes[0]).toMatchObject({ before: { quantity: '40' }, after: { quantity: '12.5' } });
    expect(changes[1]).toEqual({
      ...{ kind: 'added', table: 'arrivals', key: 'AR08' },
      after: { arrivalId: 'AR08', store: 'main', partId: 'tank', quantity: '27.5', dueOn: '2031-07-20' },
    });
    expect(cameEntry(arrival, [arrival], { ...cells, rest: 'none', restOn: null }, today).changes).toHaveLength(1);
  });

  test('nobody knows when the rest comes: a day to ask again, as uncertain as it is far, so that it is asked after', () => {
    const cells = { cameOn: '2031-06-08', quantity: '30', rest: 'unknown', restOn: '2031-07-01' };
    const { changes } = cameEntry(arrival, [arrival], cells, today);
    // From 10 June to 1 July.
    const after = { ...{ quantity: '10', dueOn: '2031-07-01', slipHigh_days: '21' } };
    expect(changes[1]).toMatchObject({ kind: 'added', after });
    const asked = row('arrivals', 'AR08', { store: 'main', partId: 'tank', ...after });
    expect(openArrivals([asked], '2031-07-02')).toEqual([asked]);
  });

  test('more came than were promised: it is asked first, and written as it came', () => {
    const { changes, asks, faults } = cameEntry(arrival, [], { cameOn: '2031-06-08', quantity: '52' }, today);
    expect(faults).toEqual([]);
    expect(asks).toMatchObject({ field: 'quantity', values: { more: 12, promised: 40 } });
    expect(changes).toMatchObject([{ key: 'AR07', after: { quantity: '52' } }]);
  });

  test('cannot come tomorrow, nor the rest without a word or on a day that is past', () => {
    expect(faultsOf(cameEntry(arrival, [], { cameOn: '2031-06-11', quantity: '40' }, today))).toEqual(['cameOn']);
    const fewer = { cameOn: '2031-06-08', quantity: '8' };
    expect(faultsOf(cameEntry(arrival, [], fewer, today))).toEqual(['rest']);
    expect(faultsOf(cameEntry(arrival, [], { ...fewer, rest: 'on' }, today))).toEqual(['restOn']);
    expect(faultsOf(cameEntry(arrival, [], { ...fewer, rest: 'on', restOn: '2031-06-09' }, today))).toEqual(['restOn']);
    expect(faultsOf(cameEntry(arrival, [], { ...fewer, rest: 'unknown', restOn: today }, today))).toEqual(['restOn']);
    expect(faultsOf(cameEntry(arrival, [], { cameOn: '2031-06-08', quantity: null }, today))).toEqual(['quantity']);
  });

  test('come later: another day, with its lateness as it was', () => {
    expect(goodsLaterEntry(arrival, { dueOn: '2031-07-01' }, today).changes).toEqual([
      {
        ...{ kind: 'edited', table: 'arrivals', key: 'AR07' },
        ...{ before: { dueOn: '2031-06-01' }, after: { dueOn: '2031-07-01' } },
      },
    ]);
    expect(faultsOf(goodsLaterEntry(arrival, { dueOn: '2031-06-02' }, today))).toEqual(['dueOn']);
  });
});
