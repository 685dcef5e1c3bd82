import { type Problem, servedCurve, serviceDaysOf, stockCurves, waitingByGroup } from '@eavewell/engine';
import type { RolloutReport } from '@eavewell/tables';
import { dayAt, daysAt, dayWithin, type Told } from './rolloutTold.ts';

export function leftOut({ leftOut: sites, facts, problem, outcome, language }: Told): RolloutReport['leftOut'] {
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

export function finish(told: Told): RolloutReport['finish'] {
  const { outcome, futures } = told;
  return {
    likely: dayAt(told, outcome.finish),
    futures: futures && daysAt(told, futures.finish),
    runs_count: futures?.replicates_count ?? 0,
    p90Between:
      futures === null ? null : [dayWithin(told, futures.finish.p90.from), dayWithin(told, futures.finish.p90.to)],
  };
}

export function waiting(told: Told): RolloutReport['waiting'] {
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
              gap: numbers.percentAtMost(gap),
              name: say(`rolloutReport.bound.${bounds.best.name}`),
            }),
            all: bounds.all.map(({ name, waiting: weighted }) => ({ name, weighted })),
          },
  };
}

/** Up to so much above a bound a plan is called the best possible; issue of taste, far below what a day of travel moves. */
export const optimal_fraction = 0.0005;

export function servedPoints(told: Pick<Told, 'problem' | 'outcome'>): RolloutReport['served'] {
  const { problem, outcome } = told;
  return servedCurve(problem, serviceDaysOf(problem, outcome)).map(({ day, people_count }) => ({
    day: dayAt(told, day),
    people: people_count,
  }));
}

export function servedByWeek(told: Told): RolloutReport['servedByWeek'] {
  return (told.futures?.byWeek ?? []).map(({ untilDay, people }) => ({
    until: dayAt(told, untilDay),
    ...{ p10: people.p10.value, p50: people.p50.value, p90: people.p90.value },
  }));
}

export function stock(told: Told): RolloutReport['stock'] {
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

/** Is something that costs not known, and left out? */
export const isCostAtLeast = (problems: readonly Problem[]): boolean =>
  problems.some(({ code }) => leftOutOfCost.has(code));

/** What tells that a cost or fuel is not known. */
const leftOutOfCost: ReadonlySet<string> = new Set([
  'rollout.cost_unknown',
  'rollout.fuel_price_unknown',
  'ways.fuel_unknown',
]);
