/** Work goes on so long before the page has its turn [ms], besides the step that is begun. Ours. */
const slice_ms = 3;

/**
 * Goes through steps of a long work in slices, so that the page answers in between.
 *
 * @param steps - the work; what it returns is its result
 * @param isWanted - asked before each slice: is the result still wanted?
 * @returns the result; null where it is not wanted any more
 */
export async function inSlices<T>(steps: Iterator<unknown, T>, isWanted: () => boolean): Promise<T | null> {
  for (;;) {
    // What began it ends first, and the page has its turn.
    await new Promise((resolve) => setTimeout(resolve));
    if (!isWanted()) return null;
    const until = performance.now() + slice_ms;
    do {
      const { done, value } = steps.next();
      if (done) return value;
    } while (performance.now() < until);
  }
}
