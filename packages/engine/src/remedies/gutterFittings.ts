import { type SiteFacts, type Verdict, worstVerdict } from '../kernel/index.ts';
import type { FittingChange, LargerGutter } from './changes.ts';
import { mostVariedGutters_count } from './constants.ts';
import { nothingToBuy, type ToBuy } from './cost.ts';
import {
  boresOf,
  cheapestOf,
  type FittingCase,
  type FittingOption,
  optionOf,
  type Reached,
  reaches,
  withFittings,
} from './fittingOptions.ts';
import type { DrainageTried } from './judgeOthers.ts';

/** A gutter of the catalogue and larger outlets, or one more, or any of these: null where it stays. */
interface GutterTry {
  readonly gutter: Omit<LargerGutter, 'kind' | 'gutterIds'> | null;
  readonly outlet: { readonly partId: string; readonly bore_mm: number } | null;
  readonly added_count: number;
}

/** What became of every gutter, by its id, with one try made to all that want. */
interface GutterTried {
  readonly tried: GutterTry;
  readonly verdicts: ReadonlyMap<string, Verdict>;
}

/** What became of every roof, by its id, with these downpipes. */
interface PipesTried {
  readonly partId: string;
  readonly bore_mm: number;
  /** Those they replace, by their roof. */
  readonly replaced: ReadonlyMap<string, readonly string[]>;
  readonly verdicts: ReadonlyMap<string, Verdict>;
}

/**
 * Which gutters, outlets and downpipes of the catalogue make those of this site carry the storm, for the least money? A gutter of
 * another part, larger outlets, one more outlet, which brings a downpipe of its own, and larger downpipes, in every combination, roof by
 * roof.
 *
 * @param site - the site's facts, other changes made
 * @param given - what is bought already, the market, and how a site is judged
 * @param target - what every gutter and downpipe is to come to
 * @returns the changes, the way of the water down; none where all do already; null where some do not, whatever the catalogue has
 * @law more parts in the catalogue never cost more; each roof is done for the least of all its combinations
 * @definition ours: docs/decisions/0189-fittings-complete-a-remedy.md
 */
export function gutterFittings(site: SiteFacts, given: FittingCase, target: Reached): readonly FittingChange[] | null {
  const now = given.judge(site).drainage;
  if (now === null) return [];
  const wanting = wantingIn(site, now, target);
  const ofWanting = roofsAlone(site, wanting.ofRoofs);
  // No gutter hangs on its downpipes, nor they on it.
  const gutters = triedGutters({ ...ofWanting, downpipes: [] }, wanting.gutterIds, given);
  const pipesAlone = site.downpipes.length > 0 ? { ...ofWanting, gutters: [] } : ofWanting;
  const pipes = new Map<number, readonly PipesTried[]>();
  const pipesWith = (added_count: number) => {
    const known = pipes.get(added_count);
    if (known !== undefined) return known;
    const made = triedPipes(pipesAlone, added_count, given);
    pipes.set(added_count, made);
    return made;
  };
  const changes: FittingChange[] = [];
  for (const roofId of wanting.ofRoofs) {
    const found = bestOfRoof({ site, given, now, roofId, gutters, pipesWith }, target);
    if (found === null) return null;
    changes.push(...found);
  }
  return changes;
}

/** These roofs with their gutters and downpipes, and no tank: they drain alike. */
function roofsAlone(site: SiteFacts, roofIds: readonly string[]): SiteFacts {
  const ofThese = ({ roofId }: { readonly roofId: string }) => roofIds.includes(roofId);
  return {
    ...site,
    roofs: site.roofs.filter(ofThese),
    gutters: site.gutters.filter(ofThese),
    downpipes: site.downpipes.filter(ofThese),
    tanks: [],
  };
}

/** Everything one roof is done with. */
interface OfRoof {
  readonly site: SiteFacts;
  readonly given: FittingCase;
  readonly now: DrainageTried;
  readonly roofId: string;
  readonly gutters: readonly GutterTried[];
  pipesWith(added_count: number): readonly PipesTried[];
}

/** The cheapest of all combinations that do it; null where none does. */
function bestOfRoof(ofRoof: OfRoof, target: Reached): readonly FittingChange[] | null {
  const { site, given, roofId } = ofRoof;
  const ids = site.gutters.filter((gutter) => gutter.roofId === roofId).map(({ gutterId }) => gutterId);
  const byGutter = ids.map((gutterId) =>
    [0, 1].map((added_count) => gutterWith(ofRoof, gutterId, added_count, target)),
  );
  const options: FittingOption[] = [];
  for (const added of addedTo(ids.length)) {
    const gutters = byGutter.map((some, index) => some[added[index]!]!);
    const downpipes = pipesOf(
      ofRoof,
      added.reduce<number>((sum, one) => sum + one, 0),
      target,
    );
    const changes: FittingChange[] = [];
    if (downpipes === null || gutters.some((one) => one === null)) continue;
    for (const one of [...gutters, downpipes]) changes.push(...one!);
    options.push(optionOf(site, changes, given, hungOf(given.toBuy, ids)));
  }
  return cheapestOf(options)?.changes ?? null;
}

