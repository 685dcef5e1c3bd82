import { useCallback, useState } from 'react';

/** What is ticked off a manifest. */
export const tickKinds = ['loaded', 'landed'] as const;
export type TickKind = (typeof tickKinds)[number];

/** A line as it was ticked: where its count changes since, its tick is gone, for it was of another load. */
export interface TickedLine {
  readonly siteId: string;
  readonly partId: string;
  readonly each_count: number;
  readonly count: number;
}

const nameOf = (programmeId: string, tripId: string) => `eavewell.ticks.${programmeId}.${tripId}`;

/** What a tick of a line is called. */
export const tickOf = (kind: TickKind, { siteId, partId, each_count, count }: TickedLine): string =>
  JSON.stringify([kind, siteId, partId, each_count, count]);

/** Reads ticks that were kept; what is none is left out. */
export function ticksRead(text: string | null): ReadonlySet<string> {
  try {
    const read: unknown = JSON.parse(text ?? '[]');
    return new Set(Array.isArray(read) ? read.filter((one) => typeof one === 'string') : []);
  } catch {
    return new Set();
  }
}

/** Ticks with one put in, or taken out. */
export function withTick(ticks: ReadonlySet<string>, tick: string, isOn: boolean): ReadonlySet<string> {
  const next = new Set(ticks);
  if (isOn) next.add(tick);
  else next.delete(tick);
  return next;
}

/** The ticks of a trip, kept on this device; a browser that keeps nothing forgets them with the page. */
export function useTicks(programmeId: string, tripId: string) {
  const name = nameOf(programmeId, tripId);
  const [kept, setKept] = useState(() => ({ name, ticks: ticksRead(stored(name)) }));
  const ticks = kept.name === name ? kept.ticks : ticksRead(stored(name));
  const set = useCallback(
    (tick: string, isOn: boolean) => {
      // Another page of this browser may have ticked meanwhile.
      const next = withTick(new Set([...ticks, ...ticksRead(stored(name))]), tick, isOn);
      try {
        localStorage.setItem(name, JSON.stringify([...next]));
      } catch {
        // They are there as long as the page is.
      }
      setKept({ name, ticks: next });
    },
    [name, ticks],
  );
  return { ticks, set };
}

function stored(name: string): string | null {
  try {
    return localStorage.getItem(name);
  } catch {
    return null;
  }
}
