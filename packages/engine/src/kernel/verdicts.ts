/** The four verdicts, from models of the programme: meets its target over the whole range, at the point only, not at all, or too few facts. */
export type Verdict = 'holds' | 'tight' | 'short' | 'unknown';

/** A station's verdict; `notJudged` where a station is not modelled or is switched off, which never counts. */
export type StationVerdict = Verdict | 'notJudged';

/** Worst first. */
export const verdictOrder: readonly Verdict[] = ['short', 'unknown', 'tight', 'holds'];

/**
 * Which verdict does a site carry? The worst of its stations that were judged.
 *
 * @param stations - the stations' verdicts
 * @returns the worst judged one; `unknown` where none was judged
 * @definition ours: order of badness short, unknown, tight, holds
 * @law a station that is not judged never changes the answer
 * @example
 * worstVerdict(['holds', 'notJudged', 'tight']) // → 'tight'
 * worstVerdict(['unknown', 'short']) // → 'short'
 */
export function worstVerdict(stations: readonly StationVerdict[]): Verdict {
  for (const verdict of verdictOrder) if (stations.includes(verdict)) return verdict;
  return 'unknown';
}

/**
 * Which verdict follows from a point value and the unfavourable end of its range?
 *
 * @param meetsAtPoint - does the point value meet the target?
 * @param meetsAtWorstEnd - does the unfavourable end of the range meet it?
 * @returns `holds`, `tight` or `short`
 * @definition ours
 * @example
 * verdictOf(true, false) // → 'tight'
 */
export function verdictOf(meetsAtPoint: boolean, meetsAtWorstEnd: boolean): Verdict {
  if (!meetsAtPoint) return 'short';
  return meetsAtWorstEnd ? 'holds' : 'tight';
}
