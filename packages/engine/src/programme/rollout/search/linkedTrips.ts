import type { Draws } from './draws.ts';
import { nearestJobs } from './nearestJobs.ts';
import { out, RouteState } from './routeState.ts';
import { chained, chainedMatrix, stopChain, turned } from './stopChain.ts';

/**
 * Trips kept as linked lists, every change noted so that it can be taken back. A trip begins and ends at the base, 0; so does the list:
 * what follows the last job is 0, and so is what comes before the first. What a trip is limited by stands in the classes made of this.
 */
export abstract class LinkedTrips extends RouteState {
  readonly jobs: number;
  readonly tripOf: Int32Array;
  readonly tripSize: Int32Array;
  readonly near: Uint16Array | Uint32Array;
  readonly nearCount: number;

  /** The number each job was given, by its number here. */
  protected readonly chain: Int32Array;
  /** Cost from i to j at i × width + j, as given. */
  private readonly given: Float64Array;
  /** The same by numbers here, to 24 bits (half the memory is nearly twice the pace), and from j to i at the same place of `backward`, one array where both are alike. */
  protected readonly forward: Float32Array;
  protected readonly backward: Float32Array;
  protected readonly width: number;
  protected readonly demand: Int32Array;
  protected readonly next: Int32Array;
  protected readonly previous: Int32Array;
  /** Cost from each job to what follows it. */
  protected readonly onward: Float64Array;
  protected readonly firstOf: Int32Array;
  protected readonly lastOf: Int32Array;
  /** Cost from the base to the first job of each trip. */
  protected readonly outward: Float64Array;
  protected readonly load: Int32Array;
  /** What a trip can carry, and what all trips carry above it. */
  protected readonly capacity: number;
  protected overload = 0;
  /** Trips with a number below this may have jobs; the last of them has none. */
  protected tripsUsed = 1;
  protected tripsFull = 0;
  protected jobsIn = 0;
  protected total = 0;

  protected pricedAfter = 0;
  protected pricedTrip = -1;
  protected pricedJob = 0;
  protected blinkIn: number;
  protected readonly blink: number;
  protected readonly draws: Draws;

  private readonly noteJob: Int32Array;
  private readonly noteAfter: Int32Array;
  private readonly noteTrip: Int32Array;
  private notes = 0;
  private totalBefore = 0;
  private readonly bestNext: Int32Array;
  private readonly bestFirst: Int32Array;

  constructor(cost: Float64Array, demand: Int32Array, capacity: number, blink: number, draws: Draws) {
    super();
    const width = demand.length;
    const jobs = width - 1;
    if (cost.length !== width * width) throw new Error('a cost from every stop to every stop, base first');
    this.jobs = jobs;
    this.width = width;
    this.chain = stopChain(cost, width);
    this.given = cost;
    this.forward = Float32Array.from(chainedMatrix(cost, this.chain));
    this.backward = turned(this.forward, width);
    this.demand = chained(demand, this.chain);
    this.capacity = capacity;
    this.blink = blink;
    this.draws = draws;
    this.blinkIn = draws.missed(blink);
    const trips = jobs + 1;
    this.tripOf = new Int32Array(width).fill(out);
    this.tripSize = new Int32Array(trips);
    this.next = new Int32Array(width);
    this.previous = new Int32Array(width);
    this.onward = new Float64Array(width);
    this.firstOf = new Int32Array(trips);
    this.lastOf = new Int32Array(trips);
    this.outward = new Float64Array(trips);
    this.load = new Int32Array(trips);
    this.noteJob = new Int32Array(12 * width);
    this.noteAfter = new Int32Array(12 * width);
    this.noteTrip = new Int32Array(12 * width);
    this.bestNext = new Int32Array(width);
    this.bestFirst = new Int32Array(trips);
    this.nearCount = Math.max(0, Math.min(jobs - 1, 1000));
    this.near = nearestJobs(this.forward, width, this.nearCount);
  }

  /** What must be known anew of a trip whose jobs changed. */
  protected abstract retime(trip: number): void;

  meanTripSize(): number {
    return this.tripsFull > 0 ? this.jobsIn / this.tripsFull : 0;
  }

