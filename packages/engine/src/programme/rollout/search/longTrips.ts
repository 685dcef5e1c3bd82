import type { CrewNumbers } from './crewNumbers.ts';
import { ofStop, ofTrip, stopFields, tripFields } from './crewSlots.ts';
import { CrewsByWaiting } from './crewsByWaiting.ts';
import type { Draws } from './draws.ts';

const mostMoved = 12;
const nearest = 12;

/**
 * Crews of one long trip each, time as it is, no work at stops, ways alike in both directions: beside strings that go out and come back, stretches of a trip
 * turn round or go elsewhere in it. What that changes is known in a few sums, whatever the stretch's length, from sums of the trip's times and weights.
 */
export class LongTrips extends CrewsByWaiting {
  /** The trip in hand: nodes from the base to the base, jobs, times, sums of weights and of weight × time up to each place. */
  private readonly node: Int32Array;
  private readonly job: Int32Array;
  private readonly time: Float64Array;
  private readonly weights: Float64Array;
  private readonly moments: Float64Array;
  private readonly placeOf: Int32Array;
  private readonly turned: Int32Array;
  private readonly ways: Float64Array;
  private count = 0;

  constructor(numbers: CrewNumbers, blink: number, draws: Draws) {
    super(numbers, blink, draws);
    const room = numbers.jobs + 2;
    this.node = new Int32Array(room);
    this.job = new Int32Array(room);
    this.time = new Float64Array(room);
    this.weights = new Float64Array(room);
    this.moments = new Float64Array(room);
    this.placeOf = new Int32Array(numbers.jobs + 1);
    this.turned = new Int32Array(room);
    const { table } = numbers.byCrew[0]!.legs[0]!;
    this.ways = Float64Array.from(table.landBefore_h, (hours) => hours / numbers.byCrew[0]!.hours);
  }

  override moveWithin(temperature: number, moves_count: number): number {
    this.begin();
    const share = Math.ceil(moves_count / this.crews);
    for (let crew = 0; crew < this.crews; crew++) {
      const slot = this.slotOf[crew]!;
      if (this.tripsIn[slot] !== 1 || this.firstFree[crew] !== 0) continue;
      const count = this.tripsOf[(slot * this.tripRoom + 1) * tripFields + ofTrip.first]!;
      if (count < 3) continue;
      this.take(crew, slot, count);
      let isMoved = false;
      for (let i = 0; i < share; i++) if (this.move(temperature, count)) isMoved = true;
      if (isMoved) this.give(crew, slot, count);
    }
    return this.cost();
  }

  /** Takes the crew's trip in hand. */
  private take(crew: number, slot: number, count: number): void {
    const { numbers, node, job, placeOf, stops } = this;
    const { base, store } = numbers.byCrew[crew]!;
    this.count = count;
    node[0] = store;
    node[count + 1] = base;
    job[count + 1] = 0;
    const zero = slot * this.stopRoom * stopFields;
    placeOf.fill(0);
    for (let place = 1; place <= count; place++) {
      const one = stops[zero + (place - 1) * stopFields]!;
      job[place] = one;
      node[place] = numbers.nodeOf[one]!;
      placeOf[one] = place;
    }
    this.summedFrom(1, count);
  }

  private give(crew: number, slot: number, count: number): void {
    const zero = slot * this.stopRoom * stopFields;
    for (let place = 1; place <= count; place++)
      this.stops[zero + (place - 1) * stopFields + ofStop.job] = this.job[place]!;
    this.tripsOf[slot * this.tripRoom * tripFields + ofTrip.isStale] = 1;
    this.retime(crew, 0);
  }

  /** Time, weights and moments from a place on. */
  private summedFrom(from: number, count: number): void {
    const { node, job, time, weights, moments, numbers, ways } = this;
    const { nodes, weight, homeWeight } = numbers;
    for (let place = from; place <= count + 1; place++) {
      const before = place - 1;
      const left = before === 0 ? 0 : time[before]!;
      time[place] = left + ways[node[before]! * nodes + node[place]!]!;
      const own = place > count ? homeWeight : weight[job[place]!]!;
      weights[place] = weights[before]! + own;
      moments[place] = moments[before]! + own * time[place]!;
    }
  }

