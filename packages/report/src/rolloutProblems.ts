import type { Problem } from '@eavewell/engine';

/** Tables from which nothing but the rollout is reckoned: a row of them that is not used is missing in the plan. */
const rolloutTables =
  /^(?:places|ways|closures|riverLevels|wayLevels|crews|crewCarriers|workCalendars|arrivals|carriersAway|settings)\b/;
const tablesOfPlans = /^(?:plans|planTrips|planStops)\b/;
/** What the rollout alone asks of a site. */
const siteColumns =
  /^(?:place|weatherArea|readyFrom|finishBy|workMonths|priority_factor|agreedOn|install\w+_days|skill)$/;

/** Does a problem of the tables bear on the rollout, kept plans aside? What is only worth knowing does not. */
export function isOfRollout({ code, severity, place: { file = '', column = '' } }: Problem): boolean {
  if (tablesOfPlans.test(file)) return false;
  const isOfSites = file.startsWith('sites') && siteColumns.test(column);
  return severity !== 'note' && (code.startsWith('rollout.') || rolloutTables.test(file) || isOfSites);
}

/** Does a problem of the tables bear on kept plans? */
export const isOfPlans = ({ severity, place: { file = '' } }: Problem): boolean =>
  severity !== 'note' && tablesOfPlans.test(file);
