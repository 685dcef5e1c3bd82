import type { Carried, ProgrammeKitAnswer } from './kitQuery.ts';

type Aboard = NonNullable<ProgrammeKitAnswer['trip']>['carried'][number]['stowed'][number];
type Stowed = Pick<Aboard, 'siteId' | 'partId' | 'each_count' | 'count' | 'mass_kg'>;
type Load = Pick<Carried['loads'][number], 'pieces'>;

/** What of a load goes ashore at a stop. */
export interface StopLoad {
  readonly siteId: string;
  /** The place of the stop, from 1. */
  readonly nth: number;
  readonly mass_kg: number;
}

/**
 * Which part of each load goes ashore where? Pieces of one kind are the same whichever site they are for: those of the last stop go into
 * the first loads that have any.
 *
 * @param loads - the loads, in the order they go
 * @param stowed - what each stop takes [kg]
 * @param stops - the sites in the order they are come to
 * @returns for each load its stops in that order [kg]; a stop that takes nothing of it is left out
 * @law no stop is given more of a piece than it takes
 */
export function stopsOfLoads(
  loads: readonly Load[],
  stowed: readonly Stowed[],
  stops: readonly string[],
): readonly (readonly StopLoad[])[] {
  const left = new Map(stowed.map((one) => [keyOf(one.siteId, one), one.count]));
  const massOf = new Map(stowed.map((one) => [keyOf('', one), one.mass_kg ?? 0]));
  const lastFirst = [...stops].reverse();
  return loads.map(({ pieces }) => {
    const mass_kg = new Map<string, number>();
    for (const piece of pieces) {
      let open = piece.count;
      for (const siteId of lastFirst) {
        const key = keyOf(siteId, piece);
        const taken = Math.min(open, left.get(key) ?? 0);
        if (taken === 0) continue;
        left.set(key, (left.get(key) ?? 0) - taken);
        open -= taken;
        mass_kg.set(siteId, (mass_kg.get(siteId) ?? 0) + taken * (massOf.get(keyOf('', piece)) ?? 0));
      }
    }
    return stops.flatMap((siteId, at) => {
      const mass = mass_kg.get(siteId);
      return mass === undefined ? [] : [{ siteId, nth: at + 1, mass_kg: mass }];
    });
  });
}

const keyOf = (siteId: string, { partId, each_count }: { readonly partId: string; readonly each_count: number }) =>
  JSON.stringify([siteId, partId, each_count]);
