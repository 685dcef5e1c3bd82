import type { Problem, RainReading } from '@eavewell/engine';
import type { NotUsed } from '@eavewell/tables';

/** What one gauge's file came to. */
export interface RainFileRead {
  /** Its path within the folder. */
  readonly file: string;
  readonly readings: readonly RainReading[];
  readonly problems: readonly Problem[];
  readonly notUsed: readonly NotUsed[];
  readonly rows: number;
  /** Rows not used beyond those listed. */
  readonly unlistedRows: number;
}
