// long: the times of a crew, of its trips and its legs, each read by the one before
import { loadSlack_kg } from '../constants.ts';
import type { CrewLegs, CrewNumbers, OneCrew } from './crewNumbers.ts';
import { CrewSlots, ofStop, ofTrip, stopFields, tripFields } from './crewSlots.ts';
import type { Draws } from './draws.ts';

/** A trip is held back by so many working days at the most, and timed on so many of them. Ours: docs/decisions/0372. */
const mostHeld_days = 60;
const mostHeldTries_count = 4;

/** A delay that a gap takes up (a wait for goods or a window) costs this share of what it would cost without: the next job finds the gap smaller. Ours: docs/decisions/0412. */
const gap_ratio = 0.3;

/** Times that differ by less are the same [day]. */
export const timeSlack_days = 1e-9;

/**
 * Crews with the times of their trips, on each crew's own line of working days. Legs, windows, rest days and nights are those of
 * docs/methods/rollout.md; what crews share (stock, carriers) is not known here but as the day before which a trip cannot leave.
 */
export abstract class TimedCrews extends CrewSlots {
  /** Where each crew would be ready for one more trip: by slot. */
  protected readonly readyEnd: Float64Array;
  protected readonly slotCost: Float64Array;
  /** Does a trip of the crew wait for anything? */
  protected readonly slotIdle: Uint8Array;
  protected readonly periodAt: readonly (readonly number[])[];
  /** The window in which work that was asked for last begins and ends. */
  private opens = 0;
  private closes = 0;
  /** When the leg asked for last was begun. */
  protected began = 0;
  /** The ways by which it was gone, where they change. */
  private goneBy: CrewLegs | null = null;

  constructor(numbers: CrewNumbers, blink: number, draws: Draws) {
    super(numbers, blink, draws);
    this.readyEnd = new Float64Array(2 * this.crews);
    this.slotCost = new Float64Array(2 * this.crews);
    this.slotIdle = new Uint8Array(2 * this.crews);
    for (let crew = 0; crew < this.crews; crew++) {
      this.readyEnd[2 * crew] = numbers.byCrew[crew]!.from;
      this.readyEnd[2 * crew + 1] = numbers.byCrew[crew]!.from;
    }
    const { periodFrom, horizon } = numbers;
    this.periodAt = numbers.byCrew.map(({ before }) => periodFrom.map((day) => before[Math.min(day, horizon)] ?? 0));
    for (let crew = 0; crew < this.crews; crew++) this.retime(crew, 0);
  }

  protected override touch(crew: number): void {
    const old = this.slotOf[crew]!;
    super.touch(crew);
    const now = this.slotOf[crew]!;
    if (now === old) return;
    this.readyEnd[now] = this.readyEnd[old]!;
    this.slotCost[now] = this.slotCost[old]!;
    this.slotIdle[now] = this.slotIdle[old]!;
  }

  /** The day that a working day's end falls on: what ends there is handed over on it. */
  protected dayOfEnd(one: OneCrew, end: number): number {
    const n = Math.ceil(end - timeSlack_days) - 1;
    const last = one.dayOf.length - 1;
    return one.dayOf[n < 0 ? 0 : Math.min(n, last)]!;
  }

  /** What handing over at this end is worth. */
  protected worthOf(job: number, one: OneCrew, end: number): number {
    const { numbers } = this;
    if (!numbers.wholeDays) return numbers.weight[job]! * end;
    const day = this.dayOfEnd(one, end);
    const { value, horizon } = numbers;
    if (value !== null && day < horizon && numbers.isPlain[job] === 0) return value[job * horizon + day]!;
    return day < horizon ? numbers.weight[job]! * day : numbers.weight[job]! * (day + 3 * horizon);
  }

