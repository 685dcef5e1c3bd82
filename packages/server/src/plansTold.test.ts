import { type ChangeRecord, foldRecords, type RowChange } from '@eavewell/records';
import { english } from '@eavewell/words';
import { expect, it } from 'vitest';
import { plansTold } from './plansTold.ts';

const record = (number: number, changes: readonly RowChange[], kind: 'form' | 'import' = 'form'): ChangeRecord => ({
  ...{ device: 'office', number, clock: number, at: '2027-01-01T00:00:00.000Z', offset_min: 0, by: 'Nadi' },
  ...{ source: { kind, name: null }, takesBack: null, changes },
});
const row = (table: string, key: string, after: Record<string, string>): RowChange => ({
  kind: 'added',
  table,
  key,
  after,
});
const trip = (tripId: string, crewId: string, order: string) =>
  row('planTrips', `P1/${tripId}`, { planId: 'P1', tripId, crewId, order });

const records = [
  record(
    1,
    [
      row('crews', 'A', { crewId: 'A', name: 'Crew Ada' }),
      row('crews', 'B', { crewId: 'B', name: 'Crew Bo' }),
      row('sites', 'osk', { siteId: 'osk', name: 'Osk landing' }),
      row('plans', 'P1', { planId: 'P1', name: 'Summer' }),
      ...[trip('T1', 'A', '1'), trip('T2', 'A', '2'), trip('T3', 'A', '3'), trip('T4', 'B', '1')],
      row('planStops', 'P1/osk', { planId: 'P1', siteId: 'osk', tripId: 'T3', order: '1' }),
    ],
    'import',
  ),
  record(2, [{ kind: 'edited', table: 'planStops', key: 'P1/osk', before: { tripId: 'T3' }, after: { tripId: 'T4' } }]),
  record(3, [
    { kind: 'edited', table: 'planTrips', key: 'P1/T3', before: { order: '3' }, after: { order: '0' } },
    {
      kind: 'edited',
      table: 'planTrips',
      key: 'P1/T4',
      before: { crewId: 'B', order: '1' },
      after: { crewId: 'A', order: '1.5' },
    },
  ]),
  record(4, [{ kind: 'edited', table: 'sites', key: 'osk', before: { name: 'Osk' }, after: { name: 'Osk landing' } }]),
];
const told = (start: number, end: number) => {
  const said = plansTold({ records, facts: foldRecords(records) }, { start, end }, english);
  return records.slice(start, end).map((one) => said.get(one) ?? null);
};

it('tells each record by the places that trips had when it was made', () => {
  expect(told(0, 4)).toEqual([
    null,
    'Osk landing went from trip 3 of Crew Ada to trip 1 of Crew Bo',
    // After T3, which goes first now, and T1.
    'Trip 1 of Crew Bo went to Crew Ada, as its trip 3',
    null,
  ]);
  // A page of older records takes back those after it.
  expect(told(1, 2)).toEqual(told(0, 4).slice(1, 2));
});
