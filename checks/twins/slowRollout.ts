// long: the whole walk stands in one place, so that it can be read beside docs/methods/rollout.md from top to bottom
import type {
  Drawn,
  Haul,
  LegTable,
  RolloutPlan,
  RolloutProblem,
} from '../../packages/engine/src/programme/rollout/index.ts';

/** A day and the hours of it that are used. A day wholly used is the next one unused. */
interface Moment {
  readonly day: number;
  readonly used_h: number;
}

type Failed = 'noWay' | 'beyondHorizon';
interface Gone {
  readonly arrives: Moment;
  readonly setsOut: number;
  readonly legs: LegTable | null;
}

const tiny = 1e-9;

/** What is told of a plan, in the form of `Outcome`, with what is broken as sorted lines. */
export interface SlowOutcome {
  readonly trips: readonly (readonly object[])[];
  readonly hauls: readonly object[];
  readonly sums: Readonly<Record<string, number>>;
  readonly broken: readonly string[];
}

/**
 * The plain slow twin of the evaluator, from docs/methods/rollout.md alone: days are walked one by one, every day is tried as a day to set out, every
 * day is looked at for goods.
 */
export class SlowRollout {
  private readonly problem: RolloutProblem;
  private readonly drawn: Drawn | null;
  private readonly broken: string[] = [];
  private readonly asked: number[][];
  private readonly carrierFree: number[];
  private readonly held: { pool: number; from: number; to: number }[] = [];
  private readonly hauls: { cost: number; fuel_L: number; [name: string]: unknown }[] = [];
  private readonly job: { [name: string]: number }[];

  constructor(problem: RolloutProblem, drawn: Drawn | null) {
    this.problem = problem;
    this.drawn = drawn;
    this.asked = problem.stores.map(() => problem.goods.map(() => 0));
    this.carrierFree = problem.stores.map(() => 0);
    this.job = problem.jobs.map((_, job) => this.never(job));
  }

  run(plan: RolloutPlan): SlowOutcome {
    const { problem } = this;
    const crews = problem.crews.map((crew, at) => ({
      at,
      ready: this.dayStart(at, crew.freeFrom),
      done: crew.done_count,
      left: [...plan.trips[at]!],
      told: [] as { [name: string]: unknown }[],
    }));
    for (;;) {
      const waiting = crews.filter((crew) => crew.left.length > 0);
      if (waiting.length === 0) break;
      const asks = waiting.map((crew) => Math.max(crew.ready, this.dayStart(crew.at, crew.left[0]!.notBefore)));
      const first = asks.indexOf(Math.min(...asks));
      const crew = waiting[first]!;
      const trip = crew.left.shift()!;
      const heldBefore = this.held.length;
      const made = this.makeTrip(crew.at, crew.told.length, trip.stops, crew.ready, asks[first]!, crew.done);
      if (made === null) {
        // Hauls that were to bring its goods do not go either.
        this.held.splice(heldBefore);
        for (const job of trip.stops) this.job[job] = this.never(job);
        const nothing = { nights_count: 0, kg: 0, litres: 0, cost: 0, fuel_L: 0 };
        crew.told.push({
          ready: crew.ready,
          leaves: crew.ready,
          back: crew.ready,
          waitsFor: 'nothing',
          ...nothing,
          jobs: trip.stops,
        });
        continue;
      }
      crew.told.push({ ...made.told, jobs: trip.stops });
      crew.done = made.done;
      const turned = this.work(crew.at, null, made.back, problem.crews[crew.at]!.turnaround_days * this.day_h(crew.at));
      crew.ready =
        turned === null ? problem.horizon_days : this.dayStart(crew.at, turned.day + (turned.used_h > 0 ? 1 : 0));
    }
    return this.outcome(crews, plan);
  }

