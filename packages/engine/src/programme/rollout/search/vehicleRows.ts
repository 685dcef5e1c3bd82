import type { Draws } from './draws.ts';
import { nearestJobs } from './nearestJobs.ts';
import { out, RouteState } from './routeState.ts';

/**
 * Vehicles that go out several times, each a row of stops, 0 a b 0 c 0: a base before, between and after its trips, 0 alone while it has
 * none. A row that changes is remembered as it was, so that it can be taken back. What a place allows stands in the classes made of this.
 */
export abstract class VehicleRows extends RouteState {
  readonly jobs: number;
  readonly tripOf: Int32Array;
  readonly tripSize: Int32Array;
  readonly near: Uint16Array;
  readonly nearCount: number;

  protected readonly stops: number;
  /** Places there are for one vehicle: every job a trip of its own. */
  protected readonly row: number;
  protected readonly draws: Draws;
  /** Vehicles' rows of stops one after the other, how long each is, and where in them each job is. */
  protected readonly sequence: Int32Array;
  protected readonly length: Int32Array;
  protected readonly placeOf: Int32Array;

  protected pricedJob = 0;
  protected pricedAt = 0;
  protected pricedVehicle = -1;
  /** Is it a trip of its own? A base follows the job then. */
  protected pricedTrip = false;

  private readonly costs: Float64Array;
  /** What a job costs that is out. */
  private readonly outCost: number;
  private readonly costOf: Float64Array;
  private readonly tripsOf: Int32Array;
  private total = 0;
  private outTotal: number;
  private placeless = 0;
  private jobsIn = 0;
  private tripsIn = 0;

  private readonly touched: Int32Array;
  private readonly isTouched: Uint8Array;
  private touchedCount = 0;
  private readonly before: Int32Array;
  private readonly beforeLength: Int32Array;
  private readonly best: Int32Array;
  private readonly bestLength: Int32Array;

  // long: an array for each thing that is kept
  constructor(costs: Float64Array, stops: number, vehicles: number, draws: Draws) {
    super();
    if (costs.length !== stops * stops) throw new Error('a cost from every stop to every stop, base first');
    if (!(vehicles >= 1)) throw new Error('at least one vehicle');
    this.costs = costs;
    this.stops = stops;
    this.jobs = stops - 1;
    this.row = 2 * stops + 1;
    this.draws = draws;
    let longest = 0;
    for (const cost of costs) if (cost < Number.POSITIVE_INFINITY) longest = Math.max(longest, cost);
    // No plan goes more than two ways a job.
    this.outCost = 2 * this.jobs * longest + 1;
    this.outTotal = this.jobs * this.outCost;
    const places = vehicles * this.row;
    this.tripOf = new Int32Array(stops).fill(out);
    this.tripSize = new Int32Array(vehicles * stops);
    this.nearCount = Math.max(0, Math.min(this.jobs - 1, 1000));
    this.near = nearestJobs(Float32Array.from(costs), stops, this.nearCount);
    this.sequence = new Int32Array(places);
    this.length = new Int32Array(vehicles).fill(1);
    this.placeOf = new Int32Array(stops);
    this.costOf = new Float64Array(vehicles);
    this.tripsOf = new Int32Array(vehicles);
    this.touched = new Int32Array(vehicles);
    this.isTouched = new Uint8Array(vehicles);
    this.before = new Int32Array(places);
    this.beforeLength = new Int32Array(vehicles);
    this.best = new Int32Array(places);
    this.bestLength = new Int32Array(vehicles).fill(1);
  }

  /** What must be known anew of a vehicle whose row changed; tells `counted`, and sets where each job is, its trip and the trips' sizes. */
  protected abstract retime(vehicle: number): void;

  meanTripSize(): number {
    return this.tripsIn > 0 ? this.jobsIn / this.tripsIn : 0;
  }

  cost(): number {
    return this.total + this.outTotal;
  }

  /** A way round by one more stop is never shorter; jobs that found no place stay out. */
  override atLeast(): number {
    return this.total + this.placeless;
  }

  /** The mean cost from a job to the five nearest. */
  override costScale(): number {
    const { near, nearCount, stops, costs } = this;
    const nearest = Math.min(5, nearCount);
    let sum = 0;
    for (let job = 1; job < stops; job++)
      for (let i = 0; i < nearest; i++) sum += costs[job * stops + near[job * nearCount + i]!]!;
    return nearest > 0 ? sum / (nearest * this.jobs) : 0;
  }

  begin(): void {
    for (let i = 0; i < this.touchedCount; i++) this.isTouched[this.touched[i]!] = 0;
    this.touchedCount = 0;
    this.placeless = 0;
  }

