import { cellName, explain, type WorkingCode, type WorkingLine, workingInput } from '../../kernel/index.ts';
import type { BoundName, WaitingBounds } from './bounds/index.ts';
import { serviceDaysOf } from './curves.ts';
import { type FinishDates, quantileRanks, type Spans } from './finish/index.ts';
import type { Outcome, RolloutPlan, RolloutProblem } from './problem.ts';
import { stockMoves } from './stockCurves.ts';

/** A plan that is timed. */
export interface PlanTimed {
  readonly problem: RolloutProblem;
  readonly plan: RolloutPlan;
  readonly outcome: Outcome;
}

/** What things are called in a working. */
export interface RolloutNames {
  readonly siteOf: (job: number) => string;
  /** Null: of none. */
  readonly areaOf: (job: number) => string | null;
  readonly crewOf: (crew: number) => string;
  readonly tripOf: (crew: number, trip: number) => string;
  readonly storeOf: (store: number) => string;
  readonly partOf: (goods: number) => string;
  readonly currency: string | null;
}

/** Days and moments of a plan, counted from its first day. */
export const [planDay, planTime] = ['planDay', 'planTime'] as const;
/** Days of waiting, added up over people. */
export const personDay = 'personDay';

/**
 * How was the total waiting reached: people × days of each site, added up by area and over all?
 *
 * @param timed - a plan [day, person]
 * @param names - what things are called
 * @returns lines of sites, areas and their sum [person-day]; weighed by priority too where a site has one
 * @definition ours: docs/methods/rollout.md
 */
export function waitingWorking(
  timed: Pick<PlanTimed, 'problem' | 'outcome'>,
  names: Pick<RolloutNames, 'siteOf' | 'areaOf'>,
): WorkingLine[] {
  const { problem, outcome } = timed;
  const { areaOf } = names;
  const lines: WorkingLine[] = [];
  const days = serviceDaysOf(problem, outcome);
  const areas = new Map<string, { waits: number; people: number }>();
  let [weighed, people_count] = [0, 0];
  for (const [job, { people, weight }] of problem.jobs.entries()) {
    const waits = siteWaitsLine(lines, problem, { job, days: days[job]! }, names);
    const area = areas.get(areaOf(job) ?? '') ?? { waits: 0, people: 0 };
    areas.set(areaOf(job) ?? '', { waits: area.waits + waits, people: area.people + people });
    weighed += weight * days[job]!;
    people_count += people;
  }
  const line = (code: WorkingCode, value: number, unit: string, inputs: WorkingLine['inputs']) =>
    explain(lines, { code, value, unit, inputs, source: 'definition' });
  for (const [area, { waits, people }] of areas.size > 1 ? areas : [])
    line('rollout.areaWaits', waits, personDay, [
      workingInput('ofArea', area, 'text'),
      workingInput('waitingPeople', people, 'person'),
    ]);
  const counted = [workingInput('sitesCounted', problem.jobs.length, 'count')];
  const sums = areas.size > 1 ? [...areas.values()] : [];
  const all = line('rollout.waits', outcome.waiting_personDays, personDay, [
    ...counted,
    ...sums.map(({ waits }) => workingInput('areaSum', waits, personDay)),
  ]);
  if (people_count > 0)
    line('rollout.meanWait', all / people_count, 'day', [
      workingInput('totalWaiting', all, personDay),
      workingInput('waitingPeople', people_count, 'person'),
    ]);
  line('rollout.weighedWaits', weighed, personDay, counted);
  return lines;
}

/**
 * How long do the people of one site wait?
 *
 * @param lines - the working so far; one line is added at its end
 * @param problem - the rollout [person]
 * @param site - which job, and its days to first service [day]
 * @param names - what things are called
 * @returns people × days [person-day]
 * @definition ours: docs/methods/rollout.md
 */
export function siteWaitsLine(
  lines: WorkingLine[],
  { jobs }: Pick<RolloutProblem, 'jobs'>,
  { job, days }: { readonly job: number; readonly days: number },
  { siteOf }: Pick<RolloutNames, 'siteOf'>,
): number {
  const { siteId, people, weight } = jobs[job]!;
  const factor = people > 0 ? weight / people : 1;
  return explain(lines, {
    ...{ code: 'rollout.siteWaits', value: people * days, unit: personDay, source: 'definition' },
    inputs: [
      workingInput('ofSite', siteOf(job), 'text'),
      workingInput('waitingPeople', people, 'person', cellName('sites', siteId, 'people')),
      workingInput('waitingDays', days, 'day'),
      ...(factor === 1
        ? []
        : [workingInput('priority', factor, 'factor', cellName('sites', siteId, 'priority_factor'))]),
    ],
  });
}