  /** One move that brings a stop and one of its nearest beside each other; true where it is kept. */
  private move(temperature: number, count: number): boolean {
    const { draws, job, placeOf, near, nearCount } = this;
    const at = 1 + draws.below(count);
    const other = near[job[at]! * nearCount + draws.below(Math.min(nearest, nearCount))]!;
    const to = placeOf[other]!;
    if (to === 0 || to === at) return false;
    const kind = draws.below(3);
    if (kind === 0) {
      // Turns the stretch between, so that the two follow each other at its one end or the other.
      const isAhead = draws.below(2) === 0;
      const from = isAhead ? Math.min(at, to) + 1 : Math.min(at, to);
      const end = isAhead ? Math.max(at, to) : Math.max(at, to) - 1;
      if (from >= end) return false;
      return this.kept(this.turnPrice(from, end), temperature) && this.turn(from, end, count);
    }
    // A stretch that begins or ends at the one stop goes beside the other, as it is or turned.
    const length = 1 + draws.below(Math.min(mostMoved, count - 1));
    const from = draws.below(2) === 0 ? at : at - length + 1;
    const end = from + length - 1;
    if (from < 1 || end > count || (to >= from && to <= end)) return false;
    const after = draws.below(2) === 0 ? to : to - 1;
    if (after === from - 1 || (after >= from && after <= end)) return false;
    const isTurned = kind === 2;
    return (
      this.kept(this.shiftPrice(from, end, after, isTurned), temperature) &&
      this.shift(from, end, after, isTurned, count)
    );
  }

  private kept(more: number, temperature: number): boolean {
    return more <= 0 || more < -temperature * Math.log(1 - this.draws.fraction());
  }

  private way(from: number, to: number): number {
    return this.ways[this.node[from]! * this.numbers.nodes + this.node[to]!]!;
  }

  private left(place: number): number {
    return place === 0 ? 0 : this.time[place]!;
  }

  /** Weight × time of a stretch if the crew comes to its first place (its last, turned) at `begin`. */
  private stretch(from: number, end: number, begin: number, isTurned: boolean): number {
    const { time, weights, moments } = this;
    const weight = weights[end]! - weights[from - 1]!;
    const moment = moments[end]! - moments[from - 1]!;
    if (!isTurned) return moment + (begin - time[from]!) * weight;
    return (begin + time[end]!) * weight - moment;
  }

  private turnPrice(from: number, end: number): number {
    const { time, weights, moments } = this;
    const last = this.lastPlace();
    const begin = this.left(from - 1) + this.way(from - 1, end);
    const done = begin + time[end]! - time[from]!;
    const more = done + this.way(from, end + 1) - time[end + 1]!;
    const now = moments[end]! - moments[from - 1]!;
    return this.stretch(from, end, begin, true) - now + more * (weights[last]! - weights[end]!);
  }

  private shiftPrice(from: number, end: number, after: number, isTurned: boolean): number {
    const { time, weights, moments } = this;
    const last = this.lastPlace();
    const first = isTurned ? end : from;
    const final = isTurned ? from : end;
    const long = time[end]! - time[from]!;
    if (after > end) {
      // What lies between comes sooner, then the stretch, then the rest.
      const begin = this.left(from - 1) + this.way(from - 1, end + 1);
      const between = this.stretch(end + 1, after, begin, false);
      const gone = begin + time[after]! - time[end + 1]!;
      const own = gone + this.way(after, first);
      const moved = this.stretch(from, end, own, isTurned);
      const more = own + long + this.way(final, after + 1) - time[after + 1]!;
      return between + moved - (moments[after]! - moments[from - 1]!) + more * (weights[last]! - weights[after]!);
    }
    const own = this.left(after) + this.way(after, first);
    const moved = this.stretch(from, end, own, isTurned);
    const begin = own + long + this.way(final, after + 1);
    const between = this.stretch(after + 1, from - 1, begin, false);
    const more = begin + time[from - 1]! - time[after + 1]! + this.way(from - 1, end + 1) - time[end + 1]!;
    return moved + between - (moments[end]! - moments[after]!) + more * (weights[last]! - weights[end]!);
  }

  private lastPlace(): number {
    return this.count + 1;
  }

  private turn(from: number, end: number, count: number): boolean {
    const { job, node, placeOf } = this;
    for (let low = from, high = end; low < high; low++, high--) {
      const one = job[low]!;
      job[low] = job[high]!;
      job[high] = one;
    }
    for (let place = from; place <= end; place++) {
      node[place] = this.numbers.nodeOf[job[place]!]!;
      placeOf[job[place]!] = place;
    }
    this.summedFrom(from, count);
    return true;
  }

  private shift(from: number, end: number, after: number, isTurned: boolean, count: number): boolean {
    const { job, node, placeOf, turned } = this;
    const length = end - from + 1;
    for (let i = 0; i < length; i++) turned[i] = job[isTurned ? end - i : from + i]!;
    const begin = Math.min(from, after + 1);
    if (after > end) {
      job.copyWithin(from, end + 1, after + 1);
      for (let i = 0; i < length; i++) job[after - length + 1 + i] = turned[i]!;
    } else {
      job.copyWithin(after + 1 + length, after + 1, from);
      for (let i = 0; i < length; i++) job[after + 1 + i] = turned[i]!;
    }
    for (let place = begin, last = Math.max(end, after); place <= last; place++) {
      node[place] = this.numbers.nodeOf[job[place]!]!;
      placeOf[job[place]!] = place;
    }
    this.summedFrom(begin, count);
    return true;
  }
}
