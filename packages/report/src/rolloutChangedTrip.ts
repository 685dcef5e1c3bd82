import type { ChangedTrip } from '@eavewell/engine';
import type { RolloutReport } from '@eavewell/tables';
import { dayAt, type Told } from './rolloutTold.ts';

type Report = NonNullable<RolloutReport['replanned']>;

/** A trip that is otherwise than before, in a sentence. */
export function tripReport(
  trip: ChangedTrip,
  told: Pick<Told, 'problem' | 'facts' | 'language'>,
): Report['trips'][number] {
  const { problem, facts, language } = told;
  const { tripId, crewBefore, crewAfter, leavesBefore, leavesAfter, hasOtherStops } = trip;
  const kind = crewBefore === null ? 'new' : crewAfter === null ? 'gone' : 'moved';
  const crewId = (crew: number | null) => (crew === null ? null : problem.crews[crew]!.crewId);
  const day = (at: number | null) => (at === null || at >= problem.horizon_days ? null : dayAt(told, at));
  const id = crewId(crewAfter) ?? crewId(crewBefore);
  const [was, is] = [day(leavesBefore), day(leavesAfter)];
  const said = (at: string | null) =>
    at === null ? language.say('rolloutReport.replanned.notWithin') : language.numbers.date(at);
  return {
    ...{ tripId, kind, crewBefore: crewId(crewBefore), crewAfter: crewId(crewAfter) },
    ...{ leavesBefore: was, leavesAfter: is, hasOtherStops },
    said: language.say(`rolloutReport.replanned.trip.${kind}`, {
      ...{ trip: tripId, crew: facts.rollout.crews.find((one) => one.crewId === id)?.name ?? id ?? '' },
      ...{ was: said(was), leaves: said(is) },
      isOtherCrew: crewBefore === crewAfter ? 'no' : 'yes',
      isOtherDay: was === is ? 'no' : 'yes',
      isOtherStops: hasOtherStops ? 'yes' : 'no',
    }),
  };
}
