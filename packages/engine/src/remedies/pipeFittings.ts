import { type HeadFinding, type SiteFacts, tankGroups, type Verdict } from '../kernel/index.ts';
import type { FittingChange } from './changes.ts';
import { mostVariedPipes_count } from './constants.ts';
import { nothingToBuy } from './cost.ts';
import {
  boresOf,
  compareOptions,
  type FittingCase,
  type FittingOption,
  optionOf,
  reaches,
  withFittings,
} from './fittingOptions.ts';

/**
 * Which overflow pipes of the catalogue let the storm out, for the least money? In one tank of each body of water, or in all of them
 * that have one.
 *
 * @param site - the site's facts, other changes made
 * @param given - the market, and how a site is judged
 * @returns the changes; none for a body of water that nothing of the catalogue mends
 * @definition ours: docs/decisions/0189-fittings-complete-a-remedy.md
 */
export function overflowFittings(site: SiteFacts, given: FittingCase): readonly FittingChange[] {
  const verdictOf = (changed: SiteFacts, id: string) =>
    given.judge(changed).drainage?.parts.find((one) => one.part === 'overflow' && one.id === id)?.verdict;
  const wanting = given.judge(site).drainage?.parts.filter(({ part }) => part === 'overflow') ?? [];
  return wanting.flatMap(({ id, verdict }) => {
    if (verdict !== 'short' && verdict !== 'tight') return [];
    const body = tankGroups(site.tanks).find(({ tankIds }) => tankIds.includes(id));
    const tanks = body?.tanks.filter(({ overflowBore_mm }) => overflowBore_mm !== null) ?? [];
    const places = tanks.length > 1 ? [...tanks.map((tank) => [tank]), tanks] : [tanks];
    const options = boresOf('overflow', given.market.parts).flatMap(({ partId, bore_mm }) =>
      places.map((some) =>
        optionOf(
          site,
          some.map(({ tankId }): FittingChange => ({ kind: 'overflow', tankId, partId, bore_mm })),
          given,
          nothingToBuy,
        ),
      ),
    );
    return best(options, verdict, (changes) => verdictOf(withFittings(site, changes, nothingToBuy), id));
  });
}

/**
 * Which pipes of the catalogue bring the water to the taps, for the least money? One bore in place of any of the narrower ones on the way.
 *
 * @param site - the site's facts, other changes made
 * @param given - the market, and how a site is judged
 * @returns the changes; none for a body of water that no pipe of the catalogue mends
 * @law a wider pipe never brings less
 * @definition ours: docs/decisions/0189-fittings-complete-a-remedy.md
 */
export function pipeFittings(site: SiteFacts, given: FittingCase): readonly FittingChange[] {
  const wanting = given.judge(site).head.filter(({ verdict }) => verdict === 'short' || verdict === 'tight');
  return wanting.flatMap(({ tankIds, verdict }) => {
    const verdictWith = (changes: readonly FittingChange[]) =>
      ofBody(given.judge(withFittings(site, changes, nothingToBuy)).head, tankIds)?.verdict;
    const pipes = site.pipes.filter(({ tankId }) => tankId === null || tankIds.includes(tankId));
    const parts = boresOf('pipe', given.market.parts);
    const options = parts.flatMap(({ partId, bore_mm }) => {
      const narrower = pipes.filter((pipe) => pipe.bore_mm !== null && pipe.bore_mm < bore_mm);
      return everySet(narrower.map(({ pipeId }) => pipeId)).map((pipeIds) =>
        optionOf(site, [{ kind: 'pipe', pipeIds, partId, bore_mm }], given, nothingToBuy),
      );
    });
    // The widest everywhere brings most: where that does nothing, nothing does.
    const widest = parts.at(-1);
    const most = options
      .filter(({ changes }) => changes.some((one) => one.kind === 'pipe' && one.partId === widest?.partId))
      .at(-1);
    if (most === undefined || !reaches(verdictWith(most.changes), verdict === 'short' ? 'tight' : 'holds')) return [];
    return best(options, verdict, verdictWith);
  });
}

function ofBody(findings: readonly HeadFinding[], tankIds: readonly string[]): HeadFinding | undefined {
  return findings.find((one) => one.tankIds.some((id) => tankIds.includes(id)));
}

/** The cheapest that holds; else, of a place that is short, the cheapest that is tight. */
function best(
  options: readonly FittingOption[],
  now: Verdict,
  verdictWith: (changes: readonly FittingChange[]) => Verdict | undefined,
): readonly FittingChange[] {
  const known = new Map<FittingOption, Verdict | undefined>();
  const verdictOf = (option: FittingOption) => {
    if (!known.has(option)) known.set(option, verdictWith(option.changes));
    return known.get(option);
  };
  const inOrder = [...options].sort(compareOptions);
  for (const target of ['holds', 'tight'] as const) {
    if (reaches(now, target)) return [];
    const found = inOrder.find((option) => reaches(verdictOf(option), target));
    if (found !== undefined) return found.changes;
  }
  return [];
}

/** Every set of these, none left out; of many, each by itself and all together. */
function everySet(ids: readonly string[]): readonly (readonly string[])[] {
  if (ids.length === 0) return [];
  if (ids.length > mostVariedPipes_count) return [...ids.map((id) => [id]), ids];
  return Array.from({ length: 2 ** ids.length - 1 }, (_, bits) => ids.filter((_id, at) => ((bits + 1) >> at) & 1));
}
