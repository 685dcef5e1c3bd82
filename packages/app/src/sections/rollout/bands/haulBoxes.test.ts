import { describe, expect, it } from 'vitest';
import { crewForTests, sheetForTests, tripForTests } from '../sheetForTests.ts';
import { axisOf, dayOf } from './axis.ts';
import { haulsLaid, tiesOf } from './haulBoxes.ts';
import { hullsOf } from './hulls.ts';
import { nightsOut, type SheetHaul } from './tripWords.ts';

const haul = (haulId: string, runs: SheetHaul['runs'], more: Partial<SheetHaul> = {}): SheetHaul => ({
  ...{ haulId, store: 'shed', from: 'port', carrierId: 'boat', by: 'Longboat', forTrip: 'b', kg: 1, fuel_L: 0 },
  ...{ leaves: runs[0]!.leaves, arrives: runs.at(-1)!.arrives, back: runs.at(-1)!.back, trips_count: runs.length },
  ...{ fuel_kg: 0, loaded_kg: 1, limit_kg: null, left_kg: null },
  ...{ runs, ...more },
});

const run = (leaves: string, arrives: string, returns: string | null, back: string | null) => ({
  ...{ leaves, arrives, returns, back },
});

const two = haul('two', [
  run('2026-06-09', '2026-06-10', '2026-06-11', '2026-06-12'),
  run('2026-06-13', '2026-06-14', '2026-06-15', '2026-06-16'),
]);

/** Ten pixels a day from Monday 8 June on. */
const axis = axisOf(dayOf('2026-06-08')!, dayOf('2026-07-05')!, 70);

const sheet = (hauls: readonly SheetHaul[], leaves = '2026-06-15') =>
  sheetForTests([crewForTests('1', []), crewForTests('2', [tripForTests('b', leaves, '2026-06-25', [])])], {
    hauls: [...hauls],
    places: [
      { placeId: 'shed', name: 'Wendomey shed', kind: null, latitude_deg: null, longitude_deg: null },
      { placeId: 'ark', name: 'Ark', kind: null, latitude_deg: null, longitude_deg: null },
    ],
  });

describe('what is brought between stores, drawn', () => {
  it('is a box from the first run to the last, loaded until each is there', () => {
    const [row] = haulsLaid(sheet([two]), axis).rows;
    const [box] = row!.hulls;
    expect(box).toMatchObject({ x: 10, width: 80, there_px: 70 });
    expect(box!.cells.map(({ x, width }) => [x, width])).toEqual([
      [10, 40],
      [50, 40],
    ]);
    expect(box!.loaded).toEqual([
      { x: 10, width: 20 },
      { x: 50, width: 20 },
    ]);
  });

  it('has a row for each store that is filled, by its name', () => {
    const { rows, height } = haulsLaid(sheet([two, { ...two, haulId: 'x', store: 'ark' }]), axis);
    expect(rows.map(({ storeId, hulls }) => [storeId, hulls.map(({ tripId }) => tripId)])).toEqual([
      ['ark', ['x']],
      ['shed', ['two']],
    ]);
    expect(height).toBe(2 * rows[0]!.height);
  });

  it('ends where it is there, where it does not come back within the days looked at', () => {
    const open = haul('open', [run('2026-06-09', '2026-06-10', null, null)]);
    const [box] = haulsLaid(sheet([open]), axis).rows[0]!.hulls;
    expect([box!.x, box!.width, box!.there_px]).toEqual([10, 20, 30]);
    expect([nightsOut(open), nightsOut(two)]).toEqual([null, 6]);
  });

  it('is led along the foot of the row of its crew to the bow of its trip', () => {
    const of = sheet([two], '2026-06-17');
    const trips = hullsOf(of, axis);
    const hull = trips.hullOf.get('b')!;
    const foot = trips.rows[1]!.y + trips.rows[1]!.height;
    const box = haulsLaid(of, axis).rows[0]!.hulls[0]!;
    expect(tiesOf(haulsLaid(of, axis), trips)).toBe(
      `M70 ${trips.height + box.y}V${foot}H${hull.x}V${hull.y + hull.height / 2}`,
    );
    expect(tiesOf(haulsLaid(sheet([{ ...two, forTrip: 'gone' }]), axis), trips)).toBe('');
  });
});
