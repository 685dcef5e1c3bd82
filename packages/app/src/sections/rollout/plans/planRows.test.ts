import { describe, expect, test } from 'vitest';
import { inForceChanges, isFollowed, removedPlan, retimedChanges } from './planRows.ts';
import { stepPath } from './ServedPicture.tsx';
import { byLateness, servedLines } from './servedLines.ts';

const row = (table: string, key: string, cells: Readonly<Record<string, string>>) => ({ table, key, cells });
const plan = (planId: string, isInForce?: string) =>
  row('plans', planId, { planId, name: planId, ...(isInForce === undefined ? {} : { isInForce }) });
const trip = (planId: string, tripId: string, cells = {}) =>
  row('planTrips', `${planId}/${tripId}`, { planId, tripId, crewId: 'C1', order: '1', ...cells });
const stop = (planId: string, siteId: string, tripId: string, cells = {}) =>
  row('planStops', `${planId}/${siteId}`, { planId, siteId, tripId, order: '1', ...cells });

describe('a plan', () => {
  test('is put in force, and whatever was is not any more', () => {
    const rows = [plan('P1', 'yes'), plan('P2'), plan('P3', 'yes'), trip('P2', 'T1')];
    expect(rows.slice(0, 3).map(isFollowed)).toEqual([true, false, true]);
    expect(inForceChanges(rows, 'P2')).toEqual([
      { kind: 'edited', table: 'plans', key: 'P1', before: { isInForce: 'yes' }, after: { isInForce: 'no' } },
      { kind: 'edited', table: 'plans', key: 'P2', before: { isInForce: null }, after: { isInForce: 'yes' } },
      { kind: 'edited', table: 'plans', key: 'P3', before: { isInForce: 'yes' }, after: { isInForce: 'no' } },
    ]);
    expect(inForceChanges([plan('P1', 'yes'), plan('P2')], 'P1')).toEqual([]);
  });

  test('goes with its own trips and stops, the stops first, and no other’s', () => {
    const rows = [plan('P1'), plan('P2'), trip('P1', 'T1'), trip('P2', 'T1'), stop('P1', 'S1', 'T1')];
    expect(removedPlan(rows, 'P1').map(({ kind, table, key }) => `${kind} ${table} ${key}`)).toEqual([
      'removed planStops P1/S1',
      'removed planTrips P1/T1',
      'removed plans P1',
    ]);
  });

  test('is worked out anew: days of planned trips are kept, of those that left nothing', () => {
    const rows = [
      plan('P1'),
      ...[trip('P1', 'T1', { leaves: '2031-05-01', leftOn: '2031-05-02' }), trip('P1', 'T2', { leaves: '2031-06-01' })],
      trip('P1', 'T3', { leaves: '2031-05-20', back: '2031-05-29' }),
      stop('P1', 'S4', 'T3', { handOver: '2031-05-24' }),
      ...[stop('P1', 'S1', 'T1', { handOver: '2031-05-05' }), stop('P1', 'S2', 'T2'), stop('P1', 'S3', 'T2')],
    ];
    const tripOf = (tripId: string, state: string, leaves: string, stops: readonly object[]) => ({
      ...{ tripId, state, leaves, back: '2031-06-20', stops },
    });
    const crews = [
      {
        trips: [
          tripOf('T1', 'underWay', '2031-05-02', [{ siteId: 'S1', handOver: null }]),
          tripOf('T2', 'planned', '2031-06-11', [
            { siteId: 'S2', handOver: '2031-06-14' },
            // Its work does not fit: no day is kept for it.
            { siteId: 'S3', handOver: null },
          ]),
          // Has it left? Nobody has said; its sites are told their new days all the same.
          {
            ...tripOf('T3', 'planned', '2031-06-12', [{ siteId: 'S4', handOver: '2031-06-15' }]),
            isOverdue: true,
          },
          // Somebody took it out meanwhile.
          tripOf('T9', 'planned', '2031-06-11', [{ siteId: 'S9', handOver: '2031-06-14' }]),
        ],
      },
    ];
    const at = '2031-06-10T08:00:00.000Z';
    // biome-ignore lint/suspicious/noExplicitAny: only what is read of a sheet is there
    expect(retimedChanges({ sheet: { planId: 'P1', crews } as any, rows, at })).toEqual([
      {
        ...{ kind: 'edited', table: 'planTrips', key: 'P1/T2' },
        before: { leaves: '2031-06-01', back: null },
        after: { leaves: '2031-06-11', back: '2031-06-20' },
      },
      {
        ...{ kind: 'edited', table: 'planStops', key: 'P1/S2' },
        ...{ before: { handOver: null }, after: { handOver: '2031-06-14' } },
      },
      {
        ...{ kind: 'edited', table: 'planStops', key: 'P1/S4' },
        ...{ before: { handOver: '2031-05-24' }, after: { handOver: '2031-06-15' } },
      },
      { kind: 'edited', table: 'plans', key: 'P1', before: { timedAt: null }, after: { timedAt: at } },
    ]);
    // biome-ignore lint/suspicious/noExplicitAny: as above
    expect(retimedChanges({ sheet: { planId: 'P7', crews } as any, rows, at })).toEqual([]);
  });
});

describe('two plans', () => {
  const site = (
    siteId: string,
    people: number,
    servedA: string | null,
    servedB: string | null,
    later: number | null,
  ) => ({
    ...{ siteId, name: siteId, people, crewA: null, crewB: null, servedA, servedB, later_days: later },
  });
  const sites = [
    site('S1', 100, '2031-06-01', '2031-06-11', 10),
    site('S2', 40, '2031-06-11', '2031-06-01', -10),
    site('S3', 30, '2031-06-01', null, null),
    site('S4', 900, '2031-06-11', '2031-06-12', 1),
    site('S5', 5, '2031-06-20', '2031-06-20', 0),
  ];

  test('lie on one axis of days, under all people that can be served', () => {
    const servedA = [
      { day: '2031-06-03', people: 130 },
      { day: '2031-06-11', people: 1070 },
    ];
    const servedB = [{ day: '2031-06-01', people: 40 }];
    expect(servedLines({ servedA, servedB, people_count: 1200 })).toEqual({
      ...{ a: servedA, b: servedB, from: '2031-06-01', until: '2031-06-11', people: 1200 },
    });
    expect(servedLines({ servedA: [], servedB: [], people_count: 9 })).toBeNull();
  });

  test('those hurt most come first: more people times more days', () => {
    const { later, earlier, onlyOne, same_count } = byLateness(sites);
    expect(later.map(({ siteId }) => siteId)).toEqual(['S1', 'S4']);
    expect(earlier.map(({ siteId }) => siteId)).toEqual(['S2']);
    expect(onlyOne.map(({ siteId }) => siteId)).toEqual(['S3']);
    expect(same_count).toBe(1);
  });

  test('a line is level until a day and then goes up', () => {
    const scale = {
      x: (day: string) => Number(day.slice(-2)),
      y: (people: number) => 100 - people,
      until: '2031-06-20',
    };
    const line = [
      { day: '2031-06-01', people: 10 },
      { day: '2031-06-05', people: 60 },
    ];
    expect(stepPath(line, scale)).toBe('M1.0 100.0H1.0V90.0H5.0V40.0H20.0');
    expect(stepPath([], scale)).toBe('');
  });
});
