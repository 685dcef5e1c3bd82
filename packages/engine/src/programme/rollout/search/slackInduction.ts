import { Annealing } from './annealing.ts';
import type { Draws } from './draws.ts';
import { out, type RouteState } from './routeState.ts';
import { type SearchBudget, triesBetweenPolls_count } from './searchBudget.ts';
import type { SearchRules } from './searchRules.ts';

/** What a search found; the state holds the best plan when it ends. */
export interface SearchFound {
  readonly best_amount: number;
  readonly tries_count: number;
  /** Jobs of the best plan that have no place in it. */
  readonly leftOut_count: number;
}

/**
 * Which plan costs least? Slack induction by string removals: out of trips beside each other, strings of jobs that follow each other are
 * taken, and put back one by one where each costs least; a worse plan is kept with a chance that falls as the budget is spent.
 * Jobs that are out at the start are put in first; a plan that is there already is gone on from.
 *
 * @param state - the plan; holds the best plan found at the end [count, amount]
 * @param rules - how the search goes about it [count, fraction, ratio]
 * @param budget - what may be spent [fraction]
 * @param draws - seeded; the state may draw from the same [number]
 * @returns cost of the best plan [unit of the state's cost], tries [count], jobs left out [count]
 * @law the same state, rules, seed and count of tries give the same plan
 * @source christiaens-vanden-berghe-2020, ruin and recreate (from memory)
 */
