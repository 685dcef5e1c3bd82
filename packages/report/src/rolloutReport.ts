import {
  type AboardLine,
  type Broken,
  type DayIndex,
  type FinishDates,
  isoDay,
  type LeftOutSite,
  moneyByMonth,
  type Outcome,
  type Problem,
  type ProgrammeFacts,
  type RolloutPlan,
  type RolloutProblem,
  type Spans,
  servedCurve,
  serviceDaysOf,
  stockCurves,
  type TripLeg,
  type WaitingBounds,
  waitingByGroup,
} from '@eavewell/engine';
import {
  type RolloutLegReport,
  type RolloutReport,
  type RolloutTripReport,
  rolloutSchemaVersion,
} from '@eavewell/tables';
import type { Language } from '@eavewell/words';
import { problemReport } from './problemReport.ts';
import { cautionsOfTrip } from './rolloutCautions.ts';
import { type ComparedGiven, rolloutCompared } from './rolloutCompared.ts';

/** What was found. */
export interface RolloutGiven {
  readonly eavewell: string;
  readonly today: DayIndex;
  readonly seed: number;
  readonly tries_count: number;
  readonly facts: ProgrammeFacts;
  readonly problem: RolloutProblem;
  readonly plan: RolloutPlan;
  readonly outcome: Outcome;
  readonly leftOut: readonly LeftOutSite[];
  /** Null: none could be reckoned. */
  readonly bounds: WaitingBounds | null;
  /** Futures drawn; null: none were. */
  readonly futures: FinishDates | null;
  readonly legsOf: (crew: number, trip: number) => readonly TripLeg[];
  readonly aboardOf: (crew: number, trip: number) => readonly AboardLine[];
  /** The same with other crews, carriers and stores; null: not asked for. */
  readonly compared: readonly ComparedGiven[] | null;
  readonly problems: readonly Problem[];
}

/** What all parts of the report are made with. */
interface Told extends RolloutGiven {
  readonly language: Language;
  readonly nameOf: ReadonlyMap<string, string>;
  readonly tripIdOf: (crew: number, trip: number) => string;
}

/**
 * A plan of who goes where as the report has it.
 *
 * @param given - what was found
 * @param language - of its sentences
 * @returns the report
 * @definition ours
 */
export function rolloutReport(given: RolloutGiven, language: Language): RolloutReport {
  const { facts, problem, outcome } = given;
  const { rollout, sites, settings } = facts;
  const names = [
    ...rollout.places.map(({ placeId, name }) => [placeId, name]),
    ...sites.map(({ siteId, name }) => [siteId, name]),
  ];
  const told: Told = {
    ...{ ...given, language, nameOf: new Map(names as [string, string][]) },
    tripIdOf: (crew, trip) => `${problem.crews[crew]!.crewId}-${trip + 1}`,
  };
  const served = outcome.trips.flat().flatMap(({ stops }) => stops);
  return {
    ...{ eavewell: given.eavewell, schema: rolloutSchemaVersion, programme: settings.programme },
    ...{ day: isoDay(given.today), from: isoDay(problem.firstDay), seed: given.seed, tries_count: given.tries_count },
    currency: settings.currency,
    sites_count: served.length,
    people_count: served.reduce((sum, { job }) => sum + problem.jobs[job]!.people, 0),
    leftOut: leftOut(told),
    finish: finish(told),
    waiting: waiting(told),
    ...{ cost: outcome.cost, fuel_L: outcome.fuel_L },
    isCostAtLeast: given.problems.some(({ code }) => leftOutOfCost.has(code)),
    served: servedPoints(told),
    servedByWeek: servedByWeek(told),
    moneyByMonth: moneyByMonth(problem, outcome).map((one) => ({ ...one })),
    crews: problem.crews.map(({ crewId }, crew) => ({
      crewId,
      name: rollout.crews.find((one) => one.crewId === crewId)?.name ?? crewId,
      trips: outcome.trips[crew]!.map((_, trip) => tripReport(told, crew, trip)),
    })),
    places: rollout.places.map(({ placeId, name }) => ({ id: placeId, name })),
    hauls: hauls(told),
    stock: stock(told),
    broken: outcome.broken.map((one) => ({ kind: one.kind, said: brokenSaid(told, one) })),
    compared: given.compared && rolloutCompared(given.compared, told),
    problems: given.problems.map((one) => problemReport(one, language)),
  };
}

/** What tells that a cost or fuel is not known. */
const leftOutOfCost: ReadonlySet<string> = new Set([
  'rollout.cost_unknown',
  'rollout.fuel_price_unknown',
  'ways.fuel_unknown',
]);

const dayAt = ({ problem }: Pick<Told, 'problem'>, time: number) => isoDay(problem.firstDay + Math.floor(time));

/** The day on which something ends: a day wholly used is written as the next whole number. */
const lastDay = (time: number) => Math.ceil(time - 1e-9) - 1;

/** A day of a future; null where it is not within the days looked at. */
const dayWithin = (told: Told, day: number) => (day >= told.problem.horizon_days ? null : dayAt(told, day));

