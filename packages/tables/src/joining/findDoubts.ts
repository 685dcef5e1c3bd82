import type { Place, Problem, SiteFacts } from '@eavewell/engine';
import { type FolderTableName, folderTables } from '../contract/allTables.ts';
import { type Beside, columnsBeside, siteColumnsOfRollout, tablesBeside } from '../contract/bearing.ts';
import type { TablesRead } from './tablesRead.ts';

/** The tables whose rows a site is judged by; those of one station alone put that station in doubt. */
const siteTables = [
  'sites',
  'roofs',
  'diverters',
  'tanks',
  'demand',
  'gutters',
  'downpipes',
  'pipes',
  'treatmentUnits',
  'cartridges',
  'flowReadings',
  'pressureTests',
  'rawWater',
  'barriers',
  'waterTests',
  'testPortions',
  'inspections',
  'chlorination',
] as const;

/** Nothing beside is in doubt. */
export const noDoubtsBeside: SiteFacts['doubtsBeside'] = {
  drainage: [],
  settling: [],
  stand: [],
  head: [],
  treatment: [],
  safety: [],
};

/** Doubts of one site and those of every site. */
export function together(own: SiteFacts['doubtsBeside'], ofAll: SiteFacts['doubtsBeside']): SiteFacts['doubtsBeside'] {
  return {
    drainage: [...own.drainage, ...ofAll.drainage],
    settling: [...own.settling, ...ofAll.settling],
    stand: [...own.stand, ...ofAll.stand],
    head: [...own.head, ...ofAll.head],
    treatment: [...own.treatment, ...ofAll.treatment],
    safety: [...own.safety, ...ofAll.safety],
  };
}

/** The one station that a fault of a whole file is about; null: all of a site. */
function besideOfFile({ file }: Place, tables: TablesRead): Beside | null {
  const names = Object.keys(tablesBeside) as FolderTableName[];
  const name = names.find((one) => (tables[one]?.file ?? folderTables[one].file) === file);
  return name === undefined ? null : (tablesBeside[name] ?? null);
}

/** Does a place say nothing of the water of its site? */
function isOfRollout({ file, column }: Place, { sites }: TablesRead): boolean {
  return column !== undefined && file === (sites?.file ?? folderTables.sites.file) && siteColumnsOfRollout.has(column);
}

/** The one station a place is about; null: the whole site. */
function besideOf({ file, column }: Place, tables: TablesRead): Beside | null {
  const name = siteTables.find((one) => tables[one]?.file === file);
  if (name === undefined) return null;
  return tablesBeside[name] ?? (column === undefined ? null : (columnsBeside[name]?.[column] ?? null));
}

/** Tables whose rows sites name: a fault of their first line bears on every site. */
const namedTables = ['parts', 'targets', 'presence', 'secondSources'] as const;

/** Faults of a first line, or of what was accepted for it. */
const ofFirstLine = /^(?:header|columns)\./;

/** Which places put a site in doubt. */
export interface Doubts {
  /** By site. */
  readonly bySite: ReadonlyMap<string, readonly Place[]>;
  /** By site, what puts one station of it in doubt. */
  readonly beside: ReadonlyMap<string, SiteFacts['doubtsBeside']>;
  /** Faults of whole files that one station alone is judged by: at every site. */
  readonly besideOfAll: SiteFacts['doubtsBeside'];
  /** By part, for the sites whose tanks name it. */
  readonly byPart: ReadonlyMap<string, readonly Place[]>;
  /** By gauge, for the sites that name it. */
  readonly byGauge: ReadonlyMap<string, readonly Place[]>;
  /** By gauge, rows of its storms that could not be used, for the gutters of the sites that name it; under '' those of a whole file. */
  readonly stormsByGauge: ReadonlyMap<string, readonly Place[]>;
  /** By class, for the sites of it. */
  readonly byClass: ReadonlyMap<string, readonly Place[]>;
  /** By calendar, for the sites that name it. */
  readonly byCalendar: ReadonlyMap<string, readonly Place[]>;
  /** By second source, for the sites that name it. */
  readonly bySource: ReadonlyMap<string, readonly Place[]>;
  /** Faults of a whole file. */
  readonly ofAll: readonly Place[];
  /** Faults in the programme's own demand, for the sites that have none of their own. */
  readonly ofProgrammeDemand: readonly Place[];
}

