import { type DrainagePartFinding, engineProblem, explain, workingInput } from '../../kernel/index.ts';
import { rainLostFrom_fraction } from './constants.ts';
import { type Notes, placeOf } from './notes.ts';
import type { RoofStorm } from './roofStorms.ts';
import type { SiteStorm } from './siteStorm.ts';

/**
 * Which share of the rain runs over gutters that are too small? Each roof loses what fell harder than its fullest gutter, outlet or downpipe carries;
 * roofs count by their area. Null where no readings tell, or a part is not known.
 */
export function lostOver(
  roofs: readonly RoofStorm[],
  parts: readonly DrainagePartFinding[],
  storm: SiteStorm,
  shareOverCapacity: ((capacity_mm_per_h: number) => number | null) | undefined,
  notes: Notes,
): number | null {
  if (shareOverCapacity === undefined) return null;
  let all_m2 = 0;
  let lost_m2 = 0;
  for (const { roof, effectiveArea_m2 } of roofs) {
    const uses = parts.filter(({ roofId }) => roofId === roof.roofId).map(({ use_fraction }) => use_fraction);
    const known = uses.filter((use) => use !== null);
    if (effectiveArea_m2 === null || known.length === 0 || known.length < uses.length) return null;
    const most = Math.max(...known);
    const share = most === 0 ? 0 : shareOverCapacity(storm.intensity_mm_per_h / most);
    if (share === null) return null;
    all_m2 += effectiveArea_m2;
    lost_m2 += effectiveArea_m2 * share;
  }
  if (all_m2 === 0) return null;
  const lost_fraction = lost_m2 / all_m2;
  explain(notes.working, {
    code: 'drainage.lost',
    value: lost_fraction,
    unit: 'fraction',
    inputs: [workingInput('effectiveArea', all_m2, 'm2')],
    source: 'gauge',
  });
  if (lost_fraction >= rainLostFrom_fraction)
    notes.problems.push(engineProblem('drainage.rain_lost', placeOf(notes, 'gutters'), { lost_fraction }));
  return lost_fraction;
}
