import { risingRoot, type SourceDaysOfBody } from '../../kernel/index.ts';
import { mostNeeded_log10 } from './constants.ts';
import { type YearlyBurden, yearlyBurden } from './yearlyBurden.ts';
import { type DrinkingGiven, yearOfDrinking } from './yearOfDrinking.ts';

/** Germs of the second source, and the days on which its water is drunk, body by body and year by year. */
export interface SecondWater<Raw> {
  readonly raw: Raw;
  /** At least one, each with the same years, at least one. */
  readonly bodies: readonly SourceDaysOfBody[];
}

/** People of each body of water as shares of all; as many in each where nobody is counted. */
function sharesOf(bodies: readonly SourceDaysOfBody[]): readonly number[] {
  const all = bodies.reduce((sum, { people }) => sum + Math.max(0, people), 0);
  return bodies.map(({ people }) => (all > 0 ? Math.max(0, people) / all : 1 / bodies.length));
}

/**
 * On how many days of each year is the water of a second source drunk, as a mean over people?
 *
 * @param bodies - bodies of water with their people and days year by year [days]
 * @returns days of each year [days/year]
 * @definition weighted by people
 */
export function sourceDaysByYear(bodies: readonly SourceDaysOfBody[]): readonly number[] {
  const shares = sharesOf(bodies);
  return (bodies[0]?.days_by_year ?? []).map((_, year) =>
    bodies.reduce((sum, { days_by_year }, body) => sum + shares[body]! * days_by_year[year]!, 0),
  );
}

/**
 * What does one year of the record do to people who drink two waters in turn? People of each body of water have days of their own; the risk is worked for each and then averaged.
 *
 * @param given - the first water and who drinks it, as for yearOfDrinking
 * @param second - germs of the second [organisms/L], and on which days it is drunk [days]
 * @param year - which year of the record, counted from 0
 * @returns share infected and ill [fraction], burden [DALY/person/year]; null where there are no people
 * @law more days of a worse water never make it better; with none it is the first water's alone
 * @definition 1 − (1 − p of the first)^days (1 − p of the second)^days, group by group: docs/decisions/0238-days-of-the-second-source.md
 */
export function oneYearOfWaters(given: DrinkingGiven, second: SecondWater<number>, year: number): YearlyBurden | null {
  const shares = sharesOf(second.bodies);
  let infected = 0;
  for (const [body, { days_by_year }] of second.bodies.entries()) {
    const other = { raw_per_L: second.raw, days: days_by_year[year]! };
    const found = yearOfDrinking({ ...given, other });
    if (found === null) return null;
    infected += shares[body]! * found.infected_fraction;
  }
  return yearlyBurden(infected, given.pathogen);
}

/**
 * What does a year of drinking two waters in turn do to people, as a mean over the years of the record? Each year's risk is worked by itself and then averaged, never the days.
 *
 * @param given - the first water and who drinks it, as for yearOfDrinking
 * @param second - germs of the second [organisms/L], and on which days it is drunk [days]; null where the first is drunk every day
 * @returns share infected and ill [fraction], burden [DALY/person/year]; null where there are no people
 * @law more days of a worse water never make it better; without a second it is yearOfDrinking
 * @definition ours: docs/decisions/0238-days-of-the-second-source.md
 */
export function yearOfWaters(given: DrinkingGiven, second: SecondWater<number> | null): YearlyBurden | null {
  const years = second?.bodies[0]?.days_by_year.length ?? 0;
  if (second === null || years === 0) return yearOfDrinking(given);
  let infected = 0;
  for (let year = 0; year < years; year++) {
    const found = oneYearOfWaters(given, second, year);
    if (found === null) return null;
    infected += found.infected_fraction / years;
  }
  return yearlyBurden(infected, given.pathogen);
}

/**
 * How much is to be taken out of two waters that are drunk in turn, of both alike, so that the burden of disease is borne?
 *
 * @param given - the first water, litres drunk and the germ, as for yearOfDrinking
 * @param second - germs of the second [organisms/L], and on which days it is drunk [days]
 * @param target_DALY_per_person_per_year - burden that is borne [DALY/person/year], above 0
 * @returns log reduction needed [log10]; 0 where the target is met without any
 * @law with it the burden is not over the target
 * @definition the chain turned round by halving, everyone treated on every day
 */
export function neededOfWaters_log10(
  given: Pick<DrinkingGiven, 'raw_per_L' | 'drunk_L_per_day' | 'pathogen'>,
  second: SecondWater<number>,
  target_DALY_per_person_per_year: number,
): number {
  const left = (reduction_log10: number) => {
    const groups = [{ people_factor: 1, reduction_log10, untreated_fraction: 0 }];
    const year = yearOfWaters({ ...given, off_days: 0, dirtied: null, groups }, second)!;
    return target_DALY_per_person_per_year - year.burden_DALY_per_person_per_year;
  };
  return risingRoot(left, 0, mostNeeded_log10);
}
