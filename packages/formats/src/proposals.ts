import type { Proposal, Table } from '@eavewell/tables';

/** What is thought of the headers of one file, or of all rain files where they are alike. */
export interface TableProposals {
  /** The file, or `rain/*.csv` [text]. */
  readonly file: string;
  readonly table: Table;
  /** The headers that stand there [text]. */
  readonly headers: readonly string[];
  readonly proposals: readonly Proposal[];
  /** Of a sheet of gauges: their ids as far as they can be read [text]. */
  readonly gauges?: readonly string[];
}

/** What is thought of a sheet whose name is none of ours. */
export interface SheetProposal {
  /** Its name in the workbook [text]. */
  readonly sheet: string;
  /** The sheet of ours it is likely to be; null where that must be said [text]. */
  readonly likely: string | null;
  readonly why: readonly ('name' | 'headers')[];
  readonly headers: readonly string[];
  /** What must be said before it can be accepted; null where nothing must. */
  readonly open: 'gauge' | null;
  /** The gauges there are [text]. */
  readonly gauges: readonly string[];
}

/** All that is not understood of a programme, with what it likely is. */
export interface ProgrammeProposals {
  readonly tables: readonly TableProposals[];
  readonly sheets: readonly SheetProposal[];
  /** Sheets that are like none of the tables [text]. */
  readonly others: readonly string[];
}
