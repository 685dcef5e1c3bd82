import { useSyncExternalStore } from 'react';
import { keep, kept } from '../kept.ts';

const listeners = new Set<() => void>();
let name = kept('who') ?? '';

/** Says who makes changes from now on in this browser. */
export function sayWho(who: string): void {
  name = who.trim();
  keep('who', name);
  for (const listener of listeners) listener();
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** The name under which changes are recorded; empty until somebody has said it. */
export function useWho(): string {
  return useSyncExternalStore(subscribe, () => name);
}