  private outcome(crews: readonly { told: { [name: string]: unknown }[] }[], plan: RolloutPlan): SlowOutcome {
    const { problem } = this;
    const served = new Set(plan.trips.flat().flatMap(({ stops }) => [...stops]));
    problem.jobs.forEach((_, job) => {
      if (!served.has(job)) this.broken.push(`leftOut ${job}`);
    });
    const trips = crews.map(({ told }) =>
      told.map(({ jobs, ...trip }) => ({ ...trip, stops: (jobs as number[]).map((job) => this.job[job]!) })),
    );
    const sum = (of: (job: number) => number) => problem.jobs.reduce((total, _, job) => total + of(job), 0);
    const haul_L = this.hauls.reduce((total, haul) => total + haul.fuel_L, 0);
    const hauls = this.hauls.reduce((total, haul) => total + haul.cost, 0);
    const all = trips.flat() as unknown as { cost: number; fuel_L: number }[];
    const given = this.job.map((one) => one['handOverDay']!).filter((day) => day < problem.horizon_days);
    const sums = {
      waiting: sum((job) => problem.jobs[job]!.weight * this.job[job]!['serviceDay']!),
      waiting_personDays: sum((job) => problem.jobs[job]!.people * this.job[job]!['serviceDay']!),
      finish: Math.max(0, ...given),
      cost: all.reduce((total, { cost }) => total + cost, 0) + hauls,
      fuel_L: all.reduce((total, { fuel_L }) => total + fuel_L, 0) + haul_L,
    };
    return { trips, hauls: this.hauls, sums, broken: [...new Set(this.broken)].sort() };
  }

  private never(job: number): { [name: string]: number } {
    const day = this.problem.horizon_days;
    return { job, arrives: day, starts: day, ends: day, handOverDay: day, serviceDay: day };
  }

  private day_h(crew: number): number {
    return this.problem.crews[crew]!.work_h_per_day;
  }

  private time(crew: number, { day, used_h }: Moment): number {
    return day + used_h / this.day_h(crew);
  }

  private works(crew: number, area: number | null, day: number): boolean {
    if (this.problem.crews[crew]!.works[day] !== 1) return false;
    return area === null || this.drawn?.closed[area]?.[day] !== 1;
  }

  /** The first working day that begins at `time` or later. */
  private dayStart(crew: number, time: number): number {
    let day = Math.max(0, Math.ceil(time - tiny));
    while (day < this.problem.horizon_days && !this.works(crew, null, day)) day++;
    return day;
  }

  /** Where hours can first be used; null beyond the horizon. */
  private firstHour(crew: number, area: number | null, from: Moment): Moment | null {
    for (let day = from.day; day < this.problem.horizon_days; day++)
      if (this.works(crew, area, day)) return { day, used_h: day === from.day ? from.used_h : 0 };
    return null;
  }

  private used(crew: number, day: number, used_h: number): Moment {
    const day_h = this.day_h(crew);
    if (used_h >= day_h - tiny * day_h) return { day: day + 1, used_h: 0 };
    return { day, used_h: used_h <= tiny * day_h ? 0 : used_h };
  }

  /** Hours of land or work from a moment on. */
  private work(crew: number, area: number | null, from: Moment, hours: number): Moment | null {
    if (hours <= tiny * this.day_h(crew)) return from;
    let left = hours;
    for (
      let at = this.firstHour(crew, area, from);
      at !== null;
      at = this.firstHour(crew, area, { day: at.day + 1, used_h: 0 })
    ) {
      const room = this.day_h(crew) - at.used_h;
      if (left <= room + tiny) return this.used(crew, at.day, at.used_h + left);
      left -= room;
    }
    return null;
  }

  private river(crew: number, area: number | null, from: Moment, hours: number): Moment | null {
    if (hours <= tiny) return from;
    const most = Math.min(this.day_h(crew), this.problem.riverEnds_h);
    if (most <= 0) return null;
    const first = this.firstHour(crew, area, from);
    if (first === null) return null;
    if (first.used_h + hours <= most + tiny) return this.used(crew, first.day, first.used_h + hours);
    // What does not end today begins in a morning.
    let day = first.used_h > tiny ? first.day + 1 : first.day;
    for (let left = hours; ; left -= most) {
      const morning = this.firstHour(crew, area, { day, used_h: 0 });
      if (morning === null) return null;
      if (left <= most + tiny) return this.used(crew, morning.day, left);
      day = morning.day + 1;
    }
  }

  private periodOf(day: number): number {
    let found = 0;
    this.problem.periods.forEach(({ from }, period) => {
      if (from <= day) found = period;
    });
    return found;
  }

  private lastDay({ day, used_h }: Moment): number {
    return used_h > 0 ? day : day - 1;
  }

