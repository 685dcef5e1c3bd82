import { folderTables } from '@eavewell/tables';
import { type Chance, chanceFor } from './chance.ts';
import { changed, type DemoTable, type DraftProgramme, type PlantedFault, type Row } from './draft.ts';
import { plantRainFaults } from './rainFaults.ts';
import { plantRolloutFaults } from './rolloutFaults.ts';
import { plantSafetyFaults } from './safetyFaults.ts';
import { plantStationFaults } from './stationFaults.ts';

type SiteFault = (draft: DraftProgramme, siteId: string) => PlantedFault;

/** Each leaves one site in doubt, a different one. The slips are such as surveys have. */
const siteFaults: readonly SiteFault[] = [
  cell('sites', { people: 'about 120' }, 'people', 'cell.not_a_number', 'words where a number belongs'),
  cell('roofs', { length_m: '18,4' }, 'length_m', 'cell.decimal_comma', 'a decimal comma'),
  twice('sites', { name: 'Old landing store', people: 57 }, 'siteId', 'a second site under the same id'),
  twice('roofs', { length_m: 9.5, width_m: 6.2, roofPlanArea_m2: null }, 'roofId', 'a second roof under the same id'),
  cell('sites', { gaugeId: 'G-1' }, 'gaugeId', 'link.unknown_gauge', 'a gauge that is not in the list'),
  cell('sites', { people: 0 }, 'people', 'cell.out_of_range', 'a site where nobody drinks'),
  cell('sites', { people: 1200000 }, 'people', 'cell.out_of_range', 'more people than an island holds'),
  cell(
    'roofs',
    { length_m: null, width_m: null, roofPlanArea_m2: null },
    'roofPlanArea_m2',
    'site.roof_area_unknown',
    'a roof nobody measured',
  ),
  cell('roofs', { length_m: 18400 }, 'length_m', 'cell.out_of_range', 'millimetres where metres belong'),
  raggedTank,
];

/** At most this share of the sites is left in doubt [fraction]. */
const doubted_fraction = 0.2;

/**
 * Plants the faults in the draft and lists them. A small programme gets fewer, so that most of its sites stay sound. Sites that
 * show something of their own get only the faults that belong to it.
 */
export function plantFaults(seed: number, draft: DraftProgramme, spared: ReadonlySet<string>): PlantedFault[] {
  const all = draft.tables.sites.map(({ siteId }) => String(siteId));
  const { most, drawn, ids } = drawnSites(seed, all, spared);
  // A fault that writes a file as text comes last, as it freezes its table: those of particular sites come before.
  const own = most < siteFaults.length + 2 ? [] : [...sharesOff(draft), ...periodsOverlap(draft)];
  const ofStations = own.length === 0 ? [] : plantStationFaults(draft, ids);
  const inDoubt = ofStations.flatMap(({ siteId }) => siteId ?? []);
  const ofSafety = own.length === 0 ? [] : plantSafetyFaults(draft, [...inDoubt, ...ids]);
  const ofRollout = own.length === 0 ? [] : plantRolloutFaults(draft);
  const planted = drawn.map(({ fault, siteId }) => fault(draft, siteId));
  return [
    ...planted,
    ...own,
    ...ofStations,
    ...ofSafety,
    ...ofRollout,
    unknownSite(draft),
    unsafeId(draft),
    ...plantRainFaults(draft),
  ];
}

/** The sites that a fault leaves in doubt, before any is planted: nothing else is made of them. */
export function faultySites(
  seed: number,
  siteIds: readonly string[],
  spared: ReadonlySet<string>,
): ReadonlySet<string> {
  return new Set(drawnSites(seed, siteIds, spared).drawn.map(({ siteId }) => siteId));
}

function drawnSites(seed: number, siteIds: readonly string[], spared: ReadonlySet<string>) {
  const chance = chanceFor(seed, 'faults');
  const most = Math.floor(siteIds.length * doubted_fraction);
  const ids = siteIds.filter((siteId) => !spared.has(siteId));
  const drawn = siteFaults.slice(0, most).map((fault) => ({ fault, siteId: takeOne(chance, ids) }));
  return { most, drawn, ids };
}

