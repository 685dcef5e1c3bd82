import { type DownpipeFacts, downpipeRun, type GutterFacts, type SiteFacts } from '../kernel/index.ts';
import { runSlack_fraction } from '../water/drainage/index.ts';
import type { FittingChange, LargerGutter, MoreDownpipe, MoreOutlet } from './changes.ts';
import type { ToBuy } from './cost.ts';
import { nextId } from './nextId.ts';

/** A site with gutters or pipes changed, and what has to be bought up to then. */
export interface FittedSite {
  readonly site: SiteFacts;
  readonly toBuy: ToBuy;
}

/**
 * What is a site once its gutters, outlets, downpipes, overflows or pipes are changed? Ids that name nothing change nothing.
 *
 * @param site - the site's facts
 * @param change - the change
 * @param before - what has to be bought already
 * @returns the changed facts, and what to buy: pieces [count], runs [m]
 * @definition ours: docs/methods/remedies.md, gutters and pipes
 */
export function fittedSite(site: SiteFacts, change: FittingChange, before: ToBuy): FittedSite {
  switch (change.kind) {
    case 'largerGutter':
      return withGutters(site, change, before);
    case 'outlet':
      return withOutlets(site, change, before);
    case 'downpipe':
      return withDownpipes(site, change, before);
    case 'overflow': {
      const there = site.tanks.find(({ tankId }) => tankId === change.tankId);
      if (there === undefined) return { site, toBuy: before };
      const tanks = site.tanks.map((tank) => (tank === there ? { ...tank, overflowBore_mm: change.bore_mm } : tank));
      return { site: { ...site, tanks }, toBuy: withPieces(before, change.partId, there.overflows_count ?? 1) };
    }
    case 'pipe': {
      const changed = site.pipes.filter(({ pipeId }) => change.pipeIds.includes(pipeId));
      const pipes = site.pipes.map((pipe) => (changed.includes(pipe) ? { ...pipe, bore_mm: change.bore_mm } : pipe));
      return { site: { ...site, pipes }, toBuy: withRuns(before, change.partId, lengthsOf(changed)) };
    }
  }
}

function withPieces(toBuy: ToBuy, partId: string, pieces_count: number): ToBuy {
  if (pieces_count === 0) return toBuy;
  return { ...toBuy, pieces: [...toBuy.pieces, { partId, pieces_count }] };
}

function withRuns(toBuy: ToBuy, partId: string, runs_m: readonly (number | null)[]): ToBuy {
  return runs_m.length === 0 ? toBuy : { ...toBuy, runs: [...toBuy.runs, { partId, runs_m }] };
}

function lengthsOf(some: readonly { readonly length_m: number | null }[]): readonly (number | null)[] {
  return some.map(({ length_m }) => length_m);
}

/** A gutter that is to be hung anyway is bought as this part. */
function withGutters(site: SiteFacts, change: LargerGutter, before: ToBuy): FittedSite {
  const { partId, shape, topWidth_mm, baseWidth_mm, depth_mm } = change;
  const changed = site.gutters.filter(({ gutterId }) => change.gutterIds.includes(gutterId));
  const size = { shape, width_mm: topWidth_mm, baseWidth_mm, depth_mm };
  const gutters = site.gutters.map((gutter) => (changed.includes(gutter) ? { ...gutter, ...size } : gutter));
  const gutter_m = before.gutter_m.filter(({ gutterId }) => gutterId === null || !change.gutterIds.includes(gutterId));
  return {
    site: { ...site, gutters },
    toBuy: withRuns({ ...before, gutter_m }, partId, lengthsOf(changed)),
  };
}

/**
 * The way to the outlets, spread evenly, once there are more: an outlet in the middle of what it drains stays in the middle, and no way
 * grows. Null: as of outlets at the ends of what they drain.
 */
function runWith_m(
  { runToOutlet_m: run_m, length_m }: GutterFacts,
  there: number,
  outlets_count: number,
): number | null {
  if (run_m === null) return null;
  if (length_m === null) return (run_m * there) / outlets_count;
  const isInMiddle = run_m <= (length_m / (2 * there)) * (1 + runSlack_fraction);
  if (isInMiddle) return Math.min(run_m, length_m / (2 * outlets_count));
  return run_m < length_m / outlets_count ? run_m : null;
}

/** One more outlet stands so that the ways to the outlets are alike again. */
function withOutlets(
  site: SiteFacts,
  { gutterIds, partId, outlet_mm, added_count }: MoreOutlet,
  before: ToBuy,
): FittedSite {
  let pieces_count = 0;
  const gutters = site.gutters.map((gutter): GutterFacts => {
    if (!gutterIds.includes(gutter.gutterId)) return gutter;
    const there = gutter.outlets_count ?? 1;
    const outlets_count = there + added_count;
    pieces_count += outlet_mm === null ? added_count : outlets_count;
    return {
      ...gutter,
      outlet_mm: outlet_mm ?? gutter.outlet_mm,
      ...(added_count === 0 ? {} : { outlets_count, runToOutlet_m: runWith_m(gutter, there, outlets_count) }),
    };
  });
  return { site: { ...site, gutters }, toBuy: withPieces(before, partId, pieces_count) };
}

/** A new downpipe is as long as the longest of its roof; where none was measured there, as its eave is high. */
function withDownpipes(site: SiteFacts, change: MoreDownpipe, before: ToBuy): FittedSite {
  const { roofId, downpipeIds, added_count, partId, bore_mm } = change;
  const ofRoof = site.downpipes.filter((pipe) => pipe.roofId === roofId);
  const replaced = ofRoof.filter(({ downpipeId }) => downpipeIds.includes(downpipeId));
  const eave_m = site.roofs.find((roof) => roof.roofId === roofId)?.eaveHeight_m ?? null;
  const lengthOf = (pipe: DownpipeFacts | null) => downpipeRun(pipe, ofRoof, eave_m)?.length_m ?? null;
  const length_m = lengthOf(null);
  const downpipes: DownpipeFacts[] = site.downpipes.map((pipe) =>
    replaced.includes(pipe) ? { ...pipe, bore_mm } : pipe,
  );
  for (let count = 0; count < added_count && ofRoof.length > 0; count++) {
    const downpipeId = nextId(
      downpipes.map((pipe) => pipe.downpipeId),
      'D',
    );
    downpipes.push({ downpipeId, roofId, bore_mm, length_m });
  }
  const added_m = Array.from({ length: added_count }, () => length_m);
  const runs_m = [...replaced.map(lengthOf), ...added_m];
  return { site: { ...site, downpipes }, toBuy: withRuns(before, partId, runs_m) };
}
