// long: one price of a place, guessed or tried, and the sums it is made of
import { loadSlack_kg } from '../constants.ts';
import type { CrewLegs, OneCrew } from './crewNumbers.ts';
import { ofStop, ofTrip, stopFields, tripFields } from './crewSlots.ts';
import { TimedCrews, timeSlack_days } from './timedCrews.ts';

/** A place that only uses up what is left of a trip's last day costs this share of it: the next job finds it gone. Ours: docs/decisions/0412. */
const restOfDay_ratio = 0.2;

/**
 * Crews with trips, and the weight of those who wait: the sum of weight × first day of service. A place for a job is priced by what the
 * job itself waits and by how much all behind it are delayed, in steps of whole days from trip to trip; the exact times decide.
 */
export class CrewsByWaiting extends TimedCrews {
  private pricedCrew = -1;
  private pricedTrip = 0;
  private pricedPlace = 0;
  private pricedIsNew = false;
  private blinkIn = -1;
  /** Days to where a stop's delay ends, left over by the stops a delay went through. */
  private passed = 0;
  /** 1 for a crew whose days, ways and work are the same on every day, and which waits for nobody: set by who knows. */
  protected readonly steady: Uint8Array = new Uint8Array(this.crews);

  /** The working day from which what a job needs is there; 0: now. */
  protected stockedFrom(_one: OneCrew, _crew: number, _job: number, _day: number): number {
    return 0;
  }

  cost(): number {
    let sum = this.outCost;
    for (let crew = 0; crew < this.crews; crew++) sum += this.slotCost[this.slotOf[crew]!]!;
    return sum;
  }

  insertPriced(job: number): void {
    this.insertAt(job, this.pricedCrew, this.pricedTrip, this.pricedPlace, this.pricedIsNew);
  }

  orderKey(order: string): Float64Array | null {
    const { weight, days, nodeOf, byCrew, nodes, windowAt, windowFrom } = this.numbers;
    const [one] = byCrew;
    const far = (job: number) => (one ? one.legs[0]!.onward[one.store * nodes + nodeOf[job]!]! : 0);
    const by: Readonly<Record<string, (job: number) => number>> = {
      people: (job) => -weight[job]!,
      peopleByDay: (job) => -weight[job]! / Math.max(days[job]!, 1e-6),
      far: (job) => -far(job),
      close: far,
      opensEarly: (job) => (windowAt[job] === windowAt[job + 1] ? 0 : windowFrom[windowAt[job]!]!),
    };
    const key = by[order];
    if (order !== 'random' && key === undefined) throw new Error(`no order ${order}`);
    return key === undefined ? null : Float64Array.from(this.tripOf, (_, job) => (job === 0 ? 0 : key(job)));
  }

