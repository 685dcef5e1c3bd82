import {
  breaksBeside,
  type ChangedTrip,
  isoDay,
  type ProgrammeFacts,
  type SinceTold,
  sinceTold,
  tripChanges,
} from '@eavewell/engine';
import type { RolloutComparison } from '@eavewell/tables';
import type { Language } from '@eavewell/words';
import type { AnewGiven, ComparisonGiven } from './comparisonGiven.ts';
import { tripReport } from './rolloutChangedTrip.ts';
import { changeSaid } from './rolloutChanges.ts';
import { brokenSaid, dayAt, isServed } from './rolloutTold.ts';
import { toldOf, toldOtherwise } from './rolloutToldOtherwise.ts';

type Anew = NonNullable<RolloutComparison['anew']>;
type Sums = Pick<RolloutComparison, 'waiting_personDays' | 'cost'>;

/** Trips that leave within so many days may be packed already [day]. Ours. */
const soon_days = 7;

/** What a plan that was found changes of the one it would take the place of, and what of it comes from what happened. */
export function anewReport(given: ComparisonGiven, anew: AnewGiven, sums: Sums, language: Language): Anew {
  const { problem, a, b, facts } = given;
  const toldDayOf = toldOf(a.facts, anew);
  const since = sinceTold(problem, a.outcome, toldDayOf);
  const cost = costSince(given, anew);
  const tripIdOf = (crew: number, trip: number) => b.tripIds[crew]?.[trip] ?? '';
  const told = { problem, facts, language, nameOf: namesOf(facts), tripIdOf };
  const isNew = new Set(breaksBeside(problem.jobs.length, a, b).map(({ broken }) => broken));
  const broken = b.outcome.broken.map((one) => ({ said: brokenSaid(told, one), isNew: isNew.has(one) }));
  const { waiting_personDays, lastToldDay, later_count, sooner_count, untold_count } = since;
  return {
    ...{ by: anew.by, at: anew.at, entered_count: anew.entered.changes_count, isPlanChanged: anew.isPlanChanged },
    entered: anew.entered.changes.map((change) => ({
      ...{ at: change.at, by: change.by, said: changeSaid(change, given, language) },
    })),
    said: anewSaid(given, since, cost, sums, language),
    since: {
      ...{ waiting_personDays, cost, later_count, sooner_count, untold_count },
      lastToldDay: lastToldDay === null ? null : isoDay(problem.firstDay + lastToldDay),
    },
    toldOtherwise: toldOtherwise(given, anew, toldDayOf),
    trips: changedTrips(given, language),
    broken: [...broken.filter((one) => one.isNew), ...broken.filter((one) => !one.isNew)],
  };
}

/** What the trips still to go cost above what they did before; null: they are not the same trips, or nothing changed. */
function costSince({ a }: ComparisonGiven, { before }: AnewGiven): number | null {
  const now = a.tripIds.flat();
  const isSame = before !== null && [...before.tripIds].sort().join() === [...now].sort().join();
  return isSame ? a.outcome.cost - before.cost : null;
}

function namesOf({ sites }: ProgrammeFacts): ReadonlyMap<string, string> {
  return new Map(sites.map(({ siteId, name }) => [siteId, name]));
}

/** Trips that are otherwise, those that leave next first: people may be packing them. */
function changedTrips({ problem, a, b, facts }: ComparisonGiven, language: Language): Anew['trips'] {
  const names = namesOf(facts);
  const crewNames = new Map(facts.rollout.crews.map(({ crewId, name }) => [crewId, name]));
  const goesOf = ({ plan, outcome, tripIds }: ComparisonGiven['a']) =>
    new Map(
      plan.trips.flatMap((own, crew) =>
        own.map(({ stops }, at): [string, Anew['trips'][number]['before']] => {
          const { crewId } = problem.crews[crew]!;
          const { leaves } = outcome.trips[crew]![at]!;
          return [
            tripIds[crew]![at]!,
            {
              crew: crewNames.get(crewId) ?? crewId,
              leaves: leaves >= problem.horizon_days ? null : dayAt({ problem }, leaves),
              stops: stops.map((job) => names.get(problem.jobs[job]!.siteId) ?? problem.jobs[job]!.siteId),
            },
          ];
        }),
      ),
    );
  const [was, is] = [goesOf(a), goesOf(b)];
  const next = ({ leavesBefore, leavesAfter }: ChangedTrip) =>
    Math.min(leavesBefore ?? problem.horizon_days, leavesAfter ?? problem.horizon_days);
  return [...tripChanges(a, b)]
    .sort((one, other) => next(one) - next(other) || (one.tripId < other.tripId ? -1 : 1))
    .map((trip) => {
      const { tripId, kind, said } = tripReport(trip, { problem, facts, language });
      const [before, after] = [was.get(tripId) ?? null, is.get(tripId) ?? null];
      return { tripId, kind, before, after, isSoon: next(trip) < soon_days, said };
    });
}

/** Differences smaller than this are none [person-day, money]. */
const slack_amount = 0.5;

type More = 'more' | 'less' | 'same';
const moreOf = (value: number): More => (Math.abs(value) < slack_amount ? 'same' : value > 0 ? 'more' : 'less');

/** How much comes from what happened, and how much the plan takes back: waiting, the last hand-over, money. */
function anewSaid(
  given: ComparisonGiven,
  since: SinceTold,
  costSince: number | null,
  { waiting_personDays: won, cost }: Sums,
  { say, numbers }: Language,
): string[] {
  const { problem, a, b, facts } = given;
  const { currency } = facts.settings;
  const whole = (value: number) => Math.round(Math.abs(value));
  const money = (value: number) =>
    currency === null ? numbers.fixed(Math.abs(value), 0) : numbers.money(Math.abs(value), currency);
  const date = (day: number) => numbers.date(isoDay(problem.firstDay + Math.floor(day)));
  const hasTold = since.untold_count < problem.jobs.length;
  const isLonger = since.waiting_personDays >= slack_amount;
  const isAll = isLonger && -won > since.waiting_personDays + slack_amount;
  const said = [
    say('rolloutAnswers.anew.waiting', {
      ...{ since: hasTold ? moreOf(since.waiting_personDays) : 'none', sinceDays: whole(since.waiting_personDays) },
      ...{ won: isAll ? 'all' : moreOf(won), days: whole(won), over: whole(-won - since.waiting_personDays) },
    }),
  ];
  const served = ({ outcome }: ComparisonGiven['a']) =>
    outcome.trips.flat().some(({ stops }) => stops.some((stop) => isServed(stop, problem)));
  if (served(a) && served(b))
    said.push(
      say('rolloutAnswers.anew.finish', {
        hasTold:
          since.lastToldDay === null ? 'no' : since.lastToldDay === Math.floor(a.outcome.finish) ? 'same' : 'yes',
        told: since.lastToldDay === null ? '' : date(since.lastToldDay),
        ...{ asIs: date(a.outcome.finish), found: date(b.outcome.finish) },
        isSame: Math.floor(a.outcome.finish) === Math.floor(b.outcome.finish) ? 'yes' : 'no',
      }),
    );
  said.push(
    say('rolloutAnswers.anew.cost', {
      ...{ since: costSince === null ? 'none' : moreOf(costSince), sinceCost: money(costSince ?? 0) },
      ...{ own: moreOf(cost), cost: money(cost) },
    }),
  );
  if (hasTold && since.untold_count > 0) said.push(say('rolloutAnswers.anew.untold', { count: since.untold_count }));
  return said.map((one) => one.trim());
}
