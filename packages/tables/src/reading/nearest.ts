/** Letters to change, add, drop or swap with their neighbour to get from a to b, or `most` + 1 where it is more than that. */
export function changes(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most) return most + 1;
  let before: number[] = [];
  let leastBefore = 0;
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let least = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + (same ? 0 : 1));
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      if (swapped) least = Math.min(least, before[j - 2]! + 1);
      row.push(least);
    }
    // A later row is reached from this one, or by a swap from the one before: when both are past the most, so is all that follows.
    const leastHere = row.reduce((least, value) => Math.min(least, value));
    if (leastHere > most && leastBefore >= most) return most + 1;
    leastBefore = leastHere;
    before = last;
    last = row;
  }
  return Math.min(last[b.length]!, most + 1);
}

/** Letters and digits only, small. */
export function folded(text: string): string {
  return text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]/gu, '');
}

/**
 * Which known word was most likely meant? The one with the fewest letters to change, at most one in three; case, spaces and
 * marks do not count. The first of equals.
 *
 * @param written - what stands there [text]
 * @param known - the words there are [text]
 * @returns the likely word, or null where none is near [text]
 * @definition ours: optimal string alignment distance, at most a third of the length
 * @example
 * nearest('peopel', ['people', 'name']) // → 'people'
 * nearest('rainfall', ['people', 'name']) // → null
 */
export function nearest(written: string, known: Iterable<string>): string | null {
  const sought = folded(written);
  let best: string | null = null;
  let least = Math.floor(sought.length / 3);
  for (const word of known) {
    const candidate = folded(word);
    if (candidate === sought) return word;
    const distance = changes(sought, candidate, least);
    if (best === null ? distance <= least : distance < least) {
      best = word;
      least = distance;
    }
  }
  return best;
}
