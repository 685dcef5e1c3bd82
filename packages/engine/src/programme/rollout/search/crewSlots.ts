// long: the records of crews and all that changes them, each change beside its undoing
import type { CrewNumbers } from './crewNumbers.ts';
import type { Draws } from './draws.ts';
import { nearestJobs } from './nearestJobs.ts';
import { held, out, RouteState } from './routeState.ts';

/** A trip as the search is given it and gives it back; jobs from 1. */
export interface SearchTrip {
  readonly stops: readonly number[];
  readonly notBefore: number;
  readonly isLocked: boolean;
}

/**
 * What is kept of a stop: the job, and counted from the day the trip leaves, when the crew comes and when work on it ends; then the slopes of
 * it and all that follows on its trip.
 */
export const ofStop = { job: 0, comes: 1, ends: 2, slope: 3 } as const;
export const stopFields = 4;

/**
 * What is kept of a trip; days are working days of its crew. `back` counts from the day it leaves; `worth` is what its hand-overs cost
 * were it to leave on day 0 of a line without rest, `weight` what a day adds; `later`: slopes of it and all later trips of the crew;
 * `fixedIn` the period in which it goes the same whatever the day, -1: none; `extra`
 * is what loads too great for a leg cost; `floor` the day before which it cannot leave for what crews share, as it was when last timed;
 * `from` the day from which it was timed, `held` the later day to which it is held back so that it is not away too long, `asks` that day where it
 * asks only then (0: not held back); `sooner` and `after` the days by which it may leave sooner or later and its windows have no part in it;
 * `gapIn` how far on in the records the next trip is, itself or behind it, that waits for anything (-1: none).
 */
export const ofTrip = {
  ...{ id: 0, first: 1, ready: 2, leaves: 3, back: 4, kg: 5, litres: 6, idle: 7, value: 8, later: 9, waits: 10 },
  ...{ hasWindows: 11, isStale: 12, worth: 13, weight: 14, fixedIn: 15, extra: 16, floor: 17, from: 18, held: 19 },
  ...{ asks: 20, sooner: 21, after: 22, gapIn: 23 },
} as const;
export const tripFields = 24;

/**
 * Crews, each with its trips in order, each with its stops: flat arrays. Every crew has two slots; the first change of a try copies the
 * crew to its other slot and works there, so that taking back is going back to the slot before, its times and all.
 */
export abstract class CrewSlots extends RouteState {
  readonly jobs: number;
  readonly tripOf: Int32Array;
  readonly tripSize: Int32Array;
  readonly near: Uint16Array | Uint32Array;
  readonly nearCount: number;

  protected readonly numbers: CrewNumbers;
  protected readonly blink: number;
  protected readonly draws: Draws;
  protected readonly crews: number;
  /** Stops of slot s from entry s × stopRoom, trips from entry s × tripRoom. */
  protected readonly stopRoom: number;
  protected readonly tripRoom: number;
  /** The slot of each crew. */
  protected readonly slotOf: Int32Array;
  protected readonly tripsIn: Int32Array;

  /** Records of stops and of trips: see `ofStop` and `ofTrip`. */
  protected readonly stops: Float64Array;
  protected readonly tripsOf: Float64Array;

  /** By number of trip. */
  protected readonly crewOf: Int32Array;
  protected readonly notBefore: Float64Array;
  protected readonly isLocked: Uint8Array;

  /** Trips with an index below this may not be touched nor put back: by crew. */
  protected readonly firstFree: Int32Array;
  protected readonly changedFrom: Int32Array;
  protected outCost = 0;
  protected tripsUsed = 0;
  protected jobsIn = 0;

