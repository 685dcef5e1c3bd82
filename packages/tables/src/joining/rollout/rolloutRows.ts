import type { DaysAsked } from '@eavewell/engine';
import type { FolderTableName } from '../../contract/allTables.ts';
import { idsOf, type Link, LinkChecker } from '../linkChecker.ts';
import type { TablesRead } from '../tablesRead.ts';

/** A row of a table, as it was read. */
export type RowOf<Name extends FolderTableName> = NonNullable<TablesRead[Name]>['rows'][number];
export type Cells<Name extends FolderTableName> = RowOf<Name>['values'];

type CodeOfLink = Extract<Link['code'], `link.${string}`>;

/** Rows of the tables of the rollout, each with what is wrong in it told once. */
export class RolloutRows extends LinkChecker {
  readonly tables: TablesRead;
  /** Ids of sites and places; null where one of the two tables cannot be read, so that no end can be told from a wrong one. */
  readonly ends: ReadonlySet<string> | null;
  readonly siteIds: ReadonlySet<string>;

  constructor(tables: TablesRead) {
    super();
    this.tables = tables;
    this.siteIds = idsOf(tables.sites, 'siteId');
    const isWhole = tables.sites?.usable === true && tables.places?.usable !== false;
    this.ends = isWhole ? new Set([...this.siteIds, ...idsOf(tables.places, 'placeId')]) : null;
  }

  /** All rows of a table, those refused among them. */
  all<Name extends FolderTableName>(name: Name): readonly RowOf<Name>[] {
    return (this.tables[name]?.rows ?? []) as readonly RowOf<Name>[];
  }

  /** The rows that are used. */
  used<Name extends FolderTableName>(name: Name): readonly RowOf<Name>[] {
    return this.all(name).filter(({ row }) => !this.unlinked.has(`${name} ${row}`));
  }

  /** A cell; null where its link leads nowhere. */
  linked<Name extends FolderTableName>(
    name: Name,
    { row, values }: { readonly row: number; readonly values: Cells<Name> },
    column: string,
  ): string | null {
    if (this.unlinked.has(`${name} ${row} ${column}`)) return null;
    return (values as Readonly<Record<string, string | null>>)[column] ?? null;
  }

  at<Name extends FolderTableName>(
    name: Name,
    row: RowOf<Name>,
    column: string,
    code: Link['code'],
    wholeRow = true,
  ): Link {
    const { siteId = null } = row.values as { readonly siteId?: string | null };
    const id = String((row.values as Readonly<Record<string, unknown>>)[column] ?? '');
    return { table: name, file: this.tables[name]!.file, row, column, id, siteId, code, wholeRow };
  }

  /** Refuses the cells of a column, or their whole rows, that name what is not known. Null: nobody can tell. */
  link<Name extends FolderTableName>(
    [name, column]: readonly [Name, string],
    known: ReadonlySet<string> | null,
    {
      code,
      expected,
      wholeRow = true,
    }: { readonly code: CodeOfLink; readonly expected: string; readonly wholeRow?: boolean },
  ): void {
    if (known === null) return;
    for (const row of this.used(name)) {
      const link = this.at(name, row, column, code, wholeRow);
      if (link.id !== '' && !known.has(link.id)) this.refuse(link, known, expected);
    }
  }

  /** Ids of a table; null where its first line could not be read. */
  ids(name: FolderTableName, key: string): ReadonlySet<string> | null {
    return this.tables[name]?.usable === false ? null : idsOf(this.tables[name], key);
  }
}

/**
 * Low, likely and high, where some are left out: low and high as likely, likely as the one that is given, or half-way between the two.
 *
 * @param low - at the least; null: left out [day]
 * @param likely - most likely [day]
 * @param high - at the most [day]
 * @returns all three [day]; null where none is given
 * @definition ours: docs/decisions/0331-what-crews-and-sites-leave-empty.md
 * @example
 * daysAsked(null, 3, null)?.high // → 3
 */
export function daysAsked(low: number | null, likely: number | null, high: number | null): DaysAsked | null {
  const halfway = low !== null && high !== null ? (low + high) / 2 : (low ?? high);
  const middle = likely ?? halfway;
  return middle === null ? null : { low: low ?? middle, likely: middle, high: high ?? middle };
}

/** Is low above likely, or likely above high? */
export function isTurned({ low, likely, high }: DaysAsked): boolean {
  return low > likely || likely > high;
}
