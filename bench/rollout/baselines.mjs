import { Draws } from '../../packages/engine/dist/programme/rollout/search/draws.js';
import { loadRules } from '../../packages/engine/dist/programme/rollout/search/searchRules.js';
import { slackInduction } from '../../packages/engine/dist/programme/rollout/search/slackInduction.js';
import { TripsByLoad } from '../../packages/engine/dist/programme/rollout/search/tripsByLoad.js';

/**
 * Plans as they are made without a planner, for programmes in which all crews are alike. Trips hold no more than a boat takes and are
 * home within the days away, with a day to spare. Each trip goes to the crew that is free first.
 */
export const baselines = {
  'nearest first': (problem) => byRule(problem, (days, at, open) => least(open, (job) => days(at, job + 1))),
  'biggest first': (problem) => byRule(problem, (_days, _at, open) => least(open, (job) => -problem.jobs[job].people)),
  'shortest-travel trips, nearest first': (problem) => {
    const days = daysBetween(problem);
    return inTurn(
      problem,
      sorted(shortestTrips(problem), (trip) => Math.min(...trip.map((job) => days(0, job + 1)))),
    );
  },
  'shortest-travel trips, people per day': (problem) => {
    const people = (trip) => trip.reduce((sum, job) => sum + problem.jobs[job].people, 0);
    return inTurn(
      problem,
      sorted(shortestTrips(problem), (trip) => -people(trip) / tripDays(problem, trip)),
    );
  },
};

/** Days of travel between nodes, the store 0. */
function daysBetween({ travels, crews }) {
  const [{ nodes, byPeriod }] = travels;
  const { landBefore_h, river_h, landAfter_h } = byPeriod[0];
  return (from, to) => {
    const at = from * nodes + to;
    return (landBefore_h[at] + river_h[at] + landAfter_h[at]) / crews[0].work_h_per_day;
  };
}

function tripDays(problem, trip) {
  const days = daysBetween(problem);
  let sum = 0;
  let at = 0;
  for (const job of trip) {
    sum += days(at, job + 1) + problem.jobs[job].install_days.likely;
    at = job + 1;
  }
  return sum + days(at, 0);
}

function fits(problem, trip) {
  const kg = trip.reduce((sum, job) => sum + problem.jobs[job].kg, 0);
  return kg <= problem.crews[0].limit_kg && tripDays(problem, trip) <= problem.crews[0].mostDaysAway - 1;
}

/** Each trip is filled with the site the rule names next, as long as any that is left still fits. */
function byRule(problem, next) {
  const days = daysBetween(problem);
  const open = new Set(problem.jobs.keys());
  const trips = [];
  while (open.size > 0) {
    const trip = [];
    for (;;) {
      const may = [...open].filter((job) => trip.length === 0 || fits(problem, [...trip, job]));
      if (may.length === 0) break;
      const job = next(days, trip.length === 0 ? 0 : trip.at(-1) + 1, may);
      trip.push(job);
      open.delete(job);
    }
    trips.push(trip);
  }
  return inTurn(problem, trips);
}

/** Trips of the least travel by load alone, cut where they are away too long. */
function shortestTrips(problem) {
  const days = daysBetween(problem);
  const width = problem.jobs.length + 1;
  const cost_ratio = Float64Array.from({ length: width * width }, (_, at) => {
    const [from, to] = [Math.floor(at / width), at % width];
    return (days(from, to) + days(to, from)) / 2;
  });
  const demand_amount = Int32Array.from([0, ...problem.jobs.map(({ kg }) => kg)]);
  const draws = new Draws(1);
  const facts = { cost_ratio, demand_amount, capacity_amount: problem.crews[0].limit_kg };
  const state = new TripsByLoad(facts, loadRules.blink_fraction, draws);
  const from = process.cpuUsage();
  const left = () => 1 - process.cpuUsage(from).user / 4e6;
  slackInduction(state, loadRules, { left, report: () => {}, stopped: () => false }, draws);
  return state.trips().flatMap((stops) => {
    const cut = [[]];
    for (const job of stops.map((stop) => stop - 1)) {
      if (cut.at(-1).length > 0 && !fits(problem, [...cut.at(-1), job])) cut.push([]);
      cut.at(-1).push(job);
    }
    return cut;
  });
}

/** Trips in this order, each to the crew that is free first. */
function inTurn(problem, trips) {
  const free = problem.crews.map(() => 0);
  const plan = problem.crews.map(() => []);
  for (const stops of trips) {
    const crew = free.indexOf(Math.min(...free));
    plan[crew].push({ stops, notBefore: 0, isLocked: false });
    free[crew] = Math.ceil(free[crew] + tripDays(problem, stops) + problem.crews[crew].turnaround_days);
  }
  return { trips: plan };
}

function least(list, key) {
  return list.reduce((best, one) => (key(one) < key(best) ? one : best));
}

function sorted(list, key) {
  return [...list].sort((a, b) => key(a) - key(b));
}
