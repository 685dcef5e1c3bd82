import { describe, expect, it } from 'vitest';
import { crewForTests, sheetForTests, tripForTests } from '../sheetForTests.ts';
import { dayOf } from './axis.ts';
import type { StockLine } from './curves.ts';
import { stockBindings } from './stockBinds.ts';

type Move = readonly [day: string, in_count: number, out_count: number];

function lineOf(partId: string, storeId: string, moves: readonly Move[]): StockLine {
  let value = 0;
  const points = moves.map(([day, in_count, out_count]) => {
    value += in_count - out_count;
    return { at: dayOf(day)!, value, in_count, out_count };
  });
  const named = { key: `${storeId} ${partId}`, storeId, partId, part: partId, store: storeId };
  return { ...named, points, least_count: 0, slack_fraction: 0 };
}

/** Could have left on 10 June, and leaves on the 20th. */
const waiting = tripForTests('T1', '2026-06-20', '2026-06-25', [], { waitsFor: 'stock', waited_days: 10 });
const sheet = sheetForTests([crewForTests('1', [waiting])]);
const bound = (lines: readonly StockLine[], of: Parameters<typeof stockBindings>[0] = sheet) =>
  stockBindings(of, lines).map(({ line, trips }) => [line.partId, ...trips.map(({ trip }) => trip.tripId)]);

describe('parts that hold trips up', () => {
  const tank = lineOf('tank', 'Store', [
    ['2026-06-01', 2, 0],
    ['2026-06-19', 4, 0],
    ['2026-06-20', 0, 5],
  ]);

  it('came while a trip waited, and without them there would not have been enough', () => {
    expect(bound([tank])).toEqual([['tank', 'T1']]);
  });

  it('are none that would have been enough, came before, or go on another day', () => {
    const enough = lineOf('tap', 'Store', [
      ['2026-06-01', 9, 0],
      ['2026-06-19', 4, 0],
      ['2026-06-20', 0, 5],
    ]);
    const before = lineOf('pump', 'Store', [
      ['2026-06-09', 5, 0],
      ['2026-06-20', 0, 5],
    ]);
    const other = lineOf('pipe', 'Store', [
      ['2026-06-19', 4, 0],
      ['2026-06-21', 0, 4],
    ]);
    const elsewhere = { ...tank, storeId: 'Shed' };
    expect(bound([enough, before, other, elsewhere])).toEqual([]);
  });

  it('hold nothing up where the trip waits for something else', () => {
    const byWay = { ...waiting, waitsFor: 'way' as const };
    expect(bound([tank], sheetForTests([crewForTests('1', [byWay])]))).toEqual([]);
  });

  it('are those of the store from which goods are brought', () => {
    const haul = {
      ...{ haulId: 'T1-Store', store: 'Store', from: 'Port', carrierId: null, by: null, forTrip: 'T1', back: null },
      ...{ leaves: '2026-06-18', arrives: '2026-06-19', trips_count: 1, kg: 9, fuel_L: 0, fuel_kg: 0, loaded_kg: 9 },
      ...{ limit_kg: null, left_kg: null, runs: [] },
    };
    const atPort = lineOf('tank', 'Port', [
      ['2026-06-01', 2, 0],
      ['2026-06-17', 4, 0],
      ['2026-06-18', 0, 5],
    ]);
    // In the store itself all comes by the run.
    const inStore = lineOf('tank', 'Store', [
      ['2026-06-19', 5, 0],
      ['2026-06-20', 0, 5],
    ]);
    expect(stockBindings({ ...sheet, hauls: [haul] }, [inStore, atPort]).map(({ line }) => line.key)).toEqual([
      'Port tank',
    ]);
  });
});