/** Every choice of gutters that get one more outlet; of a roof of many gutters, none, one of them, or all. */
function addedTo(count: number): readonly (readonly (0 | 1)[])[] {
  const none = Array.from({ length: count }, () => 0 as const);
  if (count > mostVariedGutters_count)
    return [
      none,
      ...none.map((_, index) => none.map((_zero, at) => (at === index ? 1 : 0))),
      none.map(() => 1 as const),
    ];
  return Array.from({ length: 2 ** count }, (_, bits) => none.map((_zero, at) => ((bits >> at) & 1 ? 1 : 0)));
}

/** What one gutter takes for the least money; nothing where it does as it is; null where nothing does. */
function gutterWith(
  { site, given, now, gutters }: OfRoof,
  gutterId: string,
  added_count: number,
  target: Reached,
): readonly FittingChange[] | null {
  const there = site.gutters.find((gutter) => gutter.gutterId === gutterId)!;
  const verdict = verdictsOfGutters(now).get(gutterId);
  const isDone = verdict === undefined || reaches(verdict, target);
  if (isDone && added_count === 0) return [];
  const keeping: GutterTry = { gutter: null, outlet: null, added_count };
  const enough = isDone
    ? [keeping]
    : gutters
        .filter((one) => one.tried.added_count === added_count && reaches(one.verdicts.get(gutterId), target))
        .map(({ tried }) => tried);
  const bores = boresOf('outlet', given.market.parts);
  const options = enough.flatMap(({ gutter, outlet }) => {
    const changes: FittingChange[] =
      gutter === null ? [] : [{ kind: 'largerGutter', gutterIds: [gutterId], ...gutter }];
    // A new outlet beside others is no smaller than they are.
    const parts =
      outlet !== null || added_count === 0 ? [outlet] : bores.filter((part) => part.bore_mm >= (there.outlet_mm ?? 0));
    return parts.map((part) =>
      optionOf(
        site,
        part === null
          ? changes
          : [...changes, outletChange(gutterId, part.partId, outlet?.bore_mm ?? null, added_count)],
        given,
        hungOf(given.toBuy, [gutterId]),
      ),
    );
  });
  return cheapestOf(options)?.changes ?? null;
}

function outletChange(gutterId: string, partId: string, outlet_mm: number | null, added_count: number): FittingChange {
  return { kind: 'outlet', gutterIds: [gutterId], partId, outlet_mm, added_count };
}

/** What the downpipes of a roof take; nothing where they do as they are; null where nothing does. */
function pipesOf(
  { site, given, now, roofId, pipesWith }: OfRoof,
  added_count: number,
  target: Reached,
): readonly FittingChange[] | null {
  const verdict = verdictsOfPipes(now).get(roofId);
  if (added_count === 0 && (verdict === undefined || reaches(verdict, target))) return [];
  const least_mm = Math.max(
    0,
    ...site.gutters.map((gutter) => (gutter.roofId === roofId ? (gutter.outlet_mm ?? 0) : 0)),
  );
  // Where no downpipe was measured the new one is no narrower than the outlets.
  const isEnough = (one: PipesTried) =>
    verdict === undefined ? one.bore_mm >= least_mm : reaches(one.verdicts.get(roofId), target);
  const options = pipesWith(added_count)
    .filter(isEnough)
    .map(({ partId, bore_mm, replaced }) => {
      const downpipeIds = replaced.get(roofId) ?? [];
      return optionOf(
        site,
        [{ kind: 'downpipe', roofId, downpipeIds, added_count, partId, bore_mm }],
        given,
        nothingToBuy,
      );
    });
  return cheapestOf(options)?.changes ?? null;
}

/** Every gutter and outlet of the catalogue, tried on all gutters that want at once: none changes what flows to another. */
function triedGutters(site: SiteFacts, gutterIds: readonly string[], given: FittingCase): readonly GutterTried[] {
  if (gutterIds.length === 0) return [];
  const gutters = given.market.parts.flatMap(({ kind, partId, shape, topWidth_mm, baseWidth_mm, depth_mm }) => {
    if (kind !== 'gutter' || shape === null || topWidth_mm === null || depth_mm === null) return [];
    return [{ partId, shape, topWidth_mm, baseWidth_mm, depth_mm }];
  });
  const outlets = boresOf('outlet', given.market.parts);
  const tries = [null, ...gutters].flatMap((gutter) =>
    [null, ...outlets].flatMap((outlet) =>
      (outlets.length === 0 ? [0] : [0, 1]).map((added_count): GutterTry => ({ gutter, outlet, added_count })),
    ),
  );
  return tries.slice(1).flatMap((tried) => {
    const { gutter, outlet, added_count } = tried;
    const changes: FittingChange[] = gutter === null ? [] : [{ kind: 'largerGutter', gutterIds, ...gutter }];
    if (outlet !== null || added_count > 0)
      changes.push({ kind: 'outlet', gutterIds, partId: '', outlet_mm: outlet?.bore_mm ?? null, added_count });
    const found = given.judge(withFittings(site, changes, given.toBuy)).drainage;
    return found === null ? [] : [{ tried, verdicts: verdictsOfGutters(found) }];
  });
}