  cost(): number {
    return this.total;
  }

  /** The mean cost from a job to the five nearest. */
  override costScale(): number {
    const { near, nearCount, forward, width } = this;
    const nearest = Math.min(5, nearCount);
    let sum = 0;
    for (let job = 1; job < width; job++)
      for (let i = 0; i < nearest; i++) sum += forward[job * width + near[job * nearCount + i]!]!;
    return nearest > 0 ? sum / (nearest * this.jobs) : 0;
  }

  /** A way round by one more stop is never shorter; where costs are rounded this is out by a rounding, which moves no choice but a close one. */
  override atLeast(): number {
    return this.total;
  }

  orderKey(order: string): Float64Array | null {
    const { width, forward, demand } = this;
    const by: Readonly<Record<string, (job: number) => number>> = {
      demand: (job) => -demand[job]!,
      far: (job) => -forward[job]!,
      close: (job) => forward[job]!,
    };
    const key = by[order];
    if (order !== 'random' && key === undefined) throw new Error(`no order ${order}`);
    return key === undefined ? null : Float64Array.from({ length: width }, (_, job) => key(job));
  }

  begin(): void {
    this.notes = 0;
    this.totalBefore = this.total;
  }

  removeString(
    job: number,
    length: number,
    passedOver: number,
    draws: Draws,
    taken: Int32Array,
    count: number,
  ): number {
    const { next, previous } = this;
    const trip = this.tripOf[job]!;
    const whole = length + passedOver;
    let before = 0;
    let start = job;
    while (before < whole - 1 && previous[start] !== 0) {
      start = previous[start]!;
      before++;
    }
    let after = 0;
    for (let at = job; after < whole - 1 && next[at] !== 0; at = next[at]!) after++;
    // The string begins between `before` jobs ahead of this one and where its end would run past the trip's.
    const least = Math.max(0, whole - 1 - after);
    let skip = before - (least + draws.below(before - least + 1));
    while (skip-- > 0) start = next[start]!;
    let stays = passedOver > 0 ? 1 + draws.below(length - 1) : -1;
    let left = length;
    let at = start;
    while (left > 0) {
      if (stays === 0) for (let i = 0; i < passedOver; i++) at = next[at]!;
      stays--;
      const following = next[at]!;
      this.unlink(at, trip);
      taken[count++] = at;
      at = following;
      left--;
    }
    this.retime(trip);
    return count;
  }

  removed(): void {}

  insertPriced(): void {
    this.link(this.pricedJob, this.pricedAfter, this.pricedTrip);
    this.retime(this.pricedTrip);
  }

  undo(): void {
    const { noteJob, noteAfter, noteTrip } = this;
    const from = this.notes;
    for (let i = from - 1; i >= 0; i--) {
      const after = noteAfter[i]!;
      if (after < 0) this.unlink(noteJob[i]!, noteTrip[i]!);
      else this.link(noteJob[i]!, after, noteTrip[i]!);
    }
    this.retimeNoted(from);
    this.notes = 0;
    this.total = this.totalBefore;
  }

  saveBest(): void {
    this.bestNext.set(this.next);
    this.bestFirst.set(this.firstOf);
    this.total = this.counted();
  }

  restoreBest(): void {
    this.begin();
    for (let trip = this.tripSize.length - 1; trip >= 0; trip--)
      while (this.firstOf[trip] !== 0) this.unlink(this.firstOf[trip]!, trip);
    for (let trip = 0; trip < this.bestFirst.length; trip++) {
      if (this.bestFirst[trip] === 0) continue;
      let after = 0;
      for (let job = this.bestFirst[trip]!; job !== 0; job = this.bestNext[job]!) {
        this.link(job, after, trip);
        after = job;
      }
      this.retime(trip);
    }
    this.begin();
    this.total = this.countedExactly();
  }

  /** The plan as lists: jobs of each trip in their order, trips without jobs left out. */
  trips(): readonly (readonly number[])[] {
    const found: number[][] = [];
    for (let trip = 0; trip < this.tripsUsed; trip++) {
      const one: number[] = [];
      for (let job = this.firstOf[trip]!; job !== 0; job = this.next[job]!) one.push(this.chain[job]!);
      if (one.length > 0) found.push(one);
    }
    return found;
  }

