import { expect, it } from 'vitest';
import { priceOn } from './priceOn.ts';

const price = (priceDate: number, amount: number, partId = 'T1') => ({ partId, priceDate, amount, currency: 'XTS' });
const prices = [price(30, 12), price(10, 9), price(20, 11), price(5, 99, 'T2'), price(20, 10)];

it('takes the latest price on or before the day', () => {
  expect(priceOn(prices, 'T1', 19).price?.amount).toBe(9);
  expect(priceOn(prices, 'T1', 30).price?.amount).toBe(12);
  expect(priceOn(prices, 'T1', 400).price?.amount).toBe(12);
});

it('takes the later line of two of one date', () => {
  expect(priceOn(prices, 'T1', 25).price?.amount).toBe(10);
});

it('says why there is no price, and never gives 0 for it', () => {
  expect(priceOn(prices, 'T1', 9)).toEqual({ price: null, reason: 'onlyLaterPrices' });
  expect(priceOn(prices, 'T3', 9)).toEqual({ price: null, reason: 'noPrice' });
});
