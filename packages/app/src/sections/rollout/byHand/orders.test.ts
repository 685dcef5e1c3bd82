import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ordersOf } from './orders.ts';

describe('orders', () => {
  it('stay as they are where they rise', () => {
    expect(ordersOf([1, 2, 3.5, 10])).toEqual([1, 2, 3.5, 10]);
  });

  it('give what is new a number between its neighbours, before the first or after the last', () => {
    expect(ordersOf([1, null, 2])).toEqual([1, 1.5, 2]);
    expect(ordersOf([null, 5])).toEqual([4, 5]);
    expect(ordersOf([5, null, null])).toEqual([5, 6, 7]);
    expect(ordersOf([null, null])).toEqual([1, 2]);
    expect(ordersOf([])).toEqual([]);
  });

  it('change only what was moved', () => {
    // The fourth was put first.
    expect(ordersOf([4, 1, 2, 3, 5])).toEqual([0, 1, 2, 3, 5]);
  });

  it('count anew where there is no room', () => {
    expect(ordersOf([1, null, 1.000001])).toEqual([1, 2, 3]);
    expect(ordersOf([1e6, null])).toEqual([1, 2]);
  });

  it('always rise, are as many as asked, and stay within what the table takes', () => {
    const one = fc.option(fc.oneof(fc.integer({ min: -9, max: 9 }), fc.double({ min: -1e6, max: 1e6, noNaN: true })));
    fc.assert(
      fc.property(fc.array(one, { maxLength: 12 }), (before) => {
        const orders = ordersOf(before);
        expect(orders).toHaveLength(before.length);
        for (const [at, order] of orders.entries()) {
          expect(Math.abs(order)).toBeLessThanOrEqual(1e6);
          if (at > 0) expect(order).toBeGreaterThan(orders[at - 1]!);
        }
        const isRising = before.every((order, at) => order !== null && (at === 0 || order > before[at - 1]!));
        if (isRising) expect(orders).toEqual(before);
      }),
      { seed: 20261126 },
    );
  });
});
