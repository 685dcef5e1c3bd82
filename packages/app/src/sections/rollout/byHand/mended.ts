import type { RolloutSheet } from '@eavewell/tables';
import type { AppLanguage } from '@eavewell/words/app';
import type { Laid } from './moveAnswer.ts';
import { allWords } from './moveWords.ts';
import { crewOfPlace, tripOf, tripOfSite } from './places.ts';

/** Crews whose trips may change when the plan is mended around a move: more are left as they are. Ours. */
const crews_most = 6;

/** What stays when the plan is mended around a move, and whose trips may change. */
export interface MendAsked {
  readonly keepTrips: readonly string[];
  readonly onlyCrews: readonly string[];
}

/** The trip that was laid stays as it was laid; its crew, that it was taken from and those whose days it moved may change. */
export function mendAsked(sheet: RolloutSheet, { held, at, answer }: Laid): MendAsked {
  const trip = held.kind === 'trip' ? held.tripId : tripOfSite(sheet, held.siteId)?.tripId;
  const own = trip === undefined ? null : (tripOf(sheet, trip)?.crew.crewId ?? null);
  const crews = [own, crewOfPlace(sheet, at), ...answer.crews.map(({ crewId }) => crewId)];
  const known = new Set(sheet.crews.map(({ crewId }) => crewId));
  const wanted = [...new Set(crews)].filter((crewId): crewId is string => crewId !== null && known.has(crewId));
  return { keepTrips: trip === undefined ? [] : [trip], onlyCrews: wanted.slice(0, crews_most) };
}

/** The hand-over of each site of the sheet that has one. */
const daysOf = ({ crews }: Pick<RolloutSheet, 'crews'>): ReadonlyMap<string, string> =>
  new Map(
    crews.flatMap(({ trips }) =>
      trips.flatMap(({ stops }) =>
        stops.flatMap(({ siteId, handOver }) => (handOver === null ? [] : [[siteId, handOver] as const])),
      ),
    ),
  );

type Compared = Pick<RolloutSheet, 'crews' | 'waiting' | 'cost' | 'currency'>;

/**
 * What a mending changed, in a few sentences.
 *
 * @param before - the sheet before it
 * @param after - the sheet after it
 * @param words - words of the language
 * @returns the sentences; null: nothing is otherwise
 */
export function mendedWords(
  before: Compared,
  after: Compared,
  words: Pick<AppLanguage, 'say' | 'numbers'>,
): string | null {
  const was = daysOf(before);
  const moved = [...daysOf(after)].filter(([siteId, day]) => was.has(siteId) && was.get(siteId) !== day);
  const sooner = moved.filter(([siteId, day]) => day < was.get(siteId)!).length;
  const later = moved.length - sooner;
  if (moved.length === 0) return null;
  const waits = (sheet: Compared) => sheet.waiting?.personDays ?? null;
  const [old, now] = [waits(before), waits(after)];
  const all = allWords(
    after,
    {
      waiting_personDays: old === null || now === null ? 0 : now - old,
      ...{ finish_days: 0, cost: after.cost - before.cost },
    },
    words,
  );
  const both = sooner > 0 && later > 0 ? 'yes' : 'no';
  return [words.say('rolloutByHand.moved_of', { sooner, later, both }), ...all].join(' ');
}