const boundCodes: Readonly<Record<BoundName, WorkingCode>> = {
  alone: 'rollout.boundAlone',
  fastMachine: 'rollout.boundFastMachine',
  radial: 'rollout.boundRadial',
  assignment: 'rollout.boundAssignment',
  tripPrices: 'rollout.boundTripPrices',
};

/**
 * How far is a plan from the best possible: which bounds there are, which is the highest, and what is between?
 *
 * @param timed - a plan [day, person]
 * @param bounds - of its problem [person-day]
 * @param names - what things are called
 * @returns lines of the bounds and the gap [fraction], then those of the waiting [person-day]
 * @definition ours: docs/methods/rollout.md, Bounds
 */
export function boundWorking(
  timed: PlanTimed,
  bounds: WaitingBounds,
  names: Pick<RolloutNames, 'siteOf' | 'areaOf'>,
): WorkingLine[] {
  const lines = waitingWorking(timed, names).filter(({ code }) => code !== 'rollout.meanWait');
  for (const { name, waiting } of bounds.all) {
    const days = name === 'assignment' && bounds.days_together !== null ? [bounds.days_together] : [];
    explain(lines, {
      ...{ code: boundCodes[name], value: waiting, unit: personDay, source: 'definition' },
      inputs: days.map((count) => workingInput('daysTogether', count, 'day')),
    });
  }
  const best = explain(lines, {
    ...{ code: 'rollout.bound', value: bounds.best.waiting, unit: personDay, source: 'definition' },
    inputs: bounds.all.map(({ waiting }) => workingInput('oneBound', waiting, personDay)),
  });
  if (best > 0)
    explain(lines, {
      ...{ code: 'rollout.gap', value: timed.outcome.waiting / best - 1, unit: 'fraction', source: 'definition' },
      inputs: [
        workingInput('weighedWaiting', timed.outcome.waiting, personDay),
        workingInput('bestBound', best, personDay),
      ],
    });
  return lines;
}

/**
 * How was the cost of a plan reached: days, fares and fuel of each trip, and what hauls cost?
 *
 * @param timed - a plan [day, currency]
 * @param names - what things are called
 * @returns lines of trips, of hauls, and their sum [currency]
 * @definition ours: docs/methods/rollout.md; kits are not in it
 */
export function planCostWorking(timed: PlanTimed, names: RolloutNames): WorkingLine[] {
  const { problem, outcome } = timed;
  const { crews, fuelPrice_per_L } = problem;
  const lines: WorkingLine[] = [];
  const unit = names.currency ?? 'number';
  const fuelPrice = workingInput(
    'fuelPrice',
    fuelPrice_per_L,
    unit,
    cellName('settings', 'fuelPrice_per_L', 'fuelPrice_per_L'),
  );
  let [trips_count, hauls_count] = [0, 0];
  for (const [crew, trips] of outcome.trips.entries())
    for (const [trip, { nights_count, cost, fuel_L, stops }] of trips.entries()) {
      if (stops.length === 0 || cost === 0) continue;
      trips_count++;
      const { crewId, cost_per_day } = crews[crew]!;
      const fares = cost - (nights_count + 1) * cost_per_day - fuel_L * fuelPrice_per_L;
      explain(lines, {
        ...{ code: 'rollout.tripCost', value: cost, unit, source: 'survey' },
        inputs: [
          workingInput('ofTrip', names.tripOf(crew, trip), 'text'),
          workingInput('daysOut', nights_count + 1, 'day'),
          workingInput('costOfDay', cost_per_day, unit, cellName('crews', crewId, 'cost_per_day')),
          workingInput('fares', Math.abs(fares) < 1e-6 ? 0 : fares, unit),
          ...[workingInput('fuelBurnt', fuel_L, 'L'), fuelPrice],
        ],
      });
    }
  for (const { store, trips_count: times, forCrew, forTrip, cost, fuel_L } of outcome.hauls) {
    const fares = cost - fuel_L * fuelPrice_per_L;
    hauls_count++;
    explain(lines, {
      ...{ code: 'rollout.haulCost', value: cost, unit, source: 'survey' },
      inputs: [
        workingInput('toStore', names.storeOf(store), 'text'),
        workingInput('ofTrip', names.tripOf(forCrew, forTrip), 'text'),
        workingInput('hauls', times, 'count'),
        workingInput('costOfHaul', Math.abs(fares) < 1e-6 ? 0 : fares, unit),
        ...[workingInput('fuelOfHaul', fuel_L, 'L'), fuelPrice],
      ],
    });
  }
  explain(lines, {
    ...{ code: 'rollout.cost', value: outcome.cost, unit, source: 'definition' },
    inputs: [workingInput('tripsCounted', trips_count, 'count'), workingInput('haulsCounted', hauls_count, 'count')],
  });
  return lines;
}

