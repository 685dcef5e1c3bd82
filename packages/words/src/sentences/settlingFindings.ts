import type { SettlingFinding } from '@eavewell/engine';
import type { Speech } from '../problems.ts';
import { yes } from './telling.ts';

/** What is said of a settling tank: all of its finding, with the code of what caps it as a word. */
export type SettlingSaid = Omit<SettlingFinding, 'cappedBy'> & { readonly cappedBy: string | null };

/**
 * What one settling tank does, in a few sentences. That fine clay and germs stay in the water is said whatever its verdict.
 *
 * @param w - the words and numbers of a language
 * @param f - the finding
 */
export function settlingSaid(w: Speech, f: SettlingSaid): string {
  const clay = w.say('findings.settling.clay');
  if (f.settledByDay_fraction === null) return `${w.say('findings.settling.unknown')} ${clay}`;
  const { numbers } = w;
  const values = {
    grain: numbers.quantity(f.grain_um, 'um'),
    byDay: numbers.percent(f.settledByDay_fraction),
    hasStorm: yes(f.settledInStorm_fraction !== null),
    inStorm: numbers.percent(f.settledInStorm_fraction ?? 0),
  };
  const sentences = [w.say('findings.settling.settles', values), ...cleaning(w, f), clay];
  return sentences.join(' ');
}

/** When its sludge is to be let out. */
function cleaning({ say, numbers }: Speech, { cleanAfter_months: months, sludge_L_per_year: sludge }: SettlingSaid) {
  if (months === null || sludge === null) return [];
  return [
    say('findings.settling.clean', {
      months: numbers.quantity(Math.floor(months), 'months'),
      sludge: numbers.quantity(sludge, 'L_per_year'),
    }),
  ];
}
