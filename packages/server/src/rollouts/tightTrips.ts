import type { TimedNow } from './heldRollouts.ts';

export function tightTrips(_now: TimedNow): ReadonlyMap<string, string> {
  return new Map();
}
