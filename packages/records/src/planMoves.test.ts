import { describe, expect, it } from 'vitest';
import type { Cells, RowChange } from './changeRecord.ts';
import { planMoves, takePlanRowsBack } from './planMoves.ts';

const trip = (tripId: string, crewId: string, order: string, more: Cells = {}): [string, Cells] => [
  `P1/${tripId}`,
  { planId: 'P1', tripId, crewId, order, ...more },
];
const stop = (siteId: string, tripId: string, order: string): [string, Cells] => [
  `P1/${siteId}`,
  { planId: 'P1', siteId, tripId, order },
];

/** Two crews: A goes T1, T2, T3 (in this order, whatever their ids), B goes T9. */
const begun = () =>
  new Map<string, Map<string, Cells>>([
    ['plans', new Map([['P1', { planId: 'P1', name: 'Summer', isInForce: 'yes' }]])],
    [
      'planTrips',
      new Map([
        trip('T3', 'A', '2.5', { leaves: '2027-05-20', back: '2027-05-25' }),
        trip('T1', 'A', '-1', { leaves: '2027-05-01' }),
        trip('T2', 'A', '2', { leaves: '2027-05-10' }),
        trip('T9', 'B', '1', { leaves: '2027-06-09' }),
      ]),
    ],
    ['planStops', new Map([stop('osk', 'T3', '1'), stop('bel', 'T3', '2'), stop('kal', 'T9', '1')])],
  ]);

/** The rows after changes: written here on its own, so that what is taken back is held against it. */
function made(rows: ReturnType<typeof begun>, changes: readonly RowChange[]): ReturnType<typeof begun> {
  for (const change of changes) {
    const own = rows.get(change.table);
    if (change.kind === 'removed') own?.delete(change.key);
    else {
      const cells: Record<string, string | null> = { ...own?.get(change.key), ...change.after };
      for (const [column, cell] of Object.entries(cells)) if (cell === null) delete cells[column];
      own?.set(change.key, cells as Cells);
    }
  }
  return rows;
}

const edit = (
  table: string,
  key: string,
  before: Record<string, string | null>,
  after: Record<string, string | null>,
): RowChange => ({ kind: 'edited', table, key, before, after });
const told = (changes: readonly RowChange[]) => planMoves(changes, made(begun(), changes));
const moves = (changes: readonly RowChange[]) => told(changes)?.moves;

