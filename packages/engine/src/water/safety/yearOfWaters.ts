import { risingRoot, type SourceDaysOfBody } from '../../kernel/index.ts';
import { mostNeeded_log10, yearOfDrinking_days } from './constants.ts';
import { type YearlyBurden, yearlyBurden } from './yearlyBurden.ts';
import { type DrinkersGroup, type DrinkingGiven, logSparedOfGroup, yearOfDrinking } from './yearOfDrinking.ts';

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

/** The chance of a group of people to come through a year of each water by itself, as natural logarithms. */
export interface SparedByBoth {
  /** How many they are, as a share of all. */
  readonly people_fraction: number;
  readonly firstLog_ratio: number;
  readonly secondLog_ratio: number;
}

/**
 * What does each water by itself do to each group of people in a year?
 *
 * @param given - the first water and who drinks it, as for yearOfDrinking
 * @param second_per_L - germs of the second [organisms/L]
 * @returns shares of people, and the chance to come through as logarithms; none where there are no people
 * @definition as yearOfDrinking
 */
export function sparedByBoth(given: DrinkingGiven, second_per_L: number): readonly SparedByBoth[] {
  const groups = given.groups.filter(({ people_factor }) => people_factor > 0);
  const all = groups.reduce((sum, { people_factor }) => sum + people_factor, 0);
  const second = { ...given, raw_per_L: second_per_L };
  return groups.map((group: DrinkersGroup) => ({
    people_fraction: group.people_factor / all,
    firstLog_ratio: logSparedOfGroup(group, given),
    secondLog_ratio: logSparedOfGroup(group, second),
  }));
}

/**
 * Which share of people is infected in one year of the record, of people who drink two waters in turn? People of each body of water have days of their own; the risk is worked for each and then averaged.
 *
 * @param groups - what each water by itself does to each group of people
 * @param bodies - on which days the second is drunk [days]
 * @param year - which year of the record, counted from 0
 * @returns share infected at least once [fraction]
 * @law more days of a worse water never make it less; with none it is the first water's alone
 * @definition 1 − (1 − p of the first)^days (1 − p of the second)^days, group by group: docs/decisions/0238-days-of-the-second-source.md
 */
export function infectedInYear_fraction(
  groups: readonly SparedByBoth[],
  bodies: readonly SourceDaysOfBody[],
  year: number,
): number {
  const shares = sharesOf(bodies);
  let infected = 0;
  for (let body = 0; body < bodies.length; body++) {
    const second = bodies[body]!.days_by_year[year]! / yearOfDrinking_days;
    for (const { people_fraction, firstLog_ratio, secondLog_ratio } of groups) {
      const logSpared = (second < 1 ? (1 - second) * firstLog_ratio : 0) + (second > 0 ? second * secondLog_ratio : 0);
      infected -= shares[body]! * people_fraction * Math.expm1(logSpared);
    }
  }
  return infected;
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
  const groups = sparedByBoth(given, second.raw);
  if (groups.length === 0) return null;
  let infected = 0;
  for (let year = 0; year < years; year++) infected += infectedInYear_fraction(groups, second.bodies, year) / years;
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
