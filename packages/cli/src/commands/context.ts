import type { Look, Surroundings } from '../print/terminal.ts';
import type { Progress } from '../progress.ts';

/** What every command is given beside its own arguments. */
export interface Context {
  readonly around: Surroundings;
  readonly look: Look;
  readonly progress: Progress;
  readonly version: string;
  /** How the programme was named on the command line, where it is not a folder of tables. */
  readonly shownAs?: string;
}
