import type { DemandPurpose } from '../kernel/index.ts';
import { survivalNeeds } from '../water/people/index.ts';
import type { FewerLitres } from './changes.ts';
import { promisedSteps_L_per_person_per_day } from './constants.ts';

const drinkingAndFood = survivalNeeds[0]!;

/**
 * In which steps may fewer litres be promised? First the purposes that are not judged are dropped; then the judged
 * litres come down step by step, the others dropped, never under what a person needs for drinking and food.
 *
 * @param purposes - what is promised now, litres_per_person_per_day [L/person/day]
 * @returns the steps, the mildest first: judged litres left [L/person/day]; none where nothing may be cut
 * @law judged litres never rise, and never end under 2.5 L a person a day because of a step
 * @source sphere-2018, water supply standard 2.1, drinking and food
 * @example
 * litreSteps([{ purpose: 'a', litres_per_person_per_day: 3, judged: true }]) // → [{ kind: 'litres', judged_L_per_person_per_day: 2.5, isJudgedCut: true }]
 */
export function litreSteps(purposes: readonly DemandPurpose[]): readonly FewerLitres[] {
  const now = litresOf(purposes, true);
  const least = drinkingAndFood.low_L_per_person_per_day;
  const steps = [...promisedSteps_L_per_person_per_day.filter((litres) => litres > least), least];
  const cuts = steps.filter((litres) => litres < now).map((litres) => fewer(litres, true));
  return litresOf(purposes, false) > 0 ? [fewer(now, false), ...cuts] : cuts;
}

/**
 * What is asked once so many litres are promised? The other purposes are dropped, and the judged ones share what is left as
 * they do now.
 *
 * @param purposes - what is promised now, litres_per_person_per_day [L/person/day]
 * @param change - judged litres left [L/person/day]
 * @returns the judged purposes, litres_per_person_per_day [L/person/day]
 * @definition ours
 * @example
 * promisedLess([{ purpose: 'a', litres_per_person_per_day: 8, judged: true }], { kind: 'litres', judged_L_per_person_per_day: 4, isJudgedCut: true }) // → [{ purpose: 'a', litres_per_person_per_day: 4, judged: true }]
 */
export function promisedLess(purposes: readonly DemandPurpose[], change: FewerLitres): readonly DemandPurpose[] {
  const judged = purposes.filter((purpose) => purpose.judged);
  if (!change.isJudgedCut) return judged;
  const now = litresOf(purposes, true);
  return judged.map((purpose) => ({
    ...purpose,
    litres_per_person_per_day: (purpose.litres_per_person_per_day * change.judged_L_per_person_per_day) / now,
  }));
}

function fewer(judged_L_per_person_per_day: number, isJudgedCut: boolean): FewerLitres {
  return { kind: 'litres', judged_L_per_person_per_day, isJudgedCut };
}

function litresOf(purposes: readonly DemandPurpose[], judged: boolean): number {
  return purposes.reduce((sum, one) => (one.judged === judged ? sum + one.litres_per_person_per_day : sum), 0);
}
