import type { Draws } from './draws.ts';
import { nearestJobs } from './nearestJobs.ts';
import { out, RouteState } from './routeState.ts';
import { turned } from './stopChain.ts';

/** Jobs for vehicles that go out several times. Entry 0 is the base: when vehicles are there first, by when they must be back, how long loading takes. */
export interface TripsInTurnFacts {
  /** Cost from i to j at i × stops + j. */
  readonly cost_ratio: Float64Array;
  /** Time from i to j at i × stops + j, in one unit with the windows. */
  readonly time_ratio: Float64Array;
  /** What each job takes of a trip's load; whole numbers. */
  readonly demand_amount: Int32Array;
  readonly capacity_amount: number;
  readonly vehicles_count: number;
  /** When work at each stop may begin at the earliest and at the latest, and how long it takes. */
  readonly opens_ratio: Float64Array;
  readonly closes_ratio: Float64Array;
  readonly service_ratio: Float64Array;
  /** When the goods of each job are at the base. */
  readonly release_ratio: Float64Array;
}

/**
 * A fleet of alike vehicles, each with trips one after the other from one base. A trip is loaded when its vehicle is back and the latest of
 * its goods is there; then windows hold as on any trip. Cost is the sum of the ways gone, waiting is free; a job that is out costs more
 * than all ways of any plan, so that a plan with fewer jobs out is always the better one.
 *
 * A vehicle is a row of stops, 0 a b 0 c 0: a base before, between and after its trips. What a place allows is known exactly: when each
 * stop is left at the earliest, and by when it must begin so that all after it, trips to come among them, are in time.
 */
export class TripsInTurn extends RouteState {
  readonly jobs: number;
  readonly tripOf: Int32Array;
  readonly tripSize: Int32Array;
  readonly near: Uint16Array;
  readonly nearCount: number;

  private readonly stops: number;
  private readonly row: number;
  private readonly facts: TripsInTurnFacts;
  private readonly costBack: Float64Array;
  private readonly timeBack: Float64Array;
  private readonly outCost: number;
  private readonly blink: number;
  private readonly draws: Draws;
  private blinkIn: number;

  /** Vehicles' rows of stops one after the other, and how long each is. */
  private readonly sequence: Int32Array;
  private readonly length: Int32Array;
  private readonly placeOf: Int32Array;
  /** At each place: cost to the next; left at the earliest; work there must begin by. At a base, leaving and loading of the trip after it. */
  private readonly onward: Float64Array;
  private readonly leaves: Float64Array;
  private readonly latest: Float64Array;
  /** At a base: when the vehicle is back there; load, latest goods and end of the trip after it. */
  private readonly back: Float64Array;
  private readonly load: Int32Array;
  private readonly ready: Float64Array;
  private readonly tripEnd: Int32Array;
  private readonly costOf: Float64Array;
  private readonly tripsOf: Int32Array;
  private total = 0;
  private outTotal = 0;
  private placeless = 0;
  private jobsIn = 0;
  private trips_count = 0;

  private pricedJob = 0;
  private pricedAt = 0;
  private pricedVehicle = -1;
  /** Is it a trip of its own? A base follows the job then. */
  private pricedTrip = false;

  private readonly touched: Int32Array;
  private readonly isTouched: Uint8Array;
  private touchedCount = 0;
  private readonly before: Int32Array;
  private readonly beforeLength: Int32Array;
  private readonly best: Int32Array;
  private readonly bestLength: Int32Array;

