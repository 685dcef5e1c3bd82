import type { CrewKind } from './crewKinds.ts';

/** A value is the one that was found before where it differs by no more than this [person-day]: rounding of a few sums. */
const sameValue_personDays = 1e-7;

/**
 * The best trips of one crew where a job pays a price for being served, as often as it is: a dynamic programme backwards over time,
 * room left on the trip, and place.
 */
export class TripProgramme {
  readonly kind: CrewKind;
  private readonly jobs: number;
  private readonly steps: number;
  private readonly width: number;
  /** `worth[(job * (steps + 1) + step) * width + left]`: the least from the end of the work at a job on, it included [person-day]. */
  private readonly worth: Float64Array;
  /** The least of a crew that can leave its base on a working day. */
  private readonly atBase: Float64Array;
  /** By room left: the least from the place looked at last. */
  private readonly least: Float64Array;

  constructor(kind: CrewKind) {
    this.kind = kind;
    this.steps = kind.days * kind.stepsOfDay;
    this.jobs = kind.takes.length;
    this.width = kind.room + 1;
    this.worth = new Float64Array(this.jobs * (this.steps + 1) * this.width);
    this.atBase = new Float64Array(kind.days + 1);
    this.least = new Float64Array(this.width);
  }

  /** Weight x first day of service less prices of the best trips: 0 or less [person-day]. */
  solve(prices: Float64Array): number {
    const { stepsOfDay, firstDay, days } = this.kind;
    this.worth.fill(Number.POSITIVE_INFINITY);
    this.atBase.fill(0);
    for (let step = this.steps; step > firstDay * stepsOfDay; step--) {
      for (let job = 0; job < this.jobs; job++) this.endAt(job, step, prices[job]!);
      const before = step - 1;
      if (before % stepsOfDay === 0) this.leaveOn(before / stepsOfDay);
    }
    return firstDay < days ? this.atBase[firstDay]! : 0;
  }

  /** Adds how often the best trips found last serve each job, times so many crews. */
  addVisits(visits: Float64Array): void {
    const { crews_count, firstDay, days, room, takes } = this.kind;
    let day = firstDay;
    while (day < days && this.atBase[day]! < 0) {
      let left = room;
      let at = this.nextStop(this.jobs, this.atStore(day), left, this.atBase[day]!);
      if (at === null) return;
      for (let stop: Stop | null = at; stop !== null; stop = at) {
        visits[stop.job] = visits[stop.job]! + crews_count;
        left -= takes[stop.job]!;
        this.goOn(stop.job, stop.step, left);
        const value = this.least[left]!;
        day = this.homeOn(stop.job, stop.step);
        at = value < this.atBase[day]! ? this.nextStop(stop.job, stop.step, left, value) : null;
      }
    }
  }

  /** The work at a job ends at a step: the least from there, for all room that may be left. */
  private endAt(job: number, step: number, price: number): void {
    const { fits, served, takes, room } = this.kind;
    const { width, worth, least } = this;
    const row = job * (this.steps + 1);
    const end = fits[row + step]!;
    if (end < 0 || takes[job]! > room) return;
    const at = (row + step) * width;
    if (end > step) {
      worth.copyWithin(at, (row + end) * width, (row + end + 1) * width);
      return;
    }
    const most = room - takes[job]!;
    this.goOn(job, step, most);
    const here = served[row + step]! - price;
    for (let left = 0; left <= most; left++) worth[at + left] = here + least[left]!;
  }

  /** The crew leaves its base at the start of a working day, or never. */
  private leaveOn(day: number): void {
    this.least.fill(0);
    this.toJobs(this.jobs, this.atStore(day), this.kind.room);
    this.atBase[day] = this.least[this.kind.room]!;
  }

  /** Into `least`: home, or on to the best of the other jobs. */
  private goOn(from: number, step: number, most: number): void {
    this.least.fill(this.atBase[this.homeOn(from, step)]!, 0, most + 1);
    this.toJobs(from, step, most);
  }

  private toJobs(from: number, step: number, most: number): void {
    const { takes, days, legs, stepsOfDay } = this.kind;
    const { width, worth, least, steps, jobs } = this;
    const day = Math.floor(step / stepsOfDay);
    if (day >= days) return;
    const to = legs.to[legs.tableOn[day]!]!;
    const row = ((step - day * stepsOfDay) * (jobs + 1) + from) * jobs;
    const changes = legs.changesOn[day]! * stepsOfDay;
    for (let job = 0; job < jobs; job++) {
      const taken = takes[job]!;
      if (taken > most) continue;
      let end = step + to[row + job]!;
      if (end > changes) end = this.waiting(from, job, day, end);
      if (end > steps) continue;
      const there = (job * (steps + 1) + end) * width - taken;
      for (let left = taken; left <= most; left++) {
        const value = worth[there + left]!;
        if (value < least[left]!) least[left] = value;
      }
    }
  }

  /** When the work ends where setting out on a later day, by other ways, ends it earlier. */
  private waiting(from: number, job: number, day: number, end: number): number {
    const { legs, stepsOfDay, days } = this.kind;
    let soonest = end;
    for (let on = legs.changesOn[day]!; on < days && on * stepsOfDay < soonest; on = legs.changesOn[on]!)
      soonest = Math.min(soonest, on * stepsOfDay + legs.to[legs.tableOn[on]!]![from * this.jobs + job]!);
    return soonest;
  }

  /** The working day on which the next trip can leave; `days` where none can. */
  private homeOn(from: number, step: number): number {
    const { legs, stepsOfDay, days } = this.kind;
    const day = Math.floor(step / stepsOfDay);
    if (day >= days) return days;
    let home = day + legs.home[legs.tableOn[day]!]![(step - day * stepsOfDay) * this.jobs + from]!;
    for (let on = legs.changesOn[day]!; on < days && on < home; on = legs.changesOn[on]!)
      home = Math.min(home, on + legs.home[legs.tableOn[on]!]![from]!);
    return Math.min(days, home);
  }

  /** When a crew that leaves its base on a working day is at its store. */
  private atStore(day: number): number {
    const { legs, stepsOfDay, days } = this.kind;
    let there = day * stepsOfDay + legs.toStore[legs.tableOn[day]!]!;
    for (let on = legs.changesOn[day]!; on < days && on * stepsOfDay < there; on = legs.changesOn[on]!)
      there = Math.min(there, on * stepsOfDay + legs.toStore[legs.tableOn[on]!]!);
    return there;
  }

  /** The stop from which on the least is so much. */
  private nextStop(from: number, step: number, left: number, value: number): Stop | null {
    const { takes, legs, days, stepsOfDay, fits } = this.kind;
    const day = Math.floor(step / stepsOfDay);
    if (day >= days) return null;
    const to = legs.to[legs.tableOn[day]!]!;
    const row = ((step - day * stepsOfDay) * (this.jobs + 1) + from) * this.jobs;
    for (let job = 0; job < this.jobs; job++) {
      const end = this.waiting(from, job, day, step + to[row + job]!);
      if (takes[job]! > left || end > this.steps) continue;
      const at = job * (this.steps + 1) + end;
      if (this.worth[at * this.width + left - takes[job]!]! <= value + sameValue_personDays)
        return { job, step: fits[at]! };
    }
    return null;
  }
}

interface Stop {
  readonly job: number;
  readonly step: number;
}
