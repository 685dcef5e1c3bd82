/** Drafts that are on a page and not kept, by what they are of. */
let names: readonly string[] = [];
const listeners = new Set<() => void>();

function tell(now: readonly string[]): void {
  names = now;
  for (const listener of listeners) listener();
}

/**
 * A page has a draft that is not kept.
 *
 * @param name - what it is of, as people call it [text]
 * @returns called when it is kept or let go
 */
export function sayUnkept(name: string): () => void {
  tell([...names, name]);
  return () => {
    const at = names.indexOf(name);
    tell(names.filter((_, index) => index !== at));
  };
}

/** What is drafted and not kept. */
export const unkept = (): readonly string[] => names;

export function onUnkept(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
