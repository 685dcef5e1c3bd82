import type { RolloutSheet, SheetCandidate } from '@eavewell/tables';
import type { SheetTold } from './rolloutSheetTold.ts';
import { isServed, type Told } from './rolloutTold.ts';

type Proviso = RolloutSheet['provisos'][number];
type Named = Pick<SheetCandidate, 'name' | 'people' | 'reason'>;

/** Why a site is left out, as far as that is nobody's plan: gone to already, or on its way. */
const isNoLack = new Set(['handedOver', 'underWay', 'notAsked']);
/** Reasons a sentence is made for; docs/decisions/0394 has them. */
const lacks = [
  ...(['short', 'unknown', 'noPeople', 'notAgreed', 'noKit', 'noSkill', 'noWindow', 'noWay'] as const),
  ...(['tooHeavy', 'tooBulky', 'tooLong'] as const),
];
/** Names that stand in a sentence, so that it can be read; the page of sites has all of them. Ours. */
const names_most = 3;

/**
 * Of which sites does the first sentence of a plan say nothing, or too much?
 *
 * @param told - the plan
 * @param candidates - sites that are not handed over, planned or not
 * @returns not treated, in a trip and not done, counted from the hand-over as nobody knows when water runs, left out, not shown to hold; those there are
 * @definition ours: docs/decisions/0394-what-the-first-sentence-leaves-out.md
 */
export function provisosOf(told: SheetTold, candidates: readonly SheetCandidate[]): Proviso[] {
  if (told.planId === null) return [];
  const undone = notDone(told);
  const planned = candidates.filter(({ tripId }) => tripId !== null);
  const undated = undatedOf(told, undone);
  const of = {
    untreated: planned.filter(({ isUntreated }) => isUntreated),
    notDone: candidates.filter(({ siteId }) => undone.has(siteId)),
    undated: planned.filter(({ siteId }) => undated.has(siteId)),
    leftOut: candidates.filter(({ tripId, reason }) => tripId === null && reason !== null && !isNoLack.has(reason)),
    notHolding: planned.filter(({ verdict }) => verdict === 'short' || verdict === 'unknown'),
  };
  return (['untreated', 'notDone', 'undated', 'leftOut', 'notHolding'] as const)
    .filter((kind) => of[kind].length > 0)
    .map((kind) => {
      const sites = of[kind];
      const people_count = sites.reduce((sum, { people }) => sum + (people ?? 0), 0);
      return { kind, siteIds: sites.map(({ siteId }) => siteId), people_count, said: said(told, kind, sites) };
    });
}

/**
 * What is to be known beside the days on which all drink: sites of the trips whose water nothing treats, that are not done within
 * the days looked at, and that are counted from the hand-over, in sentences.
 *
 * @param told - a plan, kept or not
 * @returns a sentence for each of these there are, as the page of the plan has them
 * @definition ours: docs/decisions/0394-what-the-first-sentence-leaves-out.md
 */
export function drinkingProvisos(told: Told): readonly string[] {
  const { problem, outcome, nameOf, untreated } = told;
  const undone = notDone(told);
  const undated = undatedOf(told, undone);
  const jobs = outcome.trips.flat().flatMap(({ stops }) => stops.map(({ job }) => problem.jobs[job]!));
  const of = {
    untreated: jobs.filter(({ siteId }) => untreated.has(siteId)),
    notDone: jobs.filter(({ siteId }) => undone.has(siteId)),
    undated: jobs.filter(({ siteId }) => undated.has(siteId)),
  };
  return (['untreated', 'notDone', 'undated'] as const)
    .filter((kind) => of[kind].length > 0)
    .map((kind) => {
      const sites = of[kind].map(({ siteId, people }) => ({
        name: nameOf.get(siteId) ?? siteId,
        people,
        reason: null,
      }));
      return said(told, kind, sites);
    });
}

/** Sites that a trip goes to and does not get done within the days looked at. */
function notDone({ outcome, problem }: Told): ReadonlySet<string> {
  const stops = outcome.trips.flat().flatMap((trip) => trip.stops);
  return new Set(stops.filter((stop) => !isServed(stop, problem)).map(({ job }) => problem.jobs[job]!.siteId));
}

/** Sites that count from their hand-over, as nobody knows when water runs there. */
function undatedOf({ problem }: Told, undone: ReadonlySet<string>): ReadonlySet<string> {
  const unknown = problem.jobs.filter(({ siteId, serviceWaits }) => serviceWaits === null && !undone.has(siteId));
  return new Set(unknown.map(({ siteId }) => siteId));
}

function said({ language }: Told, kind: Proviso['kind'], sites: readonly Named[]): string {
  const { say, numbers } = language;
  const known = sites.filter(({ people }) => people !== null);
  const people = known.reduce((sum, one) => sum + (one.people ?? 0), 0);
  const because = lacks.flatMap((lack) => {
    const own = sites.filter(({ reason }) => reason === lack);
    return own.length === 0 ? [] : [`${say(`rolloutAnswers.lacks.${lack}`)}: ${namesOf(own, language)}`];
  });
  return say(`rolloutAnswers.proviso.${kind}`, {
    ...{ sites: sites.length, people: numbers.people(people), isKnown: known.length > 0 ? 'yes' : 'no' },
    ...{ names: namesOf(sites, language), because: because.join('. ') },
  });
}

/** Names of sites, those of the most people first; of many the first alone. */
function namesOf(sites: readonly Named[], { say }: Told['language']): string {
  const sorted = sites.toSorted((a, b) => (b.people ?? 0) - (a.people ?? 0));
  const named = sorted.slice(0, names_most).map(({ name }) => name);
  const more = sites.length - named.length;
  return [...named, ...(more > 0 ? [say('rolloutAnswers.andMore', { count: more })] : [])].join(', ');
}
