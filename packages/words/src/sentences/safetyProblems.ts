import type { safetyProblems } from '@eavewell/engine';
import type { Told } from '../problems.ts';
import { amount, part, type Sentences, says, wordFor } from './telling.ts';

const barriers = (t: Told) => ({ barriers: t.text('barriers') });
const roofs = (t: Told) => ({ roofs: part(t, 'roofs', { count: t.list('roofs').length, roofs: t.text('roofs') }) });
const germ = (t: Told, name: string) => wordFor(t, 'germ', name) ?? name;
const germs = (t: Told) => ({
  germs: t
    .list('germs')
    .map((name) => germ(t, name))
    .join(', '),
});

/** What room safety finds, in words. */
export const safetySentences: Sentences<keyof typeof safetyProblems> = {
  'safety.raw_unknown': (t) => says(t, 'safety.raw_unknown', germs(t)),
  'safety.source_raw_unknown': (t) => says(t, 'safety.source_raw_unknown', { source: t.text('source'), ...germs(t) }),
  'safety.source_days_unknown': (t) => says(t, 'safety.source_days_unknown', { source: t.text('source') }),
  'safety.source_over_target': (t) => says(t, 'safety.source_over_target', { source: t.text('source'), ...germs(t) }),
  'safety.raw_without_source': (t) => says(t, 'safety.raw_without_source', germs(t)),
  'safety.raw_without_range': (t) => says(t, 'safety.raw_without_range', germs(t)),
  'safety.raw_range_backwards': (t) =>
    says(t, 'safety.raw_range_backwards', {
      germ: germ(t, t.text('germ')),
      low: amount(t, ['low_per_L'], 'per_L'),
      typical: amount(t, ['typical_per_L'], 'per_L'),
      high: amount(t, ['high_per_L'], 'per_L'),
    }),
  'safety.no_barrier': (t) => says(t, 'safety.no_barrier'),
  'safety.no_evidence': (t) => says(t, 'safety.no_evidence', barriers(t)),
  'safety.evidence_without_source': (t) => says(t, 'safety.evidence_without_source', barriers(t)),
  'safety.test_supports_less': (t) =>
    says(t, 'safety.test_supports_less', { ...barriers(t), supports: amount(t, ['supports_log10'], 'log10') }),
  'safety.test_limits': (t) =>
    says(t, 'safety.test_limits', { ...barriers(t), supports: amount(t, ['supports_log10'], 'log10') }),
  'safety.over_most': (t) => says(t, 'safety.over_most', { ...barriers(t), most: amount(t, ['most_log10'], 'log10') }),
  'safety.viruses_by_pore': (t) => says(t, 'safety.viruses_by_pore', barriers(t)),
  'safety.skipping_unknown': (t) => says(t, 'safety.skipping_unknown'),
  'safety.days_off_unknown': (t) => says(t, 'safety.days_off_unknown'),
  'safety.recontamination_unknown': (t) => says(t, 'safety.recontamination_unknown'),
  'safety.unit_not_in_place': (t) => says(t, 'safety.unit_not_in_place', barriers(t)),
  'safety.no_clean_sample': (t) => says(t, 'safety.no_clean_sample'),
  'safety.sample_too_old': (t) =>
    says(t, 'safety.sample_too_old', {
      age: t.numbers.days(t.count('age_days')),
      most: t.numbers.days(t.count('most_days')),
    }),
  'safety.do_not_drink': (t) => says(t, 'safety.do_not_drink', { reason: t.text('reason') }),
  'safety.lead': (t) => says(t, 'safety.lead', roofs(t)),
  'safety.lead_not_looked_for': (t) => says(t, 'safety.lead_not_looked_for', roofs(t)),
  'safety.coating': (t) => says(t, 'safety.coating', roofs(t)),
  'safety.asbestos': (t) => says(t, 'safety.asbestos', roofs(t)),
  'safety.trees': (t) => says(t, 'safety.trees', roofs(t)),
  'safety.bare_metal': (t) => says(t, 'safety.bare_metal', roofs(t)),
  'safety.ph_low': (t) =>
    says(t, 'safety.ph_low', { pH: amount(t, ['pH'], 'number'), least: amount(t, ['least_pH'], 'number') }),
  'safety.not_taken_out': (t) => says(t, 'safety.not_taken_out'),
};
