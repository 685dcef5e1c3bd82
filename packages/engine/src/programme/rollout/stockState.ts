import { timeSlack_days } from './constants.ts';
import type { Store } from './problem.ts';

/** Goods at one store: what comes of each, in order of day. */
export interface StockState {
  readonly day: Float64Array;
  readonly total: Float64Array;
  readonly arrival: Int32Array;
  asked: number;
  at: number;
  tried: number;
}

/** What comes to a store of one of the goods. */
export function stockState({ arrivals }: Store, goods: number): StockState {
  const own = arrivals.map((_, at) => at).filter((at) => arrivals[at]!.goods === goods);
  const size = own.length;
  const state: StockState = {
    day: new Float64Array(size),
    total: new Float64Array(size),
    arrival: Int32Array.from(own),
    asked: 0,
    at: 0,
    tried: 0,
  };
  arriveLate(state, arrivals, null);
  return state;
}

/** Writes when how much has come, each arrival so many days late; null: as late as is likely. */
export function arriveLate(state: StockState, arrivals: Store['arrivals'], slip_days: Float64Array | null): void {
  const { day, total, arrival } = state;
  const dueOn = (at: number) => {
    const late = slip_days === null ? arrivals[at]!.slip_days.likely : slip_days[at]!;
    return Math.ceil(arrivals[at]!.day + late - timeSlack_days);
  };
  for (let place = 0; place < arrival.length; place++) {
    const own = arrival[place]!;
    const due = dueOn(own);
    let to = place;
    for (; to > 0 && day[to - 1]! > due; to--) {
      day[to] = day[to - 1]!;
      arrival[to] = arrival[to - 1]!;
    }
    day[to] = due;
    arrival[to] = own;
  }
  let sum = 0;
  for (let place = 0; place < arrival.length; place++) {
    sum += arrivals[arrival[place]!]!.quantity_count;
    total[place] = sum;
  }
}
