/** What is taken out of water, class by class, in powers of ten: 3 log10 leaves one germ of a thousand. */
export interface Reductions {
  readonly bacteria_log10: number;
  readonly viruses_log10: number;
  readonly protozoa_log10: number;
}

/** The same where some of it may not be known. */
export interface StatedReductions {
  readonly bacteria_log10: number | null;
  readonly viruses_log10: number | null;
  readonly protozoa_log10: number | null;
}

/**
 * Makes log reductions of one question asked of each class.
 *
 * @param of - the log reduction of a class [log10]
 * @returns the three of them
 * @definition class by class
 */
export function byClass(of: (field: keyof Reductions) => number): Reductions {
  return {
    bacteria_log10: of('bacteria_log10'),
    viruses_log10: of('viruses_log10'),
    protozoa_log10: of('protozoa_log10'),
  };
}
