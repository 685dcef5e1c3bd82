import { uniformDraw } from './draws.ts';
import { seededDice } from './seeds.ts';

/**
 * Draws numbers between 0 and 1 that are spread evenly: one in each of as many equal stretches as there are numbers, in an order of chance. Several such rows, thrown apart, are a
 * Latin hypercube: the middle and the ends of what follows from them are known closer than from as many free throws.
 *
 * @param count - how many numbers a row has [count], whole, above 0
 * @param rows - how many rows [count], whole
 * @param seed - the seed [number], whole
 * @returns the rows, numbers above 0 and below 1 [fraction]
 * @law the same seed gives the same numbers; each stretch of 1 ÷ count holds one number of each row
 * @source mckay-beckman-conover-1979, Latin hypercube sampling (from memory)
 */
export function evenDraws(count: number, rows: number, seed: number): readonly Float64Array[] {
  const dice = seededDice(seed);
  return Array.from({ length: rows }, () => {
    const drawn = Float64Array.from({ length: count }, (_, place) => (place + uniformDraw(dice)) / count);
    for (let place = count - 1; place > 0; place--) {
      const other = dice.next(place + 1);
      [drawn[place], drawn[other]] = [drawn[other]!, drawn[place]!];
    }
    return drawn;
  });
}