  // long: the innermost loop of the search
  price(job: number): number {
    const { tried_fraction } = this.numbers;
    if (tried_fraction > 0 && (tried_fraction === 1 || this.draws.fraction() < tried_fraction))
      return this.tryPlaces(job);
    const { numbers, tripsOf, stops } = this;
    const { nodeOf, nodes, wholeDays, periodFrom } = numbers;
    const weight = numbers.weight[job]!;
    const ownKg = numbers.kg[job]!;
    const ownLitres = numbers.litres[job]!;
    const isOpen = numbers.windowAt[job] === numbers.windowAt[job + 1];
    const isPlain = isOpen && (numbers.value === null || numbers.isPlain[job] === 1);
    const row = nodeOf[job]! * nodes;
    let best = Number.POSITIVE_INFINITY;
    this.pricedCrew = -1;
    if (this.blinkIn < 0) this.blinkIn = this.draws.missed(this.blink);
    for (let crew = 0; crew < this.crews; crew++) {
      const one = numbers.byCrew[crew]!;
      if (one.may[job] === 0) continue;
      const slot = this.slotOf[crew]!;
      const zero = slot * this.tripRoom * tripFields;
      const stopZero = slot * this.stopRoom * stopFields;
      const trips = this.tripsIn[slot]!;
      const end = zero + trips * tripFields;
      const { store, base, legs, dayOf, mostAway, turnaround } = one;
      const isIdle = this.slotIdle[slot] === 1;
      const lastDay = dayOf.length - 1;
      const mostKg = one.limitKg - ownKg + 1e-6;
      const mostLitres = one.limitLitres - ownLitres + 1e-6;
      let period = 0;
      let { inward, onward } = legs[0]!;
      let there = inward[row + store]!;
      let home = onward[row + base]!;
      const fetch = store === base ? 0 : onward[base * nodes + store]!;
      let work = numbers.days[job]! * one.pace;
      // Where nothing depends on the day, a new trip takes as long whenever it goes.
      const isSteady = isPlain && !isIdle && this.steady[crew] === 1;
      const newEnd = Math.ceil(fetch + there + work - timeSlack_days) - 1;
      const newDelay = Math.ceil(fetch + there + work + home + turnaround - timeSlack_days);
      const newNights = Math.ceil(fetch + there + work + home - timeSlack_days) - 1;
      const mayBeNew = trips < numbers.mostTrips && !isSteady;
      if (isSteady && trips < numbers.mostTrips && newNights <= mostAway)
        best = this.priceNewTrips(crew, slot, weight, newEnd, newDelay, best);
      for (let t = zero + this.firstFree[crew]! * tripFields; t <= end; t += tripFields) {
        const start = t < end ? tripsOf[t + ofTrip.ready]! : this.readyEnd[slot]!;
        let day = start;
        let opens = 0;
        if (!isSteady) {
          if (wholeDays) day = dayOf[Math.min(start, lastDay)]!;
          if (legs.length > 1) {
            let now = period;
            while (now + 1 < legs.length && periodFrom[now + 1]! <= day) now++;
            if (now !== period) {
              period = now;
              ({ inward, onward } = legs[period]!);
              there = inward[row + store]!;
              home = onward[row + base]!;
            }
          }
          if (one.learned !== null) work = numbers.days[job]! * one.pace * one.learned[tripsOf[t + ofTrip.first]!]!;
          // A way that is closed now: a new trip waits for the next period in which it is open.
          if (there === Number.POSITIVE_INFINITY) {
            const open = this.opensLater(one, crew, period, row + store);
            if (open < 0) continue;
            opens = this.periodAt[crew]![open]!;
            there = legs[open]!.inward[row + store]!;
            home = legs[open]!.onward[row + base]!;
          }
        }
        const least = fetch + there + work;
        // No later trip can be cheaper than its own first day.
        if (weight * (day + least - 1) >= best) break;
        // A new trip before this one.
        if (mayBeNew && there < Number.POSITIVE_INFINITY) {
          let leave = Math.max(opens, start);
          // Were its goods there and its windows open: mostly too dear even then.
          const soonest = leave + least;
          const soonBack = soonest + home + turnaround;
          const soonDelay = (wholeDays ? Math.ceil(soonBack - timeSlack_days) : soonBack) - start;
          let soonPrice = weight * (wholeDays ? this.endDay(dayOf, lastDay, soonest) : soonest);
          if (soonPrice < best) soonPrice += this.delayBySlopes(t, soonDelay);
          const stocked = soonPrice < best ? this.stockedFrom(one, crew, job, day) : Number.POSITIVE_INFINITY;
          if (stocked > leave) leave = stocked;
          let done = leave + least;
          if (!isOpen && done < Number.POSITIVE_INFINITY) done = this.endOfWork(one, job, done - work, work);
          if (done < Number.POSITIVE_INFINITY) {
            const dayHome = done + home;
            const delay = wholeDays
              ? Math.ceil(dayHome + turnaround - timeSlack_days) - start
              : dayHome + turnaround - start;
            let price = isPlain
              ? weight * (wholeDays ? this.endDay(dayOf, lastDay, done) : done)
              : this.worthOf(job, one, done);
            if (price < best) {
              price += this.delayBySlopes(t, delay);
              if (
                price < best &&
                this.nightsOf(one, leave, dayHome) <= mostAway &&
                (!one.hasNarrowLegs || this.fitsLeg(one, legs[period]!, job))
              ) {
                if (this.blinkIn-- > 0) {
                  best = price;
                  this.pricedCrew = crew;
                  this.pricedTrip = (t - zero) / tripFields;
                  this.pricedPlace = tripsOf[t + ofTrip.first]!;
                  this.pricedIsNew = true;
                } else this.blinkIn = this.draws.missed(this.blink);
              }
            }
          }
        }
        if (opens > 0) {
          there = Number.POSITIVE_INFINITY;
          continue;
        }
        if (t === end || tripsOf[t + ofTrip.kg]! > mostKg || tripsOf[t + ofTrip.litres]! > mostLitres) continue;
        const leave = tripsOf[t + ofTrip.leaves]!;
        const behind = tripsOf[t + tripFields + ofTrip.later]!;
        const backNow = leave + tripsOf[t + ofTrip.back]!;
        const wholeBack = wholeDays ? Math.ceil(backNow - timeSlack_days) : backNow;
        const sure = work - (wholeBack - backNow);
        const leaveDay = wholeDays ? dayOf[Math.min(leave, lastDay)]! : leave;
        let least2 = weight * (leaveDay + least - 1);
        if (sure > 0) {
          const days = wholeDays ? Math.ceil(sure - timeSlack_days) : sure;
          least2 += this.delayBySlopes(t + tripFields, days);
        }
        if (least2 >= best) continue;
        const from = stopZero + tripsOf[t + ofTrip.first]! * stopFields;
        const to = stopZero + tripsOf[t + tripFields + ofTrip.first]! * stopFields;
        const held = this.stockedFrom(one, crew, job, day) - leave;
        let heldCost = 0;
        if (held > 0) {
          heldCost = held * (tripsOf[t + ofTrip.later]! - behind);
          if (least2 + heldCost >= best || held === Number.POSITIVE_INFINITY) continue;
        }
        const isTight = tripsOf[t + ofTrip.hasWindows] === 1;
        let left = leave + fetch;
        let came = there;
        for (let stop = from; stop <= to; stop += stopFields) {
          if (stop > from) {
            left = leave + stops[stop - stopFields + ofStop.ends]!;
            came = inward[row + nodeOf[stops[stop - stopFields]!]!]!;
          }
          let done = left + came + work;
          if (!isOpen) done = this.endOfWork(one, job, left + came, work);
          const own = held > 0 ? done + held : done;
          let price = isPlain
            ? weight * (wholeDays ? this.endDay(dayOf, lastDay, own) : own)
            : this.worthOf(job, one, own);
          price += heldCost;
          if (price >= best) break;
          let delay: number;
          if (stop < to) {
            delay = done + onward[row + nodeOf[stops[stop]!]!]! - leave - stops[stop + ofStop.comes]!;
            if (isTight) {
              price += this.delayInTrip(one, leave, stop, to, delay);
              delay = this.passed;
            } else price += delay * stops[stop + ofStop.slope]!;
          } else delay = done + home - backNow;
          if (!(price < best)) continue;
          let later = 0;
          if (wholeDays) {
            const last = Math.ceil(backNow + delay - timeSlack_days) - 1;
            if (dayOf[Math.min(last, lastDay)]! - leaveDay > mostAway) {
              later = this.heldFor(one, leave, last);
              if (later < 0) continue;
              price += later * (tripsOf[t + ofTrip.later]! - behind + weight * one.stretch);
            }
            const more = last + 1 - wholeBack + Math.max(held, 0) + later;
            price += isIdle
              ? this.delayBySlopes(t + tripFields, more)
              : (more + restOfDay_ratio * (delay + Math.max(held, 0) + later - more)) * behind;
          } else price += delay * behind;
          if (price < best) {
            if (this.blinkIn-- > 0) {
              if (one.hasNarrowLegs && !this.legsHold(one, legs[period]!, t, from, stop, to, job)) continue;
              if (
                !one.isEveryDay &&
                this.isTooLongWith(one, crew, t, stop, job, leave + later, backNow + delay + later)
              )
                continue;
              best = price;
              this.pricedCrew = crew;
              this.pricedTrip = (t - zero) / tripFields;
              this.pricedPlace = (stop - stopZero) / stopFields;
              this.pricedIsNew = false;
            } else this.blinkIn = this.draws.missed(this.blink);
          }
        }
      }
    }
    return best;
  }

