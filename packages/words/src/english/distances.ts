import { figure } from '../numbers.ts';

/** A distance as people read it: metres under a kilometre, kilometres above; a missing one reads "an unknown way". */
export function distance_km(value_km: number | null): string {
  if (value_km === null || !Number.isFinite(value_km)) return 'an unknown way';
  if (value_km < 0.9995) return `${Math.round(value_km * 1000)} m`;
  return `${figure(value_km)} km`;
}
