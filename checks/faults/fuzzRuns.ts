/**
 * How many random changes are tried: so many as are given, or as EAVEWELL_FUZZ says, as `npm run fuzz` sets it.
 *
 * @param ordinary - how many on every test
 */
export function fuzzRuns(ordinary: number): number {
  const asked = Number(process.env['EAVEWELL_FUZZ'] ?? 0);
  return Number.isInteger(asked) && asked > 0 ? asked : ordinary;
}