  private readonly free: Int32Array;
  private freeCount: number;
  private readonly freed: Int32Array;
  private freedCount = 0;
  private readonly touched: Int32Array;
  private touchedCount = 0;
  private readonly isTouched: Uint8Array;
  private readonly cameIn: Int32Array;
  private cameInCount = 0;
  private freeBefore = 0;
  private outBefore = 0;
  private tripsBefore = 0;
  private jobsBefore = 0;
  private readonly aside: { tripsOf: Float64Array; stops: Float64Array; trips: number; changedFrom: number };
  private readonly best: {
    readonly stop: Int32Array;
    readonly trip: Int32Array;
    readonly first: Int32Array;
    readonly notBefore: Float64Array;
    readonly floor: Float64Array;
    readonly tripsIn: Int32Array;
  };

  constructor(numbers: CrewNumbers, blink: number, draws: Draws) {
    super();
    const { jobs, crews } = numbers;
    this.numbers = numbers;
    this.blink = blink;
    this.draws = draws;
    this.jobs = jobs;
    this.crews = crews;
    const stopRoom = jobs + 2;
    const tripRoom = 2 * jobs + 4;
    this.stopRoom = stopRoom;
    this.tripRoom = tripRoom;
    const ids = 2 * jobs + 8 * crews + 8;
    this.tripOf = new Int32Array(jobs + 1).fill(out);
    this.tripSize = new Int32Array(ids);
    this.slotOf = Int32Array.from({ length: crews }, (_, crew) => 2 * crew);
    this.tripsIn = new Int32Array(2 * crews);
    this.stops = new Float64Array(2 * crews * stopRoom * stopFields);
    this.tripsOf = new Float64Array(2 * crews * tripRoom * tripFields);
    this.crewOf = new Int32Array(ids);
    this.notBefore = new Float64Array(ids);
    this.isLocked = new Uint8Array(ids);
    this.firstFree = new Int32Array(crews);
    this.changedFrom = new Int32Array(crews);
    this.free = Int32Array.from({ length: ids }, (_, at) => ids - 1 - at);
    this.freeCount = ids;
    this.freed = new Int32Array(ids);
    this.touched = new Int32Array(crews);
    this.isTouched = new Uint8Array(crews);
    this.cameIn = new Int32Array(jobs + 1);
    this.aside = {
      ...{ tripsOf: new Float64Array(tripRoom * tripFields), stops: new Float64Array(stopRoom * stopFields) },
      ...{ trips: 0, changedFrom: 0 },
    };
    this.best = {
      stop: new Int32Array(crews * stopRoom),
      trip: new Int32Array(crews * tripRoom),
      first: new Int32Array(crews * tripRoom),
      notBefore: new Float64Array(crews * tripRoom),
      floor: new Float64Array(crews * tripRoom),
      tripsIn: new Int32Array(crews),
    };
    this.nearCount = Math.max(0, Math.min(jobs - 1, 1000));
    this.near = nearestJobs(nearness(numbers), jobs + 1, this.nearCount);
    for (let job = 1; job <= jobs; job++) this.outCost += numbers.leftOut[job]!;
  }

  /** Times of a crew from a trip on, after its stops changed. */
  protected abstract retime(crew: number, fromTrip: number): void;

  meanTripSize(): number {
    return this.tripsUsed > 0 ? this.jobsIn / this.tripsUsed : 0;
  }

  /** Puts trips in, crew by crew; once, before the search. Locked ones are held. */
  load(trips: readonly (readonly SearchTrip[])[]): void {
    const { stops, tripsOf } = this;
    trips.forEach((some, crew) => {
      const slot = this.slotOf[crew]!;
      let stop = slot * this.stopRoom * stopFields;
      let at = slot * this.tripRoom * tripFields;
      let count = 0;
      let used = 0;
      for (const one of some) {
        if (one.stops.length === 0 && !one.isLocked) continue;
        const id = this.newTrip(crew, one.notBefore);
        this.isLocked[id] = one.isLocked ? 1 : 0;
        tripsOf[at + ofTrip.id] = id;
        tripsOf[at + ofTrip.first] = count;
        tripsOf[at + ofTrip.isStale] = 1;
        tripsOf[at + ofTrip.floor] = 0;
        at += tripFields;
        used++;
        if (one.isLocked) this.firstFree[crew] = used;
        for (const job of one.stops) {
          stops[stop] = job;
          stop += stopFields;
          count++;
          this.tripOf[job] = id;
          this.outCost -= this.numbers.leftOut[job]!;
        }
        this.tripSize[id] = one.stops.length;
        this.jobsIn += one.stops.length;
        this.tripsUsed++;
      }
      tripsOf[at + ofTrip.first] = count;
      this.tripsIn[slot] = used;
      some.slice(0, this.firstFree[crew]!).forEach((one) => {
        for (const job of one.stops) this.tripOf[job] = held;
      });
      this.retime(crew, 0);
    });
  }

