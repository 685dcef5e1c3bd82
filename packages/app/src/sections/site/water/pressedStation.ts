import type { Station } from '@eavewell/engine';

/** The rooms whose workings belong to a station. */
const stationOf: Readonly<Record<string, Station>> = {
  drainage: 'gutter',
  storm: 'gutter',
  settling: 'settling',
  storage: 'storage',
  stand: 'stand',
  head: 'tap',
  treatment: 'treatmentUnit',
  wear: 'treatmentUnit',
  waterTests: 'cup',
  chlorine: 'cup',
  safety: 'cup',
};

/** The station whose working is open; null where none is. */
export const pressedStation = (opened: string | null): Station | null =>
  opened === null ? null : (stationOf[opened.split('.')[0]!] ?? null);