function add(places: Map<string, Place[]>, id: string, place: Place): void {
  const known = places.get(id);
  if (known) known.push(place);
  else places.set(id, [place]);
}

/** Is this fault in a row of the programme's own demand, one whose siteId cell is empty? */
function programmeDemandTest(tables: TablesRead): (place: Place) => boolean {
  const read = tables.demand;
  const rows = new Set(read?.notUsed.map(({ row }) => row));
  return ({ file, row, siteId, column }) =>
    read !== undefined && file === read.file && siteId === undefined && column !== 'siteId' && rows.has(row ?? 0);
}

/** An id as the eye takes it: large letters, O for 0, I and L for 1, no dashes, no spaces. */
function toTheEye(id: string): string {
  return id
    .toUpperCase()
    .replaceAll('O', '0')
    .replace(/[IL]/g, '1')
    .replace(/[-_\s]/g, '');
}

/** The sites by how their ids look: a row for "BI" where there is a B1 is most likely B1's, so B1 is not judged without it. */
function idsByLook(tables: TablesRead): ReadonlyMap<string, readonly string[]> {
  const byLook = new Map<string, string[]>();
  for (const { values } of tables.sites?.rows ?? []) {
    const look = toTheEye(values.siteId!);
    byLook.set(look, [...(byLook.get(look) ?? []), values.siteId!]);
  }
  return byLook;
}

/** Places of blockers in the rows of a table that sites name by its key, by that key. */
function doubtsByKey(
  read: TablesRead[FolderTableName],
  key: 'partId' | 'gaugeId' | 'siteClass' | 'calendarId' | 'secondSourceId',
) {
  const byKey = new Map<string, Place[]>();
  const idOf = new Map<number, string>();
  for (const { row, values } of read?.rows ?? []) idOf.set(row, String((values as Record<string, unknown>)[key]));
  for (const { row, keys } of read?.lost ?? []) if (keys[key] !== undefined) idOf.set(row, keys[key]);
  for (const { severity, place, code, facts } of read?.problems ?? []) {
    if (severity !== 'blocker' || place.row === undefined) continue;
    const id = code === 'row.key_twice' ? String(facts['value']).split(' ')[0] : idOf.get(place.row);
    if (id !== undefined) add(byKey, id, place);
  }
  return byKey;
}

/** The tables a storm is stated in. Short intervals that could not be read count as not measured, as days do. */
const stormTables = ['storms', 'stormCoefficients'] as const;

/** Places of blockers in what is stated of storms, by gauge: a storm left out is not to make room for a milder one. */
function doubtfulStorms(tables: TablesRead, ofFiles: readonly Place[]): ReadonlyMap<string, readonly Place[]> {
  const byGauge = new Map<string, Place[]>();
  for (const place of ofFiles) add(byGauge, '', place);
  for (const name of stormTables) {
    for (const [gaugeId, places] of doubtsByKey(tables[name], 'gaugeId'))
      for (const place of places) add(byGauge, gaugeId, place);
    for (const { code, severity, place } of tables[name]?.problems ?? [])
      if (severity === 'blocker' && ofFirstLine.test(code)) add(byGauge, '', place);
  }
  return byGauge;
}

/** Is this the file of a table of storms, read or not? */
function stormFileTest(tables: TablesRead): (place: Place) => boolean {
  const files: readonly (string | undefined)[] = stormTables.map(
    (name) => tables[name]?.file ?? folderTables[name].file,
  );
  return ({ file }) => files.includes(file);
}

