import type { safetyProblems } from '@eavewell/engine';
import { type Sentences, says } from './telling.ts';

/** What room safety finds, in words. */
export const safetySentences: Sentences<keyof typeof safetyProblems> = {
  'safety.raw_unknown': (t) => says(t, 'safety.raw_unknown'),
  'safety.source_raw_unknown': (t) => says(t, 'safety.source_raw_unknown'),
  'safety.raw_without_source': (t) => says(t, 'safety.raw_without_source'),
  'safety.raw_without_range': (t) => says(t, 'safety.raw_without_range'),
  'safety.raw_range_backwards': (t) => says(t, 'safety.raw_range_backwards'),
  'safety.no_barrier': (t) => says(t, 'safety.no_barrier'),
  'safety.no_evidence': (t) => says(t, 'safety.no_evidence'),
  'safety.evidence_without_source': (t) => says(t, 'safety.evidence_without_source'),
  'safety.over_most': (t) => says(t, 'safety.over_most'),
  'safety.viruses_by_pore': (t) => says(t, 'safety.viruses_by_pore'),
  'safety.skipping_unknown': (t) => says(t, 'safety.skipping_unknown'),
  'safety.days_off_unknown': (t) => says(t, 'safety.days_off_unknown'),
  'safety.recontamination_unknown': (t) => says(t, 'safety.recontamination_unknown'),
  'safety.do_not_drink': (t) => says(t, 'safety.do_not_drink'),
  'safety.lead': (t) => says(t, 'safety.lead'),
  'safety.coating': (t) => says(t, 'safety.coating'),
  'safety.asbestos': (t) => says(t, 'safety.asbestos'),
  'safety.trees': (t) => says(t, 'safety.trees'),
  'safety.bare_metal': (t) => says(t, 'safety.bare_metal'),
  'safety.ph_low': (t) => says(t, 'safety.ph_low'),
  'safety.not_taken_out': (t) => says(t, 'safety.not_taken_out'),
};
