import { isoDay, moneyByMonth, type PlanFacts } from '@eavewell/engine';
import type { RolloutSheet } from '@eavewell/tables';
import type { Language } from '@eavewell/words';
import { candidatesOf } from './rolloutCandidates.ts';
import { haulsOf } from './rolloutHauls.ts';
import { provisosOf } from './rolloutProvisos.ts';
import { drinkingOf, restOf, sentenceOf } from './rolloutSentence.ts';
import { crewsOf } from './rolloutSheetCrews.ts';
import { problemOfSheet } from './rolloutSheetProblems.ts';
import { isHandedOver, type SheetGiven, type SheetTold } from './rolloutSheetTold.ts';
import { stripsOf } from './rolloutStrips.ts';
import { isCostAtLeast, servedByWeek, servedPoints, stock, waiting } from './rolloutSums.ts';
import { brokenSaid, dayAt, isServed, lastDay, toldOf } from './rolloutTold.ts';

/**
 * One plan of who goes where as its page shows it.
 *
 * @param given - what was found
 * @param language - of its sentences
 * @returns the sheet
 * @definition ours: docs/decisions/0354-the-sheet-of-the-rollout.md
 */
// long: the figures of the sheet, one a line
export function rolloutSheet(given: SheetGiven, language: Language): RolloutSheet {
  const { facts, problem, outcome, planId } = given;
  const { rollout, settings } = facts;
  const told = sheetTold(given, language);
  const served = outcome.trips.flat().flatMap(({ stops }) => stops.filter((stop) => isServed(stop, problem)));
  const coming = comingOf(told);
  const gone = goneOf(told);
  const crews = crewsOf(told);
  const candidates = candidatesOf(told);
  return {
    ...{ programme: settings.programme, version: given.version, stamp: given.stamp },
    ...{ day: isoDay(given.today), from: isoDay(problem.firstDay), until: untilOf(told), currency: settings.currency },
    plans: rollout.plans.map(planReport),
    ...{ planId, changedSince: given.changedSince },
    ...{ sentence: sentenceOf(told), rest: restOf(told), provisos: provisosOf(told, candidates) },
    sites_count: served.length + coming.length,
    people_count: [...served.map(({ job }) => problem.jobs[job]!.people), ...coming.map(({ people }) => people)].reduce(
      (sum, people) => sum + people,
      0,
    ),
    finish: served.length === 0 ? null : drinkingOf(told),
    futures: given.futuresState,
    waiting: problem.jobs.length === 0 ? null : waiting(told),
    ...{ cost: outcome.cost, isCostAtLeast: isCostAtLeast(given.problems), fuel_L: outcome.fuel_L },
    served: withMore(servedPoints(told), [...gone, ...coming]),
    servedBefore_people: servedBefore(told),
    servedByWeek: servedByWeek(told).map((week) => {
      const more = [...gone, ...coming]
        .filter(({ day }) => day <= week.until)
        .reduce((sum, { people }) => sum + people, 0);
      return { until: week.until, p10: week.p10 + more, p50: week.p50 + more, p90: week.p90 + more };
    }),
    moneyByMonth: moneyByMonth(problem, outcome).map((one) => ({ ...one })),
    ...{ crews, crewsLeftOut: [...given.crewsLeftOut] },
    strips: stripsOf(told, crews),
    ...{ hauls: haulsOf(told), stock: stock(told) },
    places: rollout.places.map(({ placeId, name, kind, latitude_deg, longitude_deg }) => {
      return { placeId, name, kind, latitude_deg, longitude_deg };
    }),
    ways: rollout.ways.map(({ wayId, name, mode, from, to }) => ({
      ...{ wayId, name, mode, from, to },
      line_deg: given.linesOf.get(wayId)?.map((point) => [...point]) ?? null,
    })),
    candidates,
    broken: outcome.broken.map((one) => ({
      kind: one.kind,
      tripId: 'crew' in one ? told.tripIdOf(one.crew, one.trip) : null,
      siteId: 'job' in one && one.job !== null ? problem.jobs[one.job]!.siteId : null,
      said: brokenSaid(told, one),
    })),
    problems: given.problems.map((one) => problemOfSheet(told, one)),
  };
}

