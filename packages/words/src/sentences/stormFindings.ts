import type { DesignStorm } from '@eavewell/engine';
import type { Speech } from '../problems.ts';
import { yes } from './telling.ts';

/** What a storm is said from; a report writes its codes as plain text. */
export type StormSaid = Omit<DesignStorm, 'cappedBy'> & { readonly cappedBy: string | null };

/** What is said of storms. */
export interface StormWords {
  /** The design storm in a sentence, at a gauge it may be lent to. */
  storm(storm: StormSaid, gaugeId: string): string;
}

export const stormWordsIn = ({ say, numbers }: Speech): StormWords => ({
  storm: ({ returnPeriod_years, intensity_mm_per_h, intensity_range, from, source, gaugeId, cappedBy }, own) =>
    say('findings.storm.design', {
      years: numbers.years(returnPeriod_years),
      intensity: numbers.quantity(Math.round(intensity_mm_per_h), 'mm/h'),
      hasRange: yes(intensity_range),
      range: numbers.quantity(intensity_range, 'mm/h'),
      from: say(`working.value.${from}`),
      hasSource: yes(source !== null),
      source: source ?? '',
      isOther: yes(gaugeId !== own),
      gauge: gaugeId,
      isCapped: yes(cappedBy !== null),
    }),
});
