/** One trip: what is aboard, who goes, by which way. */
export function TripSheet() {
  return null;
}
