import {
  type Carrier,
  type CarrierLoads,
  kitsIn,
  type LoadPieces,
  loadsOf,
  type PartsApart,
  type Piece,
  pieceBulk_L,
  roomOf,
  seededDice,
  stowOrder,
} from '@eavewell/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const settings = { numRuns: process.env['EAVEWELL_SOAK'] ? 4_000 : 200, seed: 20261126 };

const mass_kg = fc.option(fc.oneof(fc.integer({ min: 1, max: 40 }), fc.double({ min: 0.01, max: 40, noNaN: true })), {
  nil: null,
  freq: 12,
});
const side_m = fc.option(fc.double({ min: 0.02, max: 3.5, noNaN: true }), { nil: null, freq: 8 });
const onePiece = fc.record({
  kind: fc.constantFrom('tank', 'gutter', 'pipe', 'tap', 'other'),
  mass_kg,
  sides_m: fc.tuple(side_m, side_m, side_m),
  bulk_L: fc.option(fc.double({ min: 0.1, max: 300, noNaN: true }), { nil: null }),
  isFragile: fc.boolean(),
  danger: fc.constantFrom(null, null, null, 'chlorine' as const, 'fuel' as const),
  count: fc.integer({ min: 1, max: 12 }),
});
const pieces = fc
  .array(onePiece, { minLength: 1, maxLength: 12 })
  .map((some) => some.map((one, index): Piece => ({ ...one, partId: `P${index}`, name: `P${index}`, each_count: 1 })));
const keptApart = fc.array(
  fc
    .tuple(fc.integer({ min: 0, max: 11 }), fc.integer({ min: 0, max: 11 }))
    .map(([a, b]): PartsApart => ({ partId: `P${a}`, otherPartId: `P${b}` })),
  { maxLength: 4 },
);
const unset = {
  freeboard_cm: null,
  leastFreeboard_cm: null,
  freeboardEmpty_cm: null,
  length_m: null,
  limitSetBy: null,
  limitSetOn: null,
  carriers_count: 1,
};
const carrier = fc
  .record({
    mode: fc.constantFrom('person', 'twoPeople', 'boat', 'truck', 'pallet', 'shippingContainer'),
    limit_kg: fc.integer({ min: 8, max: 120 }),
    limit_L: fc.option(fc.integer({ min: 50, max: 2000 }), { nil: null }),
    longest_m: fc.option(fc.double({ min: 0.5, max: 4, noNaN: true }), { nil: null }),
    stowage_fraction: fc.double({ min: 0.5, max: 1, noNaN: true }),
  })
  .map((one) => ({ carrierId: 'C', name: 'C', ...one, ...unset }) as Carrier);

function counted(found: readonly LoadPieces[], partId: string): number {
  return found.filter((one) => one.partId === partId).reduce((sum, { count }) => sum + count, 0);
}

/** Written anew, so that a fault of the program's own rule is seen. */
function neverMeet(one: Piece, other: Piece, apart: readonly PartsApart[]): boolean {
  const dangers = [one.danger, other.danger];
  if (dangers.includes('chlorine') && dangers.includes('fuel')) return true;
  const both = [one.partId, other.partId].sort().join();
  return apart.some(({ partId, otherPartId }) => [partId, otherPartId].sort().join() === both);
}