  private straight(crew: number, way: number, from: Moment): Gone | Failed {
    const { problem } = this;
    const start = this.firstHour(crew, null, from);
    if (start === null) return 'beyondHorizon';
    const tables = problem.travels[problem.crews[crew]!.travel]!.byPeriod;
    const isOpen = (legs: LegTable) =>
      [legs.landBefore_h, legs.river_h, legs.landAfter_h].every((hours) => Number.isFinite(hours[way]));
    const period = this.periodOf(start.day);
    const legs = tables[period]!;
    if (!isOpen(legs)) return 'noWay';
    const factor = this.drawn?.leg_factor ?? 1;
    const area = legs.areaOf[way] === 0 ? null : legs.areaOf[way]! - 1;
    let at: Moment | null = this.work(crew, area, start, legs.landBefore_h[way]! * factor);
    if (at !== null) at = this.river(crew, area, at, legs.river_h[way]! * factor);
    if (at !== null) at = this.work(crew, area, at, legs.landAfter_h[way]! * factor);
    const last = at === null ? problem.horizon_days - 1 : Math.max(start.day, this.lastDay(at));
    for (let day = start.day; day <= last; day++) if (!isOpen(tables[this.periodOf(day)]!)) return 'noWay';
    if (at === null) return 'beyondHorizon';
    const hours = legs.landBefore_h[way]! + legs.river_h[way]! + legs.landAfter_h[way]!;
    const setsOut = hours > 0 ? this.firstHour(crew, area, start)!.day : start.day;
    return { arrives: at, setsOut, legs };
  }

  /** Every day is tried. */
  private leg(crew: number, from: number, to: number, at: Moment): Gone | Failed {
    if (from === to) return { arrives: at, setsOut: at.day, legs: null };
    const way = from * (this.problem.placeIds.length + this.problem.jobs.length) + to;
    const first = this.straight(crew, way, at);
    let best: Gone | null = typeof first === 'string' ? null : first;
    let isBeyond = first === 'beyondHorizon';
    for (let day = at.day + 1; day < this.problem.horizon_days; day++) {
      if (best !== null && day >= this.time(crew, best.arrives)) break;
      const found = this.straight(crew, way, { day, used_h: 0 });
      if (typeof found === 'string')
        isBeyond ||= found === 'beyondHorizon' && this.firstHour(crew, null, { day, used_h: 0 }) !== null;
      else if (best === null || this.time(crew, found.arrives) < this.time(crew, best.arrives) - tiny) best = found;
    }
    return best ?? (isBeyond ? 'beyondHorizon' : 'noWay');
  }

  // long: one trip from asking to its return, in the order of the method's page
  private makeTrip(crew: number, trip: number, stops: readonly number[], ready: number, asks: number, done: number) {
    const { problem } = this;
    const own = problem.crews[crew]!;
    if (stops.length === 0) return null;
    if (asks >= problem.horizon_days) {
      this.broken.push(`beyondHorizon ${crew} ${trip}`);
      return null;
    }
    let waitsFor = asks > ready ? 'notBefore' : 'nothing';
    let leaves = asks;
    const goods = this.goodsAt(own.store, stops, crew, trip);
    if (goods === null) return null;
    if (goods.day > asks) {
      leaves = this.dayStart(crew, goods.day);
      waitsFor = problem.stores[own.store]!.filledBy !== null && goods.came <= asks ? 'haul' : 'stock';
    }
    for (;;) {
      if (leaves >= problem.horizon_days) {
        this.broken.push(`beyondHorizon ${crew} ${trip}`);
        return null;
      }
      const notes: string[] = [];
      const ride = this.ride(crew, trip, stops, leaves, done, notes);
      if (ride === null) {
        this.broken.push(...notes);
        return null;
      }
      const lastDay = ride.leaves + ride.nights;
      let clash = -1;
      for (let day = ride.leaves; day <= lastDay; day++)
        for (const pool of own.pools) if (this.areAllOut(pool, day)) clash = day;
      if (clash >= 0) {
        waitsFor = 'carrier';
        leaves = this.dayStart(crew, clash + 1);
        continue;
      }
      this.broken.push(...notes);
      for (const pool of own.pools) this.held.push({ pool, from: ride.leaves, to: lastDay });
      goods.take();
      if (ride.leaves > leaves) waitsFor = 'way';
      const back = this.time(crew, ride.back);
      const kg = stops.reduce((sum, job) => sum + problem.jobs[job]!.kg, 0);
      const litres = stops.reduce((sum, job) => sum + problem.jobs[job]!.litres, 0);
      const cost = ride.cost + (ride.nights + 1) * own.cost_per_day + ride.fuel_L * problem.fuelPrice_per_L;
      const told = {
        ready,
        leaves: ride.leaves,
        back,
        waitsFor,
        nights_count: ride.nights,
        kg,
        litres,
        cost,
        fuel_L: ride.fuel_L,
      };
      return { told, back: ride.back, done: ride.done };
    }
  }

