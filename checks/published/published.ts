/** A figure that someone else printed, beside what this program makes of the same inputs. */
export interface PublishedRow {
  /** Where it stands in its source: table, row, page, worked example. */
  readonly place: string;
  readonly inputs: Readonly<Record<string, number | string | readonly number[]>>;
  /** As printed, with every digit and none more: the last one sets the tolerance. */
  readonly printed: string;
  /** Half the last printed digit unless a reason stands here. */
  readonly tolerance?: { readonly value: number; readonly reason: string };
  readonly got: () => number | string;
  /** Where the printed figure does not follow from its own inputs: what does follow, and why. Both stay in sight. */
  readonly follows?: { readonly value: number; readonly tolerance: number; readonly reason: string };
  /** Written down without the source at hand. */
  readonly fromMemory?: true;
  /** The function of the engine it checks, where it is not the one of the file. */
  readonly method?: string;
}

/** All rows of one source, or of one method of a source. */
export interface PublishedFile {
  /** Id of docs/sources.json. */
  readonly source: string;
  /** The function or constant of the engine that is checked. */
  readonly method: string;
  readonly rows: readonly PublishedRow[];
}

/** How far a figure may be from a row's printed one: half of its last digit, or what the row gives a reason for. */
export function toleranceOf(row: PublishedRow): number {
  if (row.tolerance) return row.tolerance.value;
  const decimals = /\.(\d+)$/.exec(row.printed)?.[1]?.length ?? 0;
  return 0.5 * 10 ** -decimals;
}

/** The printed figure as a number; null where it is a word. */
export function printedNumber(row: PublishedRow): number | null {
  return /^-?\d+(\.\d+)?$/.test(row.printed) ? Number(row.printed) : null;
}

/** Is `value` no further from `wanted` than `tolerance`, but for the last bits of a double? */
export function isNear(value: number, wanted: number, tolerance: number): boolean {
  return Math.abs(value - wanted) <= tolerance + 1e-12 * Math.abs(wanted);
}

/** What is wrong with a row; null where the figure is met, or misses a misprint and meets what follows from the inputs. */
export function rowFault(row: PublishedRow): string | null {
  const got = row.got();
  const printed = printedNumber(row);
  if (printed === null) return got === row.printed ? null : `printed ${row.printed}, got ${got}`;
  if (typeof got !== 'number' || !Number.isFinite(got)) return `printed ${row.printed}, got ${got}`;
  const meets = isNear(got, printed, toleranceOf(row));
  if (!row.follows) return meets ? null : `printed ${row.printed}, got ${got}`;
  if (meets) return `printed ${row.printed} is met: it is no misprint`;
  const { value, tolerance } = row.follows;
  return isNear(got, value, tolerance) ? null : `follows ${value}, got ${got}`;
}