describe('what a record did to plans', () => {
  it('tells a site that went from trip to trip by the places the trips had, and no day that follows', () => {
    const changes = [
      edit('planStops', 'P1/osk', { tripId: 'T3', order: '1' }, { tripId: 'T9', order: '0' }),
      edit('planTrips', 'P1/T9', { leaves: '2027-06-09' }, { leaves: '2027-06-07' }),
      edit('planStops', 'P1/kal', { order: '1' }, { order: '3' }),
      edit('plans', 'P1', { timedAt: null }, { timedAt: '2027-01-01T00:00:00Z' }),
    ];
    expect(told(changes)).toEqual({
      moves: [{ kind: 'siteWent', siteId: 'osk', from: { crewId: 'A', nth: 3 }, to: { crewId: 'B', nth: 1 } }],
      ofPlan: null,
      others_count: 0,
    });
  });

  it('tells a trip of its own by the place it comes to have, and one that is emptied by that it had', () => {
    const changes: RowChange[] = [
      { kind: 'added', table: 'planTrips', key: 'P1/T10', after: trip('T10', 'B', '0')[1] },
      edit('planStops', 'P1/kal', { tripId: 'T9' }, { tripId: 'T10' }),
      { kind: 'removed', table: 'planTrips', key: 'P1/T9', before: begun().get('planTrips')!.get('P1/T9')! },
    ];
    const [only, ...more] = moves(changes)!;
    expect(only).toEqual({
      kind: 'siteWent',
      siteId: 'kal',
      from: { crewId: 'B', nth: 1 },
      to: { crewId: 'B', nth: 1 },
    });
    expect(more).toEqual([]);
  });

  it('tells sites that come into trips and leave them', () => {
    const gone: RowChange = { kind: 'removed', table: 'planStops', key: 'P1/osk', before: stop('osk', 'T3', '1')[1] };
    const put: RowChange = { kind: 'added', table: 'planStops', key: 'P1/new', after: stop('new', 'T1', '1')[1] };
    expect(moves([gone, put])).toEqual([
      { kind: 'siteWent', siteId: 'osk', from: { crewId: 'A', nth: 3 }, to: null },
      { kind: 'siteWent', siteId: 'new', from: null, to: { crewId: 'A', nth: 1 } },
    ]);
  });

  it('tells a place within a trip only where it is another', () => {
    expect(moves([edit('planStops', 'P1/osk', { order: '1' }, { order: '5' })])).toEqual([
      { kind: 'sitePlace', siteId: 'osk', trip: { crewId: 'A', nth: 3 }, nth: 2 },
    ]);
    expect(told([edit('planStops', 'P1/osk', { order: '1' }, { order: '1.5' })])).toBeNull();
  });

  it('tells a trip that goes to another crew, or before the others of its own', () => {
    expect(moves([edit('planTrips', 'P1/T2', { crewId: 'A', order: '2' }, { crewId: 'B', order: '0' })])).toEqual([
      { kind: 'tripWent', from: { crewId: 'A', nth: 2 }, to: { crewId: 'B', nth: 1 } },
    ]);
    expect(moves([edit('planTrips', 'P1/T3', { order: '2.5' }, { order: '-4' })])).toEqual([
      { kind: 'tripPlace', from: { crewId: 'A', nth: 3 }, to: { crewId: 'A', nth: 1 } },
    ]);
  });

  it('tells days where nothing else was done', () => {
    const [trip, before, after] = [{ crewId: 'A', nth: 2 }, '2027-05-10', '2027-05-12'];
    const days = edit('planTrips', 'P1/T2', { leaves: before }, { leaves: after });
    expect(moves([days])).toEqual([{ kind: 'leaves', trip, before, after }]);
    const timed = edit('plans', 'P1', { timedAt: null }, { timedAt: '2027-01-01T00:00:00Z' });
    expect(moves([days, timed])).toEqual([
      { kind: 'timed', name: 'Summer' },
      { kind: 'leaves', trip, before, after },
    ]);
    const held = edit('planTrips', 'P1/T2', { notBefore: null, leaves: before }, { notBefore: after, leaves: after });
    const next = edit('planTrips', 'P1/T3', { leaves: '2027-05-20' }, { leaves: '2027-05-22' });
    expect(moves([held, next])).toEqual([{ kind: 'leaves', trip, before, after }]);
    expect(moves([edit('planTrips', 'P1/T2', { notBefore: null }, { notBefore: after })])).toEqual([
      { kind: 'notBefore', trip, day: after },
    ]);
  });

  it('tells that a trip left, is back, and which of its sites were handed over', () => {
    const trip = { crewId: 'A', nth: 3 };
    expect(moves([edit('planTrips', 'P1/T3', { leftOn: null }, { leftOn: '2027-05-21' })])).toEqual([
      { kind: 'left', trip, day: '2027-05-21' },
    ]);
    const back = [
      edit('planTrips', 'P1/T3', { leftOn: null, backOn: null }, { leftOn: '2027-05-21', backOn: '2027-05-26' }),
      edit('sites', 'bel', { handOverDay: null }, { handOverDay: '2027-05-24' }),
      edit('settings', 'currency', { value: 'EUR' }, { value: 'USD' }),
    ];
    expect(told(back)).toEqual({
      moves: [
        { kind: 'cameBack', trip, day: '2027-05-26' },
        { kind: 'handedOver', siteId: 'bel', day: '2027-05-24' },
      ],
      ofPlan: null,
      others_count: 1,
    });
  });

  it('tells a plan that comes, is in force and goes in one move each, and names it where there are others', () => {
    const rows = begun();
    const second: RowChange[] = [
      { kind: 'added', table: 'plans', key: 'P2', after: { planId: 'P2', name: 'Winter' } },
      { kind: 'added', table: 'planTrips', key: 'P2/T1', after: { ...trip('T1', 'A', '1')[1], planId: 'P2' } },
      { kind: 'added', table: 'planStops', key: 'P2/osk', after: { ...stop('osk', 'T1', '1')[1], planId: 'P2' } },
    ];
    made(rows, second);
    const kept = { moves: [{ kind: 'kept', name: 'Winter', trips_count: 1, sites_count: 1 }], ofPlan: null };
    expect(planMoves(second, rows)).toEqual({ ...kept, others_count: 0 });
    const force = [
      edit('plans', 'P1', { isInForce: 'yes' }, { isInForce: 'no' }),
      edit('plans', 'P2', { isInForce: null }, { isInForce: 'yes' }),
    ];
    made(rows, force);
    expect(planMoves(force, rows)?.moves).toEqual([{ kind: 'inForce', name: 'Winter' }]);
    const locked = [edit('planTrips', 'P1/T9', { isLocked: null }, { isLocked: 'yes' })];
    made(rows, locked);
    expect(planMoves(locked, rows)).toEqual({
      moves: [{ kind: 'locked', trip: { crewId: 'B', nth: 1 }, isLocked: true }],
      ofPlan: 'Summer',
      others_count: 0,
    });
  });

  it('says nothing of records that change no plan', () => {
    expect(told([edit('sites', 'osk', { people: '1' }, { people: '2' })])).toBeNull();
    expect(told([edit('plans', 'P1', { note: null }, { note: 'for the board' })])).toBeNull();
  });

  it('takes changes back to the rows there were', () => {
    const changes: RowChange[] = [
      edit('planStops', 'P1/osk', { tripId: 'T3' }, { tripId: 'T9' }),
      edit('planTrips', 'P1/T2', { notBefore: null }, { notBefore: '2027-05-12' }),
      { kind: 'removed', table: 'planStops', key: 'P1/bel', before: stop('bel', 'T3', '2')[1] },
      { kind: 'added', table: 'plans', key: 'P2', after: { planId: 'P2', name: 'Winter' } },
    ];
    const rows = made(begun(), changes);
    expect(rows.get('plans')!.size).toBe(2);
    takePlanRowsBack(rows, changes);
    const sorted = (all: ReturnType<typeof begun>) => [...all].map(([table, own]) => [table, [...own].sort()]);
    expect(sorted(rows)).toEqual(sorted(begun()));
  });
});
