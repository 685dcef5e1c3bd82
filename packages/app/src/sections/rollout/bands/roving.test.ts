import { readIsoDay } from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import { crewForTests, sheetForTests, tripForTests } from '../sheetForTests.ts';
import { axisOf } from './axis.ts';
import { hullsOf } from './hulls.ts';
import { firstTrip, tripAfterKey } from './roving.ts';

const axis = axisOf(readIsoDay('2026-06-01')!, readIsoDay('2026-12-27')!, 40);
const crews = [
  crewForTests('1', [
    tripForTests('a1', '2026-06-01', '2026-06-07', [], { state: 'done' }),
    tripForTests('a2', '2026-06-15', '2026-06-21', []),
    tripForTests('a3', '2026-07-15', '2026-07-21', []),
  ]),
  crewForTests('2', []),
  crewForTests('3', [
    tripForTests('c1', '2026-06-08', '2026-06-14', [], { state: 'underWay' }),
    tripForTests('c2', '2026-07-10', '2026-07-20', []),
  ]),
];
const laid = hullsOf(sheetForTests(crews), axis);

describe('keys among trips', () => {
  it('begin at the trip that is under way or leaves next', () => {
    expect(firstTrip(laid)).toBe('c1');
    expect(firstTrip(hullsOf(sheetForTests([]), axis))).toBeNull();
    expect(firstTrip(hullsOf(sheetForTests([crewForTests('1', [crews[0]!.trips[0]!])]), axis))).toBe('a1');
  });

  it.each([
    ['a2', 'ArrowRight', 'a3'],
    ['a2', 'ArrowLeft', 'a1'],
    ['a1', 'ArrowLeft', null],
    ['a3', 'ArrowRight', null],
    ['a3', 'ArrowDown', 'c2'],
    ['a1', 'ArrowDown', 'c1'],
    ['c2', 'ArrowUp', 'a3'],
    ['c2', 'ArrowDown', null],
    ['a2', 'Home', 'a1'],
    ['a2', 'End', 'a3'],
    ['a2', 'Enter', null],
  ])('from %s by %s to %s', (from, key, to) => {
    expect(tripAfterKey(laid, from, key)).toBe(to);
  });

  it('lead to the first and last of all crews with Ctrl', () => {
    expect(tripAfterKey(laid, 'c1', 'Home', true)).toBe('a1');
    expect(tripAfterKey(laid, 'a1', 'End', true)).toBe('c2');
  });

  it('begin anew where the trip is gone', () => {
    expect(tripAfterKey(laid, 'gone', 'ArrowRight')).toBe('c1');
  });
});
