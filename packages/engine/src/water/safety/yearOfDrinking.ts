import { yearOfDrinking_days } from './constants.ts';
import { doseThatInfects_organisms, infection_fraction } from './doseResponse.ts';
import type { ReferencePathogen } from './germs.ts';
import { logSparedOf, type YearlyBurden, yearlyBurden } from './yearlyBurden.ts';

/** People whose water is treated alike. */
export interface DrinkersGroup {
  /** How many they are, as a share of all or a count. */
  readonly people_factor: number;
  /** What is taken out of the water they treat. */
  readonly reduction_log10: number;
  /** Share of the water they drink that no treatment reached: 1 of those who never treat, 0 of those who always do. */
  readonly untreated_fraction: number;
}

/** What makes clean water dirty again before it is drunk: hands, cups, an open container. */
export interface DirtiedAgain {
  /** Germs left in it grow or are lost by so much; 1 where nothing happens. */
  readonly growth_factor: number;
  /** Share of the raw water's germs that come back. */
  readonly comesBack_fraction: number;
  /** Germs that come from elsewhere, in each litre drunk. */
  readonly added_per_L: number;
}

/** One germ in the raw water, what is done to it, and who drinks it. */
export interface DrinkingGiven {
  readonly raw_per_L: number;
  readonly drunk_L_per_day: number;
  /** Days of the year without treatment for everyone. */
  readonly off_days: number;
  readonly dirtied: DirtiedAgain | null;
  readonly groups: readonly DrinkersGroup[];
  readonly pathogen: ReferencePathogen;
}

/**
 * What does a year of drinking do to people? The risk of a year is worked for each group of people by itself and then averaged: those who skip treatment have a
 * dose of their own, and a mean of doses would make far too much or too little of them. Days without treatment are days of everyone's year.
 *
 * @param given - raw water [organisms/L], litres drunk [L/day], days off [days], groups of people with their log reductions [log10]
 * @returns share infected and ill [fraction], burden [DALY/person/year], as a mean over people; null where there are no people
 * @law more log reduction never makes it worse; more skipping, more days off or more dirt never make it better
 * @source who-gdwq-4, Table 7.4 (from memory); brown-clasen-2012
 * @definition group by group, then averaged: docs/decisions/0223-people-who-skip.md
 */
export function yearOfDrinking(given: DrinkingGiven): YearlyBurden | null {
  const groups = given.groups.filter(({ people_factor }) => people_factor > 0);
  const people_factor = groups.reduce((sum, group) => sum + group.people_factor, 0);
  if (people_factor === 0) return null;
  const infected = groups.reduce((sum, group) => sum + group.people_factor * infectedOfGroup(group, given), 0);
  return yearlyBurden(infected / people_factor, given.pathogen);
}

/**
 * How many germs are in a litre as it is drunk?
 *
 * @param given - raw water [organisms/L] and what comes back into it
 * @param left_fraction - share of the germs that is left of the raw water's [fraction]
 * @returns germs [organisms/L]
 * @law never falls with any of them
 * @definition raw × (left × growth + what comes back) + what comes from elsewhere
 */
export function drunk_per_L(given: Pick<DrinkingGiven, 'raw_per_L' | 'dirtied'>, left_fraction: number): number {
  const { growth_factor, comesBack_fraction, added_per_L } = given.dirtied ?? cleanCup;
  return given.raw_per_L * (left_fraction * growth_factor + comesBack_fraction) + added_per_L;
}

const cleanCup: DirtiedAgain = { growth_factor: 1, comesBack_fraction: 0, added_per_L: 0 };

/** Which mean a log reduction for display is of: of the dose people take in, or of the share infected in a year. */
export type MeanOf = 'dose' | 'risk';

/** A log reduction for display. It takes the place of no risk. */
export interface EffectiveReduction {
  readonly mean: MeanOf;
  readonly reduction_log10: number | null;
}

