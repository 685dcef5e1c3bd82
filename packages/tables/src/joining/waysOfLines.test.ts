import { describe, expect, it } from 'vitest';
import type { MapLine } from './mapThings.ts';
import { type WayEnd, type WayKnown, waysOfLines } from './waysOfLines.ts';

const at = (latitude_deg: number, longitude_deg: number) => ({ latitude_deg, longitude_deg });
const line = (number: number, name: string | null, from: number, to: number, more: Partial<MapLine> = {}): MapLine => ({
  number,
  name,
  ids: [],
  mode: null,
  pieces: [[at(0, from), at(0, to)]],
  ...more,
});
// A thousandth of a degree of the equator is 111 m.
const ends: readonly WayEnd[] = [
  { id: 'store', position: at(0, 0) },
  { id: 'S001', position: at(0, 1) },
  { id: 'S002', position: at(0.001, 2) },
];
const ways = (lines: readonly MapLine[], known: readonly WayKnown[] = [], reach_km = 1) =>
  waysOfLines(lines, known, ends, 'a.gpx', reach_km);
const short = ({ ways: all }: ReturnType<typeof ways>) =>
  all.map(({ wayId, from, to, mode, row }) => `${wayId} ${from}-${to} ${mode} ${row}`);

describe('a line as a way', () => {
  it('runs between the nearest sites or places, and is as long as itself', () => {
    const found = ways([line(1, 'River road', 0.002, 1.001, { mode: 'road' })]);
    expect(short(found)).toEqual(['River-road store-S001 road null']);
    expect(found.ways[0]!.length_km).toBeCloseTo((0.999 * 2 * Math.PI * 6371.0088) / 360, 9);
    expect(found.problems).toEqual([]);
  });

  it('leaves an end empty where nothing is within reach, and says so', () => {
    const found = ways([line(1, 'Path', 0.02, 1)]);
    expect(short(found)).toEqual(['Path null-S001 null null']);
    expect(found.problems.map(({ code, facts }) => [code, facts['side'], facts['reach_km']])).toEqual([
      ['ways.end_not_found', 'from', 1],
    ]);
    expect(short(ways([line(1, 'Path', 0.02, 1)], [], 3))).toEqual(['Path store-S001 null null']);
  });

  it('has no ends where it comes back', () => {
    const found = ways([line(1, 'Loop', 0, 0, { pieces: [[at(0, 0), at(0, 0.5), at(0, 0.001)]] })]);
    expect(short(found)).toEqual(['Loop null-null null null']);
    expect(found.problems.map(({ code }) => code)).toEqual(['ways.same_ends']);
  });

  it('runs from the first of its pieces to the last', () => {
    const pieces = [
      [at(0, 0), at(0, 0.5)],
      [at(0, 1), at(0, 2)],
    ];
    expect(short(ways([line(1, 'Pieces', 0, 0, { pieces })]))).toEqual(['Pieces store-S002 null null']);
  });

  it('gets an id of its own that may be one', () => {
    const found = ways([
      line(1, 'Größe / río', 0, 1),
      line(2, 'Größe / río', 1, 2),
      line(3, null, 0, 2),
      line(4, 'x', 0, 2, { ids: ['not an id', 'W-7'] }),
      line(5, '川', 0, 2),
    ]);
    expect(found.ways.map(({ wayId }) => wayId)).toEqual(['Gro-e-rio', 'Gro-e-rio-2', 'way-3', 'W-7', 'way-5']);
  });

  it('is the way it is already, which keeps what is known of it', () => {
    const known: readonly WayKnown[] = [
      { wayId: 'W1', name: 'River road', row: 2, from: 'S009', to: null, mode: 'river' },
      { wayId: 'W2', name: 'Path', row: 3, from: null, to: null, mode: null },
      { wayId: 'W3', name: 'Path', row: 4, from: null, to: null, mode: null },
    ];
    expect(short(ways([line(1, 'River road', 0, 1, { mode: 'road' })], known))).toEqual(['W1 S009-S001 river 2']);
    expect(short(ways([line(1, 'W2', 0, 1, { mode: 'foot' })], known))).toEqual(['W2 store-S001 foot 3']);
    // Two ways have the name: nobody can tell which, so it is a new one.
    expect(short(ways([line(1, 'Path', 0, 1)], known))).toEqual(['Path store-S001 null null']);
  });
});
