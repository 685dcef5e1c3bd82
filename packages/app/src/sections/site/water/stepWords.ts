import type { AppLanguage } from '@eavewell/words/app';
import type { DraftStep } from '../../../water/index.ts';
import { fittingName, fittingUnit } from './fittingWords.ts';

type Words = Pick<AppLanguage, 'say' | 'numbers'>;

/** A remedy is known again by its changes. */
export const remedyKey = (changes: readonly unknown[]): string => JSON.stringify(changes);

/**
 * One step of a draft in words.
 *
 * @param step - what was changed
 * @param abouts - what remedies are called, by `remedyKey`
 * @param words - the language of the page
 */
export function stepWords(step: DraftStep, abouts: ReadonlyMap<string, string>, { say, numbers }: Words): string {
  const metres = (value: number) => say('drawn.metres', { value: numbers.fixed(value, 2) });
  switch (step.kind) {
    case 'tank':
      return say('water.step', {
        what: say('water.tank_of', { tank: step.tankId }),
        value: numbers.litres(step.volume_L),
      });
    case 'diameter':
      return say('water.step', { what: say('water.side', { tank: step.tankId }), value: metres(step.diameter_m) });
    case 'overflow':
      return say('water.step', { what: say('water.rim', { tank: step.tankId }), value: metres(step.overflowHeight_m) });
    case 'gutter':
      return say('water.step', {
        what: say('water.roof_share_of', { roof: step.roofId }),
        value: numbers.percent(step.gutteredFraction),
      });
    case 'firstFlush':
      return say('water.step', {
        what: say('water.first_flush_of', { roof: step.roofId }),
        value: numbers.given(step.firstFlush_mm, 'mm'),
      });
    case 'litres':
      return say('water.step', {
        what: say('water.litres_person'),
        value: numbers.given(step.litres_per_person_per_day, 'L'),
      });
    case 'people':
      return numbers.people(step.people);
    case 'fitting':
      return say('water.step', {
        what: fittingName(step, { say }),
        value: numbers.given(step.value, fittingUnit[step.measure]),
      });
    case 'remedy':
      return abouts.get(remedyKey(step.changes)) ?? say('water.step_remedy');
  }
}