/** Doubts of what sites name, by its key. */
function doubtsOfNamed(tables: TablesRead, linkProblems: readonly Problem[]) {
  const byPart = doubtsByKey(tables.parts, 'partId');
  const byGauge = doubtsByKey(tables.gauges, 'gaugeId');
  const byClass = doubtsByKey(tables.targets, 'siteClass');
  const byCalendar = doubtsByKey(tables.presence, 'calendarId');
  for (const { code, place, facts } of linkProblems)
    if (code === 'link.periods_overlap') add(byCalendar, String(facts['value']), place);
  const bySource = doubtsByKey(tables.secondSources, 'secondSourceId');
  return { byPart, byGauge, byClass, byCalendar, bySource };
}

/**
 * Which sites are in doubt, and for what? Every blocker in a row about a site is a doubt of that site; a blocker of a whole file
 * is a doubt of all; a blocker in a part or a gauge is a doubt of the sites whose tanks are that part, or
 * whose rain is that gauge's; a row of an unknown site whose id looks like another's is a doubt of that other.
 *
 * @param tables - the tables as they were read
 * @param linkProblems - what was found in joining them
 * @param doubtsOfAll - places of faults that bear on every site
 * @returns the places, by what they put in doubt
 * @law a site is never judged on the rows that happened to be readable
 * @definition ours: docs/decisions/0010-faults-in-files.md
 */
// long: one walk through all that was found
export function findDoubts(
  tables: TablesRead,
  linkProblems: readonly Problem[],
  doubtsOfAll: readonly Place[],
): Doubts {
  const bySite = new Map<string, Place[]>();
  const ofAll: Place[] = [];
  let besideOfAll = noDoubtsBeside;
  const doubtAll = (place: Place) => {
    const station = besideOfFile(place, tables);
    if (station === null) ofAll.push(place);
    else besideOfAll = { ...besideOfAll, [station]: [...besideOfAll[station], place] };
  };
  const isOfStorms = stormFileTest(tables);
  for (const place of doubtsOfAll) if (!isOfStorms(place)) doubtAll(place);
  const ofProgrammeDemand: Place[] = [];
  const isProgrammeDemand = programmeDemandTest(tables);
  const lookAlikes = idsByLook(tables);
  const found = [...siteTables.flatMap((name) => tables[name]?.problems ?? []), ...linkProblems];
  const beside = new Map<string, SiteFacts['doubtsBeside']>();
  const doubt = (siteId: string, place: Place) => {
    const station = besideOf(place, tables);
    if (station === null) add(bySite, siteId, place);
    else {
      const before = beside.get(siteId) ?? noDoubtsBeside;
      beside.set(siteId, { ...before, [station]: [...before[station], place] });
    }
  };
  for (const name of namedTables)
    for (const { code, severity, place } of tables[name]?.problems ?? [])
      if (severity === 'blocker' && ofFirstLine.test(code)) ofAll.push(place);
  for (const { code, severity, place, facts } of found) {
    if (severity !== 'blocker' || isOfRollout(place, tables)) continue;
    if (code === 'link.unknown_site')
      for (const siteId of lookAlikes.get(toTheEye(String(facts['value']))) ?? []) doubt(siteId, place);
    if (code === 'cell.hidden_in_id' && place.column === 'siteId')
      for (const siteId of lookAlikes.get(toTheEye(String(facts['likely']))) ?? []) doubt(siteId, place);
    if (code === 'cell.unsafe_id' && place.column === 'siteId')
      for (const siteId of lookAlikes.get(toTheEye(String(facts['value']))) ?? []) doubt(siteId, place);
    if (place.siteId !== undefined) doubt(place.siteId, place);
    else if (ofFirstLine.test(code)) doubtAll(place);
    else if (isProgrammeDemand(place)) ofProgrammeDemand.push(place);
  }
  const ofStorms = doubtfulStorms(tables, doubtsOfAll.filter(isOfStorms));
  const named = { ...doubtsOfNamed(tables, linkProblems), stormsByGauge: ofStorms };
  return { bySite, beside, besideOfAll, ...named, ofAll, ofProgrammeDemand };
}
