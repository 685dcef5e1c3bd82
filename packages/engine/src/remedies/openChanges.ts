import type { StorageFinding } from '../kernel/index.ts';
import { partById, tankSizes } from '../parts/index.ts';
import { asItIs, type Chains, type Placed, type Plan } from './chains.ts';
import { gutterSteps_fraction } from './constants.ts';
import type { RemedyCase } from './remedyCase.ts';
import type { Ladder } from './wholeSite.ts';

/** The single changes open to one body of water, each list the mildest first. */
export interface Open {
  readonly secondTank: readonly Placed[];
  readonly largerTank: readonly Placed[];
  readonly gutter: readonly Placed[];
  readonly firstFlush: readonly Placed[];
}

export const kindsAtTank = ['secondTank', 'largerTank', 'gutter', 'firstFlush'] as const;

/** What may be done to each body of water that does not hold; the others need nothing. */
export function openChanges(
  chains: Chains,
  { site, programme, market }: RemedyCase,
  wanting: readonly StorageFinding[],
): readonly Open[] {
  const tanks = tankSizes(market.parts);
  const { firstFlush_mm } = programme.settings;
  return chains.groups.flatMap(({ tankIds, tankVolume_L }) => {
    const group = tankIds[0]!;
    if (!wanting.some((finding) => finding.tankIds[0] === group)) return [];
    const tankId = tankIds.length === site.tanks.length ? null : group;
    const place = (change: Placed['change']): Placed => ({ group, change });
    const ofCatalogue = (kind: 'secondTank' | 'largerTank', over_L: number) =>
      tanks
        .filter((tank) => tank.tankVolume_L > over_L)
        .map(({ partId, tankVolume_L: volume_L }) => {
          const mass_kg = partById(market.parts, partId)?.mass_kg ?? null;
          return place({ kind, tankId, partId, volume_L, mass_kg });
        });
    return {
      secondTank: ofCatalogue('secondTank', 0),
      largerTank: ofCatalogue('largerTank', tankVolume_L),
      gutter: gutterSteps_fraction.map((gutteredFraction) => place({ kind: 'gutter', tankId, gutteredFraction })),
      firstFlush: [place({ kind: 'firstFlush', tankId, firstFlush_mm })],
    };
  });
}

/**
 * Changes of one kind, the one that does most last. No larger tank: the same part set beside what stands gives no less water and
 * costs no more, so it sends nobody more away.
 */
export function laddersOf({ secondTank, gutter, firstFlush }: Open): readonly Ladder[] {
  return [secondTank, gutter, firstFlush];
}

/** Two changes to one body of water, or one to each of two. */
export function pairsOf(open: readonly Open[]): readonly Plan[] {
  const pairs: Plan[] = [];
  const cross = (some: readonly Placed[], others: readonly Placed[]) => {
    for (const one of some) for (const other of others) pairs.push({ ...asItIs, placed: [one, other] });
  };
  for (const [index, group] of open.entries()) {
    group.secondTank.forEach((one, at) => {
      cross([one], group.secondTank.slice(at));
    });
    cross(group.gutter, [...group.secondTank, ...group.largerTank, ...group.firstFlush]);
    cross(group.firstFlush, [...group.secondTank, ...group.largerTank]);
    for (const other of open.slice(index + 1))
      cross(
        kindsAtTank.flatMap((kind) => group[kind]),
        kindsAtTank.flatMap((kind) => other[kind]),
      );
  }
  return pairs;
}
