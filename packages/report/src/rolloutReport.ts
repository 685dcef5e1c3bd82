import { isoDay, moneyByMonth } from '@eavewell/engine';
import { type RolloutReport, rolloutSchemaVersion } from '@eavewell/tables';
import type { Language } from '@eavewell/words';
import { problemReport } from './problemReport.ts';
import { rolloutCompared } from './rolloutCompared.ts';
import { haulsOf } from './rolloutHauls.ts';
import { drinkingProvisos } from './rolloutProvisos.ts';
import { replannedReport } from './rolloutReplanned.ts';
import { drinkingOf, drinkingSaid } from './rolloutSentence.ts';
import { finish, isCostAtLeast, leftOut, servedByWeek, servedPoints, stock, waiting } from './rolloutSums.ts';
import { brokenSaid, type RolloutGiven, toldOf } from './rolloutTold.ts';
import { tripReport } from './rolloutTrips.ts';

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
  const { rollout, settings } = facts;
  const told = toldOf(given, language);
  const served = outcome.trips.flat().flatMap(({ stops }) => stops);
  return {
    ...{ eavewell: given.eavewell, schema: rolloutSchemaVersion, programme: settings.programme },
    ...{ day: isoDay(given.today), from: isoDay(problem.firstDay), seed: given.seed, tries_count: given.tries_count },
    currency: settings.currency,
    sites_count: served.length,
    people_count: served.reduce((sum, { job }) => sum + problem.jobs[job]!.people, 0),
    replanned: given.replanned ? replannedReport(given.replanned, told) : null,
    leftOut: leftOut(told),
    finish: finish(told),
    drinking: { ...drinkingOf(told), said: drinkingSaid(told) ?? '', provisos: [...drinkingProvisos(told)] },
    waiting: waiting(told),
    ...{ cost: outcome.cost, fuel_L: outcome.fuel_L },
    isCostAtLeast: isCostAtLeast(given.problems),
    served: servedPoints(told),
    servedByWeek: servedByWeek(told),
    moneyByMonth: moneyByMonth(problem, outcome).map((one) => ({ ...one })),
    crews: problem.crews.map(({ crewId }, crew) => ({
      crewId,
      name: rollout.crews.find((one) => one.crewId === crewId)?.name ?? crewId,
      trips: outcome.trips[crew]!.map((_, trip) => tripReport(told, crew, trip)),
    })),
    places: rollout.places.map(({ placeId, name }) => ({ id: placeId, name })),
    hauls: haulsOf(told),
    stock: stock(told),
    broken: outcome.broken.map((one) => ({ kind: one.kind, said: brokenSaid(told, one) })),
    compared: given.compared && rolloutCompared(given.compared, told),
    problems: given.problems.map((one) => problemReport(one, language)),
  };
}
