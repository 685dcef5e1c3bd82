import type { Dice } from './seeds.ts';

/** Of Marsaglia and Tsang's squeeze. Source: marsaglia-tsang-2000 (from memory). */
const squeeze = 0.0331;

/**
 * A number between 0 and 1, every stretch as likely as any other of its length; never 0 or 1 itself.
 *
 * @param dice - a seeded source of whole numbers
 * @returns the number [number], above 0, below 1
 * @definition ours: 52 bits from two throws, each value in the middle of its step
 */
export function uniformDraw(dice: Dice): number {
  return (dice.next(2 ** 26) * 2 ** 26 + dice.next(2 ** 26) + 0.5) / 2 ** 52;
}

/**
 * A number drawn from a standard normal distribution.
 *
 * @param dice - a seeded source of whole numbers
 * @returns the number [number]
 * @source marsaglia-bray-1964, polar method (from memory)
 */
export function normalDraw(dice: Dice): number {
  for (;;) {
    const x = 2 * uniformDraw(dice) - 1;
    const y = 2 * uniformDraw(dice) - 1;
    const square = x * x + y * y;
    if (square > 0 && square < 1) return x * Math.sqrt((-2 * Math.log(square)) / square);
  }
}

/**
 * A number drawn from a gamma distribution of scale 1.
 *
 * @param dice - a seeded source of whole numbers
 * @param shape - the shape [number], above 0
 * @returns the number [number], 0 or more
 * @source marsaglia-tsang-2000, squeeze with a cube of a normal; shapes under 1 by a power of a uniform (from memory)
 */
export function gammaDraw(dice: Dice, shape: number): number {
  if (!(shape > 0 && Number.isFinite(shape))) throw new RangeError('gammaDraw: needs a shape above 0');
  if (shape < 1) return gammaDraw(dice, shape + 1) * uniformDraw(dice) ** (1 / shape);
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const z = normalDraw(dice);
    const root = 1 + c * z;
    const v = root * root * root;
    if (!(v > 0)) continue;
    const thrown = uniformDraw(dice);
    // The squeeze takes nearly all of them without a logarithm, and only such as the second line would take too.
    if (thrown < 1 - squeeze * z * z * z * z || Math.log(thrown) < (z * z) / 2 + d - d * v + d * Math.log(v))
      return d * v;
  }
}