  /** What one more day costs, about where the job is now. */
  protected slopeOf(job: number, one: OneCrew, end: number): number {
    const { value, horizon, weight, isPlain } = this.numbers;
    if (value === null || isPlain[job] === 1) return weight[job]! * one.stretch;
    const day = this.dayOfEnd(one, end);
    if (day + 3 >= horizon) return weight[job]! * one.stretch;
    const at = job * horizon + day;
    return ((value[at + 3]! - value[at]!) / 3) * one.stretch;
  }

  /** Times of a crew's trips from one on: trips whose stops changed are gone through, others only leave on another day. */
  protected retime(crew: number, fromTrip: number): void {
    const { numbers, tripsOf } = this;
    const one = numbers.byCrew[crew]!;
    const slot = this.slotOf[crew]!;
    const zero = slot * this.tripRoom * tripFields;
    const trips = this.tripsIn[slot]!;
    let time = one.from;
    if (fromTrip > 0) {
      const before = zero + (fromTrip - 1) * tripFields;
      time = this.readyAfter(tripsOf[before + ofTrip.leaves]! + tripsOf[before + ofTrip.back]!, one.turnaround);
    }
    let t = zero + fromTrip * tripFields;
    for (let index = fromTrip; index < trips; index++, t += tripFields) {
      tripsOf[t + ofTrip.ready] = time;
      const id = tripsOf[t + ofTrip.id]!;
      const earliest = this.notBefore[id]!;
      let start = time;
      if (earliest > 0) start = Math.max(start, one.before[Math.min(Math.ceil(earliest), numbers.horizon)]!);
      if (tripsOf[t + ofTrip.floor]! > start) start = tripsOf[t + ofTrip.floor]!;
      this.timed(one, crew, slot, t, start);
      tripsOf[t + ofTrip.asks] = tripsOf[t + ofTrip.held]!;
      tripsOf[t + ofTrip.idle] = tripsOf[t + ofTrip.leaves]! - time;
      time = this.readyAfter(tripsOf[t + ofTrip.leaves]! + tripsOf[t + ofTrip.back]!, one.turnaround);
    }
    this.readyEnd[slot] = time;
    tripsOf[t + ofTrip.ready] = time;
    this.summed(slot, zero, trips);
  }

  /** Times a trip that cannot leave before `start`: held back where it would be away too long, and is not if it leaves later. */
  protected timed(one: OneCrew, crew: number, slot: number, t: number, start: number): void {
    const { tripsOf } = this;
    const isStale = tripsOf[t + ofTrip.isStale] === 1;
    if (!isStale && tripsOf[t + ofTrip.from] === start) return;
    if (isStale || !this.shifted(one, crew, slot, t, start)) this.ride(one, crew, slot, t, start);
    tripsOf[t + ofTrip.from] = start;
    tripsOf[t + ofTrip.held] = 0;
    if (this.numbers.wholeDays && this.isAwayTooLong(one, t, tripsOf[t + ofTrip.leaves]!))
      this.holdBack(one, crew, slot, t, start);
  }

  /** Would a trip that takes as many working days as now be away too long, if it left then? What it waits for windows is less by as much as it leaves later. */
  private isAwayTooLong({ dayOf, lastBack }: OneCrew, t: number, leave: number): boolean {
    const { tripsOf } = this;
    const later = Math.max(0, leave - tripsOf[t + ofTrip.leaves]!);
    const back = leave + tripsOf[t + ofTrip.back]! - Math.min(later, tripsOf[t + ofTrip.waits]!);
    const last = Math.ceil(back - timeSlack_days) - 1;
    return back <= dayOf.length - 4 && last > lastBack[Math.floor(leave + timeSlack_days)]!;
  }

  /** By how many working days must a trip leave later that is away too long, were it to leave as now and be home on its `last`? −1: that helps nothing. */
  protected heldFor({ lastBack, isEveryDay, mostAwayWork }: OneCrew, leaves: number, last: number): number {
    const first = Math.floor(leaves + timeSlack_days);
    if (isEveryDay || last - first > mostAwayWork) return -1;
    const most = Math.min(mostHeld_days, lastBack.length - last - 4);
    for (let later = 1; later < most; later++) if (last + later <= lastBack[first + later]!) return later;
    return -1;
  }

