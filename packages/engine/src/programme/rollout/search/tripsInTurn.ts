import type { Draws } from './draws.ts';
import { turned } from './stopChain.ts';
import { VehicleRows } from './vehicleRows.ts';

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
export class TripsInTurn extends VehicleRows {
  private readonly facts: TripsInTurnFacts;
  private readonly costBack: Float64Array;
  private readonly timeBack: Float64Array;
  private readonly blink: number;
  private blinkIn: number;

  /** At each place: cost to the next; left at the earliest; work there must begin by. At a base, leaving and loading of the trip after it. */
  private readonly onward: Float64Array;
  private readonly leaves: Float64Array;
  private readonly latest: Float64Array;
  /** At a base: when the vehicle is back there; load, latest goods and end of the trip after it. */
  private readonly back: Float64Array;
  private readonly load: Int32Array;
  private readonly ready: Float64Array;
  private readonly tripEnd: Int32Array;

  constructor(facts: TripsInTurnFacts, blink: number, draws: Draws) {
    super(facts.cost_ratio, facts.demand_amount.length, facts.vehicles_count, draws);
    const places = this.sequence.length;
    this.facts = facts;
    this.costBack = turned(facts.cost_ratio, this.stops);
    this.timeBack = turned(facts.time_ratio, this.stops);
    this.blink = blink;
    this.blinkIn = draws.missed(blink);
    this.onward = new Float64Array(places);
    this.leaves = new Float64Array(places);
    this.latest = new Float64Array(places);
    this.back = new Float64Array(places);
    this.load = new Int32Array(places);
    this.ready = new Float64Array(places);
    this.tripEnd = new Int32Array(places);
    for (let vehicle = 0; vehicle < facts.vehicles_count; vehicle++) this.retime(vehicle);
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
    if (best === Number.POSITIVE_INFINITY) this.noPlace();
    return best;
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
  protected retime(vehicle: number): void {
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
    this.counted(vehicle, cost, trip - vehicle * stops);
  }
}
