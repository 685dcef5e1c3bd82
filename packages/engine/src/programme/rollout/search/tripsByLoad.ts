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

/** A trip may be overloaded by this share of a mean job while the search goes on. Ours: docs/decisions/0412. */
const mostOverload_ratio = 0.3;
/** Where a trip holds so many mean jobs or more, small ones fill what is left, and nothing is overloaded. Ours: docs/decisions/0412. */
const fewOnATrip_count = 10;
/** What an overload costs rises where fewer plans of so many tries hold than this, and falls where more do, by this factor. Ours. */
const plansThatHold_fraction = 0.9;
const triesBetweenPrices_count = 1000;
const priceStep_ratio = 1.05;

/**
 * Trips from one base, each limited by what it can carry; cost is the sum of the ways gone. As many trips as are wanted. Demands and
 * the limit are whole numbers (grams, litres), so that loads added to and taken from stay exact.
 *
 * On the way to a plan a trip may be overloaded a little, at a price: where trips are full to the last job, the way from one good packing to
 * another leads through such plans. The price moves with the share of plans that hold; the best plan always does.
 */
export class TripsByLoad extends LinkedTrips {
  private readonly mostOverload: number;
  /** What one more of load above the limit costs: dearer than any trip at first. */
  private price_ratio: number;
  private begun = 0;
  private held = 0;

  constructor(facts: TripsByLoadFacts, blink: number, draws: Draws) {
    const { cost_ratio, demand_amount, capacity_amount } = facts;
    super(cost_ratio, demand_amount, capacity_amount, blink, draws);
    const sum = demand_amount.reduce((all, one) => all + one, 0);
    const mean = sum / Math.max(1, this.jobs);
    this.mostOverload = capacity_amount < fewOnATrip_count * mean ? Math.floor(mostOverload_ratio * mean) : 0;
    this.price_ratio = 1 + 3 * cost_ratio.reduce((most, one) => Math.max(most, one), 0);
  }

  protected retime(): void {}

  override cost(): number {
    return this.total + this.price_ratio * this.overload;
  }

  /** A way round by one more stop is never shorter, nor a load less by one more job. */
  override atLeast(): number {
    return this.cost();
  }

  override holds(): boolean {
    return this.overload === 0;
  }

  override begin(): void {
    super.begin();
    this.begun++;
    if (this.overload === 0) this.held++;
  }

  override repriced(current: number): number {
    if (this.mostOverload === 0 || this.begun < triesBetweenPrices_count) return current;
    this.price_ratio *= this.held < plansThatHold_fraction * this.begun ? priceStep_ratio : 1 / priceStep_ratio;
    this.begun = 0;
    this.held = 0;
    return this.cost();
  }

  // long: the innermost loop of the search
  price(job: number): number {
    const { next, firstOf, load, onward, outward, forward, backward } = this;
    const demand = this.demand[job]!;
    const most = this.capacity - demand;
    this.pricedJob = job;
    this.pricedTrip = -1;
    if (most < 0) return Number.POSITIVE_INFINITY;
    const softMost = most + this.mostOverload;
    const row = job * this.width;
    const fromBase = backward[row]!;
    let blinkIn = this.blinkIn;
    let best = Number.POSITIVE_INFINITY;
    let bestAfter = 0;
    let bestTrip = -1;
    for (let trip = 0, trips = this.tripsUsed; trip < trips; trip++) {
      let at = firstOf[trip]!;
      if (at === 0) continue;
      let paid = 0;
      const over = load[trip]! - most;
      if (over > 0) {
        if (load[trip]! > softMost) continue;
        paid = this.price_ratio * Math.min(over, demand);
        if (paid >= best) continue;
      }
      let more = paid + fromBase + forward[row + at]! - outward[trip]!;
      if (more < best) {
        if (blinkIn-- > 0) {
          best = more;
          bestAfter = 0;
          bestTrip = trip;
        } else blinkIn = this.draws.missed(this.blink);
      }
      do {
        const there = paid + backward[row + at]!;
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
    this.blinkIn = blinkIn;
    const ownTrip = fromBase + forward[row]!;
    if (ownTrip < best) {
      this.pricedTrip = this.emptyTrip();
      this.pricedAfter = 0;
      return ownTrip;
    }
    this.pricedAfter = bestAfter;
    this.pricedTrip = bestTrip;
    return best;
  }
}
