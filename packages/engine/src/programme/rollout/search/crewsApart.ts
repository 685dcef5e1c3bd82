import { loadSlack_kg } from '../constants.ts';
import type { CrewNumbers, OneCrew } from './crewNumbers.ts';
import { ofStop, ofTrip, stopFields, tripFields } from './crewSlots.ts';
import { CrewsByWaiting } from './crewsByWaiting.ts';
import type { Draws } from './draws.ts';

/** Changes that save less are none: they would be taken back and forth. */
const leastSaving_amount = 1e-6;

/**
 * Crews that share nothing. Beside jobs, whole trips go elsewhere: one to another crew, two in each other's place, or all that two crews do
 * from some trip on. What that saves is a few products of days and weights, so that all of it is looked at for a trip; the exact times decide.
 */
export class CrewsApart extends CrewsByWaiting {
  private readonly alike: Uint8Array = alikeCrews(this.numbers.byCrew);
  /** The change found: trips from and up to, of one crew and of another. */
  private readonly one = { crew: 0, from: 0, to: 0 };
  private readonly other = { crew: 0, from: 0, to: 0 };
  private saving = 0;

  constructor(numbers: CrewNumbers, blink: number, draws: Draws) {
    super(numbers, blink, draws);
    numbers.byCrew.forEach(({ isEveryDay, legs, learned, hasNarrowLegs }, crew) => {
      const isSteady = numbers.wholeDays && isEveryDay && legs.length === 1 && learned === null && !hasNarrowLegs;
      this.steady[crew] = isSteady ? 1 : 0;
    });
  }

  override moveWithin(_temperature: number, moves_count: number): number {
    let cost = this.cost();
    for (let move = 0; move < moves_count; move++) {
      const crew = this.draws.below(this.crews);
      const first = this.firstFree[crew]!;
      const trips = this.tripsIn[this.slotOf[crew]!]! - first;
      if (trips <= 0) continue;
      this.saving = leastSaving_amount;
      this.lookAt(crew, first + this.draws.below(trips));
      if (this.saving > leastSaving_amount) cost = this.changed(cost);
    }
    return cost;
  }

  /** What can be saved with this trip? */
  private lookAt(crew: number, index: number): void {
    const { tripsOf } = this;
    const slot = this.slotOf[crew]!;
    const t = (slot * this.tripRoom + index) * tripFields;
    const isLast = index + 1 === this.tripsIn[slot]!;
    const start = tripsOf[t + ofTrip.ready]!;
    const after = isLast ? this.readyEnd[slot]! : tripsOf[t + tripFields + ofTrip.ready]!;
    const days = after - start;
    const tail = tripsOf[t + ofTrip.later]!;
    const behind = tripsOf[t + tripFields + ofTrip.later]!;
    const own = tail - behind;
    const day = this.dayAt(crew, start);
    for (let other = 0; other < this.crews; other++) {
      if (other === crew) continue;
      const otherSlot = this.slotOf[other]!;
      const count = this.tripsIn[otherSlot]!;
      let ready = 0;
      let at = (otherSlot * this.tripRoom + this.firstFree[other]!) * tripFields;
      for (let j = this.firstFree[other]!; j <= count; j++, at += tripFields) {
        const later = tripsOf[at + ofTrip.later]!;
        ready = j < count ? tripsOf[at + ofTrip.ready]! : this.readyEnd[otherSlot]!;
        const moved = day - this.dayAt(other, ready);
        const all = moved * (tail - later);
        if (all > this.saving) this.offer(all, crew, index, -1, other, j, -1);
        const alone = moved * own + days * (behind - later);
        if (alone > this.saving) this.offer(alone, crew, index, index + 1, other, j, j);
        if (j === count) continue;
        const next = at + tripFields;
        const otherBehind = tripsOf[next + ofTrip.later]!;
        const otherDays = (j + 1 < count ? tripsOf[next + ofTrip.ready]! : this.readyEnd[otherSlot]!) - ready;
        const both = moved * (own - later + otherBehind) + (days - otherDays) * (behind - otherBehind);
        if (both > this.saving) this.offer(both, crew, index, index + 1, other, j, j + 1);
      }
    }
  }

  private dayAt(crew: number, time: number): number {
    if (!this.numbers.wholeDays) return time;
    const { dayOf, isEveryDay } = this.numbers.byCrew[crew]!;
    return isEveryDay ? time : dayOf[Math.min(time, dayOf.length - 1)]!;
  }

  private offer(
    saving: number,
    crew: number,
    from: number,
    to: number,
    other: number,
    otherFrom: number,
    otherTo: number,
  ): void {
    const end = to < 0 ? this.tripsIn[this.slotOf[crew]!]! : to;
    const otherEnd = otherTo < 0 ? this.tripsIn[this.slotOf[other]!]! : otherTo;
    if (this.alike[crew * this.crews + other] === 0)
      if (!this.canDo(other, crew, from, end) || !this.canDo(crew, other, otherFrom, otherEnd)) return;
    this.saving = saving;
    this.one.crew = crew;
    this.one.from = from;
    this.one.to = end;
    this.other.crew = other;
    this.other.from = otherFrom;
    this.other.to = otherEnd;
  }

