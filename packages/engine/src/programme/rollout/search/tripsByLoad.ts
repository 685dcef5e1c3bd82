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
  /** The job that makes room for the one priced last, 0 for none, and where it goes. */
  private movedJob = 0;
  private movedAfter = 0;
  private movedTrip = 0;
  private readonly roomy: Int32Array;

  constructor(facts: TripsByLoadFacts, blink: number, draws: Draws) {
    super(facts.cost_ratio, facts.demand_amount, blink, draws);
    this.capacity = facts.capacity_amount;
    this.roomy = new Int32Array(this.tripSize.length);
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
    this.blinkIn = blinkIn;
    this.pricedJob = job;
    this.pricedAfter = bestAfter;
    this.pricedTrip = bestTrip;
    this.movedJob = 0;
    if (most >= 0 && fromBase + toBase < best) {
      this.pricedTrip = this.emptyTrip();
      this.pricedAfter = 0;
      best = bestTrip < 0 ? this.priceMoving(job, fromBase + toBase) : fromBase + toBase;
    }
    return best;
  }

  override insertPriced(): void {
    if (this.movedJob > 0) this.move(this.movedJob, this.movedAfter, this.movedTrip);
    super.insertPriced();
  }

  /**
   * Where no trip has room for a job: the cheapest way to give it the place of a smaller one, which goes to a trip that has room for it, if that
   * is cheaper than a trip of its own. In tight fleets every second try would end in a trip too many without it.
   */
  // long: three loops inside each other that share what they found
  private priceMoving(job: number, ownTrip: number): number {
    const { next, previous, firstOf, load, demand, onward, outward, forward, backward, capacity, width } = this;
    const demandOfJob = demand[job]!;
    const row = job * width;
    const trips = this.tripsUsed;
    let best = ownTrip;
    const { roomy } = this;
    let roomyCount = 0;
    let mostRoom = 0;
    for (let trip = 0; trip < trips; trip++) {
      const room = capacity - load[trip]!;
      if (room <= 0 || firstOf[trip] === 0) continue;
      roomy[roomyCount++] = trip;
      if (room > mostRoom) mostRoom = room;
    }
    for (let trip = 0; trip < trips; trip++) {
      const least = load[trip]! + demandOfJob - capacity;
      if (least > mostRoom) continue;
      for (let other = firstOf[trip]!; other !== 0; other = next[other]!) {
        const size = demand[other]!;
        if (size < least || size > mostRoom) continue;
        const before = previous[other]!;
        const after = next[other]!;
        const leaving = (before === 0 ? outward[trip]! : onward[before]!) + onward[other]!;
        const swapped = backward[row + before]! + forward[row + after]! - leaving;
        if (swapped >= best) continue;
        const otherRow = other * width;
        for (let r = 0; r < roomyCount; r++) {
          const to = roomy[r]!;
          if (capacity - load[to]! < size || to === trip) continue;
          let at = 0;
          let following = firstOf[to]!;
          let saved = outward[to]!;
          for (;;) {
            const more = swapped + backward[otherRow + at]! + forward[otherRow + following]! - saved;
            if (more < best && this.draws.fraction() >= this.blink) {
              best = more;
              this.movedJob = other;
              this.movedAfter = at;
              this.movedTrip = to;
              this.pricedAfter = before;
              this.pricedTrip = trip;
            }
            if (following === 0) break;
            at = following;
            saved = onward[at]!;
            following = next[at]!;
          }
        }
      }
    }
    return best;
  }
}
