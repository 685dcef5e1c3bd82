import { expect, it } from 'vitest';
import type { CartridgeFacts, TreatmentUnitFacts } from './treatmentFacts.ts';
import { dayOrNull, isOfUnit, setNewOn } from './unitSets.ts';

const unit = (serial: string, installedOn: number | null = 100): TreatmentUnitFacts => ({
  ...{ serial, installedOn, partId: null, figures: null, removedOn: null },
});
const cartridge = (serial: string, installedOn: number | null, removedOn: number | null = null): CartridgeFacts => ({
  ...{ serial, installedOn, removedOn, unitSerial: null, partId: null, batch: null, reason: null },
});
const newOn = (cartridges: readonly CartridgeFacts[], one = unit('U1')) =>
  setNewOn({ units: [one], cartridges }, one, 90);

it('a set is new on the last day a cartridge was put in that is in it still', () => {
  expect(newOn([cartridge('A', 200), cartridge('B', 300), cartridge('C', 400, 410)])).toBe(300);
});

it('without cartridges it is as new as its unit, or its site', () => {
  expect(newOn([])).toBe(100);
  expect(newOn([], unit('U1', null))).toBe(90);
});

it('is not known where its cartridges have no day, or none is in it', () => {
  expect(newOn([cartridge('A', null)])).toBeNull();
  expect(newOn([cartridge('A', 200, 300)])).toBeNull();
});

it('a row that names no unit is of the only one', () => {
  const [one, other] = [unit('U1'), unit('U2')];
  expect(isOfUnit({ units: [one] }, one, null)).toBe(true);
  expect(isOfUnit({ units: [one, other] }, one, null)).toBe(false);
  expect(isOfUnit({ units: [one, other] }, other, 'U2')).toBe(true);
});

it('a day beyond all measure is none', () => {
  expect(dayOrNull(1e9)).toBeNull();
  expect(dayOrNull(20_000)).toBe(20_000);
});