  /** Prices a trip of its own at every place of a crew whose days are all alike, and gives the least of these and of what was found before. */
  private priceNewTrips(
    crew: number,
    slot: number,
    weight: number,
    newEnd: number,
    newDelay: number,
    found: number,
  ): number {
    const { tripsOf } = this;
    const zero = slot * this.tripRoom * tripFields;
    const end = zero + this.tripsIn[slot]! * tripFields;
    let best = found;
    let place = -1;
    for (let t = zero + this.firstFree[crew]! * tripFields; t <= end; t += tripFields) {
      const own = weight * (tripsOf[t + ofTrip.ready]! + newEnd);
      if (own >= best) break;
      const price = own + newDelay * tripsOf[t + ofTrip.later]!;
      if (price >= best) continue;
      if (this.blinkIn-- > 0) {
        best = price;
        place = t;
      } else this.blinkIn = this.draws.missed(this.blink);
    }
    if (place < 0) return best;
    this.pricedCrew = crew;
    this.pricedTrip = (place - zero) / tripFields;
    this.pricedPlace = tripsOf[place + ofTrip.first]!;
    this.pricedIsNew = true;
    return best;
  }

  /** The first later period in which the way from a store, as `inward` has it, is open; -1: none. */
  private opensLater({ legs }: OneCrew, crew: number, period: number, at: number): number {
    for (let later = period + 1; later < legs.length; later++)
      if (legs[later]!.inward[at]! < Number.POSITIVE_INFINITY && this.periodAt[crew]![later]! >= 0) return later;
    return -1;
  }

