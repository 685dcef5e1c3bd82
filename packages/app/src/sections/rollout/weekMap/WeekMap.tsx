import type { RolloutSheet } from '@eavewell/tables';

/** Ways and trips of one week on a map. */
export function WeekMap(_: { readonly sheet: RolloutSheet; readonly programmeId: string }) {
  return null;
}
