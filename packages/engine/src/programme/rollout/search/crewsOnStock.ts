import { loadSlack_kg } from '../constants.ts';
import type { Retiming } from '../retiming.ts';
import type { CrewNumbers, OneCrew } from './crewNumbers.ts';
import { ofStop, ofTrip, stopFields, tripFields } from './crewSlots.ts';
import { CrewsByWaiting } from './crewsByWaiting.ts';
import type { Draws } from './draws.ts';

/**
 * Crews that share nothing but stock that comes to their stores: trips ask for it in the order they are ready, as
 * docs/methods/rollout.md says. All are timed together after each change; a place is priced with the day its goods would be there.
 */
export class CrewsOnStock extends CrewsByWaiting {
  private readonly goods: number;
  private readonly storeOf: Int32Array;
  /** Needs of job j: entries needAt[j] to before needAt[j + 1]. */
  private readonly needAt: Int32Array;
  private readonly needGoods: Int32Array;
  private readonly needCount: Float64Array;
  /** What comes: by store × goods, days in order and how much has come by then. */
  private readonly comesOn: readonly Float64Array[];
  private readonly comesTotal: readonly Float64Array[];
  private readonly asked: Float64Array;
  private readonly at: Int32Array;
  private readonly wanted: Float64Array;
  /** What trips asked for up to each day: by store × goods. */
  private readonly askedBy: readonly Float64Array[];
  private readonly nextTrip: Int32Array;
  private readonly nextReady: Float64Array;
  /** The day on which the next trip of each crew asks. */
  private readonly nextAsks: Float64Array;
  /** Did times of a crew change as all were timed? */
  private readonly isChanged: Uint8Array;
  /** Until when the next trip of each crew is held back; 0: it is not. */
  private readonly heldUntil: Float64Array;
  private exact = 0;

  constructor(numbers: CrewNumbers, blink: number, draws: Draws, { problem, stock }: Retiming) {
    super(numbers, blink, draws);
    this.goods = problem.goods.length;
    this.storeOf = Int32Array.from(problem.crews, ({ store }) => store);
    const needs = problem.jobs.map((job) =>
      job.needs.flatMap((count, goods) => (count > loadSlack_kg ? [{ goods, count }] : [])),
    );
    this.needAt = new Int32Array(numbers.jobs + 2);
    for (let job = 1; job <= numbers.jobs; job++) this.needAt[job + 1] = this.needAt[job]! + needs[job - 1]!.length;
    this.needGoods = Int32Array.from(needs.flat(), ({ goods }) => goods);
    this.needCount = Float64Array.from(needs.flat(), ({ count }) => count);
    this.comesOn = stock.map(({ day }) => day.slice());
    this.comesTotal = stock.map(({ total }) => total.slice());
    this.asked = new Float64Array(stock.length);
    this.at = new Int32Array(stock.length);
    this.wanted = new Float64Array(this.goods);
    this.askedBy = stock.map(() => new Float64Array(numbers.horizon + 1));
    this.nextTrip = new Int32Array(this.crews);
    this.nextReady = new Float64Array(this.crews);
    this.nextAsks = new Float64Array(this.crews);
    this.isChanged = new Uint8Array(this.crews);
    this.heldUntil = new Float64Array(this.crews);
  }

  override removed(): void {
    super.removed();
    for (const one of this.askedBy) one.fill(0);
    this.timeAll(true);
    for (const one of this.askedBy) for (let day = 1; day < one.length; day++) one[day] = one[day]! + one[day - 1]!;
  }

  override cost(): number {
    this.timeAll(false);
    return this.exact;
  }

  protected override insertAt(job: number, crew: number, index: number, place: number, isNew: boolean): void {
    super.insertAt(job, crew, index, place, isNew);
    const t = (this.slotOf[crew]! * this.tripRoom + index) * tripFields;
    this.note(job, this.storeOf[crew]!, this.dayOfStart(this.numbers.byCrew[crew]!, this.tripsOf[t + ofTrip.ready]!));
  }

