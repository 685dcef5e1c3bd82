import type { Draws } from './draws.ts';
import { LinkedTrips } from './linkedTrips.ts';
import { chained, chainedMatrix, turned } from './stopChain.ts';

/** Jobs for trips limited by load and windows of time. Entry 0 is the base: when trips may leave, and when they must be back. */
export interface TripsByWindowFacts {
  /** Cost from i to j at i × stops + j. */
  readonly cost_ratio: Float64Array;
  /** Time from i to j at i × stops + j, in one unit with the windows. */
  readonly time_ratio: Float64Array;
  /** What each job takes of a trip's load; whole numbers. */
  readonly demand_amount: Int32Array;
  readonly capacity_amount: number;
  /** When work at each stop may begin at the earliest and at the latest, and how long it takes. */
  readonly opens_ratio: Float64Array;
  readonly closes_ratio: Float64Array;
  readonly service_ratio: Float64Array;
}

/**
 * Trips from one base, each limited by what it can carry and by windows of time in which work must begin; who is early waits. Cost is the
 * sum of the ways gone, waiting is free. As many trips as are wanted.
 */
export class TripsByWindow extends LinkedTrips {
  private readonly time: Float64Array;
  private readonly timeBack: Float64Array;
  private readonly opens: Float64Array;
  private readonly closes: Float64Array;
  private readonly service: Float64Array;
  /** When each job is left at the earliest, and by when its work must begin so that all after it are in time. */
  private readonly leaves: Float64Array;
  private readonly latest: Float64Array;

  constructor(facts: TripsByWindowFacts, blink: number, draws: Draws) {
    super(facts.cost_ratio, facts.demand_amount, facts.capacity_amount, blink, draws);
    this.time = chainedMatrix(facts.time_ratio, this.chain);
    this.timeBack = turned(this.time, this.width);
    this.opens = chained(facts.opens_ratio, this.chain);
    this.closes = chained(facts.closes_ratio, this.chain);
    this.service = chained(facts.service_ratio, this.chain);
    this.leaves = new Float64Array(this.width);
    this.latest = new Float64Array(this.width);
    this.leaves[0] = this.opens[0]! + this.service[0]!;
    this.latest[0] = this.closes[0]!;
  }

  override orderKey(order: string): Float64Array | null {
    const { opens, closes } = this;
    if (order === 'shortWindow') return closes.map((close, job) => close - opens[job]!);
    if (order === 'opensEarly') return opens.slice();
    if (order === 'closesLate') return closes.map((close) => -close);
    return super.orderKey(order);
  }

  protected retime(trip: number): void {
    const { next, previous, time, width, opens, service, leaves, latest, closes } = this;
    let from = leaves[0]!;
    for (let at = this.firstOf[trip]!, before = 0; at !== 0; before = at, at = next[at]!) {
      from = Math.max(from + time[before * width + at]!, opens[at]!) + service[at]!;
      leaves[at] = from;
    }
    let by = latest[0]!;
    for (let at = this.lastOf[trip]!, after = 0; at !== 0; after = at, at = previous[at]!) {
      by = Math.min(by - time[at * width + after]! - service[at]!, closes[at]!);
      latest[at] = by;
    }
  }

  // long: the innermost loop of the search
  price(job: number): number {
    const { next, firstOf, load, onward, outward, forward, backward, time, timeBack, leaves, latest } = this;
    const most = this.capacity - this.demand[job]!;
    const row = job * this.width;
    const opens = this.opens[job]!;
    const closes = this.closes[job]!;
    const service = this.service[job]!;
    let blinkIn = this.blinkIn;
    let best = Number.POSITIVE_INFINITY;
    let bestAfter = 0;
    let bestTrip = -1;
    for (let trip = 0, trips = this.tripsUsed; trip < trips; trip++) {
      if (load[trip]! > most) continue;
      let before = 0;
      let at = firstOf[trip]!;
      if (at === 0) continue;
      let saved = outward[trip]!;
      for (;;) {
        const leave = leaves[before]!;
        // Later in the trip it is later still.
        if (leave > closes) break;
        const more = backward[row + before]! + forward[row + at]! - saved;
        if (more < best) {
          const start = Math.max(leave + timeBack[row + before]!, opens);
          if (start <= closes && start + service + time[row + at]! <= latest[at]!) {
            if (blinkIn-- > 0) {
              best = more;
              bestAfter = before;
              bestTrip = trip;
            } else blinkIn = this.draws.missed(this.blink);
          }
        }
        if (at === 0) break;
        before = at;
        saved = onward[at]!;
        at = next[at]!;
      }
    }
    if (backward[row]! + forward[row]! < best) {
      const start = Math.max(leaves[0]! + timeBack[row]!, opens);
      if (most >= 0 && start <= closes && start + service + time[row]! <= latest[0]!) {
        best = backward[row]! + forward[row]!;
        bestAfter = 0;
        bestTrip = this.emptyTrip();
      }
    }
    this.blinkIn = blinkIn;
    this.pricedJob = job;
    this.pricedAfter = bestAfter;
    this.pricedTrip = bestTrip;
    return best;
  }
}
