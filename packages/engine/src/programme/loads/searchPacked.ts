import { binBounds, hair_factor } from '../../parts/index.ts';
import { deadEnds_count, fewPieces_count } from './constants.ts';
import { type PackCase, roomsOf } from './packCase.ts';

/** What came of looking for so many loads. */
export interface Tried {
  /** Of each load, how many of each kind; null where none was found. */
  readonly byLoad_count: number[][] | null;
  /** Every way was looked at, and there is none. */
  readonly isDisproved: boolean;
  readonly steps_count: number;
}

/** Looks for a way of putting everything into so many loads: one load after the other, each with the largest piece that is left and all that still fits. */
export function searchPacked(all: PackCase, loads_count: number, mostSteps_count: number): Tried {
  const search = new Search(all, loads_count, mostSteps_count);
  const isFound = search.nextLoad(0);
  return {
    byLoad_count: isFound ? search.loads : null,
    isDisproved: !isFound && !search.isGivenUp,
    steps_count: search.steps_count,
  };
}

class Search {
  steps_count = 0;
  isGivenUp = false;
  readonly loads: number[][] = [];
  readonly #all: PackCase;
  readonly #loads_count: number;
  readonly #mostSteps_count: number;
  readonly #room_kg: number;
  readonly #room_L: number;
  readonly #left: number[];
  /** Of each kind, the others it never meets. */
  readonly #apart: readonly (readonly number[])[];
  readonly #isSmall: boolean;
  /** What may stay empty in all. */
  #slack_kg: number;
  #slack_L: number;
  readonly #deadEnds = new Set<string>();

  constructor(all: PackCase, loads_count: number, mostSteps_count: number) {
    this.#all = all;
    this.#loads_count = loads_count;
    this.#mostSteps_count = mostSteps_count;
    const rooms = roomsOf(all);
    this.#room_kg = rooms.room_kg;
    this.#room_L = rooms.room_L;
    this.#left = all.kinds.map(({ count }) => count);
    this.#apart = all.apart.map((row) => row.flatMap((isApart, other) => (isApart ? [other] : [])));
    this.#isSmall = this.#left.reduce((sum, count) => sum + count, 0) <= fewPieces_count;
    // By one room's hair too much: what is left of loads that are filled exactly adds up with other last bits.
    this.#slack_kg = (loads_count + hair_factor) * this.#room_kg - total(all, 'mass_kg');
    this.#slack_L =
      this.#room_L === Number.POSITIVE_INFINITY
        ? this.#room_L
        : (loads_count + hair_factor) * this.#room_L - total(all, 'bulk_L');
  }