/**
 * Every downpipe of the catalogue beside those there, and in the place of those that then still want: tried on all roofs at once. All of
 * a roof get as much water, so what one takes says nothing of another but its bore.
 */
function triedPipes(site: SiteFacts, added_count: number, given: FittingCase): readonly PipesTried[] {
  return boresOf('downpipe', given.market.parts).flatMap(({ partId, bore_mm }) => {
    const withPipes = (replaced: ReadonlyMap<string, readonly string[]>) => {
      const changes = site.roofs.map(({ roofId }): FittingChange => {
        const downpipeIds = replaced.get(roofId) ?? [];
        return { kind: 'downpipe', roofId, downpipeIds, added_count, partId, bore_mm };
      });
      const found = given.judge(withFittings(site, changes, given.toBuy)).drainage;
      return found && { partId, bore_mm, replaced, found, verdicts: verdictsOfPipes(found) };
    };
    const beside = withPipes(new Map());
    if (beside === null) return [];
    const tries = [beside];
    for (const target of ['holds', 'tight'] as const) {
      const still = wantingPipes(beside.found, site, target);
      const replaced = still.size > 0 ? withPipes(still) : null;
      if (replaced !== null) tries.push(replaced);
    }
    return added_count === 0 ? tries.slice(1) : tries;
  });
}

/** Gutters that do not come to the target, and all roofs with something that does not. */
function wantingIn(site: SiteFacts, now: DrainageTried, target: Reached) {
  const wanting = (verdicts: ReadonlyMap<string, Verdict>) =>
    [...verdicts].flatMap(([id, verdict]) => (reaches(verdict, target) ? [] : [id]));
  const gutterIds = wanting(verdictsOfGutters(now));
  const roofOf = new Map(site.gutters.map(({ gutterId, roofId }) => [gutterId, roofId]));
  const ofRoofs = new Set([...gutterIds.map((id) => roofOf.get(id)), ...wanting(verdictsOfPipes(now))]);
  return { gutterIds, ofRoofs: site.roofs.map(({ roofId }) => roofId).filter((id) => ofRoofs.has(id)) };
}

/** Downpipes there were before that do not reach the target, by their roof. */
function wantingPipes(
  { parts }: DrainageTried,
  { downpipes }: SiteFacts,
  target: Reached,
): ReadonlyMap<string, readonly string[]> {
  const there = new Set(downpipes.map(({ downpipeId }) => downpipeId));
  const wanting = new Map<string, string[]>();
  for (const { part, id, roofId, verdict } of parts) {
    if (part !== 'downpipe' || roofId === null || reaches(verdict, target) || !there.has(id)) continue;
    wanting.set(roofId, [...(wanting.get(roofId) ?? []), id]);
  }
  return wanting;
}

/** Each gutter with its outlets, by gutterId. */
function verdictsOfGutters({ parts }: DrainageTried): ReadonlyMap<string, Verdict> {
  return worstBy(
    parts.flatMap(({ part, id, verdict }) => (part === 'gutter' || part === 'outlet' ? [[id, verdict]] : [])),
  );
}

/** All downpipes of each roof, by roofId. */
function verdictsOfPipes({ parts }: DrainageTried): ReadonlyMap<string, Verdict> {
  return worstBy(
    parts.flatMap(({ part, roofId, verdict }) => (part === 'downpipe' && roofId !== null ? [[roofId, verdict]] : [])),
  );
}

function worstBy(some: readonly (readonly [string, Verdict])[]): ReadonlyMap<string, Verdict> {
  const found = new Map<string, Verdict>();
  for (const [id, verdict] of some) found.set(id, worstVerdict([verdict, found.get(id) ?? 'holds']));
  return found;
}

/** Of the gutter to hang, that of these gutters. */
function hungOf({ gutter_m }: ToBuy, gutterIds: readonly string[]): ToBuy {
  return {
    ...nothingToBuy,
    gutter_m: gutter_m.filter(({ gutterId }) => gutterId !== null && gutterIds.includes(gutterId)),
  };
}
