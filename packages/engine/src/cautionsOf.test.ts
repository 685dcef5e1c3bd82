import { expect, it } from 'vitest';
import { cautionsOf } from './cautionsOf.ts';
import { type HeaviestPiece, type RoofFacts, unmeasuredRoof, unmeasuredTank } from './kernel/index.ts';

const light = { mass_kg: 4 } as HeaviestPiece;
const roof = (change: Partial<RoofFacts>): RoofFacts => ({ ...unmeasuredRoof, roofId: 'a', ...change });
const low = roof({ eaveHeight_m: 1.9, material: 'corrugatedMetal' });
const tank = { ...unmeasuredTank, tankId: 'A', standHeight_m: 0 };

it('asks for none where nothing can hurt', () => {
  expect(cautionsOf({ roofs: [low], tanks: [tank] }, light, false)).toEqual([]);
});

it('asks for height above 2 m, and where the eave was not measured', () => {
  const of = (one: RoofFacts) => cautionsOf({ roofs: [low, one], tanks: [] }, light, false);
  expect(of(roof({ eaveHeight_m: 2.1 }))).toEqual(['height']);
  expect(of(roof({ eaveHeight_m: null }))).toEqual(['height']);
});

it('asks for a fragile roof by its covering, unless the survey says otherwise', () => {
  const of = (change: Partial<RoofFacts>) => cautionsOf({ roofs: [{ ...low, ...change }], tanks: [] }, light, false);
  for (const material of ['fibreCement', 'thatch', 'tile'] as const)
    expect(of({ material })).toEqual(['height', 'fragileRoof']);
  expect(of({ material: 'thatch', isFragile: false })).toEqual([]);
  expect(of({ isFragile: true })).toEqual(['height', 'fragileRoof']);
});

it('asks for a stand unless every tank is known to be on the ground, and wherever one is judged', () => {
  const of = (standHeight_m: number | null, isJudged = false) =>
    cautionsOf({ roofs: [], tanks: [tank, { ...tank, standHeight_m }] }, light, isJudged);
  expect(of(0)).toEqual([]);
  expect(of(0.5)).toEqual(['stand']);
  expect(of(null)).toEqual(['stand']);
  expect(of(0, true)).toEqual(['stand']);
});

it('asks for lifting over 15 kg, and where no mass is known', () => {
  const of = (heaviest: HeaviestPiece | null) => cautionsOf({ roofs: [], tanks: [] }, heaviest, false);
  expect(of({ ...light, mass_kg: 15 })).toEqual([]);
  expect(of({ ...light, mass_kg: 15.1 })).toEqual(['lifting']);
  expect(of(null)).toEqual(['lifting']);
});
