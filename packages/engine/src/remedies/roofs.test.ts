import { expect, it } from 'vitest';
import type { RoofFacts } from '../kernel/index.ts';
import { unmeasuredRoof } from '../kernel/index.ts';
import { flushRoofs } from './flushRoofs.ts';
import { gutterRoofs } from './gutterRoofs.ts';

const roof: RoofFacts = {
  ...unmeasuredRoof,
  roofId: 'R1',
  length_m: 10,
  width_m: 8,

  gutteredFraction: 0.5,
};
const chamber = (chamber_L: number) => ({
  firstFlush_mm: null,
  chamber_L,
  drainHole: 'open' as const,
  chamberBore_mm: null,
  drainHole_mm: null,
});

it('gutters roofs that are under the share, along their eaves, and leaves the others alone', () => {
  const whole = { ...roof, gutteredFraction: 1 };
  const unknown = { ...roof, gutteredFraction: null };
  const more = gutterRoofs([roof, whole, unknown, { ...roof, length_m: null }], 0.75, 0.5);
  expect(more?.roofs.map((one) => one.gutteredFraction)).toEqual([0.75, 1, null, 0.75]);
  // A quarter more of a roof 10 m long with two eaves: 5 m.
  expect(more?.added.map(({ length_m }) => length_m)).toEqual([5, null]);
  expect(gutterRoofs([whole, unknown], 1, 0.5)).toBeNull();
});

it('keeps a chamber while it still makes the depth, and grows it where it would not', () => {
  // 80 m², half of it guttered: 40 L are 1 mm now and 0.5 mm once all is guttered.
  const enough = gutterRoofs([{ ...roof, diverter: chamber(40) }], 1, 0.5)!;
  expect(enough.roofs[0]!.diverter).toEqual(chamber(40));
  expect(enough.newDiverters_count).toBe(0);
  // 30 L are 0.75 mm now, and would be 0.375 mm: under the programme's 0.5 mm.
  const grown = gutterRoofs([{ ...roof, diverter: chamber(30) }], 1, 0.5)!;
  expect(grown.roofs[0]!.diverter!.firstFlush_mm).toBe(0.5);
  expect(grown.newDiverters_count).toBe(1);
  // 10 L are 0.25 mm now: it keeps that depth.
  expect(gutterRoofs([{ ...roof, diverter: chamber(10) }], 1, 0.5)!.roofs[0]!.diverter!.firstFlush_mm).toBe(0.25);
});

it('brings first flush down to the depth of the programme, never under it, and lifts none', () => {
  const deep = {
    ...roof,
    diverter: {
      firstFlush_mm: 2,
      chamber_L: null,
      drainHole: 'blocked' as const,
      chamberBore_mm: null,
      drainHole_mm: null,
    },
  };
  const shallow = {
    ...roof,
    diverter: {
      firstFlush_mm: 0.2,
      chamber_L: null,
      drainHole: 'open' as const,
      chamberBore_mm: null,
      drainHole_mm: null,
    },
  };
  const less = flushRoofs([deep, shallow, roof, { ...roof, diverter: chamber(60) }], 0.5)!;
  expect(less.roofs.map((one) => one.diverter?.firstFlush_mm)).toEqual([0.5, 0.2, undefined, 0.5]);
  expect(less.roofs[0]!.diverter!.drainHole).toBe('blocked');
  expect(less.newDiverters_count).toBe(2);
  const there = {
    ...roof,
    diverter: {
      firstFlush_mm: 0.5,
      chamber_L: null,
      drainHole: 'open' as const,
      chamberBore_mm: null,
      drainHole_mm: null,
    },
  };
  expect(flushRoofs([shallow, roof, there], 0.5)).toBeNull();
});
