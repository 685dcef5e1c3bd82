import type { AboardPiece } from '@eavewell/engine';
import type { RolloutReport, RolloutTripAnswer, RolloutTripReport, SheetTrip } from '@eavewell/tables';
import type { Language } from '@eavewell/words';
import { haulLegsOf, haulsFor } from './rolloutHauls.ts';
import { leanedOn } from './rolloutLeans.ts';
import { nightsOf, noSleepIn } from './rolloutNights.ts';
import { crewFigures } from './rolloutSheetCrews.ts';
import { type RolloutGiven, toldOf } from './rolloutTold.ts';
import { aboardOf, carrierOf, haulsWith, massesBeside } from './rolloutTripAnswer.ts';

/** What the papers of a plan are made of, beside its report. */
export interface OnPaperGiven extends RolloutGiven {
  /** What is put aboard for sites, the first first. */
  readonly aboardFor: (siteIds: readonly string[]) => readonly AboardPiece[];
}

/** A trip as it is put on paper: that of the answer of a trip, of a plan that nobody has kept. */
type TripOfPaper = Omit<RolloutTripAnswer, 'stamp' | 'planId' | 'isInForce'>;

/** A crew with its trips. */
export interface CrewOfPaper {
  readonly programme: string;
  readonly plan: string;
  readonly crew: RolloutTripAnswer['crew'];
  readonly trips: readonly TripOfPaper[];
}

/**
 * The crews of a plan with their trips, as papers are made of them.
 *
 * @param report - the plan
 * @param given - what it was made of
 * @param plan - what it is called
 * @param language - of sentences
 * @returns crews in the order of the report
 * @definition ours
 */
export function crewsOnPaper(
  report: RolloutReport,
  given: OnPaperGiven,
  plan: string,
  language: Language,
): readonly CrewOfPaper[] {
  const { facts, problem } = given;
  const leans = leanedOn(report.problems);
  const told = toldOf(given, language);
  const noSleep = noSleepIn(facts);
  const nameOf = new Map([
    ...report.places.map(({ id, name }) => [id, name] as const),
    ...facts.sites.map(({ siteId, name }) => [siteId, name] as const),
  ]);
  return report.crews.flatMap(({ crewId, trips }, at): readonly CrewOfPaper[] => {
    const crewFacts = facts.rollout.crews.find((one) => one.crewId === crewId);
    if (crewFacts === undefined) return [];
    const crew = crewFigures({ facts, problem, language }, crewFacts);
    const carriers = facts.kit.carriers.filter(({ carrierId }) => crewFacts.carrierIds.includes(carrierId));
    const known = { programme: report.programme, plan, crew };
    return [
      {
        ...known,
        trips: trips.map((trip, nth): TripOfPaper => {
          const dated = tripOf(trip, nth);
          return {
            ...{ ...known, trip: dated, legs: trip.legs, cautions: trip.cautions },
            aboard: given.aboardFor(trip.stops.map(({ siteId }) => siteId)).map((one) => aboardOf(one, leans)),
            carriers: carriers.map(carrierOf),
            hauls: haulsWith(haulsFor(report, trip.tripId), haulLegsOf(told, trip.tripId), facts),
            ...massesBeside(crewFacts.people_count, trip.fuel_L),
            days: nightsOf({ problem, language, nameOf, noSleep }, dated, given.legsOf(at, nth), crewFacts),
            places: report.places.map(({ id, name }) => ({ placeId: id, name })),
          };
        }),
      },
    ];
  });
}

/** A planned trip: nothing has happened of it, and nobody looked whether it is tight. */
function tripOf(
  { legs: _legs, aboard: _aboard, cautions: _cautions, stops, ...trip }: RolloutTripReport,
  order: number,
): SheetTrip {
  return {
    ...trip,
    ...{
      state: 'planned',
      order,
      notBefore: null,
      legs: [],
      broken: [],
      isTight: false,
      tightSaid: null,
      overdueSaid: null,
    },
    isOverdue: false,
    stops: stops.map((stop) => ({ ...stop, kept: null, isHandedOver: false, isWayUp: true })),
  };
}
