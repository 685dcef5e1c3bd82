import type { RolloutSheet } from '@eavewell/tables';

/** Ways that close, crews with their trips, people who drink, stock: on one axis of weeks. */
export function Bands(_: { readonly sheet: RolloutSheet; readonly programmeId: string }) {
  return null;
}