/** Everything that is wrong with loads. */
function faults(all: readonly Piece[], by: Carrier, apart: readonly PartsApart[], found: CarrierLoads): string[] {
  const wrong: string[] = [];
  const inLoads = found.loads.flatMap((load) => load.pieces);
  for (const { partId, count } of all) {
    const places = [inLoads, found.cannotCarry, found.noMass].map((some) => counted(some, partId));
    if (places.reduce((sum, some) => sum + some, 0) !== count) wrong.push(`${partId} is not there once: ${places}`);
    if (places.filter((some) => some > 0).length !== 1) wrong.push(`${partId} is in two places`);
  }
  for (const load of found.loads) {
    const inside = load.pieces.map(({ partId, count }) => ({ ...all.find((one) => one.partId === partId)!, count }));
    const sum_kg = inside.reduce((sum, { mass_kg: own, count }) => sum + own! * count, 0);
    const sum_L = inside.reduce((sum, one) => sum + (pieceBulk_L(one) ?? 0) * one.count, 0);
    const two_kg = by.mode === 'person' ? 30 : Math.min(30, by.limit_kg!);
    const people_kg =
      load.carriedBy === 'two' ? two_kg : Math.min(inside.length + inside[0]!.count > 2 ? 15 : 23, by.limit_kg!);
    const most_kg = by.mode === 'person' || by.mode === 'twoPeople' ? people_kg : by.limit_kg!;
    if (sum_kg > roomOf(most_kg)) wrong.push(`${sum_kg} kg, ${most_kg} at most`);
    if (by.limit_L !== null && sum_L > roomOf(by.limit_L * by.stowage_fraction)) wrong.push(`${sum_L} L`);
    for (const one of inside)
      for (const side of one.sides_m)
        if (side !== null && by.longest_m !== null && side > roomOf(by.longest_m)) wrong.push(`${side} m`);
    inside.forEach((one, place) => {
      for (const other of inside.slice(one.count > 1 ? place : place + 1))
        if (neverMeet(one, other, apart)) wrong.push(`${one.partId} with ${other.partId}`);
      for (const later of inside.slice(place + 1))
        if (one.isFragile && later.mass_kg! > one.mass_kg!) wrong.push(`${later.partId} on ${one.partId}`);
    });
  }
  if (found.leastLoads_count! > found.loads.length) wrong.push('fewer loads than the bound');
  if (found.isLeast !== (found.leastLoads_count === found.loads.length)) wrong.push('least and bound disagree');
  return wrong;
}

describe('loads', () => {
  it('hold every piece once, keep to every limit, and what is kept apart never meets', () => {
    fc.assert(
      fc.property(pieces, carrier, keptApart, (all, by, apart) => {
        expect(faults(all, by, apart, loadsOf(all, by, apart))).toEqual([]);
      }),
      settings,
    );
  });

  it('do not change with the order of the rows', () => {
    fc.assert(
      fc.property(pieces, carrier, keptApart, (all, by, apart) => {
        const { problems: _, noMass: _noMass, noBulk: _noBulk, noLength: _noLength, ...one } = loadsOf(all, by, apart);
        const other = loadsOf([...all].reverse(), by, apart);
        expect(other).toMatchObject({ loads: one.loads, leastLoads_count: one.leastLoads_count });
      }),
      settings,
    );
  });

  it('are never fewer when there is more to carry', () => {
    fc.assert(
      fc.property(pieces, carrier, keptApart, onePiece, (all, by, apart, more) => {
        const extra: Piece = { ...more, partId: 'X', name: 'X', each_count: 1 };
        const [few, many] = [loadsOf(all, by, apart), loadsOf([...all, extra], by, apart)];
        // What was found may be one too many; what is proved is not.
        expect(many.loads.length).toBeGreaterThanOrEqual(few.leastLoads_count!);
        if (few.isLeast && many.isLeast) expect(many.loads.length).toBeGreaterThanOrEqual(few.loads.length);
      }),
      settings,
    );
  });
});

/** Pieces that fill so many loads of 20 kg to the last bit, in no order: whole loads cut at chance places. */
function cutLoads(seed: number, loads_count: number, cuts_count: number, step_kg: number): Piece[] {
  const dice = seededDice(seed);
  const steps = Math.round(20 / step_kg);
  const masses: number[] = [];
  for (let load = 0; load < loads_count; load++) {
    const cuts = new Set([0, steps]);
    while (cuts.size < cuts_count + 1) cuts.add(1 + dice.next(steps - 1));
    const sorted = [...cuts].sort((a, b) => a - b);
    for (let place = 1; place < sorted.length; place++) masses.push((sorted[place]! - sorted[place - 1]!) * step_kg);
  }
  for (let place = masses.length - 1; place > 0; place--) {
    const other = dice.next(place + 1);
    [masses[place], masses[other]] = [masses[other]!, masses[place]!];
  }
  const plain = { kind: 'other', each_count: 1, count: 1, bulk_L: null, isFragile: false, danger: null } as const;
  return masses.map((own, index) => ({
    ...{ partId: `P${index}`, name: `P${index}`, mass_kg: own, sides_m: [null, null, null] },
    ...plain,
  }));
}