  /** May a crew do these trips of another? */
  private canDo(crew: number, ofCrew: number, from: number, to: number): boolean {
    const { may, limitKg, limitLitres } = this.numbers.byCrew[crew]!;
    const { tripsOf, stops } = this;
    const slot = this.slotOf[ofCrew]!;
    for (let index = from; index < to; index++) {
      const t = (slot * this.tripRoom + index) * tripFields;
      if (tripsOf[t + ofTrip.kg]! > limitKg + loadSlack_kg) return false;
      if (tripsOf[t + ofTrip.litres]! > limitLitres + loadSlack_kg) return false;
      const end = tripsOf[t + tripFields + ofTrip.first]!;
      for (let place = tripsOf[t + ofTrip.first]!; place < end; place++)
        if (may[stops[(slot * this.stopRoom + place) * stopFields + ofStop.job]!] === 0) return false;
    }
    return true;
  }

  /** Makes the change found, and takes it back where it saves nothing. */
  private changed(cost: number): number {
    const { one, other } = this;
    this.begin();
    this.touch(one.crew);
    this.touch(other.crew);
    this.write(one, other);
    this.write(other, one);
    this.retime(one.crew, one.from);
    this.retime(other.crew, other.from);
    const now = this.cost();
    if (now < cost - leastSaving_amount) {
      this.begin();
      return now;
    }
    this.undo();
    this.owned(one.crew, one.from, one.to);
    this.owned(other.crew, other.from, other.to);
    return cost;
  }

  /** Writes a crew's trips with some of its own replaced by those of another, both as they were before. */
  private write(own: typeof this.one, from: typeof this.one): void {
    const { tripsOf, stops, tripRoom, stopRoom } = this;
    const slot = this.slotOf[own.crew]!;
    const old = slot ^ 1;
    const theirs = this.slotOf[from.crew]! ^ 1;
    const isAlike = this.alike[own.crew * this.crews + from.crew] === 1;
    const put = (source: number, begin: number, end: number, index: number, place: number): number => {
      const first = tripsOf[(source * tripRoom + begin) * tripFields + ofTrip.first]!;
      const last = tripsOf[(source * tripRoom + end) * tripFields + ofTrip.first]!;
      tripsOf.copyWithin(
        (slot * tripRoom + index) * tripFields,
        (source * tripRoom + begin) * tripFields,
        (source * tripRoom + end) * tripFields,
      );
      stops.copyWithin(
        (slot * stopRoom + place) * stopFields,
        (source * stopRoom + first) * stopFields,
        (source * stopRoom + last) * stopFields,
      );
      for (let i = index; i < index + end - begin; i++) {
        const t = (slot * tripRoom + i) * tripFields;
        tripsOf[t + ofTrip.first] = tripsOf[t + ofTrip.first]! + place - first;
        this.crewOf[tripsOf[t + ofTrip.id]!] = own.crew;
        if (!isAlike) tripsOf[t + ofTrip.isStale] = 1;
      }
      return place + last - first;
    };
    const trips = this.tripsIn[old]!;
    let place = tripsOf[(old * tripRoom + own.from) * tripFields + ofTrip.first]!;
    let index = own.from;
    place = put(theirs, from.from, from.to, index, place);
    index += from.to - from.from;
    place = put(old, own.to, trips, index, place);
    index += trips - own.to;
    tripsOf[(slot * tripRoom + index) * tripFields + ofTrip.first] = place;
    this.tripsIn[slot] = index;
  }

  private owned(crew: number, from: number, to: number): void {
    const slot = this.slotOf[crew]!;
    for (let index = from; index < to; index++)
      this.crewOf[this.tripsOf[(slot * this.tripRoom + index) * tripFields + ofTrip.id]!] = crew;
  }
}

/** 1 at a × crews + b where a trip goes the same with crew a as with crew b but for their days of rest. */
function alikeCrews(byCrew: readonly OneCrew[]): Uint8Array {
  const crews = byCrew.length;
  const same = (a: OneCrew, b: OneCrew): boolean =>
    a.base === b.base &&
    a.store === b.store &&
    a.hours === b.hours &&
    a.riverHours === b.riverHours &&
    a.mostAway === b.mostAway &&
    a.pace === b.pace &&
    a.turnaround === b.turnaround &&
    a.limitKg === b.limitKg &&
    a.limitLitres === b.limitLitres &&
    a.longest === b.longest &&
    a.learned === null &&
    b.learned === null &&
    a.isEveryDay &&
    b.isEveryDay &&
    a.hasNarrowLegs === b.hasNarrowLegs &&
    a.legs.every(({ table }, period) => b.legs[period]?.table === table) &&
    a.may.every((one, job) => b.may[job] === one);
  return Uint8Array.from({ length: crews * crews }, (_, at) =>
    same(byCrew[Math.floor(at / crews)]!, byCrew[at % crews]!) ? 1 : 0,
  );
}
