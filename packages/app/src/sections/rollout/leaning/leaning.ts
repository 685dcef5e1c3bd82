import type { RolloutSheet } from '@eavewell/tables';

type Problem = RolloutSheet['problems'][number];

/** Where what a plan leans on is mended. */
export type MendedIn =
  | { readonly to: 'table'; readonly table: Table }
  | { readonly to: 'site'; readonly siteId: string }
  | { readonly to: 'kit' | 'sites' | 'settings' };

/** Codes that are told before all others, the gravest first: who goes, what a boat carries, what lies there, what the water does. Ours. */
const gravest: readonly string[] = [
  ...['rollout.no_crews', 'rollout.crew_base_unknown', 'rollout.trips_without_crew', 'rollout.crew_never_works'],
  ...['rollout.mass_unknown', 'rollout.kit_in_part', 'rollout.stock_never_enough', 'rollout.stock_overdrawn'],
  ...['rollout.stock_unknown', 'rollout.haul_unknown', 'rollout.short_planned', 'rollout.service_unknown'],
];
/** Tables that have a page. A row that is not used is missing in the plan: crews and trips before ways, those before what comes. Ours. */
const tables = [
  ...(['crews', 'crewCarriers', 'planTrips', 'planStops', 'plans', 'ways', 'closures', 'carriersAway'] as const),
  ...(['arrivals', 'workCalendars', 'riverLevels', 'wayLevels', 'places', 'parts'] as const),
];
type Table = (typeof tables)[number];
const severities = ['blocker', 'warning', 'note'];

/** What a plan leans on, the heaviest first: problems of those codes and rows that are not used, then warnings, then notes. */
export function leaningOn(problems: readonly Problem[]): readonly Problem[] {
  return [...new Map(problems.map((one) => [keyOf(one), one])).values()]
    .map((problem) => ({ problem, weight: weightOf(problem) }))
    .sort((a, b) => a.weight - b.weight)
    .map(({ problem }) => problem);
}

/** Tables into which what happened is entered. */
const ofHappened = new Set(['closures', 'carriersAway', 'arrivals', 'workCalendars', 'planTrips', 'planStops']);

/** Rows of what happened that are not used. */
export const notUsed = (problems: readonly Problem[]): readonly Problem[] =>
  problems.filter((one) => one.severity === 'blocker' && ofHappened.has(tableOf(one)));

/** Tells problems apart: the same is said once of a row, wherever it stands. */
export const keyOf = ({ code, what, todo, place, facts }: Problem): string =>
  [code, what, todo, place.column, facts['rowName']].join(' ');

/** The table of a problem; '' where it is of none. */
export const tableOf = ({ place }: Problem): string => place.file?.replace(/\.(?:csv|json)$/, '') ?? '';

function weightOf(problem: Problem): number {
  const [code, table] = [gravest.indexOf(problem.code), tables.indexOf(tableOf(problem) as Table)];
  const severity = severities.indexOf(problem.severity);
  const isRowUnused = problem.severity === 'blocker';
  // A crew, or a trip, that is not there at all comes before whatever is not sure of the others.
  if (isRowUnused && (table === 0 || table === 2)) return table / 10;
  if (code >= 0) return 1 + code;
  const [afterCodes, each] = [1 + gravest.length, tables.length + 1];
  return afterCodes + severity * each + (table < 0 ? tables.length : table);
}

/** Where a problem is mended: at its site, in its table, or where what it is about is looked at. */
export function mendedIn(problem: Problem): MendedIn | null {
  const byCode: Readonly<Record<string, MendedIn>> = {
    'rollout.kit_in_part': { to: 'kit' },
    'rollout.stock_unknown': { to: 'table', table: 'parts' },
    'rollout.short_planned': { to: 'sites' },
    'rollout.tight': { to: 'sites' },
    'rollout.service_unknown': { to: 'sites' },
    'rollout.no_agreements': { to: 'sites' },
    'rollout.fuel_price_unknown': { to: 'settings' },
    'ways.walking_assumed': { to: 'table', table: 'ways' },
    'ways.periods_merged': { to: 'table', table: 'closures' },
  };
  const known = byCode[problem.code];
  if (known !== undefined) return known;
  const file = tableOf(problem);
  const { siteId } = problem.place;
  if (siteId !== undefined && siteId !== '') return { to: 'site', siteId };
  if (file === 'settings') return { to: 'settings' };
  const table = tables.find((one) => one === file);
  return table === undefined ? null : { to: 'table', table };
}
