import type { DemandPurpose } from '../kernel/index.ts';
import { litresByMonth_L_per_person_per_day, survivalNeeds } from '../water/people/index.ts';
import type { FewerLitres } from './changes.ts';
import { promisedSteps_L_per_person_per_day, roundingSlack_fraction } from './constants.ts';

const drinkingAndFood = survivalNeeds[0]!;

/**
 * In which steps may fewer litres be promised? First the purposes that are not judged are dropped; then the judged
 * litres of the month that asks for most come down step by step, and those of the other months by the same share; never under
 * what a person needs for drinking and food.
 *
 * @param purposes - what is promised now, litres_per_person_per_day [L/person/day]
 * @returns the steps, the mildest first: judged litres left [L/person/day]; none where nothing may be cut
 * @law judged litres never rise, and never end under 2.5 L a person a day because of a step
 * @source sphere-2018, water supply standard 2.1, drinking and food
 * @example
 * litreSteps([{ purpose: 'a', litres_per_person_per_day: 3, judged: true }]) // → [{ kind: 'litres', judged_L_per_person_per_day: 2.5, isJudgedCut: true }]
 */
export function litreSteps(purposes: readonly DemandPurpose[]): readonly FewerLitres[] {
  const { most: now, least: now_least } = litresOf(purposes, true);
  const least = drinkingAndFood.low_L_per_person_per_day;
  const steps = [...promisedSteps_L_per_person_per_day.filter((litres) => litres > least), least];
  // Where a purpose has months of its own, the month that asks for least is cut by the same share, and stays at the least too.
  const isEnough = (litres: number) => (litres / now) * now_least >= least * (1 - roundingSlack_fraction);
  const cuts = steps.filter((litres) => litres < now && isEnough(litres)).map((litres) => fewer(litres, true));
  return litresOf(purposes, false).most > 0 ? [fewer(now, false), ...cuts] : cuts;
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
  const { most: now } = litresOf(purposes, true);
  return judged.map((purpose) => ({
    ...purpose,
    litres_per_person_per_day: (purpose.litres_per_person_per_day * change.judged_L_per_person_per_day) / now,
  }));
}

function fewer(judged_L_per_person_per_day: number, isJudgedCut: boolean): FewerLitres {
  return { kind: 'litres', judged_L_per_person_per_day, isJudgedCut };
}

/** Litres a person a day in the month that asks for most, and in that of those asking for something that asks for least; 0 where none does. */
function litresOf(
  purposes: readonly DemandPurpose[],
  judged: boolean,
): { readonly most: number; readonly least: number } {
  const byMonth = litresByMonth_L_per_person_per_day(purposes.filter((one) => one.judged === judged));
  const asked = byMonth.filter((litres) => litres > 0);
  return asked.length === 0 ? { most: 0, least: 0 } : { most: Math.max(...asked), least: Math.min(...asked) };
}
