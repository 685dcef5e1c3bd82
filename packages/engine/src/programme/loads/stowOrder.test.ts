import { expect, it } from 'vitest';
import { piece } from './pieces.testing.ts';
import { stowOrder } from './stowOrder.ts';

const fragile = { isFragile: true };
const stops = [
  { stopId: 'first', pieces: [piece('glass1', 2, 1, fragile), piece('light1', 1), piece('heavy1', 30)] },
  { stopId: 'last', pieces: [piece('glass2', 3, 1, fragile), piece('light2', 1), piece('heavy2', 40)] },
];

it('puts in first what goes off last, the heavy at the bottom, and what is fragile on top of all', () => {
  const order = stowOrder(stops);
  expect(order.map(({ partId }) => partId)).toEqual(['heavy2', 'light2', 'heavy1', 'light1', 'glass2', 'glass1']);
  expect(order[0]).toMatchObject({ stopId: 'last', rules: ['lastStopFirst', 'heavyLow', 'heavyCentral'] });
  expect(order.at(-1)).toMatchObject({ stopId: 'first', isFragile: true, rules: ['fragileOnTop'] });
});

it('has no last stop where there is one', () => {
  expect(stowOrder(stops.slice(0, 1))[0]!.rules).toEqual(['heavyLow', 'heavyCentral']);
  expect(stowOrder([])).toEqual([]);
});