  /** The plan as lists. */
  trips(): readonly (readonly SearchTrip[])[] {
    return Array.from(this.slotOf, (slot) =>
      Array.from({ length: this.tripsIn[slot]! }, (_, index) => {
        const at = (slot * this.tripRoom + index) * tripFields;
        const from = this.tripsOf[at + ofTrip.first]!;
        const to = this.tripsOf[at + tripFields + ofTrip.first]!;
        const id = this.tripsOf[at + ofTrip.id]!;
        return {
          stops: Array.from(
            { length: to - from },
            (_, i) => this.stops[(slot * this.stopRoom + from + i) * stopFields]!,
          ),
          notBefore: this.leavesNotBefore(slot >> 1, at),
          isLocked: this.isLocked[id] === 1,
        };
      }),
    );
  }

  /** The day before which a trip is not to leave: as it was given, or later, so that it is not away too long. */
  protected leavesNotBefore(crew: number, t: number): number {
    const earliest = this.notBefore[this.tripsOf[t + ofTrip.id]!]!;
    const asks = this.tripsOf[t + ofTrip.asks]!;
    return asks > 0 ? Math.max(earliest, this.numbers.byCrew[crew]!.dayOf[asks]!) : earliest;
  }

  begin(): void {
    for (let i = 0; i < this.freedCount; i++) this.free[this.freeCount++] = this.freed[i]!;
    this.freedCount = 0;
    for (let i = 0; i < this.touchedCount; i++) this.isTouched[this.touched[i]!] = 0;
    this.touchedCount = 0;
    this.cameInCount = 0;
    this.freeBefore = this.freeCount;
    this.outBefore = this.outCost;
    this.tripsBefore = this.tripsUsed;
    this.jobsBefore = this.jobsIn;
  }

  undo(): void {
    const { tripOf, tripsOf, stops, tripSize } = this;
    for (let i = 0; i < this.cameInCount; i++) tripOf[this.cameIn[i]!] = out;
    for (let i = this.freeBefore - 1; i >= this.freeCount; i--) tripSize[this.free[i]!] = 0;
    for (let i = 0; i < this.touchedCount; i++) {
      const crew = this.touched[i]!;
      const slot = this.slotOf[crew]! ^ 1;
      this.slotOf[crew] = slot;
      const end = (slot * this.tripRoom + this.tripsIn[slot]!) * tripFields;
      let at = (slot * this.tripRoom + this.firstFree[crew]!) * tripFields;
      let stop = (slot * this.stopRoom + tripsOf[at + ofTrip.first]!) * stopFields;
      for (; at < end; at += tripFields) {
        const id = tripsOf[at + ofTrip.id]!;
        const size = tripsOf[at + tripFields + ofTrip.first]! - tripsOf[at + ofTrip.first]!;
        tripSize[id] = size;
        for (let left = size; left > 0; left--, stop += stopFields) tripOf[stops[stop]!] = id;
      }
    }
    this.freeCount = this.freeBefore;
    this.freedCount = 0;
    this.outCost = this.outBefore;
    this.tripsUsed = this.tripsBefore;
    this.jobsIn = this.jobsBefore;
    this.begin();
  }