  /** Would a trip that leaves at `leaves` be away too long with one more job before the stop at `place`? Gone through where `home`, as guessed, is near it. */
  protected isTooLongWith(
    one: OneCrew,
    crew: number,
    t: number,
    place: number,
    job: number,
    leaves: number,
    home: number,
  ): boolean {
    const most = one.lastBack[Math.floor(leaves + timeSlack_days)]!;
    if (home <= most || one.learned !== null) return false;
    return Math.ceil(this.backWith(one, crew, leaves, t, place, job) - timeSlack_days) - 1 > most;
  }

  /** When a trip that leaves at `start` would be back with one more job before the stop at `place`. */
  private backWith(one: OneCrew, crew: number, start: number, t: number, place: number, job: number): number {
    const { stops, tripsOf, numbers } = this;
    const zero = Math.floor(t / tripFields / this.tripRoom) * this.stopRoom * stopFields;
    const end = zero + tripsOf[t + tripFields + ofTrip.first]! * stopFields;
    let node = one.store;
    let time = node === one.base ? start : this.legEnd(one, crew, start, one.base, node);
    for (let stop = zero + tripsOf[t + ofTrip.first]! * stopFields; stop <= end; stop += stopFields) {
      if (stop === place) {
        time = this.workedAt(one, crew, time, node, job);
        node = numbers.nodeOf[job]!;
      }
      if (stop === end) break;
      time = this.workedAt(one, crew, time, node, stops[stop]!);
      node = numbers.nodeOf[stops[stop]!]!;
    }
    return this.legEnd(one, crew, time, node, one.base);
  }

  private workedAt(one: OneCrew, crew: number, time: number, node: number, job: number): number {
    const { nodeOf, days, windowAt } = this.numbers;
    const comes = this.legEnd(one, crew, time, node, nodeOf[job]!);
    const work = days[job]! * one.pace;
    if (windowAt[job] === windowAt[job + 1]) return comes + work;
    const ends = this.endOfWork(one, job, comes, work);
    return ends < Number.POSITIVE_INFINITY ? ends : comes + work;
  }

  /** Looks for the first day on which a trip that is away too long could leave and is not; as it was where there is none soon. */
  private holdBack(one: OneCrew, crew: number, slot: number, t: number, start: number): void {
    const { tripsOf } = this;
    if (this.isLocked[tripsOf[t + ofTrip.id]!] === 1) return;
    const isFixed = tripsOf[t + ofTrip.fixedIn]! >= 0;
    if (one.isEveryDay && isFixed) return;
    let later = Math.floor(tripsOf[t + ofTrip.leaves]!);
    const last = Math.min(later + mostHeld_days, one.dayOf.length - 4);
    for (let tries = 0; tries < mostHeldTries_count; tries++) {
      do later++;
      while (later <= last && this.isAwayTooLong(one, t, later));
      if (later > last) break;
      if (!this.shifted(one, crew, slot, t, later)) this.ride(one, crew, slot, t, later);
      if (!this.isAwayTooLong(one, t, tripsOf[t + ofTrip.leaves]!) && tripsOf[t + ofTrip.value]! < 1e15) {
        tripsOf[t + ofTrip.held] = later;
        return;
      }
    }
    if (!this.shifted(one, crew, slot, t, start)) this.ride(one, crew, slot, t, start);
  }

