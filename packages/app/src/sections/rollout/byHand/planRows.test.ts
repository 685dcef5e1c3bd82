import { describe, expect, it } from 'vitest';
import type { CrewAsMoved, StopAsMoved, TripAsMoved } from './moveAnswer.ts';
import { changesOfPlan, type DaysKept, type PlanRead, type RowRead } from './planRows.ts';

const tripRow = (tripId: string, crewId: string, order: string, more: Record<string, string> = {}): RowRead => ({
  key: `PL/${tripId}`,
  cells: { planId: 'PL', tripId, crewId, order, leaves: '2026-06-15', back: '2026-06-26', ...more },
});
const stopRow = (siteId: string, tripId: string, order: string, handOver = '2026-06-18'): RowRead => ({
  key: `PL/${siteId}`,
  cells: { planId: 'PL', siteId, tripId, order, handOver },
});
const read: PlanRead = {
  planId: 'PL',
  plans: [{ key: 'PL', cells: { planId: 'PL', name: 'First', timedAt: '2026-06-01T00:00:00Z' } }],
  planTrips: [
    tripRow('P', '1', '1', { leftOn: '2026-05-04', backOn: '2026-05-10' }),
    tripRow('A', '1', '2'),
    tripRow('B', '1', '3'),
    tripRow('C', '2', '1'),
    { key: 'OTHER/A', cells: { planId: 'OTHER', tripId: 'A', crewId: '2', order: '7' } },
  ],
  planStops: [
    stopRow('Z', 'P', '1'),
    stopRow('A1', 'A', '1'),
    stopRow('A2', 'A', '2'),
    stopRow('B1', 'B', '1'),
    stopRow('C1', 'C', '1'),
    { key: 'OTHER/A1', cells: { planId: 'OTHER', siteId: 'A1', tripId: 'A', order: '1' } },
  ],
  before: [
    { tripId: 'A', siteIds: ['A1', 'A2'] },
    { tripId: 'B', siteIds: ['B1'] },
    { tripId: 'C', siteIds: ['C1'] },
  ],
};
const stop = (siteId: string, handOver: string | null = '2026-06-18'): StopAsMoved => ({
  siteId,
  arrives: null,
  handOver,
});
const trip = (tripId: string | null, stops: readonly StopAsMoved[], more: Partial<TripAsMoved> = {}): TripAsMoved => ({
  ...{ tripId, stops, notBefore: null, isLocked: false, leaves: '2026-06-15', back: '2026-06-26', nights_count: 11 },
  ...more,
});
const crews = (one: readonly TripAsMoved[], two: readonly TripAsMoved[]): readonly CrewAsMoved[] => [
  { crewId: '1', trips: one },
  { crewId: '2', trips: two },
];
const [a, b, c] = [trip('A', [stop('A1'), stop('A2')]), trip('B', [stop('B1')]), trip('C', [stop('C1')])];
const days: DaysKept = { at: '2026-06-10T09:00:00Z', onlyTrips: null, unanswered: new Set() };
const timed = {
  ...{ kind: 'edited', table: 'plans', key: 'PL' },
  ...{ before: { timedAt: '2026-06-01T00:00:00Z' }, after: { timedAt: days.at } },
};

