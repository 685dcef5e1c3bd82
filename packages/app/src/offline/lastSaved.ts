/** When this page last saved something in the programme [ms since 1970]. */
let savedAt: number | null = null;
const listeners = new Set<() => void>();

/** Something was saved in the programme just now. */
export function sayDone(): void {
  savedAt = Date.now();
  for (const listener of listeners) listener();
}

/** When something was saved from this page; null where nothing was yet. */
export const lastSaved = (): number | null => savedAt;

/** Tells whenever something was saved. */
export function onSaved(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
