import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { binBounds, roomOf } from './binBound.ts';

const settings = { numRuns: 400, seed: 20261126 };

/** The least number of bins by trying everything: each thing into every bin that has room, or into one more. */
function leastBins(sizes: readonly number[], capacity: number): number {
  let least = sizes.length;
  const rooms: number[] = [];
  const place = (index: number) => {
    if (rooms.length >= least) return;
    if (index === sizes.length) {
      least = rooms.length;
      return;
    }
    const size = sizes[index]!;
    for (let bin = 0; bin < rooms.length; bin++) {
      if (rooms[bin]! < size) continue;
      rooms[bin]! -= size;
      place(index + 1);
      rooms[bin]! += size;
    }
    rooms.push(capacity - size);
    place(index + 1);
    rooms.pop();
  };
  place(0);
  return least;
}

const wholeSizes = fc.array(fc.integer({ min: 1, max: 30 }), { minLength: 1, maxLength: 8 });

describe('the bounds of bins', () => {
  // The example of nine things in bins of 100 that textbooks carry, from memory; by hand: 300 ÷ 100, and the limit 33.
  it('see in large things what the total does not tell', () => {
    expect(binBounds([33, 7, 70, 33, 3, 60, 50, 11, 33], 100)).toEqual({ byTotal_count: 3, byLarge_count: 4 });
    expect(leastBins([70, 60, 50, 33, 33, 33, 11, 7, 3], 100)).toBe(4);
  });

  it('are never above the least number of bins, and the second never under two thirds of it', () => {
    fc.assert(
      fc.property(wholeSizes, fc.integer({ min: 30, max: 60 }), (sizes, capacity) => {
        const { byTotal_count, byLarge_count } = binBounds(sizes, capacity)!;
        const least = leastBins(sizes, capacity);
        expect(byTotal_count).toBe(Math.ceil(sizes.reduce((sum, size) => sum + size, 0) / capacity));
        expect(byTotal_count).toBeLessThanOrEqual(byLarge_count);
        expect(byLarge_count).toBeLessThanOrEqual(least);
        expect(3 * byLarge_count).toBeGreaterThanOrEqual(2 * least);
      }),
      settings,
    );
  });

  it('are the textbook maximum over every limit, tried one by one', () => {
    const limits = (sizes: readonly number[], capacity: number) =>
      Array.from({ length: Math.floor(capacity / 2) + 1 }, (_, limit) => {
        const large = sizes.filter((size) => 2 * size > capacity);
        const beside = large.filter((size) => size <= capacity - limit);
        const medium = sizes.filter((size) => size >= limit && 2 * size <= capacity);
        const sum = (of: readonly number[]) => of.reduce((all, size) => all + size, 0);
        const left = beside.length * capacity - sum(beside);
        return large.length + Math.max(0, Math.ceil((sum(medium) - left) / capacity));
      });
    const many = fc.array(fc.integer({ min: 1, max: 30 }), { minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(many, fc.integer({ min: 30, max: 60 }), (sizes, capacity) => {
        expect(binBounds(sizes, capacity)!.byLarge_count).toBe(Math.max(...limits(sizes, capacity)));
      }),
      settings,
    );
  });

  it('do not change with the order, nor with the unit', () => {
    fc.assert(
      fc.property(wholeSizes, (sizes) => {
        const said = binBounds(sizes, 30);
        expect(binBounds([...sizes].reverse(), 30)).toEqual(said);
        expect(
          binBounds(
            sizes.map((size) => size / 10),
            3,
          ),
        ).toEqual(said);
      }),
      settings,
    );
  });

  it('see a bin that is filled exactly by decimals as one bin', () => {
    expect(0.1 + 0.2).toBeGreaterThan(0.3);
    expect(binBounds([0.1, 0.2], 0.3)).toEqual({ byTotal_count: 1, byLarge_count: 1 });
    expect(binBounds(new Array(30).fill(0.1), 0.3)).toEqual({ byTotal_count: 10, byLarge_count: 10 });
    expect(binBounds([1.4, 1.4 + 1e-6], 2.8)!.byLarge_count).toBe(2);
    expect(0.3).toBeLessThan(roomOf(0.3));
  });

  it('count a thing of no size, and have no answer to what is none', () => {
    expect(binBounds([0], 5)).toEqual({ byTotal_count: 1, byLarge_count: 1 });
    for (const wrong of [Number.NaN, -1, Number.POSITIVE_INFINITY, 5.1]) expect(binBounds([1, wrong], 5)).toBeNull();
    for (const wrong of [Number.NaN, -1, 0, Number.POSITIVE_INFINITY]) expect(binBounds([], wrong)).toBeNull();
  });

  it('are quick with many things', () => {
    const sizes = Array.from({ length: 100_000 }, (_, index) => 1 + ((index * 7919) % 97));
    expect(binBounds(sizes, 100)!.byLarge_count).toBeGreaterThan(49_000);
  });
});
