import { expect, it } from 'vitest';
import { heaviestPiece } from './heaviestPiece.ts';

const part = (partId: string, kind: string, mass_kg: number | null) => ({ partId, kind, name: partId, mass_kg });
const parts = [part('T1', 'tank', 28), part('T2', 'tank', 90), part('G1', 'gutter', 4), part('K', 'site', 400)];

it('weighs the parts of the site, and two people carry what is over 23 kg', () => {
  const found = heaviestPiece(['T1', null, 'G1'], parts)!;
  expect(found).toMatchObject({ partId: 'T1', mass_kg: 28, from: 'site', carriedBy: 'two' });
  expect(found.liftingIndex_factor).toBeCloseTo(28 / 9.49333, 4);
});

it('falls back on the catalogue, and never on the kit of a whole site', () => {
  expect(heaviestPiece(['K'], parts)).toMatchObject({ partId: 'T2', from: 'catalogue', carriedBy: 'more' });
  expect(heaviestPiece([], [part('K', 'site', 400), part('X', 'other', null)])).toBeNull();
});

it('does not look at the order of the catalogue', () => {
  const equal = [part('B', 'tank', 5), part('A', 'tank', 5)];
  expect(heaviestPiece([], equal)!.partId).toBe('A');
  expect(heaviestPiece([], [...equal].reverse())!.partId).toBe('A');
});