  /** Prices every place by putting the job there: for few jobs, where guesses cost more than they save. */
  private tryPlaces(job: number): number {
    const { numbers, tripsOf } = this;
    const without = this.cost();
    let best = without;
    this.pricedCrew = -1;
    if (this.blinkIn < 0) this.blinkIn = this.draws.missed(this.blink);
    for (let crew = 0; crew < this.crews; crew++) {
      const one = numbers.byCrew[crew]!;
      if (one.may[job] === 0) continue;
      this.keepAside(crew);
      const slot = this.slotOf[crew]!;
      const [ready, cost, idle] = [this.readyEnd[slot]!, this.slotCost[slot]!, this.slotIdle[slot]!];
      for (let index = this.firstFree[crew]!; index <= this.tripsIn[slot]!; index++) {
        const t = (slot * this.tripRoom + index) * tripFields;
        const from = tripsOf[t + ofTrip.first]!;
        const isLast = index === this.tripsIn[slot];
        const fits =
          !isLast &&
          tripsOf[t + ofTrip.kg]! + numbers.kg[job]! <= one.limitKg + loadSlack_kg &&
          tripsOf[t + ofTrip.litres]! + numbers.litres[job]! <= one.limitLitres + loadSlack_kg;
        const to = fits ? tripsOf[t + tripFields + ofTrip.first]! : from - 1;
        const mayBeNew = this.tripsIn[slot]! < numbers.mostTrips ? 1 : 0;
        for (let place = from - mayBeNew; place <= to; place++) {
          const isNew = place < from;
          this.insertAt(job, crew, index, isNew ? from : place, isNew);
          const price = this.cost();
          this.takeBack(job, crew, isNew);
          this.readyEnd[slot] = ready;
          this.slotCost[slot] = cost;
          this.slotIdle[slot] = idle;
          if (price >= best) continue;
          if (this.blinkIn-- > 0) {
            best = price;
            this.pricedCrew = crew;
            this.pricedTrip = index;
            this.pricedPlace = isNew ? from : place;
            this.pricedIsNew = isNew;
          } else this.blinkIn = this.draws.missed(this.blink);
        }
      }
      this.summed(slot, slot * this.tripRoom * tripFields, this.tripsIn[slot]!);
    }
    return this.pricedCrew < 0 ? Number.POSITIVE_INFINITY : best - without + numbers.leftOut[job]!;
  }

