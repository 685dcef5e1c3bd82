import { gutterShapes, pipeLegs, roofMaterials } from './buildingFacts.ts';
import type { ConditionField, KitCondition } from './kitFacts.ts';

/** Fields that are numbers, and the words of those that are words of ours; the rest are ids and words of the programme. */
const numbers: ReadonlySet<ConditionField> = new Set([
  'people',
  'gutterWidth_mm',
  'downpipeBore_mm',
  'tankVolume_L',
  'standHeight_m',
  'pipeBore_mm',
] as const);
const words: Readonly<Partial<Record<ConditionField, readonly string[]>>> = {
  handPump: ['yes', 'no'],
  roofMaterial: roofMaterials,
  gutterShape: gutterShapes,
  pipeLeg: pipeLegs,
};

/**
 * Is what a condition looks at a number?
 *
 * @param field - the field [text]
 * @returns true where values are compared as numbers
 * @definition ours
 * @example
 * isNumberField('people') // → true
 */
export function isNumberField(field: ConditionField): boolean {
  return numbers.has(field);
}

/**
 * Can this condition be met or not met at all? Numbers are compared with numbers; words are the same or are not, and must be words the
 * field has.
 *
 * @param condition - field, test and value [text]
 * @returns false where nobody can tell what is meant
 * @definition ours
 * @example
 * conditionIsUsable({ field: 'people', test: 'atLeast', value: 'many' }) // → false
 */
export function conditionIsUsable(condition: KitCondition): boolean {
  const { field, test, value } = condition;
  if (isNumberField(field)) return value.trim() !== '' && Number.isFinite(Number(value));
  if (test === 'atLeast' || test === 'atMost') return false;
  return words[field]?.includes(value) ?? true;
}
