import { expect, it } from 'vitest';
import type { RowRead } from './planRows.ts';
import { mayLay, type RowsSeen } from './seenRows.ts';

const stop = (siteId: string, tripId: string, planId = 'PL'): RowRead => ({
  key: `${planId}/${siteId}`,
  cells: { planId, siteId, tripId, order: '1' },
});
const seen: RowsSeen = {
  version: 7,
  plans: [{ key: 'PL', cells: { planId: 'PL', name: 'First' } }],
  planTrips: [{ key: 'PL/A', cells: { planId: 'PL', tripId: 'A', crewId: '1', order: '1' } }],
  planStops: [stop('A1', 'A'), stop('A2', 'A'), stop('X', 'B', 'OTHER')],
};
const later = (rows: Partial<RowsSeen>): RowsSeen => ({ ...seen, version: 8, ...rows });

it('lays on the version it was worked out on, and beside changes of anything else', () => {
  expect(mayLay('PL', 7, null, seen)).toBe('yes');
  expect(mayLay('PL', 7, seen, later({}))).toBe('onlyTouched');
  const otherPlan = [...seen.planStops.slice(0, 2).toReversed(), stop('X', 'C', 'OTHER')];
  expect(mayLay('PL', 7, seen, later({ planStops: otherPlan }))).toBe('onlyTouched');
});

it('lays nothing over what somebody else did to the plan', () => {
  expect(mayLay('PL', 7, seen, later({ planStops: [stop('A1', 'A')] }))).toBe('no');
  expect(mayLay('PL', 7, seen, later({ planStops: [stop('A1', 'A'), stop('A2', 'C')] }))).toBe('no');
  expect(mayLay('PL', 7, seen, later({ planStops: [...seen.planStops, stop('A3', 'A')] }))).toBe('no');
  const locked = { ...seen.planTrips[0]!.cells, locked: 'yes' };
  expect(mayLay('PL', 7, seen, later({ planTrips: [{ key: 'PL/A', cells: locked }] }))).toBe('no');
});

it('lays nothing where it is not known what was there', () => {
  expect(mayLay('PL', 7, null, later({}))).toBe('no');
  expect(mayLay('PL', 7, { ...seen, version: 6 }, later({}))).toBe('no');
});