  // long: one walk along the string, called for every string of the search
  removeString(
    job: number,
    length: number,
    passedOver: number,
    draws: Draws,
    taken: Int32Array,
    count: number,
  ): number {
    const { stops, tripsOf } = this;
    const id = this.tripOf[job]!;
    const crew = this.crewOf[id]!;
    this.touch(crew);
    const slot = this.slotOf[crew]!;
    const zero = slot * this.stopRoom * stopFields;
    let index = this.firstFree[crew]!;
    let at = (slot * this.tripRoom + index) * tripFields;
    while (tripsOf[at + ofTrip.id] !== id) {
      at += tripFields;
      index++;
    }
    const from = tripsOf[at + ofTrip.first]!;
    const to = tripsOf[at + tripFields + ofTrip.first]!;
    let place = from;
    while (stops[zero + place * stopFields] !== job) place++;
    const whole = length + passedOver;
    const least = Math.max(from, place - whole + 1);
    const most = Math.min(place, to - whole);
    let read = least + draws.below(most - least + 1);
    let stays = passedOver > 0 ? 1 + draws.below(length - 1) : -1;
    let write = read;
    for (let left = length; left > 0; left--) {
      if (stays === 0)
        for (let i = 0; i < passedOver; i++) stops[zero + write++ * stopFields] = stops[zero + read++ * stopFields]!;
      stays--;
      const gone = stops[zero + read++ * stopFields]!;
      taken[count++] = gone;
      this.tripOf[gone] = out;
      this.outCost += this.numbers.leftOut[gone]!;
    }
    const trips = this.tripsIn[slot]!;
    const end = (slot * this.tripRoom + trips) * tripFields;
    stops.copyWithin(
      zero + write * stopFields,
      zero + read * stopFields,
      zero + tripsOf[end + ofTrip.first]! * stopFields,
    );
    tripsOf[at + ofTrip.isStale] = 1;
    for (let i = at + tripFields + ofTrip.first; i <= end + ofTrip.first; i += tripFields)
      tripsOf[i] = tripsOf[i]! - (read - write);
    if (index < this.changedFrom[crew]!) this.changedFrom[crew] = index;
    this.tripSize[id] = this.tripSize[id]! - length;
    this.jobsIn -= length;
    return count;
  }

  removed(): void {
    for (let i = 0; i < this.touchedCount; i++) {
      const crew = this.touched[i]!;
      this.dropEmpty(crew);
      this.retime(crew, this.changedFrom[crew]!);
    }
  }

  saveBest(): void {
    const { best } = this;
    for (let crew = 0; crew < this.crews; crew++) {
      const slot = this.slotOf[crew]!;
      const trips = this.tripsIn[slot]!;
      best.tripsIn[crew] = trips;
      let at = slot * this.tripRoom * tripFields;
      for (let i = 0, to = crew * this.tripRoom; i < trips; i++, at += tripFields, to++) {
        const id = this.tripsOf[at + ofTrip.id]!;
        best.trip[to] = id;
        best.first[to] = this.tripsOf[at + ofTrip.first]!;
        best.notBefore[to] = this.notBefore[id]!;
        best.floor[to] = this.tripsOf[at + ofTrip.floor]!;
      }
      const count = this.tripsOf[at + ofTrip.first]!;
      best.first[crew * this.tripRoom + trips] = count;
      for (
        let i = 0, stop = slot * this.stopRoom * stopFields, to = crew * this.stopRoom;
        i < count;
        i++, stop += stopFields
      )
        best.stop[to + i] = this.stops[stop]!;
    }
  }

