import {
  type CountedBy,
  isOfUnit,
  meanYear_days,
  type PartFacts,
  type SiteTreatmentFacts,
  type WearFinding,
} from '../../kernel/index.ts';
import type { LifeSpread } from './items.ts';

/** A unit in use, the part its set of cartridges is, and how long a set lasts. */
export interface CartridgeWear {
  readonly unitSerial: string;
  /** Null: no part is named, and the catalogue has none or several. */
  readonly partId: string | null;
  /** Null: not known. */
  readonly life: LifeSpread | null;
  /** Of how many cartridges a set is; null: not known. */
  readonly cartridges_count: number | null;
}

/** What is looked at of the wear of a set: since when it is there, and when it ends [day]. */
export type SetDates = Pick<WearFinding, 'serial' | 'setSince' | 'endsOn'>;

/**
 * Which sets of cartridges does a site wear out, and how long does each last? A set is the one part its cartridges are said to be, else the only part of kind `cartridge`; it lasts from the day it was new to the day it is due.
 *
 * @param treatment - the site's units and cartridges
 * @param parts - the catalogue
 * @param findings - when sets are due [day]; null where the site has none
 * @returns a set for each unit in use, its life [year] null where it is not known
 * @definition ours: docs/methods/cost.md
 */
export function cartridgeSets(
  treatment: Pick<SiteTreatmentFacts, 'units' | 'cartridges'>,
  parts: readonly Pick<PartFacts, 'partId' | 'kind'>[],
  findings: readonly SetDates[] | null,
): readonly CartridgeWear[] {
  const ofKind = parts.filter(({ kind }) => kind === 'cartridge');
  const only = ofKind.length === 1 ? ofKind[0]!.partId : null;
  return treatment.units
    .filter(({ removedOn }) => removedOn === null)
    .map((unit) => {
      const inIt = treatment.cartridges.filter(
        ({ unitSerial, removedOn }) => removedOn === null && isOfUnit(treatment, unit, unitSerial),
      );
      const own = inIt.filter(({ partId }) => partId !== null);
      const finding = findings?.find(({ serial }) => serial === unit.serial) ?? null;
      return {
        unitSerial: unit.serial,
        partId: own.length === 0 ? only : partOf(own.map(({ partId }) => partId)),
        life: finding === null ? null : lifeOf(finding),
        cartridges_count: unit.figures?.cartridges_count ?? (inIt.length > 0 ? inIt.length : null),
      };
    });
}

/** The one part of all; null where they are of several, so that none of them is the set. */
function partOf(partIds: readonly (string | null)[]): string | null {
  return partIds.every((one) => one === partIds[0]) ? partIds[0]! : null;
}

function lifeOf({ setSince, endsOn }: SetDates): LifeSpread | null {
  if (setSince === null || endsOn === null) return null;
  const years = (day: number) => (day - setSince) / meanYear_days;
  return { p10_years: years(endsOn.p10), p50_years: years(endsOn.p50), p90_years: years(endsOn.p90) };
}

/** What counts a part in the kit of a site: so many things, and so many of the part for them. */
export interface CountedSet {
  readonly countedBy: CountedBy;
  readonly ofIds: readonly string[];
  readonly counted_count: number;
  readonly needed_count: number;
}

/**
 * Of how many pieces of its part is a set of cartridges? As many as the kit counts by the set, by its cartridges or by the unit; where it counts none, the part is the set.
 *
 * @param set - the unit, and of how many cartridges its set is [count]
 * @param line - what the kit counts of the part [count]; undefined where it has none
 * @returns pieces of the part [count]; null where that is not known
 * @definition ours: docs/methods/cost.md
 * @example
 * piecesOfSet({ unitSerial: 'U1', cartridges_count: 3 }, undefined) // → 1
 */
export function piecesOfSet(
  { unitSerial, cartridges_count }: Pick<CartridgeWear, 'unitSerial' | 'cartridges_count'>,
  line: { readonly isAtLeast: boolean; readonly counts?: readonly CountedSet[] } | undefined,
): number | null {
  const own = (line?.counts ?? []).filter(({ ofIds, needed_count }) => ofIds.includes(unitSerial) && needed_count > 0);
  const ways = [
    { by: 'cartridgeSet', things_count: 1 },
    { by: 'cartridge', things_count: cartridges_count },
    { by: 'unit', things_count: 1 },
  ] as const;
  for (const { by, things_count } of ways) {
    const counts = own.filter(({ countedBy }) => countedBy === by);
    const each_count = counts.reduce((sum, one) => sum + one.needed_count / one.counted_count, 0);
    if (counts.length > 0) return things_count === null ? null : each_count * things_count;
  }
  return line?.isAtLeast === true ? null : 1;
}
