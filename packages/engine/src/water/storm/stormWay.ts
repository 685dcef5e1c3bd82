import type {
  DesignSettings,
  DesignStorm,
  GaugeFacts,
  Problem,
  Range,
  StormOrigin,
  WorkingLine,
} from '../../kernel/index.ts';
import { leastIntensity_mm_per_h, minutes_per_h, mostIntensity_mm_per_h, storm_min } from './constants.ts';
import { stormProblem } from './stormProblem.ts';

/** What a storm is made from. */
export interface StormGiven {
  readonly gauge: Pick<GaugeFacts, 'gaugeId' | 'storms' | 'stormCoefficients' | 'shortRain'>;
  /** The wettest day of each year. */
  readonly dailyMaxima: readonly { readonly year: number; readonly rain_mm: number }[];
  readonly settings: DesignSettings;
}

/** What one way to a storm came to. */
export interface Way {
  readonly storm: DesignStorm | null;
  /** It is stated, and cannot be believed: no other way is taken in its stead. */
  readonly isStop?: boolean;
  readonly problems: readonly Problem[];
  readonly working: readonly WorkingLine[];
}

export const noWay: Way = { storm: null, problems: [], working: [] };
/** How long the storm lasts [h], and how often that goes into an hour [per h]. */
export const storm_h = storm_min / minutes_per_h;

/** The problem of a storm that can hardly be; null where it can. */
export function unlikelyIntensity(gaugeId: string, of: StormOrigin, value: number): Problem | null {
  if (value >= leastIntensity_mm_per_h && value <= mostIntensity_mm_per_h) return null;
  return stormProblem('storm.intensity_unlikely', gaugeId, of, {
    of,
    value_mm_per_h: value,
    least_mm_per_h: leastIntensity_mm_per_h,
    most_mm_per_h: mostIntensity_mm_per_h,
  });
}

/** A storm of the settings' return period. */
export function stormFrom(
  gaugeId: string,
  from: StormOrigin,
  settings: DesignSettings,
  intensity_mm_per_h: number,
  {
    range = null,
    source,
    years = null,
  }: { readonly range?: Range | null; readonly source: string | null; readonly years?: number | null },
): DesignStorm {
  return {
    gaugeId,
    returnPeriod_years: settings.stormReturnPeriod_years,
    intensity_mm_per_h,
    intensity_range: range,
    from,
    source,
    years_count: years,
    cappedBy: from === 'dailyMaxima' ? 'storm.from_daily' : null,
  };
}