  /** Is every carrier of a pool out with somebody, or away, on a day? */
  private areAllOut(pool: number, day: number): boolean {
    const { carriers_count, away = [] } = this.problem.pools[pool]!;
    const out = this.held.filter((one) => one.pool === pool && one.from <= day && day <= one.to).length;
    const gone = away.filter(({ from, to }) => from <= day && day <= to);
    return out + gone.reduce((sum, one) => sum + one.carriers_count, 0) >= carriers_count;
  }

  /** From leaving the base to being back; null where no stop is reached. */
  // long: one trip over its stops, in the order of the method's page
  private ride(crew: number, trip: number, stops: readonly number[], day: number, done: number, notes: string[]) {
    const { problem } = this;
    const own = problem.crews[crew]!;
    let now: Moment = { day, used_h: 0 };
    let node = own.base;
    let leaves: number | null = null;
    let [cost, fuel_L] = [0, 0];
    const pay = (gone: Gone, from: number, to: number) => {
      const way = from * (problem.placeIds.length + problem.jobs.length) + to;
      cost += gone.legs?.cost[way] ?? 0;
      fuel_L += gone.legs?.fuel_L[way] ?? 0;
      leaves ??= gone.setsOut;
    };
    const store = problem.stores[own.store]!.node;
    if (store !== node) {
      const gone = this.leg(crew, node, store, now);
      if (typeof gone === 'string') {
        notes.push(gone === 'noWay' ? `noWay ${crew} ${trip} null` : `${gone} ${crew} ${trip}`);
        return null;
      }
      pay(gone, node, store);
      [now, node] = [gone.arrives, store];
    }
    for (const [at, job] of stops.entries()) {
      this.job[job] = this.never(job);
      const site = problem.jobs[job]!;
      if ((site.skills & own.skills) !== site.skills) notes.push(`noSkill ${crew} ${trip} ${job}`);
      const to = problem.placeIds.length + job;
      const gone = this.leg(crew, node, to, now);
      if (typeof gone === 'string') {
        notes.push(gone === 'noWay' ? `noWay ${crew} ${trip} ${job}` : `${gone} ${crew} ${trip}`);
        continue;
      }
      pay(gone, node, to);
      this.loads(crew, trip, stops.slice(at), gone, node, to, notes);
      node = to;
      this.job[job]!['arrives'] = this.time(crew, gone.arrives);
      const worked = this.install(crew, trip, job, gone, done + 1, notes);
      if (worked !== null) done++;
      now = worked ?? gone.arrives;
    }
    if (leaves === null) return null;
    const home = this.leg(crew, node, own.base, now);
    if (typeof home === 'string') {
      notes.push(home === 'noWay' ? `noWay ${crew} ${trip} null` : `${home} ${crew} ${trip}`);
      now = { day: problem.horizon_days, used_h: 0 };
    } else {
      pay(home, node, own.base);
      now = home.arrives;
    }
    const nights = Math.max(0, this.lastDay(now) - leaves);
    if (nights > own.mostDaysAway) notes.push(`tooLongAway ${crew} ${trip} by ${nights - own.mostDaysAway}`);
    return { leaves: leaves as number, back: now, nights, cost, fuel_L, done };
  }

  private loads(
    crew: number,
    trip: number,
    left: readonly number[],
    gone: Gone,
    from: number,
    to: number,
    notes: string[],
  ) {
    const { problem } = this;
    const own = problem.crews[crew]!;
    const way = from * (problem.placeIds.length + problem.jobs.length) + to;
    const limit = gone.legs === null ? null : gone.legs.limits[gone.legs.limitOf[way]!]!;
    const jobs = left.map((job) => problem.jobs[job]!);
    const told = (kind: string, has: number, most: number) => {
      if (has > most + 1e-6) notes.push(`${kind} ${crew} ${trip} ${left[0]} by ${(has - most).toFixed(6)}`);
    };
    const add = (of: (job: (typeof jobs)[number]) => number) => jobs.reduce((sum, job) => sum + of(job), 0);
    told(
      'tooHeavy',
      add(({ kg }) => kg),
      Math.min(own.limit_kg, limit?.kg ?? own.limit_kg),
    );
    told(
      'tooBulky',
      add(({ litres }) => litres),
      Math.min(own.limit_L, limit?.litres ?? own.limit_L),
    );
    told(
      'tooLong',
      Math.max(...jobs.map(({ longest_m }) => longest_m)),
      Math.min(own.longest_m, limit?.longest_m ?? own.longest_m),
    );
  }

