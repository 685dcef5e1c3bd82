import { crewsTogether, setDrawn } from '../crewsTogether.ts';
import type { CrewTrips } from '../crewTrips.ts';
import { crewTripsOf } from '../crewTrips.ts';
import { retiming } from '../makeReady.ts';
import type { RolloutPlan, RolloutProblem } from '../problem.ts';
import type { Retiming } from '../retiming.ts';
import type { WeatherDrawn } from './areaWeather.ts';
import {
  mostReplicates_count,
  replicatesBetweenAsking_count,
  serviceBeyond_days,
  usualReplicates_count,
  week_days,
} from './constants.ts';
import { type Drawing, drawAll, type FinishAsked, readyDrawing, serviceOf } from './drawing.ts';
import { type Spans, spanRanks, spansOfCounts, spansOfSorted } from './ranks.ts';

/** A site's dates [day of the horizon]. */
export interface SiteFinish {
  readonly job: number;
  readonly handOver: Spans;
  /** First day of service. */
  readonly service: Spans;
  /** Share of replicates in which it is not handed over within the horizon; its days are the horizon in these. */
  readonly notDone_fraction: number;
}

/** People and sites that are served by the end of a week. */
export interface WeekServed {
  /** Its last day. */
  readonly untilDay: number;
  readonly people: Spans;
  readonly sites: Spans;
}

/** When the programme is done: the last hand-over of the sites in the plan. */
export interface ProgrammeFinish extends Spans {
  readonly mean_day: number;
  readonly sd_days: number;
  readonly notDone_fraction: number;
}

export interface FinishDates {
  readonly replicates_count: number;
  /** Were all replicates made that were asked for? */
  readonly isWhole: boolean;
  /** Sites that stand in the plan, by job. */
  readonly bySite: readonly SiteFinish[];
  readonly byWeek: readonly WeekServed[];
  readonly finish: ProgrammeFinish;
  /** The first day of service of the last of its sites; the horizon where one is not handed over within it. */
  readonly allServed: Spans;
  readonly cost: Spans;
  /** How the weather of each area was drawn. */
  readonly weatherBy: readonly WeatherDrawn[];
}

/**
 * When will it really be done? The same plan (same crews, trips and order; who is late is late, nobody plans anew) is timed some thousand times with what may turn out otherwise: install
 * days by site, a common pace by crew, legs, weather by area, lateness of goods, and the rain for which a site that is handed over waits.
 *
 * @param problem - the rollout as numbers [day, kg, L, person]
 * @param plan - the plan in force [count]
 * @param asked - seed, replicates [count], spreads, weather, budget
 * @returns P10, P50 and P90 by site, by week and of the programme [day], each with its own 95 % range of ranks; fewer replicates where the budget ended it
 * @law the same seed gives the same dates; each thing throws its own dice, so that the order of the lists changes nothing and the first replicates stay the same when more are asked for
 * @definition docs/methods/rollout.md, finish dates
 */
export function finishDates(problem: RolloutProblem, plan: RolloutPlan, asked: FinishAsked): FinishDates {
  const ready = retiming(problem);
  const tripsOf = problem.crews.map((_, crew) => crewTripsOf(plan.trips[crew] ?? []));
  const wanted = Math.floor(asked.replicates_count ?? usualReplicates_count);
  if (!(wanted >= 1)) throw new RangeError('finishDates: needs one replicate or more');
  const replicates_count = Math.min(mostReplicates_count, wanted);
  const drawing = readyDrawing(problem, asked);
  const tally = emptyTally(problem, tripsOf, replicates_count);
  const crews = tripsOf.map((_, crew) => crew);
  const { budget } = asked;
  let done = 0;
  setDrawn(ready, null);
  while (done < replicates_count) {
    drawAll(ready, drawing);
    crewsTogether(ready, crews, tripsOf);
    count(tally, ready, drawing, done++);
    if (budget === undefined || done % replicatesBetweenAsking_count > 0) continue;
    budget.report(done / replicates_count);
    if (budget.stopped() || budget.left() <= 0) break;
  }
  return datesOf(tally, problem, done, replicates_count, drawing.weather.drawnBy);
}

interface Tally {
  readonly jobs: Int32Array;
  readonly horizon_days: number;
  readonly serviceRow: number;
  /** Counts of replicates by day: `handOver[place * (horizon + 1) + day]`, `service[place * serviceRow + day]`. */
  readonly handOver: Uint16Array;
  readonly service: Uint16Array;
  readonly weeks: number;
  /** By week and replicate. */
  readonly people: Float64Array;
  readonly sites: Float64Array;
  /** Of the replicate being counted, by week. */
  readonly newPeople: Float64Array;
  readonly newSites: Float64Array;
  readonly finish: Float64Array;
  readonly allServed: Float64Array;
  readonly cost: Float64Array;
  readonly replicates: number;
  notDone: number;
}