  /** The working day from which what a job needs besides is at its crew's store, asked for on `day`. */
  protected override stockedFrom(one: OneCrew, crew: number, job: number, day: number): number {
    const { numbers } = this;
    const zero = this.storeOf[crew]! * this.goods;
    let from = 0;
    for (let i = this.needAt[job]!, to = this.needAt[job + 1]!; i < to; i++) {
      const stock = zero + this.needGoods[i]!;
      const wanted = this.askedBy[stock]![Math.min(day, numbers.horizon)]! + this.needCount[i]! - loadSlack_kg;
      const totals = this.comesTotal[stock]!;
      let at = 0;
      while (at < totals.length && totals[at]! < wanted) at++;
      if (at >= totals.length) return Number.POSITIVE_INFINITY;
      const came = this.comesOn[stock]![at]!;
      if (came > from) from = came;
    }
    return from <= day ? 0 : one.before[Math.min(from, numbers.horizon)]!;
  }

  private note(job: number, store: number, day: number): void {
    for (let i = this.needAt[job]!, to = this.needAt[job + 1]!; i < to; i++) {
      const askedBy = this.askedBy[store * this.goods + this.needGoods[i]!]!;
      const count = this.needCount[i]!;
      for (let d = day; d < askedBy.length; d++) askedBy[d] = askedBy[d]! + count;
    }
  }

  /** Times all trips in the order they ask; `isNoted`: what they ask for is noted by its day. */
  private timeAll(isNoted: boolean): void {
    const { numbers, nextTrip, nextReady, nextAsks } = this;
    this.asked.fill(0);
    this.at.fill(0);
    nextTrip.fill(0);
    this.heldUntil.fill(0);
    for (let crew = 0; crew < this.crews; crew++) {
      nextReady[crew] = numbers.byCrew[crew]!.from;
      nextAsks[crew] = this.asksOn(crew);
    }
    let lost = 0;
    for (;;) {
      let crew = -1;
      let soonest = Number.POSITIVE_INFINITY;
      for (let other = 0; other < this.crews; other++)
        if (nextAsks[other]! < soonest) {
          crew = other;
          soonest = nextAsks[other]!;
        }
      if (crew < 0) break;
      lost += this.timeNext(crew, soonest, isNoted);
      nextAsks[crew] = this.asksOn(crew);
    }
    let sum = this.outCost + lost;
    for (let crew = 0; crew < this.crews; crew++) {
      const slot = this.slotOf[crew]!;
      this.readyEnd[slot] = nextReady[crew]!;
      if (this.isChanged[crew] === 1) this.summed(slot, slot * this.tripRoom * tripFields, this.tripsIn[slot]!);
      this.isChanged[crew] = 0;
      sum += this.slotCost[slot]!;
    }
    this.exact = sum;
  }

  /** The day on which the next trip of a crew asks for its goods; Infinity where there is none. */
  private asksOn(crew: number): number {
    const slot = this.slotOf[crew]!;
    if (this.nextTrip[crew]! >= this.tripsIn[slot]!) return Number.POSITIVE_INFINITY;
    return this.dayOfStart(this.numbers.byCrew[crew]!, this.asks(crew, slot));
  }

  /** When it asks, on the crew's own line of working days. */
  private asks(crew: number, slot: number): number {
    const t = (slot * this.tripRoom + this.nextTrip[crew]!) * tripFields;
    const earliest = this.notBefore[this.tripsOf[t + ofTrip.id]!]!;
    const ready = Math.max(this.nextReady[crew]!, this.heldUntil[crew]!);
    if (earliest <= 0) return ready;
    const { before } = this.numbers.byCrew[crew]!;
    return Math.max(ready, before[Math.min(Math.ceil(earliest), this.numbers.horizon)]!);
  }