  private install(crew: number, trip: number, job: number, gone: Gone, nth: number, notes: string[]): Moment | null {
    const { problem, drawn } = this;
    const own = problem.crews[crew]!;
    const site = problem.jobs[job]!;
    const days = drawn === null ? site.install_days.likely : drawn.install_days[job]!;
    const pace = own.pace_factor * (drawn === null ? 1 : drawn.pace_factor[crew]!);
    const hours = days * pace * nth ** Math.log2(problem.learning_fraction) * this.day_h(crew);
    const area = site.area < 0 ? null : site.area;
    const arrives = gone.arrives;
    for (const { from, to } of site.windows) {
      const begin = from > arrives.day ? { day: from, used_h: 0 } : arrives;
      const start = this.firstHour(crew, area, begin);
      const end = start === null ? null : this.work(crew, area, start, hours);
      if (start === null || end === null) continue;
      const day = Math.max(start.day, this.lastDay(end));
      if (start.day > to || day > to) continue;
      const date = new Date((problem.firstDay + day) * 86_400_000);
      const ofYear = Math.round(
        (Date.UTC(2000, date.getUTCMonth(), date.getUTCDate()) - Date.UTC(2000, 0, 1)) / 86_400_000,
      );
      const serviceDay = day + site.serviceWait_days[ofYear]!;
      const [starts, ends] = [this.time(crew, start), this.time(crew, end)];
      this.job[job] = { job, arrives: this.time(crew, arrives), starts, ends, handOverDay: day, serviceDay };
      if (site.finishBy !== null && day > site.finishBy)
        notes.push(`late ${crew} ${trip} ${job} by ${day - site.finishBy}`);
      const came = gone.legs === null ? arrives.day : this.lastDay(arrives);
      if (!own.maySleepAtSites && end.day > came)
        notes.push(`sleepsAtSite ${crew} ${trip} ${job} by ${end.day - came}`);
      return end;
    }
    const isBeyond =
      arrives.day >= problem.horizon_days ||
      site.windows.some(({ to }) => to >= problem.horizon_days - 1 && to >= arrives.day);
    notes.push(isBeyond ? `beyondHorizon ${crew} ${trip}` : `notOpen ${crew} ${trip} ${job}`);
    return null;
  }

  /** When goods are at a store, and how they are taken; null where they never are. */
  private goodsAt(
    store: number,
    stops: readonly number[],
    crew: number,
    trip: number,
  ): { day: number; came: number; take: () => void } | null {
    const { problem } = this;
    const haul = problem.stores[store]!.filledBy;
    if (haul === null) return this.goodsOf(store, stops, crew, trip);
    const behind = this.goodsAt(haul.store, stops, crew, trip);
    if (behind === null) return null;
    const trips_count = this.haulsNeeded(haul, stops);
    if (trips_count === 0) return behind;
    let free = this.carrierFree[store]!;
    let [there, cost, fuel_L] = [Number.NaN, 0, 0];
    const runs: { leaves: number; arrives: number; returns: number; back: number }[] = [];
    for (let at = 0; at < trips_count; at++) {
      const out = this.thereAndBack(haul, Math.max(behind.day, Math.ceil(free - tiny)));
      if (typeof out === 'string') {
        this.broken.push(out === 'noWay' ? `noWay ${crew} ${trip} null` : `${out} ${crew} ${trip}`);
        return null;
      }
      there = out.arrives;
      free = out.back;
      runs.push({ leaves: out.leaves, arrives: out.arrives, returns: out.returns, back: out.back });
      cost += out.cost + out.fuel_L * problem.fuelPrice_per_L;
      fuel_L += out.fuel_L;
    }
    return {
      day: Math.ceil(there - tiny),
      came: behind.came,
      take: () => {
        behind.take();
        this.carrierFree[store] = free;
        this.hauls.push({
          store,
          leaves: runs[0]!.leaves,
          arrives: there,
          back: free,
          kg: stops.reduce((sum, job) => sum + problem.jobs[job]!.kg, 0),
          trips_count,
          cost,
          fuel_L,
          forCrew: crew,
          forTrip: trip,
          runs,
        });
      },
    };
  }

