import {
  areaWorking,
  boundWorking,
  differenceWorking,
  finishWorking,
  isoDay,
  type PlanBeside,
  type PlanDifference,
  personDay,
  planCostWorking,
  planDay,
  planTime,
  type RolloutNames,
  readIsoDay,
  serviceWorking,
  stockWorking,
  type WhyThen,
  type WorkingInput,
  type WorkingLine,
  waitingWorking,
  whyWorking,
} from '@eavewell/engine';
import type { RolloutWorking } from '@eavewell/tables';
import type { Language } from '@eavewell/words';
import { sheetTold } from './rolloutSheet.ts';
import type { SheetGiven, SheetTold } from './rolloutSheetTold.ts';
import { whySaid } from './rolloutWhy.ts';
import { workingReport } from './siteReport.ts';

/** A figure of the rollout whose working is asked for. */
export type RolloutFigure =
  | { readonly figure: 'finish' | 'waiting' | 'bound' | 'cost' }
  | { readonly figure: 'drinks'; readonly site: string }
  /** Why a village comes when it does. */
  | { readonly figure: 'why'; readonly site: string }
  /** What a person of an area waits; null: of sites of none. */
  | { readonly figure: 'area'; readonly area: string | null }
  /** What the plan is more or later than the one beside it. */
  | { readonly figure: 'differs'; readonly differs: PlanDifference }
  | { readonly figure: 'stock'; readonly store: string; readonly part: string; readonly day: string };

/** The line of each figure. */
const asked: Readonly<Record<RolloutFigure['figure'], string>> = {
  finish: 'rollout.lastServed',
  waiting: 'rollout.waits',
  bound: 'rollout.gap',
  cost: 'rollout.cost',
  drinks: 'rollout.firstService',
  why: 'rollout.whyThen',
  area: 'rollout.meanWait',
  differs: 'rollout.differs',
  stock: 'rollout.stock',
};

/** What a figure is asked with, beside its plan. */
export interface FigureBeside {
  /** The plan it is set beside, timed on the same rollout; null: none. */
  readonly plan: SheetGiven | null;
  /** Why the village that is asked for comes when it does; null: not asked, or not found. */
  readonly why: WhyThen | null;
}

/**
 * How a figure of a plan was reached, line by line.
 *
 * @param given - the plan it is of
 * @param figure - which figure
 * @param language - of its words
 * @param beside - the plan it is set beside, and why a village comes when it does
 * @returns its lines; null: the plan has no such figure
 * @definition ours: docs/decisions/0380-figures-of-the-rollout-open.md
 */
export function rolloutWorking(
  given: SheetGiven,
  figure: RolloutFigure,
  language: Language,
  beside: FigureBeside,
): RolloutWorking | null {
  const told = sheetTold(given, language);
  const lines = linesOf(told, figure, { why: beside.why, plan: beside.plan && sheetTold(beside.plan, language) });
  if (lines === null || lines.length === 0) return null;
  const wanted = asked[figure.figure];
  // Of a village whose wait for rain is not known the hand-over is the last that can be told.
  const opens = lines.some(({ code }) => code === wanted) ? wanted : lines.at(-1)!.code;
  return {
    ...{ stamp: given.stamp, planId: given.planId, opens },
    said: figure.figure === 'why' ? [...whySaid(told, beside.why, namesOf(told))] : [],
    working: lines.map((line) => lineSaid(told, line)),
  };
}

function linesOf(
  told: SheetTold,
  figure: RolloutFigure,
  beside: { readonly plan: SheetTold | null; readonly why: WhyThen | null },
): readonly WorkingLine[] | null {
  const { problem, bounds, futures } = told;
  const names = namesOf(told);
  switch (figure.figure) {
    case 'finish':
      return finishWorking(told, futures, names);
    case 'waiting':
      return waitingWorking(told, names);
    case 'bound':
      return bounds === null ? null : boundWorking(told, bounds, names);
    case 'cost':
      return planCostWorking(told, names);
    case 'drinks':
      return drinksLines(told, figure.site, names);
    case 'why':
      return beside.why === null ? drinksLines(told, figure.site, names) : whyWorking(told, beside.why, names);
    case 'area':
      return areaWorking(told, figure.area, names);
    case 'differs':
      return beside.plan === null ? null : differenceWorking(figure.differs, besideOf(beside.plan), besideOf(told));
    case 'stock': {
      const store = problem.stores.findIndex(({ node }) => problem.placeIds[node] === figure.store);
      const goods = problem.goods.findIndex(({ partId }) => partId === figure.part);
      const day = readIsoDay(figure.day);
      if (store < 0 || goods < 0 || day === null) return null;
      return stockWorking(told, { store, goods, day: day - problem.firstDay }, names);
    }
  }
}