/** Days of futures, by the value at each rank. */
const daysAt = (told: Told, { p10, p50, p90 }: Spans) => ({
  ...{ p10: dayWithin(told, p10.value), p50: dayWithin(told, p50.value), p90: dayWithin(told, p90.value) },
});

function leftOut({ leftOut: sites, facts, problem, outcome, language }: Told): RolloutReport['leftOut'] {
  const { say, numbers } = language;
  const unserved = outcome.broken.flatMap((one) =>
    one.kind === 'leftOut'
      ? [{ ...nothingOver, siteId: problem.jobs[one.job]!.siteId, reason: 'noTrip' as const }]
      : [],
  );
  return [...sites, ...unserved].map(({ siteId, reason, over_kg, over_L, over_m }) => {
    const site = facts.sites.find((one) => one.siteId === siteId);
    const over = [numbers.quantity(over_kg, 'kg'), numbers.quantity(over_L, 'L'), numbers.quantity(over_m, 'm')];
    const at = [over_kg, over_L, over_m].findIndex((one) => one !== null);
    return {
      ...{ siteId, name: site?.name ?? siteId, people: site?.people ?? null, reason },
      said: say(`rolloutReport.leftOut.${reason}`, { over: over[at] ?? '' }),
    };
  });
}

const nothingOver = { over_kg: null, over_L: null, over_m: null };

function finish(told: Told): RolloutReport['finish'] {
  const { outcome, futures } = told;
  return {
    likely: dayAt(told, outcome.finish),
    futures: futures && daysAt(told, futures.finish),
    runs_count: futures?.replicates_count ?? 0,
    p90Between:
      futures === null ? null : [dayWithin(told, futures.finish.p90.from), dayWithin(told, futures.finish.p90.to)],
  };
}

function waiting(told: Told): RolloutReport['waiting'] {
  const { problem, outcome, facts, bounds, language } = told;
  const { say, numbers } = language;
  const service = serviceDaysOf(problem, outcome);
  const people = problem.jobs.reduce((sum, job) => sum + job.people, 0);
  const areas = new Map(facts.rollout.work.map(({ siteId, area }) => [siteId, area]));
  const longest = service.reduce((best, day, job) => (best < 0 || day > service[best]! ? job : best), -1);
  const gap = bounds === null || bounds.best.waiting <= 0 ? null : outcome.waiting / bounds.best.waiting - 1;
  return {
    ...{ personDays: outcome.waiting_personDays, weighted: outcome.waiting },
    mean_days: people === 0 ? 0 : outcome.waiting_personDays / people,
    longest:
      longest < 0
        ? null
        : {
            siteId: problem.jobs[longest]!.siteId,
            name: told.nameOf.get(problem.jobs[longest]!.siteId) ?? problem.jobs[longest]!.siteId,
            days: service[longest]!,
          },
    byArea: waitingByGroup(problem, outcome, (job) => areas.get(problem.jobs[job]!.siteId) ?? null).map(
      ({ group, people_count, mean_days }) => ({ area: group, people: people_count, mean_days }),
    ),
    bound:
      bounds === null || gap === null
        ? null
        : {
            ...{ name: bounds.best.name, weighted: bounds.best.waiting, gap_fraction: gap },
            said: say('rolloutReport.bound.said', {
              isOptimal: gap <= optimal_fraction ? 'yes' : 'no',
              gap: numbers.percent(Math.ceil(gap * 1000) / 1000),
              name: say(`rolloutReport.bound.${bounds.best.name}`),
            }),
            all: bounds.all.map(({ name, waiting: weighted }) => ({ name, weighted })),
          },
  };
}

/** Up to so much above a bound a plan is called the best possible; issue of taste, far below what a day of travel moves. */
const optimal_fraction = 0.0005;

function servedPoints(told: Told): RolloutReport['served'] {
  const { problem, outcome } = told;
  return servedCurve(problem, serviceDaysOf(problem, outcome)).map(({ day, people_count }) => ({
    day: dayAt(told, day),
    people: people_count,
  }));
}

function servedByWeek(told: Told): RolloutReport['servedByWeek'] {
  return (told.futures?.byWeek ?? []).map(({ untilDay, people }) => ({
    until: dayAt(told, untilDay),
    ...{ p10: people.p10.value, p50: people.p50.value, p90: people.p90.value },
  }));
}