/**
 * How many of one of the goods lie in a store on a day, and what came and went before?
 *
 * @param timed - a plan [day, count]
 * @param at - which store, which goods, until which day [day]
 * @param names - what things are called
 * @returns a line for what comes and goes, and what is left [count]
 * @definition ours
 */
export function stockWorking(
  timed: PlanTimed,
  at: { readonly store: number; readonly goods: number; readonly day: number },
  names: RolloutNames,
): WorkingLine[] {
  const { problem, plan, outcome } = timed;
  const lines: WorkingLine[] = [];
  const own = stockMoves(problem, plan, outcome)
    .filter(({ store, goods, day }) => store === at.store && goods === at.goods && day <= at.day)
    .sort((a, b) => a.day - b.day);
  for (const { day, count, by } of own) {
    const reason =
      by.kind !== 'arrival'
        ? workingInput(by.kind === 'haul' ? 'byHaul' : 'ofTrip', names.tripOf(by.crew, by.trip), 'text')
        : workingInput('ofArrival', by.arrivalId === '' ? 'lyingThere' : by.arrivalId, 'text');
    explain(lines, {
      ...{ code: count > 0 ? 'rollout.stockComes' : 'rollout.stockGoes', value: Math.abs(count), unit: 'count' },
      inputs: [workingInput('onDay', day, planDay), reason],
      source: by.kind === 'arrival' ? 'survey' : 'definition',
    });
  }
  explain(lines, {
    ...{ code: 'rollout.stock', value: own.reduce((sum, { count }) => sum + count, 0), unit: 'count' },
    inputs: [
      workingInput('ofPart', names.partOf(at.goods), 'text'),
      workingInput('inStore', names.storeOf(at.store), 'text'),
      workingInput('onDay', at.day, planDay),
    ],
    source: 'definition',
  });
  return lines;
}

/**
 * When do all sites of the plan drink: the last of them as likely, and in so many futures?
 *
 * @param timed - a plan [day]
 * @param futures - drawn; null: none were
 * @param names - what things are called
 * @returns lines [day of the plan]
 * @definition ours: docs/methods/rollout.md, finish dates
 */
export function finishWorking(
  timed: PlanTimed,
  futures: FinishDates | null,
  names: Pick<RolloutNames, 'siteOf'>,
): WorkingLine[] {
  const { problem, outcome } = timed;
  const lines: WorkingLine[] = [];
  const stops = outcome.trips.flatMap((trips) => trips.flatMap((trip) => trip.stops));
  const done = stops.filter(({ handOverDay }) => handOverDay < problem.horizon_days);
  const last = done.reduce<(typeof done)[number] | null>(
    (most, stop) => (most === null || stop.serviceDay > most.serviceDay ? stop : most),
    null,
  );
  if (last !== null)
    explain(lines, {
      ...{ code: 'rollout.lastServed', value: last.serviceDay, unit: planDay, source: 'definition' },
      inputs: [
        workingInput('ofSite', names.siteOf(last.job), 'text'),
        workingInput('sitesCounted', done.length, 'count'),
      ],
    });
  if (futures !== null) spanLines(lines, futures.allServed, futures.replicates_count);
  return lines;
}

const spanCodes = [
  ['rollout.oneInTen', 'p10', 0.1],
  ['rollout.half', 'p50', 0.5],
  ['rollout.nineInTen', 'p90', 0.9],
] as const;

/**
 * The three quantiles of so many futures, each with its rank and between which its true value lies.
 *
 * @param lines - the working so far; three lines are added at its end
 * @param spans - the quantiles [day of the plan]
 * @param replicates_count - futures drawn [count]
 * @definition docs/methods/rollout.md, finish dates
 */
export function spanLines(lines: WorkingLine[], spans: Spans, replicates_count: number): void {
  for (const [code, name, share] of spanCodes) {
    const { value, from, to } = spans[name];
    explain(lines, {
      ...{ code, value, unit: planDay, source: 'definition' },
      inputs: [
        workingInput('futureShare', share, 'fraction'),
        workingInput('futures', replicates_count, 'count'),
        workingInput('futureRank', quantileRanks(replicates_count, share).rank, 'count'),
        workingInput('futuresFrom', from, planDay),
        workingInput('futuresTo', to, planDay),
      ],
    });
  }
}