  restoreBest(): void {
    const { best, numbers, stopRoom, tripRoom, tripsOf } = this;
    this.begin();
    for (let job = 1; job <= this.jobs; job++) if (this.tripOf[job] !== held) this.tripOf[job] = out;
    this.outCost = 0;
    this.tripsUsed = 0;
    this.jobsIn = 0;
    this.tripSize.fill(0);
    const used = new Uint8Array(this.tripSize.length);
    for (let crew = 0; crew < this.crews; crew++) {
      const slot = this.slotOf[crew]!;
      const trips = best.tripsIn[crew]!;
      this.tripsIn[slot] = trips;
      for (let index = 0; index <= trips; index++) {
        const at = (slot * tripRoom + index) * tripFields;
        const from = best.first[crew * tripRoom + index]!;
        tripsOf[at + ofTrip.first] = from;
        if (index === trips) continue;
        const to = best.first[crew * tripRoom + index + 1]!;
        const id = best.trip[crew * tripRoom + index]!;
        tripsOf[at + ofTrip.id] = id;
        tripsOf[at + ofTrip.isStale] = 1;
        tripsOf[at + ofTrip.floor] = best.floor[crew * tripRoom + index]!;
        used[id] = 1;
        this.notBefore[id] = best.notBefore[crew * tripRoom + index]!;
        this.crewOf[id] = crew;
        this.tripSize[id] = to - from;
        this.tripsUsed++;
        this.jobsIn += to - from;
        for (let i = from; i < to; i++) {
          const job = best.stop[crew * stopRoom + i]!;
          this.stops[(slot * stopRoom + i) * stopFields] = job;
          if (this.tripOf[job] !== held) this.tripOf[job] = id;
        }
      }
      this.retime(crew, 0);
    }
    for (let job = 1; job <= this.jobs; job++) if (this.tripOf[job] === out) this.outCost += numbers.leftOut[job]!;
    this.freeCount = 0;
    for (let id = used.length - 1; id >= 0; id--) if (used[id] === 0) this.free[this.freeCount++] = id;
    this.begin();
  }

  /** Work on a crew goes on in its other slot from the first change of a try on. */
  protected touch(crew: number): void {
    if (this.isTouched[crew] === 1) return;
    this.isTouched[crew] = 1;
    this.touched[this.touchedCount++] = crew;
    const old = this.slotOf[crew]!;
    const now = old ^ 1;
    this.slotOf[crew] = now;
    const trips = this.tripsIn[old]!;
    this.tripsIn[now] = trips;
    this.changedFrom[crew] = trips;
    const at = old * this.tripRoom * tripFields;
    const end = at + (trips + 1) * tripFields;
    this.tripsOf.copyWithin(now * this.tripRoom * tripFields, at, end);
    const stop = old * this.stopRoom * stopFields;
    const count = this.tripsOf[end - tripFields + ofTrip.first]!;
    this.stops.copyWithin(now * this.stopRoom * stopFields, stop, stop + count * stopFields);
  }

  /** Puts a job on a trip before the stop at `place`, or on a new trip before trip `index` where `isNew`. */
  protected insertAt(job: number, crew: number, index: number, place: number, isNew: boolean): void {
    this.touch(crew);
    const slot = this.slotOf[crew]!;
    const { tripsOf, stops } = this;
    const at = (slot * this.tripRoom + index) * tripFields;
    let end = (slot * this.tripRoom + this.tripsIn[slot]!) * tripFields;
    if (isNew) {
      tripsOf.copyWithin(at + tripFields, at, end + tripFields);
      end += tripFields;
      tripsOf[at + ofTrip.id] = this.newTrip(crew, 0);
      tripsOf[at + ofTrip.floor] = 0;
      this.tripsIn[slot] = this.tripsIn[slot]! + 1;
      this.tripsUsed++;
    }
    const stop = (slot * this.stopRoom + place) * stopFields;
    stops.copyWithin(stop + stopFields, stop, (slot * this.stopRoom + tripsOf[end + ofTrip.first]!) * stopFields);
    stops[stop] = job;
    tripsOf[at + ofTrip.isStale] = 1;
    for (let i = at + tripFields + ofTrip.first; i <= end + ofTrip.first; i += tripFields) tripsOf[i] = tripsOf[i]! + 1;
    const id = tripsOf[at + ofTrip.id]!;
    this.tripOf[job] = id;
    this.tripSize[id] = this.tripSize[id]! + 1;
    this.jobsIn++;
    this.outCost -= this.numbers.leftOut[job]!;
    this.cameIn[this.cameInCount++] = job;
    if (index < this.changedFrom[crew]!) this.changedFrom[crew] = index;
    this.retime(crew, index);
  }

