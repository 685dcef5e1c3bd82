/** What happened, to be entered. */
export function EnterHappened() {
  return null;
}