  private endDay(dayOf: Int32Array, lastDay: number, end: number): number {
    const n = Math.ceil(end - timeSlack_days) - 1;
    return dayOf[Math.min(n, lastDay)]!;
  }

  private nightsOf(one: OneCrew, leave: number, back: number): number {
    return this.numbers.wholeDays ? this.dayOfEnd(one, back) - this.dayOfStart(one, leave) : 0;
  }

  /** What a delay costs the stops of a trip from one on, windows minded; `passed` is what is left of it on the way home. */
  private delayInTrip(one: OneCrew, leave: number, from: number, to: number, days: number): number {
    const { numbers, stops } = this;
    let delay = days;
    let cost = 0;
    for (let stop = from; stop < to && delay > timeSlack_days; stop += stopFields) {
      const job = stops[stop]!;
      if (numbers.windowAt[job] !== numbers.windowAt[job + 1]) {
        const done = this.endOfWork(
          one,
          job,
          leave + stops[stop + ofStop.comes]! + delay,
          numbers.days[job]! * one.pace,
        );
        if (done === Number.POSITIVE_INFINITY) {
          this.passed = done;
          return done;
        }
        delay = done - leave - stops[stop + ofStop.ends]!;
      }
      const rest = stop + stopFields < to ? stops[stop + stopFields + ofStop.slope]! : 0;
      cost += delay * (stops[stop + ofStop.slope]! - rest);
    }
    this.passed = delay;
    return cost;
  }

  /** Does the leg from the store to a job take what it needs? */
  private fitsLeg(one: OneCrew, { table }: CrewLegs, job: number): boolean {
    const { numbers } = this;
    const limit = table.limits[table.limitOf[one.store * numbers.nodes + numbers.nodeOf[job]!]!]!;
    return (
      numbers.kg[job]! <= limit.kg && numbers.litres[job]! <= limit.litres && numbers.longest[job]! <= limit.longest_m
    );
  }

  /** Does every leg from the store to the new stop, and those beside it, take what would be on board? */
  private legsHold(
    one: OneCrew,
    { table }: CrewLegs,
    t: number,
    from: number,
    place: number,
    to: number,
    job: number,
  ): boolean {
    const { numbers, stops, tripsOf } = this;
    let kg = tripsOf[t + ofTrip.kg]! + numbers.kg[job]!;
    let litres = tripsOf[t + ofTrip.litres]! + numbers.litres[job]!;
    let node = one.store;
    const holds = (next: number): boolean => {
      const limit = table.limits[table.limitOf[node * numbers.nodes + next]!]!;
      node = next;
      return kg <= limit.kg + 1e-6 && litres <= limit.litres + 1e-6;
    };
    for (let stop = from; stop <= place; stop += stopFields) {
      const next = stop === place ? job : stops[stop]!;
      if (!holds(numbers.nodeOf[next]!)) return false;
      kg -= numbers.kg[next]!;
      litres -= numbers.litres[next]!;
    }
    return place >= to || holds(numbers.nodeOf[stops[place]!]!);
  }
}
