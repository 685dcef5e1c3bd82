import { type Dice, seedFor } from '../../../kernel/index.ts';
import { Draws } from '../search/draws.ts';

/** Fast dice of its own for a named thing, so that one more site changes what is thrown for no other. */
export class NamedDice extends Draws implements Dice {
  constructor(seed: number, name: string) {
    super(seedFor(seed, name));
  }

  next(below: number): number {
    return this.below(below);
  }
}