  // long: an array for each thing known of a place
  constructor(facts: TripsInTurnFacts, blink: number, draws: Draws) {
    super();
    const stops = facts.demand_amount.length;
    const vehicles = facts.vehicles_count;
    if (facts.cost_ratio.length !== stops * stops) throw new Error('a cost from every stop to every stop, base first');
    if (!(vehicles >= 1)) throw new Error('at least one vehicle');
    this.facts = facts;
    this.stops = stops;
    this.jobs = stops - 1;
    this.row = 2 * stops + 1;
    this.costBack = turned(facts.cost_ratio, stops);
    this.timeBack = turned(facts.time_ratio, stops);
    this.blink = blink;
    this.draws = draws;
    this.blinkIn = draws.missed(blink);
    let longest = 0;
    for (const cost of facts.cost_ratio) if (cost < Number.POSITIVE_INFINITY) longest = Math.max(longest, cost);
    // No plan goes more than two ways a job.
    this.outCost = 2 * this.jobs * longest + 1;
    const places = vehicles * this.row;
    this.tripOf = new Int32Array(stops).fill(out);
    this.tripSize = new Int32Array(vehicles * stops);
    this.nearCount = Math.max(0, Math.min(this.jobs - 1, 1000));
    this.near = nearestJobs(Float32Array.from(facts.cost_ratio), stops, this.nearCount);
    this.sequence = new Int32Array(places);
    this.length = new Int32Array(vehicles).fill(1);
    this.placeOf = new Int32Array(stops);
    this.onward = new Float64Array(places);
    this.leaves = new Float64Array(places);
    this.latest = new Float64Array(places);
    this.back = new Float64Array(places);
    this.load = new Int32Array(places);
    this.ready = new Float64Array(places);
    this.tripEnd = new Int32Array(places);
    this.costOf = new Float64Array(vehicles);
    this.tripsOf = new Int32Array(vehicles);
    this.touched = new Int32Array(vehicles);
    this.isTouched = new Uint8Array(vehicles);
    this.before = new Int32Array(places);
    this.beforeLength = new Int32Array(vehicles);
    this.best = new Int32Array(places);
    this.bestLength = new Int32Array(vehicles).fill(1);
    for (let vehicle = 0; vehicle < vehicles; vehicle++) this.retime(vehicle);
    this.outTotal = this.jobs * this.outCost;
  }

  meanTripSize(): number {
    return this.trips_count > 0 ? this.jobsIn / this.trips_count : 0;
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
    const { near, nearCount, stops } = this;
    const nearest = Math.min(5, nearCount);
    let sum = 0;
    for (let job = 1; job < stops; job++)
      for (let i = 0; i < nearest; i++) sum += this.facts.cost_ratio[job * stops + near[job * nearCount + i]!]!;
    return nearest > 0 ? sum / (nearest * this.jobs) : 0;
  }