  removeString(
    job: number,
    length: number,
    passedOver: number,
    draws: Draws,
    taken: Int32Array,
    count: number,
  ): number {
    const { sequence, placeOf, tripOf } = this;
    const trip = tripOf[job]!;
    const vehicle = Math.floor(trip / this.stops);
    this.touch(vehicle);
    const whole = length + passedOver;
    const place = placeOf[job]!;
    let first = place;
    while (place - first < whole - 1 && sequence[first - 1] !== 0) first--;
    let last = place;
    while (last - place < whole - 1 && sequence[last + 1] !== 0) last++;
    const start = first + draws.below(last - first - whole + 2);
    const stays = passedOver > 0 ? start + 1 + draws.below(length - 1) : start + whole;
    let to = start;
    const end = vehicle * this.row + this.length[vehicle]!;
    for (let from = start; from < end; from++) {
      const stop = sequence[from]!;
      if (from < start + whole && (from < stays || from >= stays + passedOver)) {
        taken[count++] = stop;
        this.takenOut(stop);
        this.tripSize[trip] = this.tripSize[trip]! - 1;
      } else {
        sequence[to] = stop;
        if (stop !== 0) placeOf[stop] = to;
        to++;
      }
    }
    this.length[vehicle] = this.length[vehicle]! - length;
    return count;
  }

  removed(): void {
    for (let i = 0; i < this.touchedCount; i++) {
      this.close(this.touched[i]!);
      this.retime(this.touched[i]!);
    }
  }

  insertPriced(): void {
    const { sequence, pricedVehicle, pricedAt, pricedJob, length, row } = this;
    this.touch(pricedVehicle);
    const more = this.pricedTrip ? 2 : 1;
    const end = pricedVehicle * row + length[pricedVehicle]!;
    for (let place = end - 1; place > pricedAt; place--) sequence[place + more] = sequence[place]!;
    sequence[pricedAt + 1] = pricedJob;
    if (more === 2) sequence[pricedAt + 2] = 0;
    length[pricedVehicle] = length[pricedVehicle]! + more;
    this.outTotal -= this.outCost;
    this.jobsIn++;
    this.retime(pricedVehicle);
  }

  undo(): void {
    for (let i = 0; i < this.touchedCount; i++) this.emptied(this.touched[i]!);
    for (let i = 0; i < this.touchedCount; i++)
      this.filled(this.touched[i]!, this.before, this.beforeLength[this.touched[i]!]!);
    this.begin();
  }

  saveBest(): void {
    this.best.set(this.sequence);
    this.bestLength.set(this.length);
    this.total = this.costOf.reduce((sum, cost) => sum + cost, 0);
  }

  restoreBest(): void {
    for (let vehicle = 0; vehicle < this.length.length; vehicle++) this.emptied(vehicle);
    for (let vehicle = 0; vehicle < this.length.length; vehicle++)
      this.filled(vehicle, this.best, this.bestLength[vehicle]!);
    this.begin();
    this.total = this.costOf.reduce((sum, cost) => sum + cost, 0);
  }

  /** The plan as lists: of each vehicle its trips in their order, of each trip its jobs. */
  vehicles(): readonly (readonly (readonly number[])[])[] {
    return Array.from(this.length, (length, vehicle) => {
      const trips: number[][] = [];
      for (let i = 0; i < length - 1; i++) {
        const stop = this.sequence[vehicle * this.row + i]!;
        if (stop === 0) trips.push([]);
        else trips.at(-1)!.push(stop);
      }
      return trips;
    });
  }

  /** A vehicle's row costs so much now and has so many trips. */
  protected counted(vehicle: number, cost: number, trips: number): void {
    this.total += cost - this.costOf[vehicle]!;
    this.costOf[vehicle] = cost;
    this.tripsIn += trips - this.tripsOf[vehicle]!;
    this.tripsOf[vehicle] = trips;
  }

  /** A job found no place in this try. */
  protected noPlace(): void {
    this.placeless += this.outCost;
  }

  /** Takes bases out that follow a base: trips that have no job any more. */
  private close(vehicle: number): void {
    const { sequence } = this;
    const from = vehicle * this.row;
    let to = from + 1;
    for (let place = from + 1; place < from + this.length[vehicle]!; place++)
      if (sequence[place] !== 0 || sequence[to - 1] !== 0) sequence[to++] = sequence[place]!;
    this.length[vehicle] = to - from;
  }

  private touch(vehicle: number): void {
    if (this.isTouched[vehicle] === 1) return;
    this.isTouched[vehicle] = 1;
    this.touched[this.touchedCount++] = vehicle;
    const from = vehicle * this.row;
    const end = from + this.length[vehicle]!;
    for (let place = from; place < end; place++) this.before[place] = this.sequence[place]!;
    this.beforeLength[vehicle] = this.length[vehicle]!;
  }

  private takenOut(job: number): void {
    this.tripOf[job] = out;
    this.outTotal += this.outCost;
    this.jobsIn--;
  }

  private emptied(vehicle: number): void {
    const from = vehicle * this.row;
    for (let place = from + 1; place < from + this.length[vehicle]!; place++)
      if (this.sequence[place] !== 0) this.takenOut(this.sequence[place]!);
  }

  private filled(vehicle: number, rows: Int32Array, length: number): void {
    const from = vehicle * this.row;
    for (let place = from; place < from + length; place++) {
      const stop = rows[place]!;
      this.sequence[place] = stop;
      if (stop === 0) continue;
      this.outTotal -= this.outCost;
      this.jobsIn++;
    }
    this.length[vehicle] = length;
    this.retime(vehicle);
  }
}
