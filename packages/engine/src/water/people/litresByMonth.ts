import type { DemandPurpose } from '../../kernel/index.ts';
import { months_count } from './constants.ts';

/**
 * How many litres a person a day do these purposes ask for, month by month?
 *
 * @param purposes - purposes, litres_per_person_per_day [L/person/day], each with the months it is asked in
 * @returns the sum by month, January first [L/person/day], 12 of them
 * @law a purpose without months counts in every month
 * @definition sum over the purposes of a month
 * @example
 * litresByMonth_L_per_person_per_day([{ purpose: 'a', litres_per_person_per_day: 3, judged: true, months: [2] }]).slice(0, 3) // → [0, 3, 0]
 */
export function litresByMonth_L_per_person_per_day(purposes: readonly DemandPurpose[]): readonly number[] {
  return Array.from({ length: months_count }, (_, index) =>
    purposes.reduce(
      (sum, { litres_per_person_per_day, months }) =>
        months === undefined || months.includes(index + 1) ? sum + litres_per_person_per_day : sum,
      0,
    ),
  );
}