// long: the loop of the search and what it draws
export function slackInduction(state: RouteState, rules: SearchRules, budget: SearchBudget, draws: Draws): SearchFound {
  const { jobs, tripOf, tripSize, near, nearCount } = state;
  const wheel = orderWheel(state, rules);
  const taken = new Int32Array(jobs);
  let leftOut = new Int32Array(jobs);
  let leftOutNew = new Int32Array(jobs);
  let leftOutCount = 0;
  const tripHit = new Int32Array(tripSize.length).fill(-1);
  const hits = new Int32Array(tripSize.length);

  let count = 0;
  const putAllIn = () => {
    count = 0;
    leftOutCount = 0;
    for (let job = 1; job <= jobs; job++) if (tripOf[job] === out) taken[count++] = job;
    sortTaken(taken, count, null, draws);
    for (let i = 0; i < count; i++) {
      const job = taken[i]!;
      if (state.price(job) < Number.POSITIVE_INFINITY) state.insertPriced(job);
      else leftOut[leftOutCount++] = job;
    }
  };
  const takeAllOut = () => {
    for (let job = 1; job <= jobs; job++) if (tripOf[job]! >= 0) state.removeString(job, 1, 0, draws, taken, 0);
    state.removed();
  };
  state.begin();
  putAllIn();
  let movable = 0;
  const seeds = new Int32Array(jobs);
  for (let job = 1; job <= jobs; job++) if (tripOf[job]! >= out) seeds[movable++] = job;
  let current = state.cost();
  let best = current;
  let bestLeftOut = leftOutCount;
  state.saveBest();

  const annealing = new Annealing(rules, state.costScale(), jobs);
  // Of many jobs, seeds of some tries lie beside each other: what those tries read stays in the processor's own memory. Every job has its turn.
  const isLarge = jobs >= rules.seedsTogetherFrom_count;
  const around = isLarge ? Math.min(nearCount, rules.seedsAround_count) : 0;
  const together = isLarge ? rules.seedsTogether_count : 1;
  let middle = 0;
  let turn = 0;
  let tries = 0;
  let left = budget.left();
  while (left > 0 && movable > 0 && !budget.stopped()) {
    const turnOf = annealing.poll(1 - left, tries);
    if (turnOf !== 'on') {
      state.begin();
      if (turnOf === 'anew') {
        takeAllOut();
        putAllIn();
      } else {
        state.restoreBest();
        leftOutCount = 0;
        for (let job = 1; job <= jobs; job++) if (tripOf[job] === out) leftOut[leftOutCount++] = job;
      }
      current = state.cost();
    }
    current = state.repriced(current);
    const { temperature } = annealing;
    for (let poll = 0; poll < triesBetweenPolls_count; poll++) {
      state.begin();
      count = 0;
      for (let i = 0; i < leftOutCount; i++) taken[count++] = leftOut[i]!;

      const meanSize = state.meanTripSize();
      const longest = Math.max(1, Math.min(rules.longestString_count, meanSize));
      const mostTrips = (4 * rules.removed_count) / (1 + longest) - 1;
      const wanted = Math.max(1, Math.floor(1 + draws.fraction() * mostTrips));
      if (tries % together === 0) {
        if (turn === 0) sortTaken(seeds, movable, null, draws);
        middle = seeds[turn]!;
        turn = (turn + 1) % movable;
      }
      const seed = around > 0 ? near[middle * nearCount + draws.below(around)]! : middle;
      let hit = 0;
      for (let at = seed * nearCount - 1, end = at + nearCount, job = seed; ; job = near[at]!) {
        const trip = tripOf[job]!;
        if (trip >= 0 && tripHit[trip] !== tries) {
          tripHit[trip] = tries;
          hits[trip] = 0;
        }
        if (trip >= 0 && hits[trip]! < rules.stringsPerTrip_count) {
          hits[trip] = hits[trip]! + 1;
          const size = tripSize[trip]!;
          const length = Math.floor(1 + draws.fraction() * Math.min(size, longest));
          let passedOver = 0;
          if (length > 1 && length < size && draws.fraction() < rules.split_fraction) {
            passedOver = 1;
            while (length + passedOver < size && draws.fraction() < rules.splitDepth_fraction) passedOver++;
          }
          count = state.removeString(job, length, passedOver, draws, taken, count);
          if (++hit >= wanted) break;
        }
        if (++at > end) break;
      }
      state.removed();

      sortTaken(taken, count, wheel[draws.below(wheel.length)]!, draws);
      // Drawn before the jobs come back, so that a plan that is already too dear is given up before the rest of them are priced.
      const limit = current - temperature * Math.log(1 - draws.fraction());
      let outNow = 0;
      let i = 0;
      for (; i < count && state.atLeast() < limit; i++) {
        const job = taken[i]!;
        if (state.price(job) < Number.POSITIVE_INFINITY) state.insertPriced(job);
        else leftOutNew[outNow++] = job;
      }

      const cost = i < count ? Number.POSITIVE_INFINITY : state.cost();
      if (cost < limit) {
        current = cost;
        const before = leftOut;
        leftOut = leftOutNew;
        leftOutNew = before;
        leftOutCount = outNow;
        if (cost < best && state.holds()) {
          state.saveBest();
          current = state.cost();
          best = current;
          bestLeftOut = leftOutCount;
        }
      } else state.undo();
      if (rules.moves_count > 0) {
        current = state.moveWithin(temperature, rules.moves_count);
        if (current < best) {
          state.saveBest();
          best = current;
          bestLeftOut = leftOutCount;
        }
      }
      tries++;
    }
    left = budget.left();
    budget.report({ tries_count: tries, best_amount: best, left_fraction: Math.max(0, left) });
  }
  state.restoreBest();
  return { best_amount: state.cost(), tries_count: tries, leftOut_count: bestLeftOut };
}

/** Orders as often as their weights say, so that one draw picks one. */
function orderWheel(state: RouteState, rules: SearchRules): readonly (Float64Array | null)[] {
  return rules.orders.flatMap(({ by, weight_count }) => {
    const key = state.orderKey(by);
    return Array.from({ length: weight_count }, () => key);
  });
}

/** Brings jobs into an order: by their key, or by lot. */
function sortTaken(taken: Int32Array, count: number, key: Float64Array | null, draws: Draws): void {
  if (key === null) {
    for (let i = count - 1; i > 0; i--) {
      const j = draws.below(i + 1);
      const job = taken[i]!;
      taken[i] = taken[j]!;
      taken[j] = job;
    }
    return;
  }
  for (let i = 1; i < count; i++) {
    const job = taken[i]!;
    const own = key[job]!;
    let j = i - 1;
    while (j >= 0 && key[taken[j]!]! > own) {
      taken[j + 1] = taken[j]!;
      j--;
    }
    taken[j + 1] = job;
  }
}