  /** Remembers a crew as it is, so that `takeBack` undoes one insertion. */
  protected keepAside(crew: number): void {
    this.touch(crew);
    const slot = this.slotOf[crew]!;
    const { aside } = this;
    const at = slot * this.tripRoom * tripFields;
    const trips = this.tripsIn[slot]!;
    const end = at + (trips + 1) * tripFields;
    for (let i = at; i < end; i++) aside.tripsOf[i - at] = this.tripsOf[i]!;
    const stop = slot * this.stopRoom * stopFields;
    const count = this.tripsOf[end - tripFields + ofTrip.first]! * stopFields;
    for (let i = 0; i < count; i++) aside.stops[i] = this.stops[stop + i]!;
    aside.trips = trips;
    aside.changedFrom = this.changedFrom[crew]!;
  }

  /** Takes a job out again that `insertAt` put in since `keepAside`. */
  protected takeBack(job: number, crew: number, isNew: boolean): void {
    const slot = this.slotOf[crew]!;
    const { aside } = this;
    const at = slot * this.tripRoom * tripFields;
    const end = at + (aside.trips + 1) * tripFields;
    for (let i = at; i < end; i++) this.tripsOf[i] = aside.tripsOf[i - at]!;
    const stop = slot * this.stopRoom * stopFields;
    const count = this.tripsOf[end - tripFields + ofTrip.first]! * stopFields;
    for (let i = 0; i < count; i++) this.stops[stop + i] = aside.stops[i]!;
    this.tripsIn[slot] = aside.trips;
    this.changedFrom[crew] = aside.changedFrom;
    const id = this.tripOf[job]!;
    this.tripSize[id] = this.tripSize[id]! - 1;
    if (isNew) {
      this.freeCount++;
      this.tripsUsed--;
    }
    this.tripOf[job] = out;
    this.jobsIn--;
    this.outCost += this.numbers.leftOut[job]!;
    this.cameInCount--;
  }

  private newTrip(crew: number, notBefore: number): number {
    const id = this.free[--this.freeCount]!;
    this.crewOf[id] = crew;
    this.notBefore[id] = notBefore;
    this.isLocked[id] = 0;
    this.tripSize[id] = 0;
    return id;
  }

  /** Trips that lost all their stops go. */
  private dropEmpty(crew: number): void {
    const slot = this.slotOf[crew]!;
    const { tripsOf } = this;
    const zero = slot * this.tripRoom;
    const trips = this.tripsIn[slot]!;
    let kept = this.changedFrom[crew]!;
    for (let i = kept; i < trips; i++) {
      const at = (zero + i) * tripFields;
      if (tripsOf[at + ofTrip.first] === tripsOf[at + tripFields + ofTrip.first]) {
        this.freed[this.freedCount++] = tripsOf[at + ofTrip.id]!;
        this.tripsUsed--;
        continue;
      }
      if (kept < i) tripsOf.copyWithin((zero + kept) * tripFields, at, at + tripFields);
      kept++;
    }
    tripsOf[(zero + kept) * tripFields + ofTrip.first] = tripsOf[(zero + trips) * tripFields + ofTrip.first]!;
    this.tripsIn[slot] = kept;
  }
}

/** How far jobs are from each other, base first: days of the first crew's ways in the first period in which there are any. */
function nearness({ byCrew, jobs, nodes, nodeOf }: CrewNumbers): Float32Array {
  const width = jobs + 1;
  const found = new Float32Array(width * width);
  const one = byCrew[0];
  if (one === undefined) return found;
  for (let i = 0; i < width; i++)
    for (let j = 0; j < width; j++) {
      if (i === j) continue;
      const from = i === 0 ? one.store : nodeOf[i]!;
      const to = j === 0 ? one.store : nodeOf[j]!;
      let days = Number.POSITIVE_INFINITY;
      for (let period = 0; period < one.legs.length && !(days < Number.POSITIVE_INFINITY); period++)
        days = one.legs[period]!.onward[from * nodes + to]!;
      found[i * width + j] = days;
    }
  return found;
}
