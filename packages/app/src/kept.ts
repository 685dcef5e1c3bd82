/** What a browser remembers of a person: small and harmless; nothing of a programme. */
export type KeptName = 'language' | 'who' | 'programme' | 'light' | 'map';

/** @returns what was kept; null where nothing was, or the browser keeps nothing */
export function kept(name: KeptName): string | null {
  try {
    return localStorage.getItem(`eavewell.${name}`);
  } catch {
    return null;
  }
}

/** Keeps a text, where the browser keeps anything. */
export function keep(name: KeptName, text: string): void {
  try {
    localStorage.setItem(`eavewell.${name}`, text);
  } catch {
    // A browser that keeps nothing: it is asked for again next time.
  }
}
