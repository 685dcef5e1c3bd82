import type { DesignSettings, Judged, SettlingFinding, SiteFacts } from '../../kernel/index.ts';

/** What settling is judged by. */
export interface SettlingGiven {
  readonly site: SiteFacts;
  /** What the storm brings to each tank, by tankId; a tank that is not in it is not known. */
  readonly stormFlow_L_per_s: ReadonlyMap<string, number>;
  /** What the day that asks for most asks of each body of water, by its first tank. */
  readonly demandHighest_L_per_day: ReadonlyMap<string, number>;
  readonly settings: DesignSettings;
}

/** Not built yet. */
export function settlingFindings(_given: SettlingGiven): Judged<readonly SettlingFinding[]> {
  return { finding: null, problems: [], working: [] };
}
