import type { PipeLeg, SiteFacts } from '@eavewell/engine';
import type { BuiltLeg, BuiltStops } from './building.ts';
import { mostDrawn_count, usualLegBore_m, usualTapHeight_m, usualTaps_count, usualUnitHeight_m } from './constants.ts';
import { countedOr, measured, measuredOr, usual } from './measures.ts';

/** A height over this was mistyped, or is on a hill that no section shows [m]. Ours. */
const highest_m = 30;

/** The treatment unit and the taps, and the pipes that lead there: of a leg the narrowest bore, which is what throttles it. */
export function builtStops(site: SiteFacts): BuiltStops {
  return {
    unitHeight_m: measuredOr(within(site.unitHeight_m), usualUnitHeight_m),
    tapHeight_m: measuredOr(within(site.tapHeight_m), usualTapHeight_m),
    taps_count: countedOr(site.taps_count, usualTaps_count, mostDrawn_count),
    hasHandPump: site.hasHandPump,
    cartridges_count: cartridgesOf(site),
    legs: { tankToUnit: legOf(site, 'tankToUnit'), unitToTap: legOf(site, 'unitToTap') },
  };
}

/** More cartridges than this are not drawn side by side. Ours. */
const mostCartridges_count = 6;

function cartridgesOf({ treatment }: SiteFacts): number | null {
  const counts = treatment.units
    .filter(({ removedOn }) => removedOn === null)
    .map(({ figures }) => figures?.cartridges_count ?? null);
  if (counts.length === 0 || counts.includes(null)) return null;
  const count = counts.reduce<number>((sum, own) => sum + Math.max(0, Math.round(own ?? 0)), 0);
  return count > 0 ? Math.min(mostCartridges_count, count) : null;
}

const within = (height_m: number | null): number | null =>
  height_m !== null && height_m <= highest_m ? height_m : null;

function legOf({ pipes }: SiteFacts, leg: PipeLeg): BuiltLeg {
  const own = pipes.filter((pipe) => pipe.leg === leg);
  const bores_mm = own.flatMap(({ bore_mm }) => (bore_mm !== null && bore_mm > 0 && bore_mm < 2000 ? [bore_mm] : []));
  const bore_m = bores_mm.length === 0 ? usual(usualLegBore_m[leg]) : measured(Math.min(...bores_mm) / 1000);
  return { bore_m, pipeIds: own.map(({ pipeId }) => pipeId) };
}