  /** A trip that goes the same on another day; false where it may not. */
  protected shifted(one: OneCrew, crew: number, slot: number, t: number, start: number): boolean {
    const { tripsOf } = this;
    const leave = tripsOf[t + ofTrip.leaves]!;
    if (start === leave) return true;
    const period = tripsOf[t + ofTrip.fixedIn]!;
    if (period < 0) return false;
    if (leave - start > tripsOf[t + ofTrip.sooner]! || start - leave > tripsOf[t + ofTrip.after]!) return false;
    const back = start + tripsOf[t + ofTrip.back]!;
    if (one.legs.length > 1) {
      const starts = this.periodAt[crew]!;
      if (start < starts[period]! || (period + 1 < starts.length && back > starts[period + 1]!)) return false;
    }
    tripsOf[t + ofTrip.leaves] = start;
    tripsOf[t + ofTrip.sooner]! += start - leave;
    tripsOf[t + ofTrip.after]! -= start - leave;
    if (one.isEveryDay && this.numbers.value === null && back < this.numbers.horizon)
      tripsOf[t + ofTrip.value] = tripsOf[t + ofTrip.worth]! + start * tripsOf[t + ofTrip.weight]!;
    else this.valued(one, slot, t);
    return true;
  }

  /** Sums of a crew, and slopes behind each trip. */
  protected summed(slot: number, zero: number, trips: number): void {
    const { tripsOf, stops, numbers } = this;
    const stopZero = slot * this.stopRoom * stopFields + ofStop.slope;
    const end = zero + trips * tripFields;
    let slopes = numbers.homeWeight;
    let sum = 0;
    const one = numbers.byCrew[slot >> 1]!;
    let isIdle = one.isEveryDay ? 0 : 1;
    let gap = -1;
    tripsOf[end + ofTrip.later] = slopes;
    tripsOf[end + ofTrip.gapIn] = -1;
    let next = tripsOf[end + ofTrip.first]!;
    for (let t = end - tripFields; t >= zero; t -= tripFields) {
      if (tripsOf[t + ofTrip.idle]! > timeSlack_days || tripsOf[t + ofTrip.waits]! > timeSlack_days) {
        isIdle = 1;
        gap = t;
      }
      tripsOf[t + ofTrip.gapIn] = gap < 0 ? -1 : gap - t;
      sum += tripsOf[t + ofTrip.value]!;
      const first = tripsOf[t + ofTrip.first]!;
      if (first < next) slopes += stops[stopZero + first * stopFields]!;
      next = first;
      tripsOf[t + ofTrip.later] = slopes;
    }
    if (numbers.homeWeight > 0 && trips > 0)
      sum +=
        numbers.homeWeight * (tripsOf[end - tripFields + ofTrip.leaves]! + tripsOf[end - tripFields + ofTrip.back]!);
    this.slotCost[slot] = sum;
    this.slotIdle[slot] = isIdle;
  }

  /** What it costs, by slopes, that the trip at `t` and those behind it can leave so many days later: what trips wait anyway is taken off, but for a share. */
  protected delayBySlopes(t: number, days: number): number {
    const { tripsOf } = this;
    let left = days;
    let at = t;
    let cost = 0;
    while (left > 0) {
      const gapIn = tripsOf[at + ofTrip.gapIn]!;
      if (gapIn < 0) break;
      const waits = at + gapIn;
      const behind = waits + tripFields;
      cost += left * (tripsOf[at + ofTrip.later]! - tripsOf[waits + ofTrip.later]!);
      left -= Math.floor(tripsOf[waits + ofTrip.idle]! + timeSlack_days);
      if (left <= 0) break;
      cost += left * (tripsOf[waits + ofTrip.later]! - tripsOf[behind + ofTrip.later]!);
      left -= Math.floor(tripsOf[waits + ofTrip.waits]! + timeSlack_days);
      at = behind;
    }
    if (days <= 0 || left > 0) cost += left * tripsOf[at + ofTrip.later]!;
    return days > 0 ? cost + gap_ratio * (days * tripsOf[t + ofTrip.later]! - cost) : cost;
  }

