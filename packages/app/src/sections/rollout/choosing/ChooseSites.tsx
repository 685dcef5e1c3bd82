/** Which sites go in, and which do not, and why. */
export function ChooseSites() {
  return null;
}
