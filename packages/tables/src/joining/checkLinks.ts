import { daysOfPeriod, type Problem } from '@eavewell/engine';
import { nearest } from '../reading/nearest.ts';
import { type NotUsed, tableProblem } from '../reading/tableProblems.ts';
import { checkKit } from './checkKit.ts';
import { checkRawWater, checkUnitParts, checkUnits } from './checkTreatment.ts';
import { idsOf, LinkChecker, pairsOf } from './linkChecker.ts';
import type { TablesRead } from './tablesRead.ts';

/** Links that lead nowhere: `table row` of rows not used, `table row column` of cells not used. */
export interface LinksChecked {
  readonly unlinked: ReadonlySet<string>;
  readonly problems: readonly Problem[];
  readonly notUsed: readonly NotUsed[];
}

/** Tables whose rows must name a site that is there, or none. */
const tablesOfSites = [
  'roofs',
  'gutters',
  'downpipes',
  'tanks',
  'pipes',
  'demand',
  'diverters',
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
  'costs',
] as const;

/** What is about a site must name one that is there. */
function checkSites(checker: LinkChecker, tables: TablesRead, siteIds: ReadonlySet<string>): void {
  for (const name of tablesOfSites) {
    const read = tables[name];
    const rows = (read?.rows ?? []).filter(({ values }) => values.siteId !== null);
    if (tables.sites?.usable !== true) {
      checker.unchecked(read?.file ?? '', 'sites.csv', 'siteId', rows);
      continue;
    }
    for (const row of rows) {
      const id = row.values.siteId!;
      if (siteIds.has(id)) continue;
      const link = { table: name, file: read!.file, row, column: 'siteId', id, siteId: null, wholeRow: true } as const;
      checker.refuse({ ...link, code: 'link.unknown_site' }, siteIds, 'a siteId of sites.csv');
    }
  }
}

/** Tables whose rows are about a gauge. */
const gaugeTables = ['normals', 'storms', 'stormCoefficients', 'shortRain'] as const;

/** Rows about a gauge must name one that is there. */
function checkGaugeTables(checker: LinkChecker, tables: TablesRead): void {
  const gaugeIds = idsOf(tables.gauges, 'gaugeId');
  for (const table of gaugeTables) {
    const rows = tables[table]?.rows ?? [];
    const file = tables[table]?.file ?? '';
    if (tables.gauges?.usable !== true) {
      checker.unchecked(file, 'gauges.csv', 'gaugeId', rows);
      continue;
    }
    for (const row of rows) {
      const id = row.values.gaugeId!;
      if (gaugeIds.has(id)) continue;
      const link = { table, file, row, column: 'gaugeId', id, siteId: null, wholeRow: true } as const;
      checker.refuse({ ...link, code: 'link.unknown_gauge' }, gaugeIds, 'a gaugeId of gauges.csv');
    }
  }
}

function checkGauges(checker: LinkChecker, tables: TablesRead): void {
  const rows = (tables.sites?.rows ?? []).filter(({ values }) => values.gaugeId !== null);
  if (tables.gauges?.usable !== true) {
    checker.unchecked(tables.sites?.file ?? '', 'gauges.csv', 'gaugeId', rows);
    return;
  }
  const gaugeIds = idsOf(tables.gauges, 'gaugeId');
  for (const row of rows) {
    const id = row.values.gaugeId!;
    if (gaugeIds.has(id)) continue;
    const link = { table: 'sites', file: tables.sites!.file, row, column: 'gaugeId', id, wholeRow: false } as const;
    const siteId = row.values.siteId;
    checker.refuse({ ...link, siteId, code: 'link.unknown_gauge' }, gaugeIds, 'a gaugeId of gauges.csv');
  }
}

/** What hangs on a roof must name one of its own site. Of gutters and downpipes it puts their station in doubt, and no more. */
function checkRoofs(checker: LinkChecker, tables: TablesRead): void {
  if (tables.roofs?.usable !== true) return;
  const roofs = pairsOf(tables.roofs, 'roofId');
  for (const table of ['diverters', 'gutters', 'downpipes'] as const)
    for (const row of tables[table]?.rows ?? []) {
      const [siteId, id] = [row.values.siteId!, row.values.roofId!];
      if (checker.unlinked.has(`${table} ${row.row}`) || roofs.get(siteId)?.has(id)) continue;
      const code = table === 'diverters' ? 'link.unknown_roof' : 'link.pipe_roof_unknown';
      const link = {
        table,
        file: tables[table]!.file,
        row,
        column: 'roofId',
        id,
        siteId,
        code,
        wholeRow: true,
      } as const;
      checker.refuse(link, roofs.get(siteId) ?? [], `a roofId of ${siteId}`);
    }
}

