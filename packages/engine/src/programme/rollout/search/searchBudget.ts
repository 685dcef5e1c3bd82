/** What a search may still spend. The caller owns clock and cancel; the search asks every `triesBetweenPolls` tries, once. */
export interface SearchBudget {
  /** What is left, 1 at the start, 0 or less when spent. Asked once every so many tries, never otherwise. */
  left(): number;
  report(found: SearchProgress): void;
  stopped(): boolean;
}

/** How far a search is. */
export interface SearchProgress {
  readonly tries_count: number;
  /** Cost of the best plan so far, in the unit of the state's cost. */
  readonly best_amount: number;
  /** What is left of the budget, 1 to 0. */
  readonly left_fraction: number;
}

/** The search asks its budget once in so many tries. */
export const triesBetweenPolls_count = 128;

/**
 * A budget of tries: the same tries and seed give the same plan to the bit, whatever the machine.
 *
 * @param tries_count - how many tries [count], rounded up to whole polls
 * @returns the budget; nothing is reported, nobody stops it [fraction left]
 * @definition ours
 */
export function budgetOfTries(tries_count: number): SearchBudget {
  const polls = Math.ceil(tries_count / triesBetweenPolls_count);
  let asked = 0;
  return { left: () => (polls > 0 ? 1 - asked++ / polls : 0), report: () => {}, stopped: () => false };
}
