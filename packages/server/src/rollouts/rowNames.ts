import type { Problem } from '@eavewell/engine';

type Cells = Readonly<Record<string, string>>;
/** Rows of a table as they were written, the first under its heads. */
type RowsOf = (table: string) => readonly Cells[];

/** What tells a row of a table apart for a person: its name, or these of its columns. */
const telling: Readonly<Record<string, readonly string[]>> = {
  ...{ closures: ['wayId', 'weatherArea', 'from'], arrivals: ['partId', 'dueOn'], carriersAway: ['carrierId', 'from'] },
  ...{ crewCarriers: ['crewId', 'carrierId'], wayLevels: ['wayId', 'carrierId'] },
  ...{ workCalendars: ['calendarId', 'from'], planTrips: ['crewId', 'tripId'], planStops: ['tripId', 'siteId'] },
  ...{ ways: ['wayId'], crews: ['crewId'], carriers: ['carrierId'], places: ['placeId'], parts: ['partId'] },
};
/** Tables whose rows have names, by the column that refers to them. */
const named: Readonly<Record<string, string>> = {
  ...{ wayId: 'ways', crewId: 'crews', carrierId: 'carriers', siteId: 'sites', partId: 'parts', placeId: 'places' },
};

/**
 * What is said of a row names the row: its crew, way, closure or arrival beside the table and the column.
 *
 * @param problems - as reading found them
 * @param rowsOf - rows of the tables they were read from, in their order
 * @returns the same; those of a row of these tables have its name among their facts (`rowName`)
 */
export function withRowNames(problems: readonly Problem[], rowsOf: RowsOf): readonly Problem[] {
  return problems.map((problem) => {
    const { file = '', row } = problem.place;
    const table = file.replace(/\.csv$/, '');
    // The first row of a file has its heads.
    const cells = row === undefined ? undefined : rowsOf(table)[row - 2];
    const rowName = cells === undefined ? '' : nameOf(table, cells, rowsOf);
    return rowName === '' ? problem : { ...problem, facts: { ...problem.facts, rowName } };
  });
}

function nameOf(table: string, cells: Cells, rowsOf: RowsOf): string {
  const own = cells['name'] ?? '';
  if (own !== '') return own;
  return (telling[table] ?? []).flatMap((column) => said(column, cells, table, rowsOf)).join(', ');
}

/** A cell as a person knows it: an id of another table by its name there. */
function said(column: string, cells: Cells, table: string, rowsOf: RowsOf): readonly string[] {
  const text = cells[column] ?? '';
  const other = named[column];
  if (text === '') return [];
  if (other === undefined || other === table) return [text];
  const name = rowsOf(other).find((row) => row[column] === text)?.['name'] ?? '';
  return [name === '' ? text : name];
}
