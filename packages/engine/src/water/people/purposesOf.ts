import type { DemandPurpose, DesignSettings, SiteFacts } from '../../kernel/index.ts';
import { defaultPurpose } from './constants.ts';

/**
 * What is water asked for at this site? Its purposes as stated, or the programme's litres for drinking and cooking where
 * none is.
 *
 * @param site - its purposes, litres_per_person_per_day [L/person/day]
 * @param settings - the programme's litres_per_person_per_day [L/person/day]
 * @returns purposes, at least one, litres_per_person_per_day [L/person/day]
 * @definition ours
 * @example
 * purposesOf({ demand: [] }, { litres_per_person_per_day: 7.5 }) // → [{ purpose: 'drinking and cooking', litres_per_person_per_day: 7.5, judged: true }]
 */
export function purposesOf(
  site: Pick<SiteFacts, 'demand'>,
  settings: Pick<DesignSettings, 'litres_per_person_per_day'>,
): readonly DemandPurpose[] {
  if (site.demand.length > 0) return site.demand;
  const { litres_per_person_per_day } = settings;
  return [{ purpose: defaultPurpose, litres_per_person_per_day, judged: true }];
}
