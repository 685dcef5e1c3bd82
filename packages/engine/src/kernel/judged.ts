import type { Problem } from './problems.ts';
import type { WorkingLine } from './working.ts';

/** What a station found; null where it is not judged. */
export interface Judged<F> {
  readonly finding: F | null;
  readonly problems: readonly Problem[];
  readonly working: readonly WorkingLine[];
}
