import type { DesignSettings, HeadFinding, Judged, PartFacts, SiteFacts } from '../../kernel/index.ts';

/** What the way to the taps is judged by. */
export interface HeadGiven {
  readonly site: SiteFacts;
  readonly parts: readonly PartFacts[];
  readonly settings: DesignSettings;
}

/** Not built yet. */
export function headFindings(_given: HeadGiven): Judged<readonly HeadFinding[]> {
  return { finding: null, problems: [], working: [] };
}
