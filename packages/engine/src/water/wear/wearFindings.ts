import type { DayIndex, DesignSettings, Judged, SiteFacts, WearFinding } from '../../kernel/index.ts';

/** Water that passes the treatment of a site, day by day, in one future. */
export interface DaysAhead {
  /** From the first day on: through all its units, from its tanks and from its second source. */
  readonly roof_L: Float64Array;
  readonly secondSource_L: Float64Array;
}

/** What wear is worked out from. */
export interface WearGiven {
  readonly site: SiteFacts;
  readonly settings: DesignSettings;
  /** The day it is asked on; null where that is not known: then the day the set was new. */
  readonly today: DayIndex | null;
  /** Across the membranes; null where not known: the rated one. */
  readonly pressure_kPa: number | null;
  /**
   * One future from a day on, with the people as they grow: the same number is the same future. Null where the site's water is not known.
   */
  readonly futureOf: ((future: number, from: DayIndex, days: number) => DaysAhead) | null;
}

/**
 * When are the cartridges of a site due?
 *
 * @param given - the site's facts, the settings and the water that may come [L/day]
 * @returns a finding for each unit in use; null where the site has none
 * @definition ours
 */
export function wearFindings(given: WearGiven): Judged<readonly WearFinding[]> {
  void given;
  return { finding: null, problems: [], working: [] };
}