function besideOf(told: SheetTold): PlanBeside {
  const { problem, plan, outcome, inForce } = told;
  return { problem, plan, outcome, name: inForce?.name ?? '', names: namesOf(told) };
}

function drinksLines(told: SheetTold, siteId: string, names: RolloutNames): readonly WorkingLine[] | null {
  const { outcome, problem, futures } = told;
  for (const [crew, trips] of outcome.trips.entries())
    for (const [trip, { stops }] of trips.entries()) {
      const stop = stops.find(({ job }) => problem.jobs[job]!.siteId === siteId);
      if (stop === undefined) continue;
      return serviceWorking(told, { crew, trip, job: stop.job, legs: told.legsOf(crew, trip), futures, names });
    }
  return null;
}

function namesOf({ facts, problem, outcome, nameOf, language: { say, numbers } }: SheetTold): RolloutNames {
  const areas = new Map(facts.rollout.work.map(({ siteId, area }) => [siteId, area]));
  const crewOf = (crew: number) => {
    const { crewId } = problem.crews[crew]!;
    return facts.rollout.crews.find((one) => one.crewId === crewId)?.name ?? crewId;
  };
  const place = (placeId: string) => nameOf.get(placeId) ?? placeId;
  const siteOf = (job: number) => place(problem.jobs[job]!.siteId);
  return {
    siteOf,
    crewOf,
    areaOf: (job) => areas.get(problem.jobs[job]!.siteId) ?? null,
    tripOf: (crew, trip) =>
      say('rolloutAnswers.tripNamed', {
        crew: crewOf(crew),
        leaves: numbers.date(isoDay(problem.firstDay + Math.floor(outcome.trips[crew]![trip]!.leaves))),
      }),
    storeOf: (store) => place(problem.placeIds[problem.stores[store]!.node]!),
    partOf: (goods) => {
      const { partId } = problem.goods[goods]!;
      return facts.parts.find((part) => part.partId === partId)?.name ?? partId;
    },
    currency: facts.settings.currency,
  };
}

/** Moments at which something begins: a whole one is a morning, not the end of the day before. */
const beginnings: ReadonlySet<string> = new Set(['rollout.starts', 'setsOut', 'startsAt']);

function lineSaid(told: SheetTold, line: WorkingLine): RolloutWorking['working'][number] {
  const reported = workingReport(line, told.language);
  return {
    ...reported,
    ...daySaid(told, line.code, line.value, line.unit),
    ...(line.code === 'rollout.gap' ? { said: told.language.numbers.percentAtMost(line.value as number) } : {}),
    inputs: reported.inputs.map((input, at) => {
      const { name, value, unit }: WorkingInput = line.inputs[at]!;
      return { ...input, ...daySaid(told, name, value, unit) };
    }),
  };
}

/** A day or a moment of the plan, by the calendar; what people wait in all, in days of a person. */
function daySaid(
  { problem, language }: SheetTold,
  name: string,
  value: WorkingLine['value'],
  unit: string,
): { readonly said?: string } {
  const { say, numbers } = language;
  if (typeof value === 'number' && unit === personDay)
    return { said: say('rolloutAnswers.personDays', { amount: numbers.fixed(value, 0) }) };
  if (typeof value !== 'number' || (unit !== planDay && unit !== planTime)) return {};
  if (value >= problem.horizon_days) return { said: say('rolloutAnswers.beyond') };
  const date = (day: number) => numbers.date(isoDay(problem.firstDay + day));
  if (unit === planDay) return { said: date(value) };
  const share = value - Math.floor(value);
  if (share > 0)
    return { said: say('rolloutAnswers.inDay', { day: date(Math.floor(value)), share: numbers.percent(share) }) };
  return beginnings.has(name)
    ? { said: say('rolloutAnswers.inMorning', { day: date(value) }) }
    : { said: say('rolloutAnswers.atEvening', { day: date(value - 1) }) };
}