/**
 * Which log reduction for everyone on every day would come to the same as what is done, for some more, for others less? There are two, and they differ: that with
 * the same mean dose, and that with the same share of people infected in the year.
 *
 * @param given - as for yearOfDrinking
 * @returns both, each with the mean it is of [log10]; null where there are no people or no germs, or where everyone is infected; under 0 where water is dirtier than raw
 * @definition −log₁₀ of mean dose ÷ raw dose; and the dose that infects as many, over the raw dose
 * @source enger-2013, mean of the dose
 */
export function effectiveReductions(given: DrinkingGiven): readonly EffectiveReduction[] {
  const year = yearOfDrinking(given);
  const ofDay_fraction = year === null ? 1 : -Math.expm1(Math.log1p(-year.infected_fraction) / yearOfDrinking_days);
  const asMany_organisms = doseThatInfects_organisms(ofDay_fraction, given.pathogen.response);
  return [
    { mean: 'dose', reduction_log10: year === null ? null : reductionTo(meanDose_organisms(given), given) },
    { mean: 'risk', reduction_log10: reductionTo(asMany_organisms, given) },
  ];
}

function reductionTo(dose_organisms: number, { raw_per_L, drunk_L_per_day }: DrinkingGiven): number | null {
  const raw_organisms = raw_per_L * drunk_L_per_day;
  if (!(dose_organisms > 0 && dose_organisms < Infinity && raw_organisms > 0)) return null;
  return Math.log10(raw_organisms / dose_organisms);
}

function daysOff(given: Pick<DrinkingGiven, 'off_days'>): number {
  return Math.min(Math.max(given.off_days, 0), yearOfDrinking_days);
}

/** What a person of a group takes in on a day on which water is treated; of everybody on another day. */
function dose_organisms(
  group: Pick<DrinkersGroup, 'reduction_log10' | 'untreated_fraction'>,
  given: Omit<DrinkingGiven, 'groups'>,
) {
  const { untreated_fraction, reduction_log10 } = group;
  const left_fraction = untreated_fraction + (1 - untreated_fraction) * 10 ** -reduction_log10;
  return given.drunk_L_per_day * drunk_per_L(given, left_fraction);
}

const onDaysOff = { reduction_log10: 0, untreated_fraction: 1 } as const;

function infectedOfGroup(group: DrinkersGroup, given: DrinkingGiven): number {
  return 0 - Math.expm1(logSparedOfGroup(group, given));
}

/**
 * What is the chance of a group of people to come through a year of one water, as a logarithm?
 *
 * @param group - how their water is treated [log10]
 * @param given - raw water [organisms/L], litres drunk [L/day], days off [days]
 * @returns natural logarithm of the chance [number]
 * @definition days with and days without treatment, one after another
 */
export function logSparedOfGroup(group: DrinkersGroup, given: Omit<DrinkingGiven, 'groups'>): number {
  const off_days = daysOff(given);
  const infectedBy = (dose: number) => infection_fraction(dose, given.pathogen.response);
  return logSparedOf([
    { days: yearOfDrinking_days - off_days, infected_fraction: infectedBy(dose_organisms(group, given)) },
    { days: off_days, infected_fraction: off_days > 0 ? infectedBy(dose_organisms(onDaysOff, given)) : 0 },
  ]);
}

/** Mean dose of people and days, of the people there are. */
function meanDose_organisms(given: DrinkingGiven): number {
  const groups = given.groups.filter(({ people_factor }) => people_factor > 0);
  const people_factor = groups.reduce((sum, group) => sum + group.people_factor, 0);
  const off_days = daysOff(given);
  const onDays = groups.reduce(
    (sum, group) => sum + (group.people_factor / people_factor) * dose_organisms(group, given),
    0,
  );
  return (
    ((yearOfDrinking_days - off_days) * onDays + off_days * dose_organisms(onDaysOff, given)) / yearOfDrinking_days
  );
}
