/**
 * Which value stands at the given share of a set of numbers? Sorts a copy where needed and draws a straight line between
 * the two neighbours (type 7: place 1 + (n − 1)p).
 *
 * @param values - the numbers, in any order [any unit], at least one, none NaN, no −Infinity; +Infinity is allowed
 * @param p - share of the way from the least to the greatest [fraction], 0 to 1
 * @returns the quantile [same unit as values]; +Infinity where a neighbour with weight is
 * @law between the least and the greatest value, and never falls as p grows
 * @source hyndman-fan-1996, definition 7
 * @example
 * quantile([1, 2, 3, 4], 0.25) // → 1.75
 * quantile([3, 1, 2], 1) // → 3
 */
export function quantile(values: ArrayLike<number>, p: number): number {
  if (values.length === 0 || !(p >= 0 && p <= 1)) throw new RangeError('quantile: needs values and 0 ≤ p ≤ 1');
  const sorted = isSorted(values) ? values : Float64Array.from(values).sort();
  const place = (sorted.length - 1) * p;
  const below = Math.floor(place);
  const low = sorted[below]!;
  if (place === below) return low;
  const high = sorted[below + 1]!;
  return high === low ? low : low + (place - below) * (high - low);
}

/**
 * Which value stands in the middle of a set of numbers? The half-way quantile: the mean of the middle two of an even count.
 *
 * @param values - the numbers, in any order [any unit], at least one, none NaN
 * @returns the median [same unit as values]
 * @source hyndman-fan-1996, definition 7 at p = 0.5
 * @example
 * median([5, 1, 3]) // → 3
 * median([4, 1, 2, 3]) // → 2.5
 */
export function median(values: ArrayLike<number>): number {
  return quantile(values, 0.5);
}

/**
 * Which number is the k-th smallest? Partitions the array in place (Hoare's select, pivot the middle of three), so that
 * most of it is never sorted. The array's order is changed.
 *
 * @param values - the numbers [any unit], none NaN, Infinity allowed; reordered
 * @param k - which one, counted from 1 [count], 1 to values.length
 * @returns the k-th smallest [same unit as values]
 * @law equals the k-th entry of the sorted array
 * @source hoare-1961, algorithm 65 (find)
 * @example
 * kthSmallest(Float64Array.of(9, Infinity, 1, 4), 3) // → 9
 */
export function kthSmallest(values: Float64Array, k: number): number {
  if (!Number.isInteger(k) || k < 1 || k > values.length) throw new RangeError('kthSmallest: k outside 1 to length');
  const target = k - 1;
  let low = 0;
  let high = values.length - 1;
  while (low < high) {
    const pivot = middleOfThree(values[low]!, values[(low + high) >>> 1]!, values[high]!);
    let i = low;
    let j = high;
    while (i <= j) {
      while (values[i]! < pivot) i++;
      while (values[j]! > pivot) j--;
      if (i <= j) {
        const kept = values[i]!;
        values[i++] = values[j]!;
        values[j--] = kept;
      }
    }
    if (target <= j) high = j;
    else if (target >= i) low = i;
    else break;
  }
  return values[target]!;
}

/**
 * Which value stands at the given share of a set of numbers? The same as `quantile`, without sorting them all: the array's
 * order is changed.
 *
 * @param values - the numbers [any unit], at least one, none NaN; reordered
 * @param p - share of the way from the least to the greatest [fraction], 0 to 1
 * @returns the quantile [same unit as values]
 * @law equals `quantile`
 * @source hyndman-fan-1996, definition 7; hoare-1961, algorithm 65 (find)
 * @example
 * quantileReordering(Float64Array.of(4, 1, 3, 2), 0.25) // → 1.75
 */
export function quantileReordering(values: Float64Array, p: number): number {
  if (values.length === 0 || !(p >= 0 && p <= 1))
    throw new RangeError('quantileReordering: needs values and 0 ≤ p ≤ 1');
  const place = (values.length - 1) * p;
  const below = Math.floor(place);
  const low = kthSmallest(values, below + 1);
  if (place === below) return low;
  let high = Infinity;
  for (let i = below + 1; i < values.length; i++) if (values[i]! < high) high = values[i]!;
  return high === low ? low : low + (place - below) * (high - low);
}

function middleOfThree(a: number, b: number, c: number): number {
  return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
}

function isSorted(values: ArrayLike<number>): boolean {
  for (let i = 1; i < values.length; i++) if (values[i]! < values[i - 1]!) return false;
  return true;
}
