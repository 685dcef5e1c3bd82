import type { Station } from '../kernel/index.ts';

/** Stations that no day of rain is run for, and that may be judged. */
export type StationBeside = Exclude<Station, 'roof' | 'storage'>;
export const stationsBeside: readonly StationBeside[] = ['gutter', 'settling', 'stand', 'treatmentUnit', 'tap', 'cup'];
