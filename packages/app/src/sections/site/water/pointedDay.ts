import type { DayIndex } from '@eavewell/engine';
import { createContext, useContext, useSyncExternalStore } from 'react';

/** The day that is pointed at in any of the pictures of a site; all of them hear of it, and only what changes is drawn again. */
export class PointedDay {
  private now: DayIndex | null = null;
  private readonly heard = new Set<() => void>();

  readonly get = (): DayIndex | null => this.now;

  readonly set = (day: DayIndex | null): void => {
    if (day === this.now) return;
    this.now = day;
    for (const hear of this.heard) hear();
  };

  readonly subscribe = (hear: () => void): (() => void) => {
    this.heard.add(hear);
    return () => this.heard.delete(hear);
  };
}

export const PointedDayContext = createContext(new PointedDay());

/** The day pointed at now, and how to point at another. */
export function usePointedDay(): readonly [DayIndex | null, (day: DayIndex | null) => void] {
  const pointed = useContext(PointedDayContext);
  return [useSyncExternalStore(pointed.subscribe, pointed.get), pointed.set];
}
