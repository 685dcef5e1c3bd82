import { readIsoDay } from '@eavewell/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crewForTests, sheetForTests, stopForTests, tripForTests } from '../sheetForTests.ts';
import { axisOf, xOf } from './axis.ts';
import { boundsOf, cellLinesOf, crewRow, hullsOf, outlineOf, placeAt } from './hulls.ts';

const day = (text: string) => readIsoDay(text)!;
const axis = axisOf(day('2026-06-01'), day('2026-08-30'), 70);

const first = tripForTests('T1', '2026-06-08', '2026-06-19', [
  stopForTests('A', '2026-06-09', '2026-06-11'),
  stopForTests('B', '2026-06-12', '2026-06-17'),
]);
const second = tripForTests('T2', '2026-06-29', '2026-07-05', [stopForTests('C', '2026-06-30', '2026-07-04')]);
const other = tripForTests('T3', '2026-06-15', '2026-06-25', [stopForTests('D', null, null)], { state: 'underWay' });
const laid = hullsOf(sheetForTests([crewForTests('1', [first, second]), crewForTests('2', [other])]), axis);
const middle = (row: number) => row * crewRow.height_px + crewRow.hullTop_px + crewRow.hull_px / 2;

describe('the hulls', () => {
  it('reach from the morning a trip leaves to the evening it is back', () => {
    const hull = laid.hullOf.get('T1')!;
    expect(hull.x).toBeCloseTo(xOf(axis, day('2026-06-08')), 9);
    expect(hull.x + hull.width).toBeCloseTo(xOf(axis, day('2026-06-20')), 9);
  });

  it('have a cell a site in order, as wide as its days', () => {
    const [a, b] = laid.hullOf.get('T1')!.cells;
    expect([a!.siteId, b!.siteId]).toEqual(['A', 'B']);
    expect(a!.x).toBeCloseTo(80, 9);
    expect(a!.width).toBeCloseTo(30, 9);
    expect(b!.x).toBeCloseTo(110, 9);
    expect(b!.width).toBeCloseTo(60, 9);
  });

  it('share a trip whose stops have no days evenly', () => {
    const { cells, x, width, tip } = laid.hullOf.get('T3')!;
    expect(cells).toHaveLength(1);
    expect(cells[0]!.x).toBeCloseTo(x + tip, 9);
    expect(cells[0]!.width).toBeCloseTo(width - 2 * tip, 9);
  });

  it('stand on the row of their crew', () => {
    expect(laid.rows.map(({ crewId, y }) => [crewId, y])).toEqual([
      ['1', 0],
      ['2', crewRow.height_px],
    ]);
    expect(laid.hullOf.get('T3')!.y).toBe(crewRow.height_px + crewRow.hullTop_px);
  });

  it('leave a trip out whose days cannot be read, and keep the place of the others', () => {
    const sheet = sheetForTests([crewForTests('1', [tripForTests('X', 'soon', 'later', []), second])]);
    const { rows } = hullsOf(sheet, axis);
    expect(rows[0]!.hulls.map(({ tripId, index }) => [tripId, index])).toEqual([['T2', 1]]);
  });

  it('draw a trip that is back before it left as its first day', () => {
    const odd = tripForTests('O', '2026-06-10', '2026-06-01', [stopForTests('A', '2026-06-10', '2026-06-01')]);
    const { width, cells } = hullsOf(sheetForTests([crewForTests('1', [odd])]), axis).hullOf.get('O')!;
    expect(width).toBeCloseTo(10, 9);
    expect(cells[0]!.width).toBeGreaterThan(0);
  });

  it('are outlined with a point at each end and a line between cells', () => {
    const hull = laid.hullOf.get('T2')!;
    expect(outlineOf(hull)).toBe('M280 28.5L288.5 20L341.5 20L350 28.5L341.5 37L288.5 37Z');
    expect(cellLinesOf(laid.hullOf.get('T1')!).match(/M/g)).toHaveLength(3);
    expect(cellLinesOf({ ...hull, cells: [] })).toBe('');
  });
});

describe('what stands at a place', () => {
  it('is a trip, and before which stop', () => {
    const of = (x: number) => placeAt(laid, x, middle(0))!;
    expect(of(81)).toMatchObject({ tripId: 'T1', index: 0, position: 0, siteId: 'A', week: '2026-06-08' });
    expect(of(96)).toMatchObject({ tripId: 'T1', position: 1, siteId: 'A' });
    expect(of(141)).toMatchObject({ tripId: 'T1', position: 2, siteId: 'B', day: '2026-06-15', week: '2026-06-15' });
    expect(of(71)).toMatchObject({ tripId: 'T1', position: 0, siteId: null });
  });

  it('is a place between two trips, before the first or after the last', () => {
    const of = (x: number) => placeAt(laid, x, middle(0))!;
    expect(of(5)).toMatchObject({ crewId: '1', tripId: null, index: 0, week: '2026-06-01' });
    expect(of(230)).toMatchObject({ tripId: null, index: 1, day: '2026-06-24', week: '2026-06-22' });
    expect(of(600)).toMatchObject({ tripId: null, index: 2 });
  });

  it('is nothing above the first row and below the last', () => {
    expect(placeAt(laid, 100, -1)).toBeNull();
    expect(placeAt(laid, 100, laid.height)).toBeNull();
  });

  it('is a day of the axis wherever it is beside it', () => {
    expect(placeAt(laid, -500, middle(1))!.day).toBe('2026-06-01');
    expect(placeAt(laid, 1e6, middle(1))!.day).toBe('2026-08-30');
  });

  it('finds the middle of every cell again', () => {
    for (const hull of laid.hullOf.values())
      for (const cell of hull.cells)
        expect(placeAt(laid, cell.x + cell.width / 2 - 0.01, cell.y + 1)).toMatchObject({
          crewId: hull.crewId,
          tripId: hull.tripId,
          siteId: cell.siteId,
          position: cell.position,
        });
  });
});

describe('bounds of cells', () => {
  it('stay where they are wanted when there is room', () => {
    expect(boundsOf([10, 30, 60], 0, 100, 4)).toEqual([10, 30, 60]);
  });

  it('never cross, leave the hull or grow narrower than there is room for', () => {
    const places = fc.array(fc.double({ min: -500, max: 500, noNaN: true }), { minLength: 2, maxLength: 15 });
    fc.assert(
      fc.property(places, fc.double({ min: 0.5, max: 400, noNaN: true }), (wanted, room) => {
        const bounds = boundsOf(wanted, 0, room, 4);
        const least = Math.min(4, room / (wanted.length - 1));
        expect(bounds).toHaveLength(wanted.length);
        expect(bounds[0]).toBeGreaterThanOrEqual(-1e-9);
        expect(bounds.at(-1)).toBeLessThanOrEqual(room + 1e-9);
        for (let i = 1; i < bounds.length; i++)
          expect(bounds[i]! - bounds[i - 1]!).toBeGreaterThanOrEqual(least - 1e-9);
      }),
      { seed: 20261126 },
    );
  });
});
