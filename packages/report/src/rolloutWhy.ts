import { isoDay, type RolloutNames, type WhyThen } from '@eavewell/engine';
import type { SheetTold } from './rolloutSheetTold.ts';

/** Sites that stand in a sentence, so that it can be read. Ours. */
const named_most = 3;
/** A rate below this has a decimal. Ours. */
const whole_count = 10;

/**
 * Why a village comes when it does, in a sentence; and in another what going there first would do.
 *
 * @param told - the plan
 * @param why - what was found; null: no crew can go there first
 * @param names - what things are called
 * @returns sentences
 * @definition ours: docs/decisions/0405-why-a-village-comes-when-it-does.md
 */
export function whySaid(told: SheetTold, why: WhyThen | null, names: RolloutNames): readonly string[] {
  const { say, numbers } = told.language;
  if (why === null) return [say('rolloutAnswers.why.none')];
  const { most, parts, first, job } = why;
  if (most === 'others')
    return [...(why.before.length > 0 ? [othersSaid(told, why, names)] : []), firstSaid(told, why, names)];
  const values = {
    ...{ days: numbers.days(parts[most]), crew: names.crewOf(first.crew), name: names.siteOf(job) },
    opens: numbers.date(isoDay(told.problem.firstDay + why.opensDay)),
  };
  return [say(`rolloutAnswers.why.${most}`, values), firstSaid(told, why, names)];
}

/** Who comes before, and what a day of the crew does for whom. */
function othersSaid(told: SheetTold, why: WhyThen, names: RolloutNames): string {
  const { problem, outcome, language } = told;
  const { say, numbers } = language;
  const { before, tripsBefore, ownTrip, first, job } = why;
  const worked_days = new Map(
    outcome.trips.flat().flatMap(({ stops }) => stops.map((stop) => [stop.job, stop.ends - stop.starts] as const)),
  );
  const named = before.slice(0, named_most).map((one) =>
    say('rolloutAnswers.why.otherSite', {
      name: names.siteOf(one),
      people: numbers.people(problem.jobs[one]!.people),
      days: numbers.days(Math.max(1, Math.round(worked_days.get(one)!))),
    }),
  );
  const more = before.length - named.length;
  const sum = (of: (rate: WhyThen['ownTrip']) => number) => tripsBefore.reduce((all, one) => all + of(one), 0);
  const rate = (people: number, days: number) => numbers.fixed(people / days, people / days < whole_count ? 1 : 0);
  const isRated = tripsBefore.length > 0;
  return say('rolloutAnswers.why.others', {
    ...{ crew: names.crewOf(first.crew), name: names.siteOf(job), isRated: isRated ? 'yes' : 'no' },
    names: [...named, ...(more > 0 ? [say('rolloutAnswers.andMore', { count: more })] : [])].join(', '),
    rate: isRated
      ? rate(
          sum((one) => one.people_count),
          sum((one) => one.out_days),
        )
      : '',
    own: rate(ownTrip.people_count, ownTrip.out_days),
  });
}

/** What going there first would do. */
function firstSaid({ problem, untreated, language }: SheetTold, why: WhyThen, names: RolloutNames): string {
  const { say, numbers } = language;
  const { first, job, serviceDay, othersWait_personDays } = why;
  if (first.serviceDay >= serviceDay) return say('rolloutAnswers.whyFirst.notSooner');
  const { siteId, serviceWaits } = problem.jobs[job]!;
  const amount = Math.round(othersWait_personDays);
  return say(`rolloutAnswers.whyFirst.${serviceWaits === null ? 'soonerHandOver' : 'sooner'}`, {
    ...{ crew: names.crewOf(first.crew), name: names.siteOf(job), isTreated: untreated.has(siteId) ? 'no' : 'yes' },
    day: numbers.date(isoDay(problem.firstDay + first.serviceDay)),
    isMore: amount > 0 ? 'yes' : 'no',
    amount: say('rolloutAnswers.personDays', { amount: numbers.fixed(amount, 0) }),
    broken: first.becomes.breaks.length,
  });
}
