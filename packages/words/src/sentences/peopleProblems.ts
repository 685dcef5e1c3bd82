import type { EngineProblemCode } from '@eavewell/engine';
import { amount, type Sentences, says, wordFor, yes } from './telling.ts';

/** Who is at a site, what is asked for them, and by which target it is judged. */
export const peopleSentences = {
  'site.target_of_programme': (t) => says(t, 'site.target_of_programme', { siteClass: t.text('siteClass') }),
  'site.people_unknown': (t) => says(t, 'site.people_unknown'),
  'site.people_from_households': (t) =>
    says(t, 'site.people_from_households', {
      households: amount(t, ['households'], 'household'),
      people_per_household: amount(t, ['people_per_household'], 'person'),
      counted: amount(t, ['counted'], 'person'),
    }),
  'site.growth_not_used': (t) =>
    says(t, 'site.growth_not_used', {
      growthFraction: amount(t, ['growthFraction_per_year'], 'fraction'),
      missing: t.text('missing'),
      grows: yes((t.number('growthFraction_per_year') ?? 0) > 0),
    }),
  'site.design_year_before_count': (t) =>
    says(t, 'site.design_year_before_count', { designYear: t.text('designYear'), countYear: t.text('countYear') }),
  'site.second_source': (t) =>
    says(t, 'site.second_source', {
      name: t.text('name'),
      kind: wordFor(t, 'sourceKind', t.text('kind')) ?? t.text('kind'),
    }),
  'site.presence_gaps': (t) =>
    says(t, 'site.presence_gaps', { calendarId: t.text('calendarId'), days: amount(t, ['days'], 'day') }),
  'site.nobody_present': (t) => says(t, 'site.nobody_present'),
  'site.demand_assumed': (t) =>
    says(t, 'site.demand_assumed', { litres: amount(t, ['litres_per_person_per_day'], 'L_per_person_per_day') }),
  'site.no_judged_demand': (t) => says(t, 'site.no_judged_demand'),
} satisfies Partial<Sentences<EngineProblemCode>>;