  private goodsOf(store: number, stops: readonly number[], crew: number, trip: number) {
    const { problem, drawn } = this;
    const { arrivals } = problem.stores[store]!;
    const need = problem.goods.map((_, one) => stops.reduce((sum, job) => sum + problem.jobs[job]!.needs[one]!, 0));
    let last = 0;
    for (const [one, wanted] of need.entries()) {
      if (wanted === 0) continue;
      let day = 0;
      for (; day < problem.horizon_days; day++) {
        const come = arrivals
          .filter(
            (arrival, at) =>
              arrival.goods === one &&
              arrival.day + (drawn?.slip_days[store]?.[at] ?? arrival.slip_days.likely) <= day + tiny,
          )
          .reduce((sum, { quantity_count }) => sum + quantity_count, 0);
        if (come - this.asked[store]![one]! >= wanted - 1e-6) break;
      }
      if (day === problem.horizon_days) {
        this.broken.push(`noStock ${crew} ${trip} ${one}`);
        return null;
      }
      last = Math.max(last, day);
    }
    const take = () => {
      for (const [one, wanted] of need.entries()) this.asked[store]![one]! += wanted;
    };
    return { day: last, came: last, take };
  }

  private haulsNeeded(haul: Haul, stops: readonly number[]): number {
    const { jobs, horizon_days } = this.problem;
    const kg = stops.reduce((sum, job) => sum + jobs[job]!.kg, 0);
    const litres = stops.reduce((sum, job) => sum + jobs[job]!.litres, 0);
    const times = (load: number, limit: number) => {
      let count = 0;
      for (let left = load; left > 1e-6 && count <= horizon_days; left -= limit) count++;
      return count;
    };
    return Math.max(times(kg, haul.limit_kg), times(litres, haul.limit_L));
  }

  /** A haul there and back, once its carrier is not needed elsewhere meanwhile: after the last day on which it is, it is tried again. */
  private thereAndBack(haul: Haul, from: number) {
    const { horizon_days } = this.problem;
    for (let day = from; ; day++) {
      const there = this.haul(haul.there_days, day);
      if (typeof there === 'string') return there;
      const home = this.haul(haul.back_days, there.arrives);
      const back = typeof home === 'string' ? Number.POSITIVE_INFINITY : home.arrives;
      const days: number[] = [];
      for (let one = there.leaves; one < Math.min(back - tiny, horizon_days); one++) days.push(one);
      const { pool } = haul;
      const out = pool === null ? undefined : days.findLast((one) => this.areAllOut(pool, one));
      if (out !== undefined) {
        day = out;
        continue;
      }
      if (pool !== null && days.length > 0) this.held.push({ pool, from: days[0]!, to: days.at(-1)! });
      const period = this.periodOf(there.leaves);
      const periodBack = typeof home === 'string' ? null : this.periodOf(Math.floor(home.leaves));
      return {
        ...{ leaves: there.leaves, arrives: there.arrives, back },
        returns: typeof home === 'string' ? Number.POSITIVE_INFINITY : home.leaves,
        cost: haul.there_cost[period]! + (periodBack === null ? 0 : haul.back_cost[periodBack]!),
        fuel_L: haul.there_fuel_L[period]! + (periodBack === null ? 0 : haul.back_fuel_L[periodBack]!),
      };
    }
  }

  private haul(days: readonly number[], from: number): { leaves: number; arrives: number } | Failed {
    const { horizon_days } = this.problem;
    let best: { leaves: number; arrives: number } | null = null;
    let isBeyond = !(from < horizon_days);
    for (let start = from; start < horizon_days; start = Math.floor(start) + 1) {
      if (best !== null && start >= best.arrives) break;
      const arrives = start + days[this.periodOf(Math.floor(start))]! * (this.drawn?.leg_factor ?? 1);
      let isOpen = Number.isFinite(arrives);
      for (let day = Math.floor(start); isOpen && day < Math.min(horizon_days, arrives - tiny); day++)
        isOpen = Number.isFinite(days[this.periodOf(day)]!);
      if (isOpen && arrives > horizon_days) isBeyond = true;
      else if (isOpen && (best === null || arrives < best.arrives - tiny)) best = { leaves: start, arrives };
    }
    return best ?? (isBeyond ? 'beyondHorizon' : 'noWay');
  }
}
