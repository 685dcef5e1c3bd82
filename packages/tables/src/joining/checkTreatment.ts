import { idsOf, type LinkChecker, pairsOf } from './linkChecker.ts';
import type { TablesRead } from './tablesRead.ts';

/** The part a treatment unit is must be one. */
export function checkUnitParts(
  checker: LinkChecker,
  tables: TablesRead,
  partIds: ReadonlySet<string>,
  kinds: ReadonlyMap<string | null, string | null>,
): void {
  for (const row of tables.treatmentUnits?.rows ?? []) {
    const { siteId, partId: id } = row.values;
    if (id === null || checker.unlinked.has(`treatmentUnits ${row.row}`)) continue;
    const at = { table: 'treatmentUnits', file: tables.treatmentUnits!.file, row, column: 'partId', id, siteId };
    const kind = kinds.get(id);
    if (!partIds.has(id))
      checker.refuse({ ...at, wholeRow: false, code: 'link.unknown_part' }, partIds, 'a partId of parts.csv');
    else if (kind !== undefined && kind !== 'treatmentUnit' && kind !== null)
      checker.fault(
        { ...at, wholeRow: false, code: 'link.part_not_unit' },
        { kind, expected: 'a part of kind treatmentUnit' },
      );
  }
}

/** What is about a treatment unit must name one of its own site, and a portion its sample. */
export function checkUnits(checker: LinkChecker, tables: TablesRead): void {
  const units = pairsOf(tables.treatmentUnits, 'serial');
  for (const table of ['cartridges', 'flowReadings', 'pressureTests'] as const)
    for (const row of tables[table]?.rows ?? []) {
      const { siteId, unitSerial: id } = row.values;
      if (id === null || checker.unlinked.has(`${table} ${row.row}`) || units.get(siteId!)?.has(id)) continue;
      const link = { table, file: tables[table]!.file, row, column: 'unitSerial', id, siteId, wholeRow: true };
      checker.refuse(
        { ...link, code: 'link.unknown_unit' },
        units.get(siteId!) ?? [],
        `a serial of ${siteId} in treatmentUnits.csv`,
      );
    }
  const tests = pairsOf(tables.waterTests, 'testId');
  for (const row of tables.testPortions?.rows ?? []) {
    const { siteId, testId } = row.values;
    if (checker.unlinked.has(`testPortions ${row.row}`) || tests.get(siteId!)?.has(testId!)) continue;
    const at = { table: 'testPortions', file: tables.testPortions!.file, row, column: 'testId', id: testId!, siteId };
    const known = tests.get(siteId!) ?? [];
    checker.refuse(
      { ...at, wholeRow: true, code: 'link.unknown_test' },
      known,
      `a testId of ${siteId} in waterTests.csv`,
    );
  }
}

/** Raw water may be that of a second source, which must be there. */
export function checkRawWater(checker: LinkChecker, tables: TablesRead): void {
  if (tables.secondSources?.usable === false) return;
  const known = idsOf(tables.secondSources, 'secondSourceId');
  for (const row of tables.rawWater?.rows ?? []) {
    const { siteId, secondSourceId: id } = row.values;
    if (id === null || known.has(id) || checker.unlinked.has(`rawWater ${row.row}`)) continue;
    const at = { table: 'rawWater', file: tables.rawWater!.file, row, column: 'secondSourceId', id, siteId };
    const code = 'link.unknown_raw_source' as const;
    checker.refuse({ ...at, wholeRow: true, code }, known, 'a secondSourceId of secondSources.csv');
  }
}
