import type { Draft } from './draft.ts';

/** Drafts are kept in the browser under names that begin so. */
const front = 'eavewell.draft.';

/** What a draft of a form is called: its programme, and which form of it. */
export const draftName = (programmeId: string, formId: string): string => `${front}${programmeId}.${formId}`;

/** The draft in a text the browser keeps; null where there is none. */
export function draftOf(text: string | null): Draft | null {
  try {
    const kept: unknown = JSON.parse(text ?? 'null');
    return typeof kept === 'object' && kept !== null && 'rows' in kept ? (kept as Draft) : null;
  } catch {
    return null;
  }
}

/** Cells and rows somebody touched [count]: what a draft comes to before it is looked at beside what stands. */
export function touchedIn({ rows }: Draft): number {
  return Object.values(rows).reduce(
    (sum, { state, cells, isOffered }) =>
      sum + (isOffered === true ? 0 : state === 'edited' ? Object.keys(cells).length : 1),
    0,
  );
}

/** Changes that were typed into forms and are not saved, by the name of their draft: those of open forms and those left in the browser. */
export class Unsaved {
  private readonly counts = new Map<string, number>();
  private readonly listeners = new Set<() => void>();

  /** @param kept - what the browser keeps, by name */
  constructor(kept: Iterable<readonly [name: string, text: string]> = []) {
    for (const [name, text] of kept) this.find(name, text);
  }

  /** A form says what it comes to; 0 where nothing of it is left to save. */
  note(name: string, count: number): void {
    if ((this.counts.get(name) ?? 0) === count) return;
    if (count === 0) this.counts.delete(name);
    else this.counts.set(name, count);
    for (const listener of this.listeners) listener();
  }

  /** A draft was found in the browser, or is gone from it: another page of it wrote there. */
  find(name: string, text: string | null): void {
    if (!name.startsWith(front)) return;
    const draft = draftOf(text);
    this.note(name, draft === null ? 0 : touchedIn(draft));
  }

  /** So many changes of a programme are not saved; of all where none is named [count]. */
  count(programmeId?: string): number {
    const own = programmeId === undefined ? front : draftName(programmeId, '');
    return [...this.counts].reduce((sum, [name, count]) => sum + (name.startsWith(own) ? count : 0), 0);
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };
}

function* keptHere(): Generator<readonly [string, string]> {
  try {
    for (const [name, text] of Object.entries({ ...localStorage })) yield [name, String(text)];
  } catch {
    // A browser that keeps nothing has nothing to find.
  }
}

/** What is typed into forms of this browser and not saved yet. */
export const unsaved = new Unsaved(keptHere());

globalThis.window?.addEventListener('storage', ({ key, newValue }) => {
  if (key !== null) unsaved.find(key, newValue);
});
