import { demoProgramme } from '@eavewell/demo';
import type { ProgrammeTables } from '@eavewell/formats';
import { folderTableNames } from '@eavewell/tables';

/** Sites of a demo programme. */
const demoSites = 60;

/**
 * The invented programme as it is kept for the pages: with its faults, but for a table that can only be kept letter for letter,
 * as no row of such a table could be changed here.
 */
export function servedDemo(): ProgrammeTables {
  const { planted: _, ...tables } = demoProgramme({ sites: demoSites });
  const asRows: ReadonlySet<string> = new Set(folderTableNames.map((name) => `${name}.csv`));
  return { ...tables, rawFiles: (tables.rawFiles ?? []).filter(({ path }) => !asRows.has(path)) };
}
