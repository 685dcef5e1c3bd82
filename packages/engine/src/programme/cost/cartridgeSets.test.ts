import { expect, it } from 'vitest';
import type { WearFinding } from '../../kernel/index.ts';
import { cartridgeSets, piecesOfSet } from './cartridgeSets.ts';

const unit = (serial: string, removedOn: number | null = null) => ({
  serial,
  partId: 'unit',
  figures: null,
  installedOn: 0,
  removedOn,
});
const cartridge = (serial: string, unitSerial: string, partId: string | null, removedOn: number | null = null) => ({
  ...{ serial, unitSerial, partId, removedOn, batch: null, installedOn: 0, reason: null },
});
const finding = (serial: string, more: Partial<WearFinding> = {}) =>
  ({ serial, setSince: 1000, endsOn: { p10: 1365.2425, p50: 1730.485, p90: 2095.7275 }, ...more }) as WearFinding;
const parts = [{ partId: 'set-a', kind: 'cartridge' }];

it('takes the part that the cartridges in the unit are said to be, and the days from new to due', () => {
  const treatment = {
    units: [unit('U1'), unit('U2', 500)],
    cartridges: [cartridge('C0', 'U1', 'old', 900), cartridge('C1', 'U1', 'set-b'), cartridge('C2', 'U1', 'set-b')],
  };
  const [set, ...others] = cartridgeSets(treatment, parts, [finding('U1')]);
  expect(others).toEqual([]);
  expect(set).toMatchObject({ unitSerial: 'U1', partId: 'set-b', cartridges_count: 2 });
  expect(set!.life!.p10_years).toBeCloseTo(1, 9);
  expect(set!.life!.p50_years).toBeCloseTo(2, 9);
  expect(set!.life!.p90_years).toBeCloseTo(3, 9);
});

it('takes the only cartridge of the catalogue where none is named, and none of several', () => {
  const treatment = { units: [unit('U1')], cartridges: [] };
  expect(cartridgeSets(treatment, parts, null)).toEqual([
    { unitSerial: 'U1', partId: 'set-a', life: null, cartridges_count: null },
  ]);
  const two = [...parts, { partId: 'set-c', kind: 'cartridge' }];
  expect(cartridgeSets(treatment, two, null)[0]!.partId).toBeNull();
});

it('takes none where the cartridges of a unit are of several parts: one of them is not the set', () => {
  const treatment = {
    units: [unit('U1')],
    cartridges: [cartridge('C1', 'U1', 'coarse'), cartridge('C2', 'U1', 'fine')],
  };
  expect(cartridgeSets(treatment, parts, null)[0]!.partId).toBeNull();
});

it('knows no life where no day is known', () => {
  const treatment = { units: [unit('U1')], cartridges: [] };
  for (const more of [{ endsOn: null }, { setSince: null }])
    expect(cartridgeSets(treatment, parts, [finding('U1', more)])[0]!.life).toBeNull();
});

it('renews as many cartridges as the kit counts for the unit, whether its part is one of them or the set', () => {
  const set = { unitSerial: 'U1', cartridges_count: 3 };
  const counted = (countedBy: 'unit' | 'cartridge' | 'cartridgeSet', counted_count: number, needed_count: number) => ({
    ...{ countedBy, ofIds: ['U1', 'U2'], counted_count, needed_count },
  });
  const of = (...counts: readonly ReturnType<typeof counted>[]) => piecesOfSet(set, { isAtLeast: false, counts });
  // One cartridge each: three of this unit's, five in the two units.
  expect(of(counted('cartridge', 5, 5))).toBe(3);
  expect(of(counted('unit', 2, 6))).toBe(3);
  expect(of(counted('cartridgeSet', 2, 2), counted('unit', 2, 0))).toBe(1);
  // One more of a named set for each unit is to have over, and not renewed.
  expect(of(counted('cartridgeSet', 2, 2), counted('unit', 2, 2))).toBe(1);
  expect(of()).toBe(1);
  expect(piecesOfSet(set, undefined)).toBe(1);
  expect(piecesOfSet(set, { isAtLeast: true, counts: [] })).toBeNull();
  expect(
    piecesOfSet({ ...set, cartridges_count: null }, { isAtLeast: false, counts: [counted('cartridge', 5, 5)] }),
  ).toBeNull();
});
