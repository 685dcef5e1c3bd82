import type { SheetCandidate } from '@eavewell/tables';
import type { AppLanguage, AppMessageKey } from '@eavewell/words/app';
import type { Why } from './choosingAsked.ts';
import type { CandidateTally } from './chosenCandidates.ts';

type Words = Pick<AppLanguage, 'say' | 'numbers'>;

/** So many sites of a reason, as a filter and in the sentence have it. */
export const countKey = (why: Why): AppMessageKey => `rolloutChoosing.count_${why}`;

/**
 * The sentence over the list: how many are planned with how many people, and how many are not, by their reasons.
 *
 * @param isKept - is it a plan that is kept? Else these are the sites that can be planned
 */
export function tallySentence({ byWhy }: CandidateTally, isKept: boolean, { say, numbers }: Words): string {
  const told: Why = isKept ? 'planned' : 'noTrip';
  const { sites_count: count = 0, people = 0 } = byWhy.get(told) ?? {};
  const values = { count, people: numbers.people(people) };
  const first = say(isKept ? 'rolloutChoosing.planned' : 'rolloutChoosing.can_be', values);
  const left = [...byWhy].filter(([why]) => why !== told);
  if (left.length === 0) return `${first} ${say('rolloutChoosing.none_left')}`;
  const reasons = left.map(([why, { sites_count }]) => say(countKey(why), { count: sites_count })).join(', ');
  const together = left.reduce((sum, [, counted]) => sum + counted.people, 0);
  const sites = left.reduce((sum, [, { sites_count }]) => sum + sites_count, 0);
  return `${first} ${say('rolloutChoosing.left', { count: sites, people: numbers.people(together), reasons })}`;
}

/** What is agreed with a village, as one line: agreed on, ready from, to be finished by, why it comes first. */
export function agreedLine(candidate: SheetCandidate, { say, numbers }: Words): string {
  const { agreedOn, readyFrom, finishBy, priority_factor, priorityReason } = candidate;
  const dated = (key: AppMessageKey, day: string | null) =>
    day === null ? [] : [say(key, { day: numbers.date(day) })];
  const counts =
    priority_factor === 1 ? [] : [say('rolloutChoosing.priority', { times: numbers.given(priority_factor, '') })];
  return [
    agreedOn === null
      ? say('rolloutChoosing.not_agreed')
      : say('rolloutChoosing.agreed', { day: numbers.date(agreedOn) }),
    ...dated('rolloutChoosing.ready', readyFrom),
    ...dated('rolloutChoosing.finish', finishBy),
    ...counts.map((said) => (priorityReason === null ? said : `${said}: ${priorityReason}`)),
  ].join('; ');
}