/** At the last site with two tanks apart, 0.4 becomes 0.04. */
function sharesOff(draft: DraftProgramme): PlantedFault[] {
  const index = draft.tables.tanks.findLastIndex(({ peopleFraction }) => typeof peopleFraction === 'number');
  if (index < 0) return [];
  const tank = draft.tables.tanks[index]!;
  draft.tables.tanks = draft.tables.tanks.with(index, changed(tank, { peopleFraction: 0.04 }));
  const about = 'a nought too many in a share of the people';
  const code = 'site.tank_shares_sum';
  return [{ file: 'tanks.csv', row: index + 2, column: 'peopleFraction', code, about, siteId: String(tank['siteId']) }];
}

/** A second line for days the calendar has already, with another share. */
function periodsOverlap(draft: DraftProgramme): PlantedFault[] {
  const site = draft.tables.sites.find(({ presenceCalendar }) => presenceCalendar === 'harvest');
  const presence = draft.tables.presence ?? [];
  const first = presence.find(({ calendarId }) => calendarId === 'harvest');
  if (!site || !first) return [];
  const again = changed(first, { from: '05-15', to: '06-10', presentFraction: 0.85, reason: 'second root harvest' });
  draft.tables.presence = [...presence, again];
  const at = { file: 'presence.csv', row: presence.length + 2, column: 'from', code: 'link.periods_overlap' };
  return [{ ...at, about: 'two periods of a calendar that share days', siteId: String(site['siteId']) }];
}

function takeOne(chance: Chance, ids: string[]): string {
  return ids.splice(chance.whole(0, ids.length - 1), 1)[0]!;
}

/** Changes cells of the site's first row in a table. */
function cell(table: DemoTable, cells: Row, column: string, code: string, about: string): SiteFault {
  return (draft, siteId) => {
    const index = rowOf(draft, table, siteId);
    draft.tables[table] = draft.tables[table].with(index, changed(draft.tables[table][index]!, cells));
    return { file: `${table}.csv`, row: index + 2, column, code, about, siteId };
  };
}

/** Writes the site's first row in a table again at the end, with other contents. */
function twice(table: DemoTable, cells: Row, column: string, about: string): SiteFault {
  return (draft, siteId) => {
    const row = changed(draft.tables[table][rowOf(draft, table, siteId)]!, cells);
    return { ...appended(draft, table, row), column, code: 'row.key_twice', about, siteId };
  };
}

function rowOf(draft: DraftProgramme, table: DemoTable, siteId: string): number {
  return draft.tables[table].findIndex((row) => row['siteId'] === siteId);
}

function appended(draft: DraftProgramme, table: DemoTable, row: Row): { file: string; row: number } {
  draft.tables[table] = [...draft.tables[table], row];
  return { file: `${table}.csv`, row: draft.tables[table].length + 1 };
}

function unknownSite(draft: DraftProgramme): PlantedFault {
  const first = draft.tables.roofs[0]!;
  const roof = changed(first, { siteId: 'hall-7' });
  const about = 'the roof of a site that is not in the list';
  return { ...appended(draft, 'roofs', roof), column: 'siteId', code: 'link.unknown_site', about };
}

function unsafeId(draft: DraftProgramme): PlantedFault {
  const gauge = changed(draft.tables.gauges[0]!, { gaugeId: '../x', name: 'Far landing' });
  const about = 'an id that would lead out of the folder';
  return { ...appended(draft, 'gauges', gauge), column: 'gaugeId', code: 'cell.unsafe_id', about };
}

const asWritten = (value: string | number | boolean) => (typeof value === 'boolean' ? (value ? 'yes' : 'no') : value);

/** A remark typed beyond the last column: the file is written as text, as no table can hold it. */
function raggedTank(draft: DraftProgramme, siteId: string): PlantedFault {
  const columns = Object.keys(folderTables.tanks.columns);
  const ragged = rowOf(draft, 'tanks', siteId);
  const lines = draft.tables.tanks.map((row, i) => {
    const cells = columns.map((column) => asWritten(row[column] ?? '')).join(',');
    return i === ragged ? `${cells},leaks at the foot` : cells;
  });
  draft.rawFiles.push({ path: 'tanks.csv', text: `${[columns.join(','), ...lines].join('\n')}\n` });
  const about = 'a remark typed beyond the last column';
  return { file: 'tanks.csv', row: ragged + 2, column: '', code: 'row.cells_too_many', about, siteId };
}
