import type { Place, Problem, WorkingLine } from '../../kernel/index.ts';

/** What is gathered while a site's drainage is looked at. */
export interface Notes {
  readonly siteId: string;
  readonly problems: Problem[];
  readonly working: WorkingLine[];
}

/** Where a fact of the site stands. */
export function placeOf({ siteId }: Notes, table: string, column?: string): Place {
  return column === undefined ? { file: `${table}.csv`, siteId } : { file: `${table}.csv`, siteId, column };
}
