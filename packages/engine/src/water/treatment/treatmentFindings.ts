import type { DesignSettings, Judged, SiteFacts, TreatmentFinding } from '../../kernel/index.ts';

/** What treatment is judged by. */
export interface TreatmentGiven {
  readonly site: SiteFacts;
  /** What the day that asks for most asks of the whole site, its people all there; null where that is not known. */
  readonly demandHighest_L_per_day: number | null;
  /** Head across the unit by gravity, with the tank at its outlet and every tap open; null where the way was not measured. */
  readonly gravityHead_m: number | null;
  readonly settings: DesignSettings;
}

/**
 * Do the treatment units of a site pass what its people ask?
 *
 * @param given - the site's facts, what is asked [L/day], the head there is [m] and the settings
 * @returns a finding for each unit in use; null where treatment is not judged
 * @definition ours
 */
export function treatmentFindings(given: TreatmentGiven): Judged<readonly TreatmentFinding[]> {
  void given;
  return { finding: null, problems: [], working: [] };
}

/**
 * What head does the treatment unit of a site take at the flow of all its taps, clean?
 *
 * @param site - the site's facts
 * @param settings - temperature of the water [C], flow of a tap [L/min]
 * @returns the head [m]; null where unit or taps are not known
 * @definition ours
 */
export function unitHead_m(site: SiteFacts, settings: DesignSettings): number | null {
  void site;
  void settings;
  return null;
}
