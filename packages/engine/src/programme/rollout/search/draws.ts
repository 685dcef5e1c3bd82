/**
 * A fast seeded source of numbers for the loops of the search: the same seed gives the same numbers on every machine. Small fast
 * counter generator with 32-bit parts (sfc32); the first numbers are thrown away, so that seeds near each other part ways.
 *
 * @source sfc32 of PractRand (from memory)
 */
export class Draws {
  private a: number;
  private b: number;
  private c: number;
  private counter: number;

  constructor(seed: number) {
    this.a = seed | 0;
    this.b = Math.floor(seed / 2 ** 32) | 0;
    this.c = 0x2545f491;
    this.counter = 1;
    for (let i = 0; i < 16; i++) this.whole();
  }

  /** A whole number of 32 bits with its sign. */
  whole(): number {
    const sum = (this.a + this.b + this.counter) | 0;
    this.counter = (this.counter + 1) | 0;
    this.a = this.b ^ (this.b >>> 9);
    this.b = (this.c + (this.c << 3)) | 0;
    this.c = ((this.c << 21) | (this.c >>> 11)) + sum;
    this.c |= 0;
    return sum;
  }

  /** 0 or more, below 1. */
  fraction(): number {
    return (this.whole() >>> 0) / 4294967296;
  }

  /** A whole number from 0 to `below` − 1. */
  below(below: number): number {
    return Math.floor(((this.whole() >>> 0) / 4294967296) * below);
  }

  /** How many chances of `fraction` each are missed before the next is hit: 0 or more. */
  missed(fraction: number): number {
    if (fraction <= 0) return 0x7fffffff;
    if (fraction >= 1) return 0;
    return Math.min(0x7fffffff, Math.floor(Math.log(1 - this.fraction()) / Math.log(1 - fraction)));
  }
}
