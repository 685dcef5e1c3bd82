import { type SiteFacts, tankGroups } from '../kernel/index.ts';
import type { FittingChange, LargerPipe } from './changes.ts';
import { mostVariedPipes_count } from './constants.ts';
import { nothingToBuy } from './cost.ts';
import {
  boresOf,
  compareOptions,
  type FittingCase,
  type FittingOption,
  optionOf,
  type Reached,
  reaches,
  withFittings,
} from './fittingOptions.ts';
import type { HeadTried } from './judgeOthers.ts';

/**
 * Which overflow pipes of the catalogue let the storm out, for the least money? In one tank of each body of water, or in all of them
 * that have one.
 *
 * @param site - the site's facts, other changes made
 * @param given - the market, and how a site is judged
 * @param target - what every overflow is to come to
 * @returns the changes; none where all do already; null where some do not, whatever the catalogue has
 * @definition ours: docs/decisions/0189-fittings-complete-a-remedy.md
 */
export function overflowFittings(
  site: SiteFacts,
  given: FittingCase,
  target: Reached,
): readonly FittingChange[] | null {
  const overflowsOf = (changed: SiteFacts) =>
    given.judge(changed).drainage?.parts.filter(({ part }) => part === 'overflow') ?? [];
  const changes: FittingChange[] = [];
  for (const { id, verdict } of overflowsOf(site)) {
    if (reaches(verdict, target)) continue;
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
    const found = firstOf(options, (some) => {
      const then = overflowsOf(withFittings(site, some, nothingToBuy));
      return reaches(then.find((one) => one.id === id)?.verdict, target);
    });
    if (found === null) return null;
    changes.push(...found);
  }
  return changes;
}

/**
 * Which pipes of the catalogue bring the water to the taps, for the least money? One bore in place of any of the narrower ones on the way.
 *
 * @param site - the site's facts, other changes made
 * @param given - the market, and how a site is judged
 * @param target - what every way to the taps is to come to
 * @returns the changes; none where all do already; null where some do not, whatever the catalogue has
 * @law a wider pipe never brings less
 * @definition ours: docs/decisions/0189-fittings-complete-a-remedy.md
 */
export function pipeFittings(site: SiteFacts, given: FittingCase, target: Reached): readonly FittingChange[] | null {
  let changes: readonly LargerPipe[] = [];
  for (const { tankIds } of given.judge(site).head) {
    // With the pipes that another body of water of the site takes: what they share is changed once.
    const found = pipesOfBody(withFittings(site, changes, nothingToBuy), tankIds, given, target);
    if (found === null) return null;
    changes = eachPipeOnce([...changes, ...found]);
  }
  return changes;
}

/** What the way from one body of water takes for the least money; nothing where it does already; null where nothing does. */
function pipesOfBody(
  site: SiteFacts,
  tankIds: readonly string[],
  given: FittingCase,
  target: Reached,
): readonly LargerPipe[] | null {
  const isEnough = (some: readonly FittingChange[]) =>
    reaches(ofBody(given.judge(withFittings(site, some, nothingToBuy)).head, tankIds)?.verdict, target);
  if (isEnough([])) return [];
  const pipes = site.pipes.filter(({ tankId }) => tankId === null || tankIds.includes(tankId));
  const byPart = boresOf('pipe', given.market.parts).map(({ partId, bore_mm }) => {
    const narrower = pipes.filter((pipe) => pipe.bore_mm !== null && pipe.bore_mm < bore_mm);
    return everySet(narrower.map(({ pipeId }) => pipeId)).map((pipeIds) =>
      optionOf(site, [{ kind: 'pipe', pipeIds, partId, bore_mm }], given, nothingToBuy),
    );
  });
  // The widest everywhere brings most: where that does not do, nothing does.
  const most = byPart.at(-1)?.at(-1);
  const found = most && isEnough(most.changes) ? firstOf(byPart.flat(), isEnough) : null;
  return found === null ? null : found.filter(isPipe);
}

function isPipe(change: FittingChange): change is LargerPipe {
  return change.kind === 'pipe';
}

/** Every pipe once, of the last part asked for, which is the widest; one change for each part. */
function eachPipeOnce(changes: readonly LargerPipe[]): readonly LargerPipe[] {
  const last = new Map(changes.flatMap((change) => change.pipeIds.map((id) => [id, change.partId] as const)));
  const byPart = new Map<string, LargerPipe>();
  for (const change of changes) {
    const others = byPart.get(change.partId)?.pipeIds ?? [];
    const own = change.pipeIds.filter((id) => last.get(id) === change.partId && !others.includes(id));
    if (others.length + own.length > 0) byPart.set(change.partId, { ...change, pipeIds: [...others, ...own] });
  }
  return [...byPart.values()];
}

function ofBody(findings: readonly HeadTried[], tankIds: readonly string[]): HeadTried | undefined {
  return findings.find((one) => one.tankIds.some((id) => tankIds.includes(id)));
}

/** The cheapest that does it. */
function firstOf(
  options: readonly FittingOption[],
  isEnough: (changes: readonly FittingChange[]) => boolean,
): readonly FittingChange[] | null {
  return [...options].sort(compareOptions).find(({ changes }) => isEnough(changes))?.changes ?? null;
}

/** Every set of these, none left out; of many, each by itself and all together. */
function everySet(ids: readonly string[]): readonly (readonly string[])[] {
  if (ids.length === 0) return [];
  if (ids.length > mostVariedPipes_count) return [...ids.map((id) => [id]), ids];
  return Array.from({ length: 2 ** ids.length - 1 }, (_, bits) => ids.filter((_id, at) => ((bits + 1) >> at) & 1));
}
