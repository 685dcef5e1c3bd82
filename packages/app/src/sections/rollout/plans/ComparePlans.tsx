/** Plans that are kept, and two of them side by side. */
export function ComparePlans() {
  return null;
}
