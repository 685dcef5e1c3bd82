import { demoProgramme } from '@eavewell/demo';
import { type DayIndex, dayOnClock, isoDay } from '@eavewell/engine';
import type { ProgrammeTables } from '@eavewell/formats';
import { folderTableNames } from '@eavewell/tables';

/** Sites of a demo programme. */
const demoSites = 60;

/**
 * The invented programme as it is kept for the pages: with its faults, but for a table that can only be kept letter for letter,
 * as no row of such a table could be changed here. Its rollout is under way on the day it is made.
 */
export function servedDemo(today: DayIndex = dayOnClock(new Date())): ProgrammeTables {
  const { planted: _, ...tables } = demoProgramme({ sites: demoSites, today: isoDay(today) });
  const asRows: ReadonlySet<string> = new Set(folderTableNames.map((name) => `${name}.csv`));
  return { ...tables, rawFiles: (tables.rawFiles ?? []).filter(({ path }) => !asRows.has(path)) };
}