  /** Times the next trip of a crew, and gives what is lost where its goods never come. One that is held back asks again on the day until which it is. */
  private timeNext(crew: number, day: number, isNoted: boolean): number {
    const { numbers, tripsOf } = this;
    const one = numbers.byCrew[crew]!;
    let slot = this.slotOf[crew]!;
    const asks = this.asks(crew, slot);
    let t = (slot * this.tripRoom + this.nextTrip[crew]!) * tripFields;
    const stocked = this.stockedOn(crew, slot, t);
    const isNever = stocked === Number.POSITIVE_INFINITY;
    const floor = stocked > day && !isNever ? one.before[Math.min(stocked, numbers.horizon)]! : 0;
    const start = Math.max(asks, floor);
    const held = this.heldUntil[crew]!;
    const isTimed =
      tripsOf[t + ofTrip.isStale] === 0 &&
      (held > 0 && start === held ? tripsOf[t + ofTrip.held] === held : tripsOf[t + ofTrip.from] === start);
    if (!isTimed) {
      t += this.inOwnSlot(crew, slot);
      slot = this.slotOf[crew]!;
      this.timed(one, crew, slot, t, start);
    }
    if (!isNever && tripsOf[t + ofTrip.held]! > start) {
      this.heldUntil[crew] = tripsOf[t + ofTrip.held]!;
      return 0;
    }
    const ready = this.nextReady[crew]!;
    const idle = tripsOf[t + ofTrip.leaves]! - ready;
    if (
      tripsOf[t + ofTrip.ready] !== ready ||
      tripsOf[t + ofTrip.floor] !== floor ||
      tripsOf[t + ofTrip.asks] !== held ||
      tripsOf[t + ofTrip.idle] !== idle
    ) {
      t += this.inOwnSlot(crew, slot);
      slot = this.slotOf[crew]!;
      tripsOf[t + ofTrip.ready] = ready;
      tripsOf[t + ofTrip.floor] = floor;
      tripsOf[t + ofTrip.asks] = held;
      tripsOf[t + ofTrip.idle] = idle;
    }
    this.nextTrip[crew] = this.nextTrip[crew]! + 1;
    this.heldUntil[crew] = 0;
    if (isNever) return this.lostOn(slot, t);
    this.take(crew, isNoted ? Math.min(day, numbers.horizon) : -1);
    this.nextReady[crew] = this.readyAfter(tripsOf[t + ofTrip.leaves]! + tripsOf[t + ofTrip.back]!, one.turnaround);
    return 0;
  }

  /** Work on a crew goes on in its slot for this try; how far its records moved. */
  private inOwnSlot(crew: number, slot: number): number {
    this.touch(crew);
    this.isChanged[crew] = 1;
    return (this.slotOf[crew]! - slot) * this.tripRoom * tripFields;
  }

  /** The day on which all goods of a trip would be there; Infinity where they never are. */
  private stockedOn(crew: number, slot: number, t: number): number {
    const { wanted, stops, tripsOf, asked, goods } = this;
    wanted.fill(0);
    const zero = slot * this.stopRoom * stopFields;
    const end = zero + tripsOf[t + tripFields + ofTrip.first]! * stopFields;
    for (let stop = zero + tripsOf[t + ofTrip.first]! * stopFields; stop < end; stop += stopFields) {
      const job = stops[stop]!;
      for (let i = this.needAt[job]!, to = this.needAt[job + 1]!; i < to; i++)
        wanted[this.needGoods[i]!]! += this.needCount[i]!;
    }
    const store = this.storeOf[crew]! * goods;
    let from = 0;
    for (let one = 0; one < goods; one++) {
      if (wanted[one]! <= loadSlack_kg) continue;
      const totals = this.comesTotal[store + one]!;
      const whole = asked[store + one]! + wanted[one]! - loadSlack_kg;
      let at = this.at[store + one]!;
      while (at < totals.length && totals[at]! < whole) at++;
      if (at >= totals.length) return Number.POSITIVE_INFINITY;
      from = Math.max(from, this.comesOn[store + one]![at]!);
    }
    return from;
  }

  /** What `stockedOn` looked at is the trip's own from now on; noted on `day`, −1: not. */
  private take(crew: number, day: number): void {
    const { wanted, asked, goods } = this;
    const store = this.storeOf[crew]! * goods;
    for (let one = 0; one < goods; one++) {
      if (wanted[one]! <= loadSlack_kg) continue;
      const totals = this.comesTotal[store + one]!;
      asked[store + one]! += wanted[one]!;
      const whole = asked[store + one]! - loadSlack_kg;
      while (totals[this.at[store + one]!]! < whole) this.at[store + one]!++;
      if (day >= 0) this.askedBy[store + one]![day]! += wanted[one]!;
    }
  }

  /** Jobs of a trip whose goods never come. */
  private lostOn(slot: number, t: number): number {
    const { stops, tripsOf, numbers } = this;
    const zero = slot * this.stopRoom * stopFields;
    const end = zero + tripsOf[t + tripFields + ofTrip.first]! * stopFields;
    let lost = -tripsOf[t + ofTrip.value]!;
    for (let stop = zero + tripsOf[t + ofTrip.first]! * stopFields; stop < end; stop += stopFields)
      lost += numbers.leftOut[stops[stop + ofStop.job]!]!;
    return lost;
  }
}
