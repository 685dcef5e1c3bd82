import type { SiteDesign, SiteFacts } from '../kernel/index.ts';
import { asItIs, type Chains, type Placed, type Plan, type Probe } from './chains.ts';
import type { DeclaredSource } from './changes.ts';
import { firstStep_count } from './constants.ts';
import { mostCarried, type PeopleCarried, splitPlan, tooFewToStay } from './peopleCarried.ts';
import { othersOf, type Remedy } from './remedy.ts';

/** What is open to a whole site that is short: other water near by, and people to go by. */
export interface WholeSite {
  readonly source: DeclaredSource | null;
  /** Of the design year; null where nobody is to be sent away. */
  readonly all_people: number | null;
}

/** Changes of one kind to one body of water, of which the last asks for most and does most. */
export type Ladder = readonly Placed[];

/** Of a site that is short only: one that is tight needs no other water and no other site, but a little more of its own. */
export function openToWholeSite({ stations, design_people }: SiteDesign, site: SiteFacts): WholeSite {
  if (stations.storage !== 'short') return { source: null, all_people: null };
  const near = site.secondSource === null ? site.nearSecondSource : null;
  return {
    source: near && {
      kind: 'secondSource',
      secondSourceId: near.secondSourceId,
      name: near.name,
      sourceKind: near.kind,
    },
    all_people: design_people,
  };
}

/**
 * How many people does the site carry as it stands? The greatest number with which it holds, and the greatest with which it is tight,
 * where that is more.
 *
 * @param chains - the site
 * @param whole - people of the design year [person]
 * @returns people carried and the others [person], at most one entry for each verdict, `holds` first
 * @definition ours
 */
export function carriedAsItStands(chains: Chains, { all_people }: WholeSite): readonly PeopleCarried[] {
  if (all_people === null) return [];
  return carriedBy(chains, [], all_people, { holds: 0, tight: 0 });
}

/** Numbers of people that are of no use, and any fewer, for each verdict; null: any number. */
type OfNoUse = Readonly<Record<PeopleCarried['verdict'], number | null>>;

/** The most people with which it holds, and with which it is tight where that is more; each only where it is of use. */
function carriedBy(
  chains: Chains,
  placed: readonly Placed[],
  all_people: number,
  noUse: OfNoUse,
): readonly PeopleCarried[] {
  const probes = new Map<number, Probe | null>();
  const probe = (people: number) => {
    const known = probes.get(people);
    if (known !== undefined) return known;
    const made = chains.probe(splitPlan(placed, people, all_people));
    probes.set(people, made);
    return made;
  };
  const most = (is: 'isMet' | 'couldHold' | 'holds', tooMany_people: number, over_people: number, step: number) =>
    mostCarried((people) => probe(people)?.[is]() === true, { tooMany_people, over_people, firstStep_people: step });
  const stepFrom = (people: number) => Math.ceil(people / firstStep_count);
  const least = Math.min(noUse.holds ?? all_people, noUse.tight ?? all_people);
  // The quicker questions first: no more can hold than are tight, nor than for whom the years counted are enough.
  const tight = most('isMet', all_people, least, stepFrom(all_people));
  if (tight === null) return [];
  const over = noUse.holds ?? all_people;
  const could = most('couldHold', tight + 1, over, stepFrom(tight + 1));
  // For those the years drawn again are mostly enough too.
  const holds = could === null ? null : most('holds', could + 1, over, 1);
  const found: PeopleCarried[] = [];
  const tell = (verdict: PeopleCarried['verdict'], carried_people: number) => {
    found.push({ verdict, carried_people, others_people: all_people - carried_people });
  };
  if (holds !== null) tell('holds', holds);
  if (tight > Math.max(noUse.tight ?? all_people, holds ?? 0)) tell('tight', tight);
  return found;
}

/** Those who are too many go, where at least half may stay. */
export function splitPlans({ all_people }: WholeSite, carried: readonly PeopleCarried[]): readonly Plan[] {
  return carried
    .filter(({ carried_people }) => carried_people > tooFewToStay(all_people!))
    .map(({ carried_people }) => splitPlan([], carried_people, all_people!));
}

/** The second source, by itself. */
export function sourcePlans({ source }: WholeSite): readonly Plan[] {
  return source === null ? [] : [{ ...asItIs, ofSite: source }];
}

/**
 * With which changes do fewer people have to go? Of each ladder the most people its last rung carries, where that comes before every
 * single change; and every rung that carries as many.
 *
 * @param chains - the site
 * @param ladders - the changes to its bodies of water
 * @param whole - people of the design year [person]
 * @param first - the single change that is told first, if there is any
 * @returns pairs of a change and a split
 * @law a larger tank, or more gutter, never carries fewer people
 * @definition ours
 */
export function splitPairs(
  chains: Chains,
  ladders: readonly Ladder[],
  { all_people }: WholeSite,
  first: Remedy | undefined,
): readonly Plan[] {
  if (all_people === null) return [];
  const noUse = { holds: mostOfNoUse('holds', all_people, first), tight: mostOfNoUse('tight', all_people, first) };
  if (noUse.holds === null && noUse.tight === null) return [];
  return ladders.flatMap((ladder) => {
    const last = ladder.at(-1);
    if (last === undefined) return [];
    return carriedBy(chains, [last], all_people, noUse).flatMap(({ carried_people }) =>
      ladder.map((rung) => splitPlan([rung], carried_people, all_people)),
    );
  });
}

/** The most people carried with which a pair of this verdict would still not come before the first single change; null: any number. */
function mostOfNoUse(verdict: PeopleCarried['verdict'], all_people: number, first: Remedy | undefined): number | null {
  const tooFew = tooFewToStay(all_people);
  if (first === undefined || (verdict === 'holds' && first.verdict === 'tight')) return tooFew;
  if (verdict !== first.verdict) return null;
  if (first.promiseCut_count > 0 || first.sourceDays_per_year !== null) return tooFew;
  return othersOf(first) === 0 ? null : all_people - othersOf(first);
}

/** Pairs of a change and the second source: tight at best, so only where no single change that keeps the promise does as much. */
export function sourcePairs(
  placed: readonly Placed[],
  { source }: WholeSite,
  first: Remedy | undefined,
): readonly Plan[] {
  if (source === null || (first !== undefined && (first.verdict === 'holds' || first.promiseCut_count === 0)))
    return [];
  return placed.map((one) => ({ placed: [one], ofSite: source, cut_count: 0 }));
}
