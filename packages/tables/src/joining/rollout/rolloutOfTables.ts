import {
  type DesignSettings,
  defaultSettings,
  type Problem,
  type RolloutFacts,
  usualInstall_days,
} from '@eavewell/engine';
import { nearest } from '../../reading/nearest.ts';
import { type NotUsed, tableProblem } from '../../reading/tableProblems.ts';
import type { TablesRead } from '../tablesRead.ts';
import { arrivalsOf, calendarsOf, checkCrews, crewsOf, travelOf } from './crewRows.ts';
import { DayCosts, type RolloutMoney } from './dayCosts.ts';
import { carriersAwayOf, checkPlans, plansOf } from './planRows.ts';
import { checkRivers, riverLevelsOf, wayLevelsOf } from './riverRows.ts';
import { isTurned, RolloutRows } from './rolloutRows.ts';
import { checkWaysPlanned, closuresOf, placesOf, waysOf } from './wayRows.ts';
import { checkWork, workOf } from './workRows.ts';

/** What the tables of the rollout come to. */
export interface RolloutJoined {
  readonly facts: RolloutFacts;
  /** The settings, with what cannot be used in them left out. */
  readonly settings: DesignSettings;
  readonly problems: readonly Problem[];
  readonly notUsed: readonly NotUsed[];
}

const settingsFile = 'settings.json';

/** Days of work that are turned give way to the usual ones, and a main store that is not there to none. */
function settingsUsed(given: DesignSettings, rows: RolloutRows): DesignSettings {
  let settings = given;
  const install = usualInstall_days(given);
  if (isTurned(install)) {
    const { installLow_days, installLikely_days, installHigh_days } = defaultSettings;
    const place = { file: settingsFile, column: 'installLikely_days' };
    rows.problems.push(tableProblem('rollout.range_turned', place, { value: install.likely, ...install }));
    settings = { ...settings, installLow_days, installLikely_days, installHigh_days };
  }
  const places = rows.ids('places', 'placeId');
  const { mainStore } = given;
  if (mainStore === null || places === null || places.has(mainStore)) return settings;
  const facts = { value: mainStore, expected: 'a placeId of places.csv', likely: nearest(mainStore, places) ?? '' };
  rows.problems.push(tableProblem('link.unknown_store', { file: settingsFile, column: 'mainStore' }, facts));
  return { ...settings, mainStore: null };
}

/**
 * What is the rollout planned from? The rows of its tables, joined by their ids; what leads nowhere or contradicts itself is told and
 * left out, and nothing of it bears on the water of a site.
 *
 * @param tables - the tables as they were read
 * @param money - settings, rates and prices that costs of a day are converted by [currency]
 * @param lengths_km - lengths of ways that have a line [km]
 * @returns the facts, the settings that are used, every problem, and all that was not used
 * @problem rollout.way_to_itself - and the other codes of rolloutProblems
 * @problem money.rate_missing - a cost of a currency there is no rate of is not known
 * @law never throws; a site in the table is in `work`
 * @definition ours: docs/decisions/0330-tables-of-the-rollout.md
 */
export function rolloutOfTables(
  tables: TablesRead,
  money: RolloutMoney & { readonly settings: DesignSettings },
  lengths_km: ReadonlyMap<string, number>,
): RolloutJoined {
  const rows = new RolloutRows(tables);
  checkWaysPlanned(rows);
  checkRivers(rows);
  checkCrews(rows);
  checkWork(rows);
  checkPlans(rows);
  const costs = new DayCosts(rows, money);
  const settings = settingsUsed(money.settings, rows);
  const facts: RolloutFacts = {
    places: placesOf(rows, costs),
    ways: waysOf(rows, lengths_km),
    closures: closuresOf(rows),
    riverLevels: riverLevelsOf(rows),
    wayLevels: wayLevelsOf(rows),
    travel: travelOf(rows, costs),
    crews: crewsOf(rows, costs),
    calendars: calendarsOf(rows),
    arrivals: arrivalsOf(rows),
    carriersAway: carriersAwayOf(rows),
    plans: plansOf(rows),
    work: workOf(rows),
  };
  return { facts, settings, problems: rows.problems, notUsed: rows.notUsed };
}