  // long: the exact times of one trip
  protected ride(one: OneCrew, crew: number, slot: number, t: number, start: number): void {
    const { numbers, stops, tripsOf } = this;
    const { nodeOf, days, windowAt } = numbers;
    const { store, base, pace, learned } = one;
    const from = tripsOf[t + ofTrip.first]!;
    const zero = slot * this.stopRoom * stopFields;
    const begin = zero + from * stopFields;
    const end = zero + tripsOf[t + tripFields + ofTrip.first]! * stopFields;
    let time = start;
    let leave = start;
    let node = store;
    let kg = 0;
    let litres = 0;
    let waited = 0;
    let hasWindows = 0;
    let sooner = Number.POSITIVE_INFINITY;
    let after = Number.POSITIVE_INFINITY;
    let place = from;
    let overloaded = 0;
    if (one.hasNarrowLegs)
      for (let stop = begin; stop < end; stop += stopFields) {
        kg += numbers.kg[stops[stop]!]!;
        litres += numbers.litres[stops[stop]!]!;
      }
    if (store !== base) {
      time = this.legEnd(one, crew, time, base, store);
      leave = this.began;
    }
    for (let stop = begin; stop < end; stop += stopFields, place++) {
      const job = stops[stop]!;
      const next = nodeOf[job]!;
      time = this.legEnd(one, crew, time, node, next);
      if (stop === begin && store === base) leave = this.began;
      if (one.hasNarrowLegs) {
        if (this.isOverloaded(one, node * numbers.nodes + next, kg, litres, stop, end)) overloaded++;
        kg -= numbers.kg[job]!;
        litres -= numbers.litres[job]!;
      }
      stops[stop + ofStop.comes] = time - leave;
      let work = days[job]! * pace;
      if (learned !== null) work *= learned[place]!;
      if (windowAt[job] === windowAt[job + 1]) time += work;
      else {
        hasWindows = 1;
        const finished = this.endOfWork(one, job, time, work);
        if (finished < Number.POSITIVE_INFINITY) {
          waited += finished - work - time;
          if (finished - work > time + timeSlack_days) sooner = after = -1;
          sooner = Math.min(sooner, time - this.opens);
          after = Math.min(after, this.closes - finished);
          time = finished;
        } else {
          sooner = after = -1;
          time += work;
        }
      }
      stops[stop + ofStop.ends] = time - leave;
      node = next;
    }
    time = this.legEnd(one, crew, time, node, base);
    const isBroken = !(time < Number.POSITIVE_INFINITY);
    tripsOf[t + ofTrip.leaves] = isBroken ? start : leave;
    tripsOf[t + ofTrip.back] = isBroken ? 1e4 : time - leave;
    kg = 0;
    litres = 0;
    for (let stop = begin; stop < end; stop += stopFields) {
      kg += numbers.kg[stops[stop]!]!;
      litres += numbers.litres[stops[stop]!]!;
    }
    tripsOf[t + ofTrip.kg] = kg;
    tripsOf[t + ofTrip.litres] = litres;
    tripsOf[t + ofTrip.waits] = waited;
    tripsOf[t + ofTrip.hasWindows] = hasWindows;
    tripsOf[t + ofTrip.sooner] = sooner;
    tripsOf[t + ofTrip.after] = after;
    tripsOf[t + ofTrip.isStale] = 0;
    tripsOf[t + ofTrip.extra] = overloaded * numbers.awayPenalty;
    tripsOf[t + ofTrip.fixedIn] =
      after < 0 || learned !== null || isBroken ? -1 : this.periodOf(one, crew, start, leave, time);
    if (isBroken) tripsOf[t + ofTrip.value] = 1e15;
    else this.valued(one, slot, t);
  }