  /** A trip without jobs. */
  protected emptyTrip(): number {
    let trip = 0;
    while (this.firstOf[trip] !== 0) trip++;
    return trip;
  }

  /** Cost counted from nothing, so that sums that were added to and taken from do not drift. */
  private counted(): number {
    let sum = 0;
    for (let trip = 0; trip < this.tripsUsed; trip++) {
      if (this.tripSize[trip] === 0) continue;
      sum += this.outward[trip]!;
      for (let job = this.firstOf[trip]!; job !== 0; job = this.next[job]!) sum += this.onward[job]!;
    }
    return sum;
  }

  /** The same from the costs as they were given. */
  private countedExactly(): number {
    let sum = 0;
    for (const trip of this.trips()) {
      let from = 0;
      for (const stop of [...trip, 0]) {
        sum += this.given[from * this.width + stop]!;
        from = stop;
      }
    }
    return sum;
  }

  /** Undone in the order of the notes, a trip is retimed again only where notes of another stand between. */
  private retimeNoted(count: number): void {
    let last = -1;
    for (let i = 0; i < count; i++) {
      const trip = this.noteTrip[i]!;
      if (trip !== last) this.retime(trip);
      last = trip;
    }
  }

  private link(job: number, after: number, trip: number): void {
    const { next, previous, forward, width, onward, outward } = this;
    const following = after === 0 ? this.firstOf[trip]! : next[after]!;
    const there = forward[after * width + job]!;
    const on = forward[job * width + following]!;
    let saved = 0;
    if (after === 0) {
      if (following !== 0) saved = outward[trip]!;
      outward[trip] = there;
      this.firstOf[trip] = job;
    } else {
      saved = onward[after]!;
      onward[after] = there;
      next[after] = job;
    }
    if (following === 0) this.lastOf[trip] = job;
    else previous[following] = job;
    previous[job] = after;
    next[job] = following;
    onward[job] = on;
    this.tripOf[job] = trip;
    this.loadTo(trip, this.load[trip]! + this.demand[job]!);
    if (this.tripSize[trip] === 0) {
      this.tripsFull++;
      if (trip >= this.tripsUsed - 1) this.tripsUsed = trip + 2;
    }
    this.tripSize[trip] = this.tripSize[trip]! + 1;
    this.jobsIn++;
    this.total += there + on - saved;
    this.note(job, -1, trip);
  }

  private unlink(job: number, trip: number): void {
    const { next, previous, forward, width, onward, outward } = this;
    const before = previous[job]!;
    const following = next[job]!;
    const across = before === 0 && following === 0 ? 0 : forward[before * width + following]!;
    let saved = onward[job]!;
    if (before === 0) {
      saved += outward[trip]!;
      outward[trip] = across;
      this.firstOf[trip] = following;
    } else {
      saved += onward[before]!;
      onward[before] = across;
      next[before] = following;
    }
    if (following === 0) this.lastOf[trip] = before;
    else previous[following] = before;
    this.tripOf[job] = out;
    this.loadTo(trip, this.load[trip]! - this.demand[job]!);
    this.tripSize[trip] = this.tripSize[trip]! - 1;
    if (this.tripSize[trip] === 0) {
      this.tripsFull--;
      while (this.tripsUsed > 1 && this.tripSize[this.tripsUsed - 2] === 0) this.tripsUsed--;
    }
    this.jobsIn--;
    this.total += across - saved;
    this.note(job, before, trip);
  }

  private loadTo(trip: number, load: number): void {
    const { capacity } = this;
    const before = this.load[trip]!;
    if (before > capacity) this.overload -= before - capacity;
    if (load > capacity) this.overload += load - capacity;
    this.load[trip] = load;
  }

  private note(job: number, after: number, trip: number): void {
    const at = this.notes++;
    this.noteJob[at] = job;
    this.noteAfter[at] = after;
    this.noteTrip[at] = trip;
  }
}
