/**
 * Where does a function that rises pass through zero? Halves the stretch between a value under zero and one that is not until no number lies
 * between them: slow, sure, and at home with a function that jumps.
 *
 * @param rising - the function, never falling between low and high
 * @param low - where to begin [any unit]
 * @param high - where to end [same unit as low], at least low
 * @returns the least place at which the function is not under zero [same unit as low]; low where it is so there already, high where it is under zero
 *   throughout
 * @law the function is not under zero there, and is under zero at the number just before
 * @definition bisection
 * @example
 * risingRoot((x) => x * x - 2, 0, 2) // → 1.4142135624
 */
export function risingRoot(rising: (x: number) => number, low: number, high: number): number {
  if (!(low <= high)) throw new RangeError('risingRoot: low above high');
  if (rising(low) >= 0) return low;
  let below = low;
  let above = high;
  for (;;) {
    const middle = below + (above - below) / 2;
    if (!(middle > below && middle < above)) return above;
    if (rising(middle) >= 0) above = middle;
    else below = middle;
  }
}
