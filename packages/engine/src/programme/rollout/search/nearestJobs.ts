/**
 * Which jobs are nearest to each job? Nearness is the cost there and back; among equals the lower number comes first.
 *
 * @param forward - cost from i to j at i × width + j, base first [the cost's unit]
 * @param width - stops, the base among them [count]
 * @param nearCount - how many of the nearest are wanted for each [count], at most width − 2
 * @returns for job i, from entry i × nearCount: the others, nearest first [number of the job]
 * @definition ours
 */
export function nearestJobs(forward: Float32Array, width: number, nearCount: number): Uint16Array {
  const near = new Uint16Array(width * nearCount);
  const keys = new Float64Array(Math.max(0, width - 1));
  let most = 0;
  for (let at = 0; at < forward.length; at++)
    if (forward[at]! > most && forward[at]! < Number.POSITIVE_INFINITY) most = forward[at]!;
  // Distance in 2^35 steps and the number of the job share one number, so that plain numbers are sorted.
  const steps = most > 0 ? (2 ** 35 - 1) / most : 0;
  for (let job = 1; job < width; job++) {
    for (let other = 1; other < width; other++) {
      const apart = Math.min(2 * most, forward[job * width + other]! + forward[other * width + job]!);
      keys[other - 1] = (other === job ? 2 ** 36 : Math.floor(apart * steps)) * 65536 + other;
    }
    keys.sort();
    for (let at = 0; at < nearCount; at++) near[job * nearCount + at] = keys[at]! % 65536;
  }
  return near;
}
