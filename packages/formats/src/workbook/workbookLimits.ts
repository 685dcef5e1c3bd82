/**
 * How much of a workbook is opened. A workbook is a zip of XML, and a small file may swell to any size: everything is counted while
 * it is inflated, whatever the file says of itself. All are ours: far above a large programme (1,500 sites and a million rows of
 * rain come to some 120 MB), far below what a laptop of 4 GB cannot hold.
 *
 * @definition ours: docs/decisions/0071-limits-of-workbooks.md
 */
export const workbookLimits = {
  /** Largest file [MB]. */
  file_MB: 100,
  /** Most entries of the zip [entry]. */
  entries: 10_000,
  /** Most that all parts read may come to when inflated [MB]. */
  inflated_MB: 400,
  /** Most times its packed size that a part may come to, once it is over `ratioFrom_bytes` [times]. */
  inflation: 300,
  /** Most cells with anything in them in one sheet, and most texts and styles that cells share [cell]. */
  cells: 4_000_000,
  /** Most merged ranges of one sheet [range]. */
  merged: 100_000,
  /** Most columns of one table [column]. */
  columns: 1000,
  /** Deepest nesting of XML [element]. */
  depth: 64,
} as const;

/** Below this size a part may be packed as tightly as it likes [byte]. */
export const ratioFrom_bytes = 20e6;

/** A limit of workbooks. */
export type WorkbookLimit = keyof typeof workbookLimits;

/** Something of a workbook cannot be read, and why. Caught within this folder; never seen outside it. */
export class Unreadable extends Error {
  readonly limit: WorkbookLimit | null;
  readonly found: number | null;
  constructor(reason: string, limit: WorkbookLimit | null = null, found: number | null = null) {
    super(reason);
    this.limit = limit;
    this.found = found;
  }
}

/** Over a limit: how much was found, in the limit's unit. */
export function overLimit(limit: WorkbookLimit, found: number): Unreadable {
  return new Unreadable(`over the limit: ${limit}`, limit, found);
}