  /** Is what is on board, from this stop to the trip's end, too much for the leg gone last? */
  private isOverloaded(one: OneCrew, way: number, kg: number, litres: number, from: number, end: number): boolean {
    const { table } = this.goneBy ?? one.legs[0]!;
    const limit = table.limits[table.limitOf[way]!]!;
    if (kg > limit.kg + loadSlack_kg || litres > limit.litres + loadSlack_kg) return true;
    if (limit.longest_m >= one.longest) return false;
    for (let stop = from; stop < end; stop += stopFields)
      if (this.numbers.longest[this.stops[stop]!]! > limit.longest_m + loadSlack_kg) return true;
    return false;
  }

  /** The period in which all of a trip lies; -1 where it lies in several or waited for one. */
  private periodOf(one: OneCrew, crew: number, start: number, leave: number, back: number): number {
    if (one.legs.length === 1) return 0;
    if (leave > start) return -1;
    const starts = this.periodAt[crew]!;
    let period = 0;
    while (period + 1 < starts.length && starts[period + 1]! <= leave) period++;
    return period + 1 < starts.length && back > starts[period + 1]! ? -1 : period;
  }

  /** What the hand-overs of a trip are worth on the day it leaves now, and their slopes. */
  private valued(one: OneCrew, slot: number, t: number): void {
    const { numbers, stops, tripsOf } = this;
    const { weight, windowAt, wholeDays } = numbers;
    const leave = tripsOf[t + ofTrip.leaves]!;
    const zero = slot * this.stopRoom * stopFields;
    const begin = zero + tripsOf[t + ofTrip.first]! * stopFields;
    const isLinear = numbers.value === null;
    let slope = 0;
    let cost = tripsOf[t + ofTrip.extra]!;
    let people = 0;
    for (
      let stop = zero + tripsOf[t + tripFields + ofTrip.first]! * stopFields - stopFields;
      stop >= begin;
      stop -= stopFields
    ) {
      const job = stops[stop]!;
      const ends = leave + stops[stop + ofStop.ends]!;
      cost += this.worthOf(job, one, ends);
      people += weight[job]!;
      slope += isLinear ? weight[job]! * one.stretch : this.slopeOf(job, one, ends);
      stops[stop + ofStop.slope] = slope;
      if (windowAt[job] !== windowAt[job + 1] && this.isShut(one, job, ends)) cost += numbers.leftOut[job]!;
    }
    if (wholeDays) {
      const back = leave + tripsOf[t + ofTrip.back]!;
      const nights = this.dayOfEnd(one, back) - this.dayOfStart(one, leave);
      if (nights > one.mostAway) cost += numbers.awayPenalty * (nights - one.mostAway);
      if (back > one.dayOf.length - 4) cost += numbers.awayPenalty;
    }
    tripsOf[t + ofTrip.value] = cost;
    tripsOf[t + ofTrip.weight] = people;
    tripsOf[t + ofTrip.worth] = cost - people * leave;
  }

  /** Does work that ends then end outside all windows? It was not possible to wait for one. */
  private isShut(one: OneCrew, job: number, end: number): boolean {
    const { windowAt, windowTo, horizon } = this.numbers;
    const last = windowAt[job + 1]! - 1;
    return end > one.before[Math.min(horizon, windowTo[last]! + 1)]! + timeSlack_days;
  }

  /** The first whole working day after a trip's end and the days at the base. */
  protected readyAfter(back: number, turnaround: number): number {
    return this.numbers.wholeDays ? Math.ceil(back + turnaround - timeSlack_days) : back + turnaround;
  }

  protected dayOfStart(one: OneCrew, time: number): number {
    const last = one.dayOf.length - 1;
    const n = Math.floor(time + timeSlack_days);
    return one.dayOf[Math.min(n, last)]!;
  }

