/** A bound from below is never told higher than it is: two digits, rounded down. */
export function roundedDown(value: number): number {
  if (!(value > 0)) return value;
  const step = 10 ** (Math.floor(Math.log10(value)) - 1);
  return Number((Math.floor(value / step + 1e-9) * step).toPrecision(2));
}