// long: the figures of one trip, one a line
function tripReport(told: Told, crew: number, trip: number): RolloutTripReport {
  const { problem, plan, outcome, futures, nameOf } = told;
  const timed = outcome.trips[crew]![trip]!;
  const stops = timed.stops.map(({ job, arrives, starts, handOverDay, serviceDay }) => {
    const { siteId, people } = problem.jobs[job]!;
    const drawn = futures?.bySite.find((one) => one.job === job)?.service ?? null;
    return {
      ...{ siteId, name: nameOf.get(siteId) ?? siteId, people },
      ...{ arrives: dayAt(told, arrives), starts: dayAt(told, starts) },
      ...{ handOver: dayAt(told, handOverDay), served: dayAt(told, serviceDay) },
      futures: drawn && daysAt(told, drawn),
    };
  });
  const legs = told.legsOf(crew, trip).map((leg) => legReport(told, leg));
  return {
    tripId: told.tripIdOf(crew, trip),
    ...{ leaves: dayAt(told, timed.leaves), back: dayAt(told, lastDay(timed.back)) },
    ...{
      nights_count: timed.nights_count,
      waitsFor: timed.waitsFor,
      waited_days: Math.max(0, timed.leaves - timed.ready),
    },
    ...{ kg: timed.kg, litres: timed.litres, cost: timed.cost, fuel_L: timed.fuel_L },
    isLocked: plan.trips[crew]![trip]!.isLocked,
    stops,
    legs,
    aboard: told.aboardOf(crew, trip).map((one) => ({ ...one })),
    cautions: cautionsOfTrip(legs, told.language),
    said: tripSaid(
      told,
      crew,
      trip,
      stops.map(({ name }) => name),
    ),
  };
}

function tripSaid(told: Told, crew: number, trip: number, names: readonly string[]): string {
  const { say, numbers } = told.language;
  const { leaves, back, nights_count, kg, waitsFor } = told.outcome.trips[crew]![trip]!;
  return say('rolloutReport.trip', {
    ...{
      leaves: numbers.date(dayAt(told, leaves)),
      back: numbers.date(dayAt(told, lastDay(back))),
      nights: nights_count,
    },
    ...{ stops: names.join(', '), mass: numbers.quantity(kg, 'kg'), waits: waitsFor },
  });
}

function legReport(told: Told, leg: TripLeg): RolloutLegReport {
  const { say, numbers } = told.language;
  const name = (id: string) => told.nameOf.get(id) ?? id;
  const all = leg.way?.stretches ?? [];
  // A tenth of an hour, and no leg of none.
  const hours = (time_h: number) => numbers.quantity(Math.max(0.1, Math.round(time_h * 10) / 10), 'h');
  const hours_h = all.reduce((sum, one) => sum + one.hours_h + one.changeOver_h, 0);
  const stretches = all.map((one) =>
    say('rolloutReport.stretch', { mode: one.mode, to: name(one.to), hours: hours(one.hours_h) }),
  );
  const porters_count = leg.way?.limit.porters_count ?? 0;
  const limit_kg = leg.way?.limit.kg ?? null;
  return {
    ...{ from: leg.from, to: leg.to, hours_h, porters_count },
    leaves: leg.leaves === null ? null : dayAt(told, leg.leaves),
    arrives: leg.arrives === null ? null : dayAt(told, lastDay(leg.arrives)),
    stretches: all.map(({ wayId, from, to, mode, carrierId, hours_h: own_h, changeOver_h }) => ({
      ...{ wayId, from, to, mode, carrierId, hours_h: own_h, changeOver_h },
    })),
    limit_kg: limit_kg !== null && Number.isFinite(limit_kg) ? limit_kg : null,
    said: say('rolloutReport.leg', {
      ...{ from: name(leg.from), to: name(leg.to), stretches: stretches.join('; ') },
      ...{ hours: hours(hours_h), porters: porters_count },
    }),
  };
}

function hauls(told: Told): RolloutReport['hauls'] {
  const { problem, outcome } = told;
  const placeOf = (store: number) => problem.placeIds[problem.stores[store]!.node]!;
  return outcome.hauls.map(({ store, leaves, arrives, trips_count, forCrew, forTrip }) => ({
    ...{ store: placeOf(store), from: placeOf(problem.stores[store]!.filledBy!.store), trips_count },
    ...{ leaves: dayAt(told, leaves), arrives: dayAt(told, arrives), forTrip: told.tripIdOf(forCrew, forTrip) },
  }));
}

function stock(told: Told): RolloutReport['stock'] {
  const { problem, plan, outcome, facts } = told;
  return stockCurves(problem, plan, outcome).map(({ store, goods, points }) => {
    const { partId } = problem.goods[goods]!;
    return {
      ...{ store: problem.placeIds[problem.stores[store]!.node]!, partId },
      name: facts.parts.find((part) => part.partId === partId)?.name ?? partId,
      points: points.map(({ day, ...counts }) => ({ day: dayAt(told, day), ...counts })),
    };
  });
}

function brokenSaid(told: Told, one: Broken): string {
  const { problem, language, nameOf } = told;
  const job = 'job' in one && one.job !== null ? problem.jobs[one.job]!.siteId : null;
  const part = 'goods' in one ? problem.goods[one.goods]!.partId : null;
  return language.say(`rolloutReport.broken.${one.kind}`, {
    trip: 'crew' in one ? told.tripIdOf(one.crew, one.trip) : '',
    site: job === null ? '' : (nameOf.get(job) ?? job),
    hasSite: job === null ? 'no' : 'yes',
    part: told.facts.parts.find(({ partId }) => partId === part)?.name ?? part ?? '',
    by: 'by' in one ? one.by : 0,
  });
}