describe('loads that are filled to the last bit, up to 60 pieces', () => {
  const truck = { carrierId: 'T', name: 'T', mode: 'truck', limit_kg: 20, limit_L: null, longest_m: null } as const;
  const seeds = Array.from({ length: process.env['EAVEWELL_SOAK'] ? 60 : 6 }, (_, seed) => seed + 1);
  const cases = [1, 0.1, 0.01].flatMap((step_kg) => [2, 3, 4, 6, 10].map((cuts) => [step_kg, cuts] as const));
  it.each(cases)('in steps of %s kg, %s pieces a load, are as many as were cut', (step_kg, cuts_count) => {
    const loads_count = Math.floor(60 / cuts_count);
    for (const seed of seeds) {
      const found = loadsOf(
        cutLoads(seed, loads_count, cuts_count, step_kg),
        { ...truck, ...unset, stowage_fraction: 1 },
        [],
      );
      expect(found.loads).toHaveLength(loads_count);
      expect(found.isLeast).toBe(true);
    }
  });

  it.each([0.001, 0.00001])('in steps of %s kg are at most one more, and are not called the fewest then', (step_kg) => {
    for (const seed of seeds) {
      const found = loadsOf(cutLoads(seed, 10, 6, step_kg), { ...truck, ...unset, stowage_fraction: 1 }, []);
      expect(found.leastLoads_count).toBe(10);
      expect(found.loads.length).toBeLessThanOrEqual(11);
      expect(found.isLeast).toBe(found.loads.length === 10);
    }
  });
});

describe('kits in a container', () => {
  it('are over no limit, and one more is', () => {
    const whole = pieces.map((all) =>
      all.map((one) => ({ ...one, danger: null, mass_kg: one.mass_kg ?? 1, bulk_L: one.bulk_L ?? 5 })),
    );
    fc.assert(
      fc.property(whole, carrier, fc.integer({ min: 1, max: 80 }), (kit, one, times) => {
        const by = { ...one, longest_m: null, limit_kg: one.limit_kg! * times };
        const checked = kitsIn(kit, by, []);
        if (!checked.ok) throw new Error('no limit');
        const { kits_count, kit_kg, kit_L, limitedBy } = checked.value;
        const isIn = (kits: number) =>
          kits * kit_kg <= roomOf(by.limit_kg) * (1 + 1e-12) &&
          (by.limit_L === null || kits * kit_L <= roomOf(by.limit_L * by.stowage_fraction) * (1 + 1e-12));
        expect(isIn(kits_count!)).toBe(true);
        expect(isIn(kits_count! + 1 + 1e-9)).toBe(false);
        expect(limitedBy).toMatch(/^(?:mass|bulk)$/);
      }),
      settings,
    );
  });
});

describe('stowing for several stops', () => {
  it('takes every piece once, and puts nothing heavier on what is fragile', () => {
    const stops = fc.array(pieces, { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(stops, (all) => {
        const trip = all.map((some, index) => ({ stopId: `S${index}`, pieces: some }));
        const order = stowOrder(trip);
        expect(order).toHaveLength(all.flat().length);
        for (const { stopId, pieces: some } of trip)
          expect(
            order
              .filter((one) => one.stopId === stopId)
              .map(({ partId }) => partId)
              .sort(),
          ).toEqual(some.map(({ partId }) => partId).sort());
        const massOf = ({ stopId, partId }: (typeof order)[number]) =>
          trip.find((stop) => stop.stopId === stopId)!.pieces.find((one) => one.partId === partId)!.mass_kg ?? 0;
        const firstFragile = order.findIndex(({ isFragile }) => isFragile);
        const fragile = firstFragile < 0 ? [] : order.slice(firstFragile);
        expect(fragile.every(({ isFragile }) => isFragile)).toBe(true);
        expect(fragile.map(massOf)).toEqual(fragile.map(massOf).sort((a, b) => b - a));
        // What is firm lies so that the first stop's is on top.
        const firm = order.filter(({ isFragile }) => !isFragile).map(({ stopId }) => Number(stopId.slice(1)));
        expect(firm).toEqual([...firm].sort((a, b) => b - a));
      }),
      settings,
    );
  });
});
