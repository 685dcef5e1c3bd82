import type { standProblems } from '@eavewell/engine';
import { isMessage } from '../catalogues.ts';
import type { Told } from '../problems.ts';
import { amount, part, type Sentences, says } from './telling.ts';

/** Columns of tanks.csv as people read them: their label with the header behind it. */
function columnsOf(t: Told): string {
  const named = t.list('columns').map((column) => {
    const key = `fields.tanks_${column}`;
    return isMessage(key) ? `${t.say(key)} (${column})` : column;
  });
  if (named.length === 0) return part(t, 'notSaid');
  return named.reduce((first, second) => part(t, 'and', { first, second }));
}

/** What room stand finds, in words. */
export const standSentences: Sentences<keyof typeof standProblems> = {
  'stand.not_signed': (t) => says(t, 'stand.not_signed', { tanks: t.both('tanks'), signed: t.text('signed') }),
  'stand.not_measured': (t) =>
    says(t, 'stand.not_measured', {
      tank: t.text('tank'),
      columns: columnsOf(t),
      count: t.list('columns').length,
    }),
  'stand.ground_unknown': (t) => says(t, 'stand.ground_unknown', { tank: t.text('tank') }),
  'stand.ground_to_investigate': (t) => says(t, 'stand.ground_to_investigate', { tank: t.text('tank') }),
  'stand.wind_unknown': (t) => says(t, 'stand.wind_unknown'),
  'stand.wind_in_other_unit': (t) =>
    says(t, 'stand.wind_in_other_unit', {
      wind: amount(t, ['windSpeed_m_per_s'], 'm/s'),
      asKmh: amount(t, ['asKmh_m_per_s'], 'm/s'),
      asKn: amount(t, ['asKn_m_per_s'], 'm/s'),
    }),
  'stand.fastening_assumed': (t) => says(t, 'stand.fastening_assumed', { tank: t.text('tank') }),
  'stand.consent_likely': (t) =>
    says(t, 'stand.consent_likely', {
      tank: t.text('tank'),
      held: amount(t, ['held_L'], 'L'),
      height: amount(t, ['standHeight_m'], 'm'),
      exempt: amount(t, ['exempt_L'], 'L'),
    }),
};
