import {
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
}

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
  findings: readonly WearFinding[] | null,
): readonly CartridgeWear[] {
  const ofKind = parts.filter(({ kind }) => kind === 'cartridge');
  const only = ofKind.length === 1 ? ofKind[0]!.partId : null;
  return treatment.units
    .filter(({ removedOn }) => removedOn === null)
    .map((unit) => {
      const own = treatment.cartridges.filter(
        ({ unitSerial, removedOn, partId }) =>
          partId !== null && removedOn === null && isOfUnit(treatment, unit, unitSerial),
      );
      const finding = findings?.find(({ serial }) => serial === unit.serial) ?? null;
      return {
        unitSerial: unit.serial,
        partId: own.length === 0 ? only : partOf(own.map(({ partId }) => partId)),
        life: finding === null ? null : lifeOf(finding),
      };
    });
}

/** The one part of all; null where they are of several, so that none of them is the set. */
function partOf(partIds: readonly (string | null)[]): string | null {
  return partIds.every((one) => one === partIds[0]) ? partIds[0]! : null;
}

function lifeOf({ setSince, endsOn }: WearFinding): LifeSpread | null {
  if (setSince === null || endsOn === null) return null;
  const years = (day: number) => (day - setSince) / meanYear_days;
  return { p10_years: years(endsOn.p10), p50_years: years(endsOn.p50), p90_years: years(endsOn.p90) };
}
