import type { SheetCandidate } from '@eavewell/tables';
import { type ChoosingAsked, type Why, whyOf, whys } from './choosingAsked.ts';

/** Sites and their people. Of some the people may not be known. */
export interface Counted {
  readonly sites_count: number;
  readonly people: number;
}

/** How many sites there are of each reason, and how many that are planned; in the order in which they are told. */
export interface CandidateTally {
  readonly byWhy: ReadonlyMap<Why, Counted>;
}

const none: Counted = { sites_count: 0, people: 0 };
const plus = ({ sites_count, people }: Counted, more: number | null): Counted => ({
  sites_count: sites_count + 1,
  people: people + (more ?? 0),
});

/** Counts sites and people by whether and why they are planned; the reasons stand as they are told. */
export function candidateTally(candidates: readonly SheetCandidate[]): CandidateTally {
  const found = new Map<Why, Counted>();
  for (const candidate of candidates) {
    const why = whyOf(candidate);
    found.set(why, plus(found.get(why) ?? none, candidate.people));
  }
  const byWhy = new Map(whys.flatMap((why) => (found.has(why) ? [[why, found.get(why)!] as const] : [])));
  return { byWhy };
}

const placeOf = new Map(whys.map((why, place) => [why, place]));

/** Is it shown to hold, or not judged yet? */
export const isHolding = ({ verdict }: Pick<SheetCandidate, 'verdict'>): boolean =>
  verdict !== 'short' && verdict !== 'unknown';

/**
 * Those that are left out and could be mended first, then the others, then those that are planned and do not hold, then those that are
 * planned; within each the most people.
 */
export function inOrder(candidates: readonly SheetCandidate[]): readonly SheetCandidate[] {
  const place = (one: SheetCandidate) =>
    placeOf.get(whyOf(one))! + (isHolding(one) || whyOf(one) !== 'planned' ? 0 : -0.5);
  return [...candidates].sort(
    (a, b) =>
      place(a) - place(b) ||
      (b.people ?? -1) - (a.people ?? -1) ||
      a.name.localeCompare(b.name) ||
      (a.siteId < b.siteId ? -1 : 1),
  );
}

/** The sites an address asks for, in their order. */
export function chosenCandidates(
  ordered: readonly SheetCandidate[],
  { site, why, verdict, area }: ChoosingAsked,
): readonly SheetCandidate[] {
  return ordered.filter(
    (one) =>
      (site === undefined || one.siteId === site) &&
      (why === undefined || whyOf(one) === why) &&
      (verdict === undefined || one.verdict === verdict) &&
      (area === undefined || one.area === area),
  );
}

/** Sites that do not hold: those left out for it, and those planned all the same. */
export function notHolding(candidates: readonly SheetCandidate[]): {
  readonly left: Counted;
  readonly planned: Counted;
} {
  let [left, planned] = [none, none];
  for (const one of candidates) {
    if (one.reason === 'short' || one.reason === 'unknown') left = plus(left, one.people);
    else if (one.tripId !== null && !isHolding(one)) planned = plus(planned, one.people);
  }
  return { left, planned };
}
