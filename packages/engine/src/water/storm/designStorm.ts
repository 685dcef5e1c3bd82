import type { DesignSettings, DesignStorm, GaugeFacts, Problem, WorkingLine } from '../../kernel/index.ts';

/** What a storm is made from. */
export interface StormGiven {
  readonly gauge: Pick<GaugeFacts, 'gaugeId' | 'storms' | 'stormCoefficients' | 'shortRain'>;
  /** The wettest day of each year. */
  readonly dailyMaxima: readonly { readonly year: number; readonly rain_mm: number }[];
  readonly settings: DesignSettings;
}

/** Not built yet. */
export function designStorm(_given: StormGiven): {
  readonly storm: DesignStorm | null;
  readonly problems: readonly Problem[];
  readonly working: readonly WorkingLine[];
} {
  return { storm: null, problems: [], working: [] };
}
