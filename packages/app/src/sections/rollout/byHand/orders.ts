/** Orders are written with so many digits after the point at most. Ours. */
const digits = 6;

/**
 * Numbers by which things stand in the order they are given: as few as can be are another than before.
 *
 * @param before - the number of each, in the order wanted; null: it had none here
 * @returns a number for each, each greater than the one before it; 1, 2, 3, … where there is no room between those there are
 * @law strictly rising; where `before` rises strictly and has no null, it is returned as it is
 */
export function ordersOf(before: readonly (number | null)[]): readonly number[] {
  const kept = keptOnes(before);
  const found: number[] = [];
  for (let at = 0; at < before.length; ) {
    if (kept.has(at)) {
      found.push(before[at]!);
      at++;
      continue;
    }
    let end = at;
    while (end < before.length && !kept.has(end)) end++;
    found.push(...between(found.at(-1) ?? null, before[end] ?? null, end - at));
    at = end;
  }
  const isRising = found.every((order, at) => at === 0 || order > found[at - 1]!);
  return isRising && found.every((order) => Math.abs(order) <= 1e6) ? found : found.map((_, at) => at + 1);
}

/** So many numbers between two; null: no bound there. */
function between(low: number | null, high: number | null, count: number): readonly number[] {
  const nth = (at: number): number => {
    if (low === null && high === null) return at + 1;
    if (low === null) return Math.ceil(high!) - count + at;
    if (high === null) return Math.floor(low) + 1 + at;
    return low + ((high - low) * (at + 1)) / (count + 1);
  };
  return Array.from({ length: count }, (_, at) => Number(nth(at).toFixed(digits)));
}

/** Places of a longest run of numbers that rise, by patience: those that need not be changed. */
function keptOnes(before: readonly (number | null)[]): ReadonlySet<number> {
  const tails: number[] = [];
  const previous = new Int32Array(before.length).fill(-1);
  for (const [at, order] of before.entries()) {
    if (order === null || !Number.isFinite(order)) continue;
    const place = tails.findIndex((tail) => before[tail]! >= order);
    const onto = place < 0 ? tails.length : place;
    previous[at] = onto === 0 ? -1 : tails[onto - 1]!;
    tails[onto] = at;
  }
  const kept = new Set<number>();
  for (let at = tails.at(-1) ?? -1; at >= 0; at = previous[at]!) kept.add(at);
  return kept;
}