function checkJoined(checker: LinkChecker, tables: TablesRead): void {
  const tanks = pairsOf(tables.tanks, 'tankId');
  for (const row of tables.tanks?.rows ?? []) {
    const { siteId, tankId, joinedTo: id } = row.values;
    if (id === null || checker.unlinked.has(`tanks ${row.row}`)) continue;
    const link = { table: 'tanks', file: tables.tanks!.file, row, column: 'joinedTo', id, siteId, wholeRow: false };
    const expected = `another tankId of ${siteId}`;
    if (id === tankId) checker.fault({ ...link, code: 'link.joined_to_itself' }, { expected });
    else if (!tanks.get(siteId!)?.has(id))
      checker.refuse({ ...link, code: 'link.unknown_tank' }, tanks.get(siteId!) ?? [], expected);
  }
}

/** A roof may name the tank its gutter leads to, and a pipe the tank it comes from, of its own site. */
function checkLeads(checker: LinkChecker, tables: TablesRead): void {
  if (tables.tanks?.usable !== true) return;
  const tanks = pairsOf(tables.tanks, 'tankId');
  for (const table of ['roofs', 'pipes'] as const)
    for (const row of tables[table]?.rows ?? []) {
      const { siteId, tankId: id } = row.values;
      if (id === null || checker.unlinked.has(`${table} ${row.row}`) || tanks.get(siteId!)?.has(id)) continue;
      const link = { table, file: tables[table]!.file, row, column: 'tankId', id, siteId, wholeRow: false };
      checker.refuse({ ...link, code: 'link.unknown_tank' }, tanks.get(siteId!) ?? [], `a tankId of ${siteId}`);
    }
}

function checkParts(checker: LinkChecker, tables: TablesRead): void {
  const named = (tables.tanks?.rows ?? []).filter(
    ({ row, values }) => values.partId !== null && !checker.unlinked.has(`tanks ${row}`),
  );
  const priced = tables.prices?.rows ?? [];
  if (tables.parts?.usable !== true) {
    checker.unchecked(tables.tanks?.file ?? '', 'parts.csv', 'partId', named);
    checker.unchecked(tables.prices?.file ?? '', 'parts.csv', 'partId', priced);
    return;
  }
  const partIds = idsOf(tables.parts, 'partId');
  const kinds = new Map(tables.parts.rows.map(({ values }) => [values.partId, values.kind]));
  for (const row of named) {
    const { siteId, partId } = row.values;
    const id = partId!;
    const link = { table: 'tanks', file: tables.tanks!.file, row, column: 'partId', id, siteId, wholeRow: false };
    const kind = kinds.get(id);
    if (!partIds.has(id)) checker.refuse({ ...link, code: 'link.unknown_part' }, partIds, 'a partId of parts.csv');
    else if (kind !== undefined && kind !== 'tank' && kind !== null)
      checker.fault({ ...link, code: 'link.part_not_tank' }, { kind, expected: 'a part of kind tank' });
  }
  checkUnitParts(checker, tables, partIds, kinds);
  for (const row of priced) {
    const id = row.values.partId!;
    if (partIds.has(id)) continue;
    const link = {
      table: 'prices',
      file: tables.prices!.file,
      row,
      column: 'partId',
      id,
      siteId: null,
      wholeRow: true,
    };
    checker.refuse({ ...link, code: 'link.unknown_part' }, partIds, 'a partId of parts.csv');
  }
}