  /** When work that cannot begin before `time` ends, begun and ended in one window; Infinity where none is left. */
  protected endOfWork(one: OneCrew, job: number, time: number, work: number): number {
    const { windowAt, windowFrom, windowTo, horizon } = this.numbers;
    for (let at = windowAt[job]!, to = windowAt[job + 1]!; at < to; at++) {
      const opens = one.before[windowFrom[at]!]!;
      const closes = one.before[Math.min(horizon, windowTo[at]! + 1)]!;
      const end = Math.max(time, opens) + work;
      if (end <= closes + timeSlack_days) {
        this.opens = opens;
        this.closes = closes;
        return end;
      }
    }
    return Number.POSITIVE_INFINITY;
  }

  /** When a leg begun at `time` ends; writes to `began` when it really begins. */
  protected legEnd(one: OneCrew, crew: number, time: number, from: number, to: number): number {
    this.began = time;
    if (from === to) return time;
    const { legs } = one;
    const at = from * this.numbers.nodes + to;
    if (legs.length === 1) return gone(legs[0]!, at, time, one.hours, one.riverHours);
    return this.legOverPeriods(one, crew, time, at);
  }

  /** The same where ways change: waits for a period in which it can be gone, or which is faster. */
  private legOverPeriods(one: OneCrew, crew: number, begin: number, at: number): number {
    const starts = this.periodAt[crew]!;
    const { legs } = one;
    let time = begin;
    let period = 0;
    const day = this.dayOfStart(one, time);
    while (period + 1 < legs.length && this.numbers.periodFrom[period + 1]! <= day) period++;
    for (;;) {
      const end = gone(legs[period]!, at, time, one.hours, one.riverHours);
      const next = period + 1 < legs.length ? starts[period + 1]! : Number.POSITIVE_INFINITY;
      if (end <= next + timeSlack_days && end < Number.POSITIVE_INFINITY) {
        this.began = time;
        this.goneBy = legs[period]!;
        return end;
      }
      if (end < Number.POSITIVE_INFINITY && this.isOpenUntil(legs, starts, at, period, end)) {
        const waited = this.endFrom(one, crew, period + 1, at);
        if (waited >= end) {
          this.began = time;
          this.goneBy = legs[period]!;
        }
        return Math.min(end, waited);
      }
      if (next === Number.POSITIVE_INFINITY) return Number.POSITIVE_INFINITY;
      period++;
      if (next > time) time = next;
    }
  }

  /** The end of a leg that waits for a period. */
  private endFrom(one: OneCrew, crew: number, period: number, at: number): number {
    const start = this.periodAt[crew]![period]!;
    const end = this.legOverPeriods(one, crew, start, at);
    return end;
  }

  private isOpenUntil(
    legs: readonly CrewLegs[],
    starts: readonly number[],
    at: number,
    period: number,
    end: number,
  ): boolean {
    for (let next = period + 1; next < legs.length && starts[next]! < end - timeSlack_days; next++)
      if (legs[next]!.onward[at] === Number.POSITIVE_INFINITY) return false;
    return true;
  }
}

/** When a leg begun at `time` ends, by the ways of one period: land, river, land. */
function gone({ table }: CrewLegs, at: number, time: number, hours: number, riverHours: number): number {
  const river_h = table.river_h[at]!;
  const arrives = time + table.landBefore_h[at]! / hours;
  if (arrives === Number.POSITIVE_INFINITY) return arrives;
  if (river_h <= timeSlack_days) return arrives + table.landAfter_h[at]! / hours;
  const day = Math.floor(arrives + timeSlack_days);
  const used_h = Math.max(0, (arrives - day) * hours);
  let ashore = arrives + river_h / hours;
  if (used_h + river_h > riverHours + timeSlack_days) {
    if (!(river_h < Number.POSITIVE_INFINITY && riverHours > timeSlack_days)) return Number.POSITIVE_INFINITY;
    const morning = used_h > timeSlack_days ? day + 1 : day;
    const more = Math.ceil(river_h / riverHours - timeSlack_days) - 1;
    ashore = morning + more + (river_h - more * riverHours) / hours;
  }
  return ashore + table.landAfter_h[at]! / hours;
}
