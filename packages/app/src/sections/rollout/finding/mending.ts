import type { SheetCandidate } from '@eavewell/tables';
import type { AppMessageKey } from '@eavewell/words/app';

/** Where that is changed which keeps a site out of the plan. */
export interface Mending {
  readonly key: AppMessageKey;
  readonly to: 'site' | 'kit' | 'facts' | 'agree' | 'ways' | 'crews' | 'plan';
}

const byReason: Readonly<Record<string, Mending>> = {
  short: { key: 'rolloutFinding.mend_short', to: 'site' },
  unknown: { key: 'rolloutFinding.mend_unknown', to: 'site' },
  notAgreed: { key: 'rolloutFinding.mend_agree', to: 'agree' },
  noPeople: { key: 'rolloutFinding.mend_people', to: 'facts' },
  noKit: { key: 'rolloutFinding.mend_kit', to: 'kit' },
  tooHeavy: { key: 'rolloutFinding.mend_load', to: 'kit' },
  tooBulky: { key: 'rolloutFinding.mend_load', to: 'kit' },
  tooLong: { key: 'rolloutFinding.mend_load', to: 'kit' },
  noWindow: { key: 'rolloutFinding.mend_window', to: 'facts' },
  noWay: { key: 'rolloutFinding.mend_way', to: 'ways' },
  noSkill: { key: 'rolloutFinding.mend_skill', to: 'crews' },
};

/** What would change that a site is in no trip; null where nothing is to be done. */
export function mendingOf({ reason, tripId }: Pick<SheetCandidate, 'reason' | 'tripId'>): Mending | null {
  if (reason !== null) return byReason[reason] ?? null;
  return tripId === null ? { key: 'rolloutFinding.mend_plan', to: 'plan' } : null;
}