/** A plan with all that its sentences are made with. */
export function sheetTold(given: SheetGiven, language: Language): SheetTold {
  const { facts, planId } = given;
  return {
    ...{ ...given, ...toldOf(given, language) },
    inForce: facts.rollout.plans.find((one) => one.planId === planId) ?? null,
    siteOf: new Map(facts.sites.map((site) => [site.siteId, site])),
  };
}

/** A kept plan, as a list of them has it. */
export function planReport({
  planId,
  name,
  from,
  isInForce,
  timedAt,
  note,
  trips,
}: PlanFacts): RolloutSheet['plans'][number] {
  return {
    ...{ planId, name, from: from === null ? null : isoDay(from), isInForce, timedAt, note },
    trips_count: trips.length,
    sites_count: trips.reduce((sum, { stops }) => sum + stops.length, 0),
  };
}

/** People who drink from a day on that no trip still to come decides. */
interface Drinking {
  readonly day: string;
  readonly people: number;
}

/** Of trips under way, from the day that was reckoned last. */
function comingOf({ past, peopleOf, today }: SheetTold): readonly Drinking[] {
  return past.flatMap(({ state, stops, back }) =>
    state !== 'underWay'
      ? []
      : stops.flatMap(({ siteId, handOver, kept }) => {
          const people = peopleOf.get(siteId) ?? 0;
          return handOver === null ? [{ day: isoDay(Math.max(today, kept ?? back)), people }] : [];
        }),
  );
}

/** Of trips of the plan that left: from the day that was entered for the hand-over. When a site first served is not known. */
function goneOf({ past, peopleOf }: SheetTold): readonly Drinking[] {
  return past.flatMap(({ stops }) =>
    stops.flatMap(({ siteId, handOver }) =>
      handOver === null ? [] : [{ day: isoDay(handOver), people: peopleOf.get(siteId) ?? 0 }],
    ),
  );
}

/** Of sites that no trip of the plan handed over. */
function servedBefore({ facts, past, peopleOf, today }: SheetTold): number {
  const own = new Set(past.flatMap(({ stops }) => stops.map(({ siteId }) => siteId)));
  return facts.sites
    .filter((site) => isHandedOver(site, today) && !own.has(site.siteId))
    .reduce((sum, { siteId }) => sum + (peopleOf.get(siteId) ?? 0), 0);
}

/** A curve that never falls, with more people from some days on. */
function withMore(points: RolloutSheet['served'], others: readonly Drinking[]): RolloutSheet['served'] {
  const more = new Map<string, number>();
  points.forEach(({ day, people }, at) => {
    more.set(day, people - (points[at - 1]?.people ?? 0));
  });
  for (const { day, people } of others) more.set(day, (more.get(day) ?? 0) + people);
  let sum = 0;
  return [...more]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([day, people]) => {
      sum += people;
      return { day, people: sum };
    });
}

/** So many days are drawn at the least, and so many beyond the last thing that happens. Ours. */
const [leastDrawn_days, beyond_days] = [56, 7] as const;

function untilOf(told: SheetTold): string {
  const { problem, outcome, futures } = told;
  const trips = outcome.trips.flat().filter(({ stops }) => stops.length > 0);
  const served = trips.flatMap(({ stops }) => stops.filter((stop) => isServed(stop, problem)));
  const ends = [
    leastDrawn_days,
    ...trips.map(({ back }) => lastDay(back)),
    ...served.map(({ serviceDay }) => serviceDay),
    ...(futures === null ? [] : [futures.allServed.p90.value]),
  ].map((day) => day + beyond_days);
  const until = ends.reduce((last, day) => Math.max(last, day), 0);
  return dayAt(told, Math.min(until, problem.horizon_days - 1));
}
