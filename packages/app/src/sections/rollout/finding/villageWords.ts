import type { RolloutSheet } from '@eavewell/tables';
import type { AppLanguage } from '@eavewell/words/app';
import { weekOfDay } from '../weekMap/weeks.ts';
import { type Coming, dayOfComing, type VillageFound } from './villageFound.ts';

type Words = Pick<AppLanguage, 'say' | 'numbers'>;

/** What is told of a village: when it drinks and how sure that is, then who comes, then what holds it up. */
export interface VillageTold {
  readonly first: string;
  readonly more: string;
  readonly why: readonly string[];
}

/** When a village drinks, how sure that is, and why not sooner; or why no trip goes there. */
export function villageWords(
  found: VillageFound,
  { futures, planId, day }: Pick<RolloutSheet, 'futures' | 'planId' | 'day'>,
  words: Words,
): VillageTold {
  const { say } = words;
  const { name } = found.village;
  if (found.kind === 'notPlanned') {
    const { reason, tripId, said } = found.candidate;
    if (planId === null && reason === null && tripId === null)
      return { first: say('rolloutFinding.no_plan', { name }), more: say('rolloutFinding.plan_first'), why: [] };
    if (tripId !== null) return { first: say('rolloutFinding.not_done', { name }), more: '', why: [said] };
    const why = said === '' ? (reason === null ? [say('rolloutFinding.no_trip')] : []) : [said];
    return { first: say('rolloutFinding.not_planned', { name }), more: '', why };
  }
  if (found.kind === 'handedOver') return handedOver(name, found.coming, words);
  const { first, more } =
    found.coming.trip.state === 'underWay'
      ? whenGoneTo(found.coming, day, name, words)
      : whenItDrinks(found.coming, futures, name, words);
  return { first, more: `${more} ${whoComes(found.coming, words)}`.trim(), why: heldUpBy(found.coming, words) };
}

function handedOver(name: string, coming: Coming | null, { say, numbers }: Words): VillageTold {
  const [day, served] = [coming?.stop.handOver ?? null, coming?.stop.served ?? null];
  if (day === null) return { first: say('rolloutFinding.handed_over', { name }), more: '', why: [] };
  const first = say('rolloutFinding.handed_over_on', { name, day: numbers.date(day) });
  const isLater = served !== null && served > day;
  const values = { day: numbers.date(served ?? day), treated: treatedWord(coming) };
  return { first, more: isLater ? say('rolloutFinding.serves_from', values) : '', why: [] };
}

/** Where nothing makes the water fit to drink, nobody is said to drink. */
const treatedWord = (coming: Coming | null) => (coming?.stop.isUntreated ? 'no' : 'yes');

/** Of a trip that left no future is drawn: the day of the hand-over is that which was reckoned last, or its way back, or today. */
function whenGoneTo({ stop, trip }: Coming, today: string, name: string, { say, numbers }: Words) {
  const last = stop.kept ?? trip.back;
  const first = say('rolloutFinding.gone_to', { name, day: numbers.date(last < today ? today : last) });
  return { first, more: say('rolloutFinding.gone_sure') };
}

/** The day as likely as not, and the day nine times in ten; without futures the day if all goes as likely, and that no more is known. */
function whenItDrinks(
  coming: Coming,
  state: RolloutSheet['futures'],
  name: string,
  { say, numbers }: Words,
): { readonly first: string; readonly more: string } {
  const { handOver, served, futures } = coming.stop;
  const treated = treatedWord(coming);
  if (served === null)
    return handOver === null
      ? { first: say('rolloutFinding.no_day', { name, treated }), more: '' }
      : { first: say('rolloutFinding.fills_unknown', { name, day: numbers.date(handOver) }), more: '' };
  if (futures === null) {
    const first = say('rolloutFinding.drinks_from', { name, treated, day: numbers.date(served) });
    return { first, more: say(state === 'beingDrawn' ? 'rolloutFinding.sure_to_come' : 'rolloutFinding.sure_unknown') };
  }
  const { p10, p50, p90 } = futures;
  const planned = [
    ifAllGoes(handOver ?? served, served, treated, { say, numbers }),
    ...(p10 !== null && served < p10 ? [say('rolloutFinding.seldom_so_soon')] : []),
  ].join(' ');
  if (p50 === null) return { first: say('rolloutFinding.hardly', { name, treated }), more: planned };
  if (p90 === null)
    return { first: say('rolloutFinding.by_half', { name, treated, likely: numbers.date(p50) }), more: planned };
  const values = { name, treated, likely: numbers.date(p50), late: numbers.date(p90) };
  const [by, promise] = p50 === p90 ? (['by_one_day', 'promise_day'] as const) : (['by', 'promise'] as const);
  return { first: say(`rolloutFinding.${by}`, values), more: `${planned} ${say(`rolloutFinding.${promise}`)}` };
}

/** Both days, so that nobody takes that of the hand-over, which others tell, for that of water. */
const ifAllGoes = (handOver: string, served: string, treated: string, { say, numbers }: Words): string =>
  say('rolloutFinding.if_all_goes', {
    ...{ handOver: numbers.date(handOver), day: numbers.date(served) },
    treated,
    isLater: served > handOver ? 'yes' : 'no',
  });

function whoComes(coming: Coming, { say, numbers }: Words): string {
  const { crew, trip } = coming;
  const comes = dayOfComing(coming);
  const values = {
    crew: crew.name,
    week: numbers.date(weekOfDay(comes)?.from ?? comes),
    leaves: numbers.date(trip.leaves),
  };
  return say(trip.state === 'underWay' ? 'rolloutFinding.crew_left' : 'rolloutFinding.crew_comes', values);
}

/** What makes the trip wait, what it breaks, and what makes it tight. */
function heldUpBy({ trip, stop }: Coming, { say, numbers }: Words): readonly string[] {
  const days = numbers.days(Math.round(trip.waited_days));
  const waits =
    trip.state !== 'planned' || trip.waitsFor === 'nothing' || Math.round(trip.waited_days) < 1
      ? []
      : [say('rolloutFinding.waits', { what: trip.waitsFor, days })];
  const broken = trip.broken.filter(({ siteId }) => siteId === null || siteId === stop.siteId).map(({ said }) => said);
  return [
    ...waits,
    ...broken,
    ...(trip.isTight && trip.tightSaid !== null ? [trip.tightSaid] : []),
    ...(trip.isOverdue ? [say('rolloutFinding.overdue')] : []),
  ];
}
