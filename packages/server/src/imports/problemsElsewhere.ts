import type { Problem } from '@eavewell/engine';

const keyOf = ({ code, place, facts }: Problem) => JSON.stringify([code, place, facts]);

/**
 * What would be wrong after, and is not before, in tables that were not sent?
 *
 * @param before - what is wrong in the programme as it stands
 * @param after - what would be wrong in it
 * @param isSent - is a file among those that were sent?
 * @returns the problems that are new
 * @definition ours
 */
export function brokenElsewhere(
  before: readonly Problem[],
  after: readonly Problem[],
  isSent: (file: string | undefined) => boolean,
): readonly Problem[] {
  const known = new Set(before.map(keyOf));
  return after.filter(
    (problem) => problem.severity !== 'note' && !isSent(problem.place.file) && !known.has(keyOf(problem)),
  );
}

/**
 * Is it said of a link to another table? The files that were sent are read beside tables that may lack rows which stay; only what
 * is still so once all is laid together counts.
 */
export function isOfLinks({ code }: Problem): boolean {
  return code.startsWith('link.');
}

/** Is another problem the same but for its row? */
isOfLinks.same = (one: Problem) => {
  const { code, place, facts } = one;
  const key = JSON.stringify([code, place.file, place.column, facts['value'] ?? null]);
  return (other: Problem) =>
    key === JSON.stringify([other.code, other.place.file, other.place.column, other.facts['value'] ?? null]);
};
