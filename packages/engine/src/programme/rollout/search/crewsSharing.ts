import { crewsTogether } from '../crewsTogether.ts';
import type { CrewTrips } from '../crewTrips.ts';
import { brokenKinds, type Retiming } from '../retiming.ts';
import type { CrewNumbers } from './crewNumbers.ts';
import { ofTrip, stopFields, tripFields } from './crewSlots.ts';
import { CrewsByWaiting } from './crewsByWaiting.ts';
import type { Draws } from './draws.ts';

const tooLongAway = brokenKinds.indexOf('tooLongAway');
const overloads = ['tooHeavy', 'tooBulky', 'tooLong'].map((kind) =>
  brokenKinds.indexOf(kind as (typeof brokenKinds)[number]),
);
const waitsForOthers = [2, 3, 4];

/**
 * Crews that share stock, hauls or carriers: after each change the evaluator times all of them together, which alone decides. In
 * between, a trip is taken to leave no earlier than when it last had to wait for what is shared.
 */
export class CrewsSharing extends CrewsByWaiting {
  private readonly timing: Retiming;
  private readonly flat: CrewTrips[];
  private readonly all: Int32Array;
  private isTimed = false;

  constructor(numbers: CrewNumbers, blink: number, draws: Draws, timing: Retiming) {
    super(numbers, blink, draws);
    this.timing = timing;
    this.all = Int32Array.from({ length: numbers.crews }, (_, crew) => crew);
    this.flat = Array.from(this.all, () => ({
      stops: new Int32Array(numbers.jobs + 1),
      ends: new Int32Array(this.tripRoom),
      trips_count: 0,
      notBefore: new Float64Array(this.tripRoom),
    }));
  }

  override cost(): number {
    const { timing, numbers } = this;
    this.flatten();
    crewsTogether(timing, this.all, this.flat);
    this.isTimed = true;
    let sum = this.outCost;
    for (let crew = 0; crew < this.crews; crew++) {
      const { stops, ends, trips_count } = this.flat[crew]!;
      const count = trips_count === 0 ? 0 : ends[trips_count - 1]!;
      for (let at = 0; at < count; at++) sum += this.handedOver(stops[at]! + 1, timing.handOver[stops[at]!]!);
    }
    if (numbers.homeWeight > 0) sum += numbers.homeWeight * this.backDays();
    const { broken } = timing;
    for (let at = 0; at < broken.count; at++) {
      if (broken.kind[at] === tooLongAway) sum += numbers.awayPenalty * broken.by[at]!;
      else if (overloads.includes(broken.kind[at]!)) sum += numbers.awayPenalty;
    }
    return sum;
  }

  /** The plan kept: its trips leave when they did as all were timed together. */
  override begin(): void {
    if (this.isTimed) this.keepFloors();
    this.isTimed = false;
    super.begin();
  }

  override undo(): void {
    this.isTimed = false;
    super.undo();
  }

  /** Sum of the days on which each crew is back for the last time. */
  private backDays(): number {
    let sum = 0;
    for (let crew = 0; crew < this.crews; crew++) {
      const { back } = this.timing.tripTimes[crew]!;
      const { trips_count } = this.flat[crew]!;
      if (trips_count > 0) sum += Math.max(0, back[trips_count - 1]!);
    }
    return sum;
  }

  private handedOver(job: number, day: number): number {
    const { value, horizon, weight, leftOut } = this.numbers;
    if (day >= horizon) return leftOut[job]!;
    return value === null ? weight[job]! * day : value[job * horizon + day]!;
  }

  private flatten(): void {
    for (let crew = 0; crew < this.crews; crew++) {
      const slot = this.slotOf[crew]!;
      const one = this.flat[crew]!;
      const trips = this.tripsIn[slot]!;
      one.trips_count = trips;
      let at = slot * this.tripRoom * tripFields;
      for (let trip = 0; trip < trips; trip++, at += tripFields) {
        one.ends[trip] = this.tripsOf[at + tripFields + ofTrip.first]!;
        one.notBefore![trip] = this.leavesNotBefore(crew, at);
      }
      const zero = slot * this.stopRoom * stopFields;
      for (let i = 0, count = this.tripsOf[at + ofTrip.first]!; i < count; i++)
        one.stops[i] = this.stops[zero + i * stopFields]! - 1;
    }
  }

  private keepFloors(): void {
    const { timing, tripsOf } = this;
    for (let crew = 0; crew < this.crews; crew++) {
      const slot = this.slotOf[crew]!;
      const { leaves, waitsFor, isMade } = timing.tripTimes[crew]!;
      const { before, dayOf } = this.numbers.byCrew[crew]!;
      let from = -1;
      let at = slot * this.tripRoom * tripFields;
      for (let trip = 0, trips = this.tripsIn[slot]!; trip < trips; trip++, at += tripFields) {
        const waited = isMade[trip] === 1 && waitsForOthers.includes(waitsFor[trip]!);
        const floor = waited ? before[Math.min(before.length - 1, leaves[trip]!)]! : 0;
        if (floor === tripsOf[at + ofTrip.floor] || floor >= dayOf.length) continue;
        tripsOf[at + ofTrip.floor] = floor;
        if (from < 0) from = trip;
      }
      if (from >= 0) this.retime(crew, from);
    }
  }
}
