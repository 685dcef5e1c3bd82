import type { KitCondition } from '../../kernel/index.ts';
import type { Choices } from './kitFacts.ts';

/** Does a condition hold? `unknown` where what it looks at is not known. */
export type Held = 'yes' | 'no' | 'unknown';

/**
 * Do all conditions of a rule hold for one thing of a design? What its own choices say comes before what those of its site say.
 *
 * @param conditions - the conditions: field, test and value
 * @param own - choices of the thing [text, or number in the unit of its name]
 * @param ofSite - choices of its site [text, or number in the unit of its name]
 * @returns `no` where one does not hold; else `unknown`, with the fields, where one is not known; else `yes`
 * @law the order of conditions changes nothing
 * @definition ours: docs/methods/kit.md
 * @example
 * conditionsHold([{ field: 'people', test: 'atLeast', value: '4' }], {}, { people: 5 }) // → { held: 'yes', fields: [] }
 * conditionsHold([{ field: 'people', test: 'is', value: '4' }], {}, { people: null }) // → { held: 'unknown', fields: ['people'] }
 */
export function conditionsHold(
  conditions: readonly KitCondition[],
  own: Choices,
  ofSite: Choices,
): { readonly held: Held; readonly fields: readonly string[] } {
  const fields = new Set<string>();
  let held: Held = 'yes';
  for (const condition of conditions) {
    const value = own[condition.field] ?? ofSite[condition.field] ?? null;
    const one = value === null ? 'unknown' : holds(condition, value);
    if (one === 'unknown') fields.add(condition.field);
    if (one === 'no') return { held: 'no', fields: [] };
    if (one === 'unknown') held = 'unknown';
  }
  return { held, fields: [...fields].sort() };
}

function holds({ test, value }: KitCondition, known: string | number): Held {
  const wanted = value.trim();
  if (test === 'atLeast' || test === 'atMost') {
    const [a, b] = [numberOf(known), numberOf(wanted)];
    if (a === null || b === null) return 'unknown';
    return (test === 'atLeast' ? a >= b : a <= b) ? 'yes' : 'no';
  }
  const isSame = typeof known === 'number' ? known === numberOf(wanted) : known.trim() === wanted;
  return isSame === (test === 'is') ? 'yes' : 'no';
}

/** A number as it is written in a table; null where it is none. */
export function numberOf(value: string | number): number | null {
  const number = typeof value === 'number' ? value : value.trim() === '' ? Number.NaN : Number(value);
  return Number.isFinite(number) ? number : null;
}
