import type { DesignSettings, Judged, SiteFacts, StandFinding, StandGate } from '../../kernel/index.ts';

/** What stands are judged by. */
export interface StandGiven {
  readonly site: SiteFacts;
  readonly settings: DesignSettings;
}

/** Not built yet. */
export function standFindings(_given: StandGiven): Judged<readonly StandFinding[]> & { readonly gate: StandGate } {
  return { finding: null, problems: [], working: [], gate: 'notNeeded' };
}
