import type { Carrier } from '../../kernel/index.ts';
import { bestLift_kg, carton_kg, twoPeople_kg } from '../../parts/index.ts';
import type { LoadLimits } from './foundLoads.ts';

/**
 * By which limits are loads for a carrier made? People carry no more than is safe to lift, whatever is stated: several pieces up to the mass of a
 * carton, one piece by itself up to the most that one person lifts; two people no more than a piece for two. Of the room only the share that can be filled counts.
 *
 * @param carrier - its limits [kg], [L], [m] and the share of its room that can be filled [fraction]
 * @returns the limits of a load and of a piece; null where nobody stated what a boat, truck, pallet or container holds
 * @law what people carry is never more than stated, nor more than the limits of lifting
 * @source niosh-94-110, load constant; 15 and 30 kg are ours: docs/decisions/0186-what-people-may-lift.md and 0247-fewest-loads.md
 */
export function loadLimits(carrier: Carrier): LoadLimits | null {
  const { mode, limit_kg, limit_L, longest_m, stowage_fraction } = carrier;
  const stated_kg = limit_kg ?? Number.POSITIVE_INFINITY;
  const beside = { load_L: limit_L === null ? null : limit_L * stowage_fraction, longest_m };
  if (mode === 'person')
    return { load_kg: Math.min(carton_kg, stated_kg), piece_kg: Math.min(bestLift_kg, stated_kg), ...beside };
  if (mode === 'twoPeople') {
    const both_kg = Math.min(twoPeople_kg, stated_kg);
    return { load_kg: both_kg, piece_kg: both_kg, ...beside };
  }
  return limit_kg === null ? null : { load_kg: limit_kg, piece_kg: limit_kg, ...beside };
}
