import type { RolloutSheet } from '@eavewell/tables';

/** Which plan is shown, what is to be done with it, and what changed since it was worked out. */
export function PlansBar(_: { readonly sheet: RolloutSheet; readonly programmeId: string }) {
  return null;
}
