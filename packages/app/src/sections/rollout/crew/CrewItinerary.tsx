/** What a crew does, day by day. */
export function CrewItinerary() {
  return null;
}