  orderKey(order: string): Float64Array | null {
    const { cost_ratio, demand_amount, opens_ratio, closes_ratio, release_ratio } = this.facts;
    const by: Readonly<Record<string, (job: number) => number>> = {
      demand: (job) => -demand_amount[job]!,
      far: (job) => -cost_ratio[job]!,
      close: (job) => cost_ratio[job]!,
      // Goods that come late leave little of a window.
      shortWindow: (job) =>
        closes_ratio[job]! - Math.max(opens_ratio[job]!, release_ratio[job]! + this.facts.time_ratio[job]!),
      opensEarly: (job) => opens_ratio[job]!,
      closesLate: (job) => -closes_ratio[job]!,
    };
    const key = by[order];
    if (order !== 'random' && key === undefined) throw new Error(`no order ${order}`);
    return key === undefined ? null : Float64Array.from({ length: this.stops }, (_, job) => key(job));
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

  // long: the innermost loop of the search
  price(job: number): number {
    const { sequence, onward, leaves, latest, load, ready, tripEnd, timeBack, costBack, stops, row } = this;
    const { cost_ratio, time_ratio, opens_ratio, closes_ratio, service_ratio } = this.facts;
    const most = this.facts.capacity_amount - this.facts.demand_amount[job]!;
    const release = this.facts.release_ratio[job]!;
    const at = job * stops;
    const opens = opens_ratio[job]!;
    const closes = closes_ratio[job]!;
    const service = service_ratio[job]!;
    const loading = service_ratio[0]!;
    const homeFirst = Math.max(opens, release + loading + timeBack[at]!) + service + time_ratio[at]!;
    let best = Number.POSITIVE_INFINITY;
    this.pricedVehicle = -1;
    this.pricedJob = job;
    this.pricedTrip = false;
    let { blinkIn } = this;
    for (let vehicle = 0; vehicle < this.length.length; vehicle++) {
      const end = vehicle * row + this.length[vehicle]! - 1;
      let upTo = 0;
      for (let base = vehicle * row; base < end; base = upTo) {
        upTo = tripEnd[base]!;
        let leave = leaves[base]!;
        // Later in the row it is later still.
        if (leave > closes) break;
        if (load[base]! > most || latest[upTo]! < homeFirst || latest[base]! < release) continue;
        const waits = release > ready[base]! && release + loading > leave;
        if (waits) leave = release + loading;
        for (let place = base; place < upTo; place++) {
          const stop = sequence[place]!;
          const after = sequence[place + 1]!;
          if (place > base)
            leave = waits
              ? Math.max(leave + time_ratio[sequence[place - 1]! * stops + stop]!, opens_ratio[stop]!) +
                service_ratio[stop]!
              : leaves[place]!;
          if (leave > closes) break;
          const more = costBack[at + stop]! + cost_ratio[at + after]! - onward[place]!;
          if (more >= best) continue;
          const start = Math.max(leave + timeBack[at + stop]!, opens);
          if (start > closes || start + service + time_ratio[at + after]! > latest[place + 1]!) continue;
          if (blinkIn-- > 0) {
            best = more;
            this.pricedAt = place;
            this.pricedVehicle = vehicle;
          } else blinkIn = this.draws.missed(this.blink);
        }
      }
    }
    this.blinkIn = blinkIn;
    if (most >= 0 && costBack[at]! + cost_ratio[at]! < best) best = this.priceTrip(job, best);
    if (best === Number.POSITIVE_INFINITY) this.placeless += this.outCost;
    return best;
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

  /** A trip of its own between any two trips: they all cost the same, so one of those that are in time is drawn. */
  private priceTrip(job: number, best: number): number {
    const { latest, tripEnd, timeBack, costBack, stops, row, back } = this;
    const { cost_ratio, time_ratio, opens_ratio, closes_ratio, service_ratio, release_ratio } = this.facts;
    const at = job * stops;
    let found = 0;
    let hasEmpty = false;
    for (let vehicle = 0; vehicle < this.length.length; vehicle++) {
      if (this.length[vehicle] === 1 && hasEmpty) continue;
      if (this.length[vehicle] === 1) hasEmpty = true;
      const end = vehicle * row + this.length[vehicle]! - 1;
      for (let base = vehicle * row; ; base = tripEnd[base]!) {
        const leave = Math.max(back[base]!, release_ratio[job]!) + service_ratio[0]!;
        const start = Math.max(leave + timeBack[at]!, opens_ratio[job]!);
        if (start > closes_ratio[job]!) break;
        if (start + service_ratio[job]! + time_ratio[at]! <= latest[base]! && this.draws.below(++found) === 0) {
          this.pricedAt = base;
          this.pricedVehicle = vehicle;
          this.pricedTrip = true;
        }
        if (base === end) break;
      }
    }
    return found > 0 ? costBack[at]! + cost_ratio[at]! : best;
  }

  /** What must be known anew of a vehicle whose row changed. */
  // long: one pass from behind, one from the front
  private retime(vehicle: number): void {
    const { sequence, onward, leaves, latest, load, ready, tripEnd, back, placeOf, tripOf, tripSize, stops } = this;
    const { cost_ratio, time_ratio, opens_ratio, closes_ratio, service_ratio, release_ratio, demand_amount } =
      this.facts;
    const from = vehicle * this.row;
    const end = from + this.length[vehicle]! - 1;
    latest[end] = closes_ratio[0]!;
    onward[end] = 0;
    let by = closes_ratio[0]!;
    let upTo = end;
    let carried = 0;
    let goods = opens_ratio[0]!;
    let cost = 0;
    let after = 0;
    for (let place = end - 1; place >= from; place--) {
      const stop = sequence[place]!;
      const on = cost_ratio[stop * stops + after]!;
      onward[place] = on;
      cost += on;
      by = Math.min(by - time_ratio[stop * stops + after]! - service_ratio[stop]!, closes_ratio[stop]!);
      latest[place] = by;
      if (stop !== 0) {
        carried += demand_amount[stop]!;
        if (release_ratio[stop]! > goods) goods = release_ratio[stop]!;
      } else {
        load[place] = carried;
        ready[place] = goods;
        tripEnd[place] = upTo;
        upTo = place;
        carried = 0;
        goods = opens_ratio[0]!;
      }
      after = stop;
    }
    let leave = opens_ratio[0]!;
    let trip = vehicle * stops - 1;
    let size = 0;
    for (let place = from, last = 0; place <= end; place++) {
      const stop = sequence[place]!;
      if (place > from) leave += time_ratio[last * stops + stop]!;
      if (stop !== 0) {
        leave = Math.max(leave, opens_ratio[stop]!) + service_ratio[stop]!;
        placeOf[stop] = place;
        tripOf[stop] = trip;
        size++;
      } else {
        back[place] = leave;
        if (trip >= vehicle * stops) tripSize[trip] = size;
        size = 0;
        trip++;
        if (place < end) leave = Math.max(leave, ready[place]!) + service_ratio[0]!;
      }
      leaves[place] = leave;
      last = stop;
    }
    this.total += cost - this.costOf[vehicle]!;
    this.costOf[vehicle] = cost;
    const trips = trip - vehicle * stops;
    this.trips_count += trips - this.tripsOf[vehicle]!;
    this.tripsOf[vehicle] = trips;
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