  nextLoad(done_count: number): boolean {
    const first = this.#left.findIndex((count) => count > 0);
    if (first < 0) return true;
    if (done_count === this.#loads_count || this.#slack_kg < 0 || this.#slack_L < 0) return false;
    const key = `${done_count}:${this.#left.join()}`;
    if (this.#deadEnds.has(key) || this.#needsMore(this.#loads_count - done_count)) return false;
    const counts = new Array<number>(this.#left.length).fill(0);
    this.loads.push(counts);
    const open: OpenLoad = {
      counts,
      left_kg: this.#room_kg,
      left_L: this.#room_L,
      after_kg: this.#sumsAfter('mass_kg'),
      after_L: this.#sumsAfter('bulk_L'),
      done_count,
    };
    this.#put(open, first, 1);
    if (this.#fill(open, first)) return true;
    this.#left[first]! += 1;
    this.loads.pop();
    if (!this.isGivenUp && this.#deadEnds.size < deadEnds_count) this.#deadEnds.add(key);
    return false;
  }

  /** Fills the load with kinds from here on, and goes on to the next; false where nothing comes of it. */
  #fill(open: OpenLoad, from: number): boolean {
    for (let kind = from; kind < this.#left.length; kind++) {
      if (this.#left[kind] === 0) continue;
      if (this.#spent()) return false;
      if (open.left_kg - open.after_kg[kind]! > this.#slack_kg) return false;
      if (open.left_L - open.after_L[kind]! > this.#slack_L) return false;
      const most = this.#mostOf(open, kind);
      const { left_kg, left_L } = open;
      for (let count = most; count > 0; count--) {
        this.#put(open, kind, count);
        if (this.#fill(open, kind + 1)) return true;
        if (this.isGivenUp) return false;
        this.#put(open, kind, -count);
        // As it was to the last bit: what is taken off and put on again a million times drifts.
        open.left_kg = left_kg;
        open.left_L = left_L;
      }
    }
    return this.#close(open);
  }

  /** Leaves a load that takes nothing more as it is: one that does is never better. */
  #close(open: OpenLoad): boolean {
    for (let kind = 0; kind < this.#left.length; kind++) if (this.#mostOf(open, kind) > 0) return false;
    const { left_kg, left_L } = open;
    const [slack_kg, slack_L] = [this.#slack_kg, this.#slack_L];
    if (left_kg > slack_kg || left_L > slack_L) return false;
    this.#slack_kg = slack_kg - left_kg;
    if (slack_L !== Number.POSITIVE_INFINITY) this.#slack_L = slack_L - left_L;
    if (this.nextLoad(open.done_count + 1)) return true;
    this.#slack_kg = slack_kg;
    this.#slack_L = slack_L;
    return false;
  }

  #put(open: OpenLoad, kind: number, count: number): void {
    open.counts[kind]! += count;
    this.#left[kind]! -= count;
    open.left_kg -= count * this.#all.kinds[kind]!.mass_kg;
    open.left_L -= count * this.#all.kinds[kind]!.bulk_L;
  }

  /** How many more of a kind the load takes. */
  #mostOf({ counts, left_kg, left_L }: OpenLoad, index: number): number {
    const left = this.#left[index]!;
    if (left === 0) return 0;
    const { mass_kg, bulk_L } = this.#all.kinds[index]!;
    if (mass_kg > left_kg || bulk_L > left_L) return 0;
    for (const other of this.#apart[index]!) if (counts[other]! > 0) return 0;
    const byMass = mass_kg > 0 ? Math.floor(left_kg / mass_kg) : left;
    const byBulk = bulk_L > 0 ? Math.floor(left_L / bulk_L) : left;
    const most = Math.min(left, byMass, byBulk);
    return this.#all.apart[index]![index] ? Math.min(1, most) : most;
  }

  /** Mass or bulk of what is left from each kind on. */
  #sumsAfter(of: 'mass_kg' | 'bulk_L'): Float64Array {
    const sums = new Float64Array(this.#left.length + 1);
    for (let kind = this.#left.length - 1; kind >= 0; kind--)
      sums[kind] = sums[kind + 1]! + this.#left[kind]! * this.#all.kinds[kind]![of];
    return sums;
  }

  /** Do the pieces that are left want more loads than are left? Asked where they are few. */
  #needsMore(loads_count: number): boolean {
    if (!this.#isSmall) return false;
    const sizes = this.#all.kinds.flatMap(({ mass_kg }, kind) => new Array<number>(this.#left[kind]!).fill(mass_kg));
    this.steps_count += sizes.length;
    return (binBounds(sizes, this.#all.room_kg)?.byLarge_count ?? 0) > loads_count;
  }

  #spent(): boolean {
    this.steps_count++;
    if (this.steps_count > this.#mostSteps_count) this.isGivenUp = true;
    return this.isGivenUp;
  }
}

interface OpenLoad {
  readonly counts: number[];
  left_kg: number;
  left_L: number;
  /** What was left, from each kind on, when the load was begun. */
  readonly after_kg: Float64Array;
  readonly after_L: Float64Array;
  readonly done_count: number;
}

function total({ kinds }: PackCase, of: 'mass_kg' | 'bulk_L'): number {
  return kinds.reduce((sum, kind) => sum + kind.count * kind[of], 0);
}
