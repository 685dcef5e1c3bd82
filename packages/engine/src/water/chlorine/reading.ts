/** Why there is no figure: something is outside the table, and nothing is read beyond it. */
export type OutsideTable = 'temperature' | 'acidity' | 'chlorine' | 'logs';

/** A figure of chlorine times minutes, or why there is none. */
export interface CtReading {
  readonly ct_mg_min_per_L: number | null;
  readonly outside: OutsideTable | null;
}

export function reading(ct_mg_min_per_L: number): CtReading {
  return { ct_mg_min_per_L, outside: null };
}

export function noReading(outside: OutsideTable): CtReading {
  return { ct_mg_min_per_L: null, outside };
}

/** The last place whose value is not above this one; the first where all are: as temperatures are read. */
export function placeDown(values: readonly number[], value: number): number {
  let place = 0;
  while (place + 1 < values.length && values[place + 1]! <= value) place++;
  return place;
}

/** The first place whose value is not under this one; the last where all are: as acidity and chlorine are read. */
export function placeUp(values: readonly number[], value: number): number {
  let place = 0;
  while (place + 1 < values.length && values[place]! < value) place++;
  return place;
}