function emptyTally({ horizon_days }: RolloutProblem, tripsOf: readonly CrewTrips[], replicates: number): Tally {
  const jobs = Int32Array.from(tripsOf.flatMap(({ stops }) => [...stops])).sort();
  const serviceRow = horizon_days + serviceBeyond_days + 1;
  const weeks = Math.ceil(serviceRow / week_days);
  return {
    ...{ jobs, horizon_days, serviceRow, weeks, replicates, notDone: 0 },
    handOver: new Uint16Array(jobs.length * (horizon_days + 1)),
    service: new Uint16Array(jobs.length * serviceRow),
    people: new Float64Array(weeks * replicates),
    sites: new Float64Array(weeks * replicates),
    newPeople: new Float64Array(weeks),
    newSites: new Float64Array(weeks),
    finish: new Float64Array(replicates),
    allServed: new Float64Array(replicates),
    cost: new Float64Array(replicates),
  };
}

/** Adds one replicate. */
function count(tally: Tally, ready: Retiming, drawing: Drawing, replicate: number): void {
  const { jobs, horizon_days, serviceRow, weeks, people, sites, replicates, newPeople, newSites } = tally;
  newPeople.fill(0);
  newSites.fill(0);
  let [last, lastServed] = [0, 0];
  let isDone = true;
  for (let place = 0; place < jobs.length; place++) {
    const job = jobs[place]!;
    const day = ready.handOver[job]!;
    const served = Math.min(serviceRow - 1, Math.max(0, Math.ceil(serviceOf(drawing, ready, job))));
    tally.handOver[place * (horizon_days + 1) + day]!++;
    tally.service[place * serviceRow + served]!++;
    if (day > last) last = day;
    if (served > lastServed) lastServed = served;
    if (day >= horizon_days) isDone = false;
    else {
      const week = Math.floor(served / week_days);
      newPeople[week]! += ready.people[job]!;
      newSites[week]!++;
    }
  }
  let [allPeople, allSites] = [0, 0];
  for (let week = 0; week < weeks; week++) {
    allPeople += newPeople[week]!;
    allSites += newSites[week]!;
    people[week * replicates + replicate] = allPeople;
    sites[week * replicates + replicate] = allSites;
  }
  tally.finish[replicate] = last;
  tally.allServed[replicate] = isDone ? lastServed : horizon_days;
  let cost = 0;
  for (let crew = 0; crew < ready.crewCost.length; crew++) cost += ready.crewCost[crew]!;
  tally.cost[replicate] = cost;
  if (!isDone) tally.notDone++;
}

function datesOf(
  tally: Tally,
  { horizon_days }: RolloutProblem,
  done: number,
  asked: number,
  weatherBy: readonly WeatherDrawn[],
): FinishDates {
  const { jobs, handOver, service, serviceRow, finish } = tally;
  const ranks = spanRanks(done);
  const bySite = Array.from(jobs, (job, place): SiteFinish => {
    const row = place * (horizon_days + 1);
    return {
      job,
      handOver: spansOfCounts(handOver, row, horizon_days + 1, ranks),
      service: spansOfCounts(service, place * serviceRow, serviceRow, ranks),
      notDone_fraction: handOver[row + horizon_days]! / done,
    };
  });
  const days = finish.slice(0, done);
  const mean_day = days.reduce((sum, day) => sum + day, 0) / done;
  const squares = days.reduce((sum, day) => sum + (day - mean_day) ** 2, 0);
  const sd_days = done > 1 ? Math.sqrt(squares / (done - 1)) : 0;
  return {
    ...{ replicates_count: done, isWhole: done === asked, bySite, byWeek: weeksOf(tally, done, ranks), weatherBy },
    finish: { ...spansOfSorted(days.sort(), ranks), mean_day, sd_days, notDone_fraction: tally.notDone / done },
    allServed: spansOfSorted(tally.allServed.slice(0, done).sort(), ranks),
    cost: spansOfSorted(tally.cost.slice(0, done).sort(), ranks),
  };
}

/** Week by week, up to the first in which all is as it stays. */
function weeksOf(
  { weeks, people, sites, replicates }: Tally,
  done: number,
  ranks: readonly number[],
): readonly WeekServed[] {
  const found: WeekServed[] = [];
  const rowOf = (of: Float64Array, week: number) => of.slice(week * replicates, week * replicates + done);
  const last = rowOf(sites, weeks - 1);
  for (let week = 0; week < weeks; week++) {
    const own = rowOf(sites, week);
    const isLast = own.every((value, at) => value === last[at]);
    const spans = { people: spansOfSorted(rowOf(people, week).sort(), ranks), sites: spansOfSorted(own.sort(), ranks) };
    found.push({ untilDay: (week + 1) * week_days - 1, ...spans });
    if (isLast) break;
  }
  return found;
}
