import type { DesignSettings, DesignStorm, DrainageFinding, Judged, PartFacts, SiteFacts } from '../../kernel/index.ts';

/** What drainage is judged by. */
export interface DrainageGiven {
  readonly site: SiteFacts;
  readonly storm: DesignStorm | null;
  readonly parts: readonly PartFacts[];
  readonly settings: DesignSettings;
}

/** Not built yet. */
export function drainageFinding(_given: DrainageGiven): Judged<DrainageFinding> {
  return { finding: null, problems: [], working: [] };
}