describe('the rows of a move', () => {
  it('are none where all is as it was', () => {
    expect(changesOfPlan(read, crews([a, b], [c]), days)).toEqual([]);
  });

  it('of a site that goes to another trip are its own, and that the days are of now', () => {
    const after = crews([trip('A', [stop('A2')]), b], [trip('C', [stop('A1'), stop('C1')])]);
    expect(changesOfPlan(read, after, days)).toEqual([
      {
        ...{ kind: 'edited', table: 'planStops', key: 'PL/A1' },
        ...{ before: { tripId: 'A', order: '1' }, after: { tripId: 'C', order: '0' } },
      },
      timed,
    ]);
  });

  it('take a trip away that lost its last site', () => {
    const changes = changesOfPlan(read, crews([trip('A', [stop('A1'), stop('B1'), stop('A2')])], [c]), days);
    expect(changes).toEqual([
      {
        ...{ kind: 'edited', table: 'planStops', key: 'PL/B1' },
        ...{ before: { tripId: 'B', order: '1' }, after: { tripId: 'A', order: '1.5' } },
      },
      { kind: 'removed', table: 'planTrips', key: 'PL/B', before: read.planTrips[2]!.cells },
      timed,
    ]);
  });

  it('add a trip under a name nobody has, before its stop goes there', () => {
    const changes = changesOfPlan(read, crews([a, trip(null, [stop('C1')]), b], []), days);
    const [added, moved] = changes;
    const name = (added as { after: Record<string, string> }).after['tripId']!;
    expect(read.planTrips.some(({ cells }) => cells['tripId'] === name)).toBe(false);
    expect(added).toMatchObject({
      ...{ kind: 'added', table: 'planTrips', key: `PL/${name}` },
      after: { planId: 'PL', crewId: '1', order: '2.5', leaves: '2026-06-15' },
    });
    expect(moved).toMatchObject({ table: 'planStops', key: 'PL/C1', after: { tripId: name } });
    expect(changes).toContainEqual(expect.objectContaining({ kind: 'removed', table: 'planTrips', key: 'PL/C' }));
  });

  it('take a site out, and put one in', () => {
    const out = changesOfPlan(read, crews([trip('A', [stop('A1')]), b], [c]), days);
    expect(out).toEqual([
      { kind: 'removed', table: 'planStops', key: 'PL/A2', before: read.planStops[2]!.cells },
      timed,
    ]);
    const put = changesOfPlan(read, crews([a, b], [trip('C', [stop('C1'), stop('F', '2026-07-02')])]), days);
    expect(put[0]).toEqual({
      ...{ kind: 'added', table: 'planStops', key: 'PL/F' },
      after: { planId: 'PL', siteId: 'F', tripId: 'C', order: '2', handOver: '2026-07-02' },
    });
  });

  it('keep the days that follow, empty where a site is not done', () => {
    const late = trip('B', [stop('B1', null)], { leaves: null, back: null });
    expect(changesOfPlan(read, crews([a, late], [c]), days)).toEqual([
      {
        ...{ kind: 'edited', table: 'planTrips', key: 'PL/B' },
        ...{ before: { leaves: '2026-06-15', back: '2026-06-26' }, after: { leaves: null, back: null } },
      },
      {
        ...{ kind: 'edited', table: 'planStops', key: 'PL/B1' },
        ...{ before: { handOver: '2026-06-18' }, after: { handOver: null } },
      },
      timed,
    ]);
  });

  it('where tables changed meanwhile leave the days of trips that were not touched, and when they were worked out', () => {
    const moved = trip('B', [stop('B1', '2026-08-01')], {
      notBefore: '2026-07-20',
      leaves: '2026-07-20',
      back: '2026-08-03',
    });
    const other = trip('C', [stop('C1', '2026-09-09')], { leaves: '2026-09-01', back: '2026-09-12' });
    const changes = changesOfPlan(read, crews([a, moved], [other]), { ...days, onlyTrips: new Set(['B']) });
    expect(changes.map(({ key }) => key)).toEqual(['PL/B', 'PL/B1']);
  });

  it('leave the day a trip was to leave while nobody has said whether it did', () => {
    const moved = trip('B', [stop('B1', '2026-08-01')], { leaves: '2026-07-20', back: '2026-08-03' });
    const changes = changesOfPlan(read, crews([a, moved], [c]), { ...days, unanswered: new Set(['B']) });
    expect(changes.map(({ key }) => key)).toEqual(['PL/B1', 'PL']);
    const told = { ...moved, notBefore: '2026-07-20' };
    const [trips] = changesOfPlan(read, crews([a, told], [c]), { ...days, unanswered: new Set(['B']) });
    expect(trips).toMatchObject({ key: 'PL/B', after: { notBefore: '2026-07-20', leaves: '2026-07-20' } });
  });

  it('have the days of its own of a trip that goes with another crew or to other sites, though it should have left', () => {
    const unanswered = new Set(['A', 'B']);
    const own = { leaves: '2026-07-20', back: '2026-08-03' };
    const turned = trip('A', [stop('A2'), stop('A1')], own);
    const edits = [
      changesOfPlan(read, crews([turned, b], [c]), { ...days, unanswered }),
      changesOfPlan(read, crews([trip('A', [stop('A1')], own), b], [c]), { ...days, unanswered }),
    ];
    for (const changes of edits) expect(changes).toContainEqual(expect.objectContaining({ key: 'PL/A', after: own }));
    const other = changesOfPlan(read, crews([a], [c, trip('B', [stop('B1')], own)]), { ...days, unanswered });
    expect(other).toContainEqual(
      expect.objectContaining({ key: 'PL/B', after: expect.objectContaining({ crewId: '2', ...own }) }),
    );
  });

  it('leave a row in a trip that the plan does not know', () => {
    const dropped = { ...read, planStops: [...read.planStops, stopRow('H', 'B', '2')] };
    const changes = changesOfPlan(dropped, crews([trip('A', [stop('A1'), stop('A2'), stop('B1')])], [c]), days);
    expect(changes.filter(({ kind }) => kind === 'removed')).toEqual([]);
  });
});