/** Second sources that sites name must be there. */
function checkSources(checker: LinkChecker, tables: TablesRead): void {
  if (tables.secondSources?.usable === false) return;
  const known = idsOf(tables.secondSources, 'secondSourceId');
  for (const row of tables.sites?.rows ?? []) {
    const { siteId, secondSourceId: id } = row.values;
    const near = row.values.nearSecondSource;
    const expected = 'a secondSourceId of secondSources.csv';
    const at = { table: 'sites', file: tables.sites!.file, row, siteId, wholeRow: false } as const;
    if (id !== null && !known.has(id))
      checker.refuse({ ...at, column: 'secondSourceId', id, code: 'link.unknown_second_source' }, known, expected);
    if (near === null) continue;
    const ofNear = { ...at, column: 'nearSecondSource', id: near };
    if (near === id) checker.remark({ ...ofNear, code: 'link.near_source_in_use' });
    else if (!known.has(near)) checker.refuse({ ...ofNear, code: 'link.unknown_near_source' }, known, expected);
  }
}

/** Calendars that sites name must be there, and no two periods of one may overlap: who is there would be said twice. */
function checkPresence(checker: LinkChecker, tables: TablesRead): void {
  if (tables.presence?.usable === false) return;
  const known = idsOf(tables.presence, 'calendarId');
  for (const row of tables.sites?.rows ?? []) {
    const { siteId, presenceCalendar: id } = row.values;
    if (id === null || known.has(id)) continue;
    const at = { table: 'sites', file: tables.sites!.file, row, column: 'presenceCalendar', id, siteId };
    checker.refuse({ ...at, code: 'link.unknown_calendar', wholeRow: false }, known, 'a calendarId of presence.csv');
  }
  const taken = new Map<string, number>();
  for (const { row, values } of tables.presence?.rows ?? []) {
    const period = { from_dayOfYear: values.from!, to_dayOfYear: values.to! };
    const days = daysOfPeriod(period).map((day) => `${values.calendarId} ${day}`);
    const other = days.map((day) => taken.get(day)).find((found) => found !== undefined);
    if (other !== undefined) {
      const facts = { value: values.calendarId!, other, expected: 'periods that do not overlap' };
      const place = { file: tables.presence!.file, row, column: 'from' };
      checker.problems.push(tableProblem('link.periods_overlap', place, facts));
    }
    for (const day of days) taken.set(day, row);
  }
}

/** A target of a class that no site is of is worth knowing: the class may be written another way. */
function checkClasses(checker: LinkChecker, tables: TablesRead): void {
  if (tables.sites?.usable !== true) return;
  const classes = idsOf(tables.sites, 'siteClass');
  const used = new Set([...classes].filter((siteClass) => siteClass !== null));
  for (const { row, values } of tables.targets?.rows ?? []) {
    const value = values.siteClass!;
    if (used.has(value)) continue;
    const facts = { value, likely: nearest(value, used) ?? '', expected: 'a siteClass of sites.csv' };
    const place = { file: tables.targets!.file, row, column: 'siteClass' };
    checker.problems.push(tableProblem('link.class_unused', place, facts));
  }
}

/** Two files whose names differ only by case are one file on many computers. */
function checkCase(checker: LinkChecker, tables: TablesRead): void {
  const seen = new Map<string, string>();
  for (const { row, values } of tables.gauges?.rows ?? []) {
    const gaugeId = values.gaugeId!;
    const other = seen.get(gaugeId.toLowerCase());
    if (other === undefined) seen.set(gaugeId.toLowerCase(), gaugeId);
    else {
      const place = { file: tables.gauges!.file, row, column: 'gaugeId', gaugeId };
      const facts = { value: gaugeId, other, expected: 'ids that differ by more than capitals' };
      checker.problems.push(tableProblem('link.ids_differ_by_case', place, facts));
    }
  }
}

/**
 * Which links between tables lead nowhere? Each is named with the nearest id there is, and not used. A row that was found but
 * could not be used still counts as there.
 *
 * @param tables - the tables as they were read
 * @returns the rows and cells not to be used, with their problems
 * @problem link.unknown_site - and the other link codes
 * @definition ours
 */
export function checkLinks(tables: TablesRead): LinksChecked {
  const checker = new LinkChecker();
  checkSites(checker, tables, idsOf(tables.sites, 'siteId'));
  checkGauges(checker, tables);
  checkGaugeTables(checker, tables);
  checkRoofs(checker, tables);
  checkJoined(checker, tables);
  checkLeads(checker, tables);
  checkParts(checker, tables);
  checkSources(checker, tables);
  checkUnits(checker, tables);
  checkRawWater(checker, tables);
  checkKit(checker, tables);
  checkPresence(checker, tables);
  checkClasses(checker, tables);
  checkCase(checker, tables);
  return checker;
}
