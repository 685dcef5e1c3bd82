import type { Draws } from './draws.ts';
import { LinkedTrips } from './linkedTrips.ts';

/** Jobs for trips limited by load. Entry 0 is the base. */
export interface TripsByLoadFacts {
  /** Cost from i to j at i × stops + j. */
  readonly cost_ratio: Float64Array;
  /** What each job takes of a trip's load; whole numbers. */
  readonly demand_amount: Int32Array;
  readonly capacity_amount: number;
}

/**
 * Trips from one base, each limited by what it can carry; cost is the sum of the ways gone. As many trips as are wanted. Demands and
 * the limit are whole numbers (grams, litres), so that loads added to and taken from stay exact.
 */
export class TripsByLoad extends LinkedTrips {
  private readonly capacity: number;

  constructor(facts: TripsByLoadFacts, blink: number, draws: Draws) {
    super(facts.cost_ratio, facts.demand_amount, blink, draws);
    this.capacity = facts.capacity_amount;
  }

  protected retime(): void {}

  // long: the innermost loop of the search
  price(job: number): number {
    const { next, firstOf, load, onward, outward, forward, backward } = this;
    const most = this.capacity - this.demand[job]!;
    const row = job * this.width;
    const toBase = forward[row]!;
    const fromBase = backward[row]!;
    let blinkIn = this.blinkIn;
    let best = Number.POSITIVE_INFINITY;
    let bestAfter = 0;
    let bestTrip = -1;
    for (let trip = 0, trips = this.tripsUsed; trip < trips; trip++) {
      if (load[trip]! > most) continue;
      let at = firstOf[trip]!;
      if (at === 0) continue;
      let there = fromBase;
      let more = there + forward[row + at]! - outward[trip]!;
      if (more < best) {
        if (blinkIn-- > 0) {
          best = more;
          bestAfter = 0;
          bestTrip = trip;
        } else blinkIn = this.draws.missed(this.blink);
      }
      do {
        there = backward[row + at]!;
        const following = next[at]!;
        more = there + forward[row + following]! - onward[at]!;
        if (more < best) {
          if (blinkIn-- > 0) {
            best = more;
            bestAfter = at;
            bestTrip = trip;
          } else blinkIn = this.draws.missed(this.blink);
        }
        at = following;
      } while (at !== 0);
    }
    if (bestTrip < 0 && most >= 0) {
      best = fromBase + toBase;
      bestAfter = 0;
      bestTrip = this.emptyTrip();
    }
    this.blinkIn = blinkIn;
    this.pricedJob = job;
    this.pricedAfter = bestAfter;
    this.pricedTrip = bestTrip;
    return best;
  }
}
