import { expect, it } from 'vitest';
import { firstFlushDepth } from './firstFlushDepth.ts';

it('takes the stated depth before the chamber', () => {
  const found = firstFlushDepth(
    { firstFlush_mm: 1.2, chamber_L: 40, drainHole: 'open', chamberBore_mm: null, drainHole_mm: null },
    100,
    0.5,
  );
  expect(found).toEqual({ firstFlush_mm: 1.2, from: 'depth' });
});

it('takes a stated depth of 0 as no first flush', () => {
  expect(
    firstFlushDepth(
      { firstFlush_mm: 0, chamber_L: null, drainHole: 'open', chamberBore_mm: null, drainHole_mm: null },
      100,
      0.5,
    ).firstFlush_mm,
  ).toBe(0);
});

it('spreads the chamber over the area that drains to it', () => {
  expect(
    firstFlushDepth(
      { firstFlush_mm: null, chamber_L: 30, drainHole: 'open', chamberBore_mm: null, drainHole_mm: null },
      60,
      0.5,
    ).firstFlush_mm,
  ).toBe(0.5);
});

it('falls back on the programme where nothing drains or nothing is known', () => {
  const unknown = {
    firstFlush_mm: null,
    chamber_L: null,
    drainHole: 'open',
    chamberBore_mm: null,
    drainHole_mm: null,
  } as const;
  expect(firstFlushDepth(unknown, 60, 0.7)).toEqual({ firstFlush_mm: 0.7, from: 'settings' });
  expect(firstFlushDepth({ ...unknown, chamber_L: 30 }, 0, 0.7)).toEqual({ firstFlush_mm: 0.7, from: 'settings' });
});
