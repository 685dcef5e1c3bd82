import type { AppLanguage } from '@eavewell/words/app';
import type { FittingStep } from '../../../water/index.ts';

/** What is measured of gutters, pipes, overflows, stands and taps, and in what unit. */
export const fittingUnit = {
  width_mm: 'mm',
  fall_mm_per_m: 'mm/m',
  outlets_count: '',
  bore_mm: 'mm',
  overflowBore_mm: 'mm',
  standHeight_m: 'm',
  tapHeight_m: 'm',
} as const satisfies Readonly<Record<FittingStep['measure'], string>>;

/** What such a measure is called, with whose it is. */
export function fittingName(
  { id, measure }: Pick<FittingStep, 'id' | 'measure'>,
  { say }: Pick<AppLanguage, 'say'>,
): string {
  return say(`water.fitting_${measure}`, { id });
}
