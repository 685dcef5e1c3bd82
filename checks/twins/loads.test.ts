import { type Carrier, loadsOf, type PartsApart, type Piece, pieceBulk_L, roomOf } from '@eavewell/engine';
import fc from 'fast-check';
import { expect, it } from 'vitest';

const settings = { numRuns: process.env['EAVEWELL_SOAK'] ? 6_000 : 300, seed: 20261126 };

/** The fewest loads by trying everything: each piece into every load it may be in, or into one more. */
function fewestLoads(
  pieces: readonly Piece[],
  { limit_kg, limit_L, mode }: Carrier,
  apart: readonly PartsApart[],
): number {
  const isPeople = mode === 'person' || mode === 'twoPeople';
  const load_kg =
    mode === 'person' ? Math.min(15, limit_kg!) : mode === 'twoPeople' ? Math.min(30, limit_kg!) : limit_kg!;
  const loads: Piece[][] = [];
  let least = Number.POSITIVE_INFINITY;
  const mayBeside = (one: Piece, other: Piece) => {
    const dangers = [one.danger, other.danger];
    if (dangers.includes('chlorine') && dangers.includes('fuel')) return false;
    const both = [one.partId, other.partId].sort().join();
    if (apart.some(({ partId, otherPartId }) => [partId, otherPartId].sort().join() === both)) return false;
    const isCrushed = (a: Piece, b: Piece) => a.isFragile && !b.isFragile && b.mass_kg! > 0.5;
    return !isPeople || (!isCrushed(one, other) && !isCrushed(other, one));
  };
  const mayJoin = (load: readonly Piece[], piece: Piece) => {
    const all = [...load, piece];
    const mass_kg = all.reduce((sum, one) => sum + one.mass_kg!, 0);
    const bulk_L = all.reduce((sum, one) => sum + (pieceBulk_L(one) ?? 0), 0);
    if (mass_kg > roomOf(load_kg) || (limit_L !== null && bulk_L > roomOf(limit_L))) return false;
    return load.every((other) => mayBeside(piece, other));
  };
  const place = (index: number) => {
    if (loads.length >= least) return;
    const piece = pieces[index];
    if (!piece) {
      least = loads.length;
      return;
    }
    for (const load of [...loads]) {
      if (!mayJoin(load, piece)) continue;
      load.push(piece);
      place(index + 1);
      load.pop();
    }
    loads.push([piece]);
    place(index + 1);
    loads.pop();
  };
  place(0);
  return least;
}

const pieceRecord = fc.record({
  mass_kg: fc.oneof(
    fc.integer({ min: 1, max: 14 }),
    fc.constantFrom(0.2, 0.5, 0.7),
    fc.double({ min: 0.1, max: 14, noNaN: true }),
  ),
  bulk_L: fc.option(fc.integer({ min: 1, max: 40 }), { nil: null, freq: 5 }),
  isFragile: fc.boolean(),
  danger: fc.constantFrom(null, null, null, 'chlorine' as const, 'fuel' as const),
});
const pieces = fc.array(pieceRecord, { minLength: 1, maxLength: 8 }).map((some) =>
  some.map(
    (one, index): Piece => ({
      ...{ partId: `P${index}`, name: `P${index}`, kind: 'other', each_count: 1, count: 1, sides_m: [] },
      ...one,
    }),
  ),
);
const apart = fc.array(
  fc
    .tuple(fc.integer({ min: 0, max: 7 }), fc.integer({ min: 0, max: 7 }))
    .filter(([a, b]) => a !== b)
    .map(([a, b]): PartsApart => ({ partId: `P${a}`, otherPartId: `P${b}` })),
  { maxLength: 3 },
);
const carrier = fc
  .record({
    mode: fc.constantFrom('person', 'twoPeople', 'boat', 'truck'),
    limit_kg: fc.integer({ min: 14, max: 30 }),
    limit_L: fc.option(fc.integer({ min: 40, max: 90 }), { nil: null }),
  })
  .map(
    (one) =>
      ({
        ...{ carrierId: 'C', name: 'C', longest_m: null, stowage_fraction: 1, carriers_count: 1 },
        ...{
          freeboard_cm: null,
          leastFreeboard_cm: null,
          freeboardEmpty_cm: null,
          length_m: null,
          limitSetBy: null,
          limitSetOn: null,
        },
        ...one,
      }) as Carrier,
  );

it('loads of up to eight pieces are as few as trying everything finds, and are called so', () => {
  fc.assert(
    fc.property(pieces, carrier, apart, (all, by, kept) => {
      const found = loadsOf(all, by, kept);
      expect(found.loads).toHaveLength(fewestLoads(all, by, kept));
      expect(found.isLeast).toBe(true);
    }),
    settings,
  );
});

it('pieces that are told apart by nothing are loaded as if each had its own row', () => {
  const counted = fc.array(
    fc.record({ mass_kg: fc.integer({ min: 1, max: 14 }), count: fc.integer({ min: 1, max: 4 }) }),
    {
      minLength: 1,
      maxLength: 3,
    },
  );
  fc.assert(
    fc.property(counted, carrier, (rows, by) => {
      const plain = { kind: 'other', each_count: 1, sides_m: [], bulk_L: null, isFragile: false, danger: null };
      const together = rows.map((row, index): Piece => ({ ...plain, ...row, partId: `P${index}`, name: '' }));
      const single = together.flatMap((piece) =>
        Array.from(
          { length: piece.count },
          (_, place): Piece => ({ ...piece, partId: `${piece.partId}-${place}`, count: 1 }),
        ),
      );
      const found = loadsOf(together, { ...by, limit_L: null }, []);
      expect(found.isLeast).toBe(true);
      expect(found.loads).toHaveLength(loadsOf(single, { ...by, limit_L: null }, []).loads.length);
    }),
    settings,
  );
});
