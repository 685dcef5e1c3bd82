import {
  type AboardLine,
  type Broken,
  type DayIndex,
  type FinishDates,
  isoDay,
  type KeptPlan,
  type LeftOutSite,
  type Outcome,
  type PlanFacts,
  type Problem,
  type ProgrammeFacts,
  type RolloutPlan,
  type RolloutProblem,
  type Spans,
  type TimedHaul,
  type TimedStop,
  type TripLeg,
  type WaitingBounds,
} from '@eavewell/engine';
import type { Language } from '@eavewell/words';
import type { ComparedGiven } from './rolloutCompared.ts';
import { type LeanedOn, leanedOn } from './rolloutLeans.ts';

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
  readonly haulLegsOf: (haul: TimedHaul) => readonly TripLeg[];
  readonly aboardOf: (crew: number, trip: number) => readonly AboardLine[];
  /** The same with other crews, carriers and stores; null: not asked for. */
  readonly compared: readonly ComparedGiven[] | null;
  readonly problems: readonly Problem[];
  /** The plan it goes on from; null or left out: none. */
  readonly replanned?: ReplannedGiven | null;
  /** What its trips are called, by crew and trip; left out: by the crew and their place. */
  readonly tripIds?: readonly (readonly string[])[];
}

/** The plan a search went on from. */
export interface ReplannedGiven {
  readonly facts: PlanFacts;
  readonly kept: KeptPlan;
  /** What comes of it where nothing is changed. */
  readonly unchanged: Outcome;
}

/** What all parts of the report are made with. */
export interface Told extends RolloutGiven {
  readonly language: Language;
  readonly nameOf: ReadonlyMap<string, string>;
  readonly tripIdOf: (crew: number, trip: number) => string;
  /** First days of service in the futures drawn, by job. */
  readonly drawnOf: ReadonlyMap<number, Spans>;
  readonly leans: LeanedOn;
  /** Sites for which no treatment unit is entered. */
  readonly untreated: ReadonlySet<string>;
}

/** All that sentences of a plan are made with. */
export function toldOf(given: RolloutGiven, language: Language): Told {
  const { facts, problem, tripIds } = given;
  const names = [
    ...facts.rollout.places.map(({ placeId, name }) => [placeId, name] as const),
    ...facts.sites.map(({ siteId, name }) => [siteId, name] as const),
  ];
  return {
    ...{ ...given, language, nameOf: new Map(names) },
    drawnOf: new Map((given.futures?.bySite ?? []).map(({ job, service }) => [job, service])),
    leans: leanedOn(given.problems),
    untreated: new Set(facts.sites.filter(isUntreated).map(({ siteId }) => siteId)),
    tripIdOf: (crew, trip) => tripIds?.[crew]?.[trip] ?? `${problem.crews[crew]!.crewId}-${trip + 1}`,
  };
}

/** Is no treatment unit entered that is there, or is to be? */
const isUntreated = ({ treatment }: ProgrammeFacts['sites'][number]): boolean =>
  treatment.units.every(({ removedOn }) => removedOn !== null);

/** Is a site handed over in the trip that goes there? */
export const isServed = ({ handOverDay }: Pick<TimedStop, 'handOverDay'>, { horizon_days }: RolloutProblem): boolean =>
  handOverDay < horizon_days;

/** The Monday of the week of a day; 1 January 1970 was a Thursday. */
export const mondayOf = (day: DayIndex): DayIndex => day - ((((day + 3) % 7) + 7) % 7);

export const dayAt = ({ problem }: Pick<Told, 'problem'>, time: number) => isoDay(problem.firstDay + Math.floor(time));

/** The day on which something ends: a day wholly used is written as the next whole number. */
export const lastDay = (time: number) => Math.ceil(time - 1e-9) - 1;

/** A day of a future; null where it is not within the days looked at. */
export const dayWithin = (told: Told, day: number) => (day >= told.problem.horizon_days ? null : dayAt(told, day));

/** Days of futures, by the value at each rank. */
export const daysAt = (told: Told, { p10, p50, p90 }: Spans) => ({
  ...{ p10: dayWithin(told, p10.value), p50: dayWithin(told, p50.value), p90: dayWithin(told, p90.value) },
});

export function brokenSaid(
  told: Pick<Told, 'problem' | 'language' | 'nameOf' | 'tripIdOf' | 'facts'>,
  one: Broken,
): string {
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
