/** How bad a problem is. A blocker withholds an answer; a warning may change one; a note is only worth knowing. */
export type Severity = 'blocker' | 'warning' | 'note';

/** Where a problem was found. Rows are counted as a spreadsheet does: the header is row 1. */
export interface Place {
  readonly file?: string;
  readonly row?: number;
  readonly column?: string;
  /** The cell as a spreadsheet names it, such as D14, for something found in a workbook. */
  readonly cell?: string;
  readonly siteId?: string;
  readonly gaugeId?: string;
  /** ISO day, for something found in a daily record. */
  readonly day?: string;
}

/** What a problem's sentence is made from. */
export type Facts = Readonly<Record<string, string | number | readonly string[]>>;

/** One thing found wrong, as data. Its sentence lives in the words package. */
export interface Problem<Code extends string = string> {
  readonly code: Code;
  readonly severity: Severity;
  readonly place: Place;
  readonly facts: Facts;
}

/** A value with every problem met on the way, or the problems alone. */
export type Checked<T> =
  | { readonly ok: true; readonly value: T; readonly problems: readonly Problem[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** A catalogue gives each problem code its severity, once. */
export type ProblemCatalogue = Readonly<Record<string, Severity>>;

/**
 * Makes the function that makes problems of one catalogue, so that a code and its severity are written once.
 *
 * @param catalogue - severity by problem code
 * @returns a function of code, place and facts that gives the problem
 * @definition ours
 */
export function problemMaker<C extends ProblemCatalogue>(catalogue: C) {
  return <Code extends keyof C & string>(code: Code, place: Place, facts: Facts = {}): Problem<Code> => ({
    code,
    severity: catalogue[code]!,
    place,
    facts,
  });
}
