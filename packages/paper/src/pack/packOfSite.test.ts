import { type Carrier, noKitFigures, type PartFacts, unmeasuredPart } from '@eavewell/engine';
import { english } from '@eavewell/words';
import { expect, it } from 'vitest';
import { kitSaid } from './packOfSite.ts';

const part = (partId: string, mass_kg: number | null, pieces_count: number | null = null): PartFacts => ({
  ...{ ...unmeasuredPart, partId, kind: 'other', name: partId, mass_kg, length_m: 2 },
  kit: { ...noKitFigures, pieces_count },
});
const line = (partId: string, total_count: number) => ({
  ...{ partId, name: partId, kind: 'other', total_count, counts: [] },
});
const boat: Carrier = {
  ...{ carrierId: 'B', name: 'Boat Tern', mode: 'boat', limit_kg: 100, limit_L: null, longest_m: 3 },
  ...{
    stowage_fraction: 1,
    carriers_count: 1,
    freeboard_cm: null,
    freeboardEmpty_cm: null,
    length_m: null,
    leastFreeboard_cm: null,
  },
  ...{ limitSetBy: null, limitSetOn: null },
};
const parts = [part('tank', 240, 8), part('pipe', 5), part('unweighed', null)];

it('without a carrier all of the kit is one list, and what nobody weighed another', () => {
  const loads = kitSaid(
    [line('tank', 1), line('pipe', 3), line('unweighed', 2)],
    { parts, carrier: null, keptApart: [] },
    english,
  );
  const told = loads.flatMap(({ items }) => items.map(({ partId, count }) => [partId, count]));
  expect([...told].sort()).toEqual([
    ['pipe', 3],
    ['tank', 8],
    ['unweighed', 2],
  ]);
  expect(loads).toHaveLength(2);
  expect(loads.map(({ weight_kg }) => weight_kg)).toEqual([null, 255]);
  expect(kitSaid([], { parts, carrier: null, keptApart: [] }, english)).toEqual([]);
});

it('a tank in shells goes in several loads of a boat that could not take it whole, each shell with its share', () => {
  const loads = kitSaid([line('tank', 1)], { parts, carrier: boat, keptApart: [] }, english);
  expect(loads.map(({ weight_kg }) => weight_kg)).toEqual([90, 90, 60]);
  expect(loads[0]!.items).toMatchObject([{ what: 'tank, a piece of 8', count: 3, hands_count: 2 }]);
  const whole = kitSaid([line('tank', 1)], { parts: [part('tank', 240)], carrier: boat, keptApart: [] }, english);
  expect(whole).toMatchObject([{ loadId: '–', weight_kg: 240 }]);
});
