import { idleRounds_count, momentum_fraction, slower_ratio } from './constants.ts';
import type { TripProgramme } from './tripProgramme.ts';

/**
 * Prices that rise where nobody comes and fall where several do. What any prices give is a bound: their sum, and the best trips of each
 * crew at them. A subgradient with momentum, its length after Polyak.
 */
export class PriceAscent {
  readonly prices: Float64Array;
  /** The highest bound so far [person-day], and with how many rounds. */
  best = Number.NEGATIVE_INFINITY;
  rounds_count = 0;
  /** How far prices move; 0: no move makes the bound better. */
  pace = 1;

  private readonly afterAll: Float64Array;
  private readonly aim: number;
  private readonly bestPrices: Float64Array;
  private readonly visits: Float64Array;
  private readonly moves: Float64Array;
  private idle_count = 0;

  /** `afterAll` is what a job is worth that is served after all days looked at; `aim` the waiting of a plan, which no bound exceeds [person-day]. */
  constructor(prices: Float64Array, afterAll: Float64Array, aim: number) {
    this.prices = prices;
    this.afterAll = afterAll;
    this.aim = aim;
    this.bestPrices = prices.slice();
    this.visits = new Float64Array(prices.length);
    this.moves = new Float64Array(prices.length);
  }

  /** The same prices are gone on from with other programmes. */
  begin(pace: number): void {
    this.pace = pace;
    this.idle_count = 0;
    this.prices.set(this.bestPrices);
    this.moves.fill(0);
  }

  /** Reckons the bound of the prices, and moves them. */
  round(programmes: readonly TripProgramme[]): void {
    const bound = this.boundOf(programmes);
    this.rounds_count++;
    if (bound > this.best) {
      this.best = bound;
      this.bestPrices.set(this.prices);
      this.idle_count = 0;
    } else if (++this.idle_count >= idleRounds_count) this.begin(this.pace / slower_ratio);
    this.move(bound);
  }

  private boundOf(programmes: readonly TripProgramme[]): number {
    const { prices, afterAll, visits } = this;
    visits.fill(0);
    let bound = 0;
    for (let job = 0; job < prices.length; job++) {
      bound += Math.min(prices[job]!, afterAll[job]!);
      if (afterAll[job]! < prices[job]!) visits[job] = 1;
    }
    for (const programme of programmes) {
      bound += programme.kind.crews_count * programme.solve(prices);
      programme.addVisits(visits);
    }
    return bound;
  }

  private move(bound: number): void {
    const { prices, visits, moves } = this;
    let squares = 0;
    for (let job = 0; job < prices.length; job++) {
      moves[job] = 1 - visits[job]! + momentum_fraction * moves[job]!;
      squares += moves[job]! ** 2;
    }
    const length = squares > 0 ? (this.pace * (this.aim - bound)) / squares : 0;
    if (!(length > 0)) this.pace = 0;
    else for (let job = 0; job < prices.length; job++) prices[job] = prices[job]! + length * moves[job]!;
  }
}
