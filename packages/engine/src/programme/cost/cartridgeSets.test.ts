import { expect, it } from 'vitest';
import type { WearFinding } from '../../kernel/index.ts';
import { cartridgeSets } from './cartridgeSets.ts';

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
  expect(set).toMatchObject({ unitSerial: 'U1', partId: 'set-b' });
  expect(set!.life!.p10_years).toBeCloseTo(1, 9);
  expect(set!.life!.p50_years).toBeCloseTo(2, 9);
  expect(set!.life!.p90_years).toBeCloseTo(3, 9);
});

it('takes the only cartridge of the catalogue where none is named, and none of several', () => {
  const treatment = { units: [unit('U1')], cartridges: [] };
  expect(cartridgeSets(treatment, parts, null)).toEqual([{ unitSerial: 'U1', partId: 'set-a', life: null }]);
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
