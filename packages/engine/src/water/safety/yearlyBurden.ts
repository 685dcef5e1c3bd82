import { tolerableBurden_DALY_per_person_per_year, yearOfDrinking_days } from './constants.ts';
import { doseThatInfects_organisms } from './doseResponse.ts';
import type { ReferencePathogen } from './germs.ts';

/** So many days on which the same share of people is infected. */
export interface DaysAtRisk {
  readonly days: number;
  readonly infected_fraction: number;
}

/**
 * Which share of people is infected at least once in a year, whose days may differ? One less the chance to come through each of them.
 *
 * @param stretches - so many days [days] with a share infected on each [fraction]
 * @returns share of people infected at least once [fraction]
 * @law never falls with a day or with the share of any day
 * @source who-gdwq-4, annual risk (from memory): 1 − Π (1 − P_day)
 * @definition 1 − Π (1 − share)^days, by logarithms so that small shares keep their digits
 */
export function yearlyInfection_fraction(stretches: readonly DaysAtRisk[]): number {
  return 0 - Math.expm1(logSparedOf(stretches));
}

/**
 * What is the chance to come through all these days, as a logarithm so that small shares keep their digits?
 *
 * @param stretches - so many days [days] with a share infected on each [fraction]
 * @returns natural logarithm of the chance [number], 0 or less; −Infinity where nobody comes through
 * @definition Σ days × ln (1 − share)
 */
export function logSparedOf(stretches: readonly DaysAtRisk[]): number {
  let logSpared = 0;
  for (const { days, infected_fraction } of stretches) {
    if (days > 0 && infected_fraction > 0) logSpared += days * Math.log1p(-infected_fraction);
  }
  return logSpared;
}

/**
 * Which share of people falls ill in a year, and what burden of disease is that? One illness a year is counted of each person.
 *
 * @param infected_fraction - share of people infected at least once in the year [fraction], were all of them susceptible
 * @param pathogen - the germ: ill of those infected [fraction], burden of a case [DALY/case], susceptible [fraction]
 * @returns ill [fraction], and burden [DALY/person/year]
 * @law in proportion to the share infected
 * @source who-gdwq-4, Table 7.4 (from memory)
 */
export function yearlyBurden(infected_fraction: number, pathogen: ReferencePathogen): YearlyBurden {
  const ill_fraction = infected_fraction * pathogen.illness_fraction;
  return {
    infected_fraction,
    ill_fraction,
    burden_DALY_per_person_per_year: ill_fraction * pathogen.burden_DALY_per_case * pathogen.susceptible_fraction,
  };
}

/** What a year of drinking does, as a mean over people. */
export interface YearlyBurden {
  /** Infected at least once, were all susceptible. */
  readonly infected_fraction: number;
  /** Ill at least once, were all susceptible. */
  readonly ill_fraction: number;
  readonly burden_DALY_per_person_per_year: number;
}

/**
 * How much is to be taken out of raw water so that the burden of disease is borne? The chain turned round, exactly: no straight line is assumed.
 *
 * @param raw_per_L - germs in the raw water [organisms/L], 0 or more
 * @param drunk_L_per_day - water a person drinks a day [L/day], 0 or more
 * @param pathogen - the germ
 * @param target_DALY_per_person_per_year - burden that is borne [DALY/person/year], above 0
 * @returns log reduction needed [log10]; 0 where the raw water meets the target as it is
 * @law with it the burden is the target; never falls with the germs or the litres
 * @source who-gdwq-4, Table 7.4 (from memory); adwg-app3, A3
 */
export function neededReduction_log10(
  raw_per_L: number,
  drunk_L_per_day: number,
  pathogen: ReferencePathogen,
  target_DALY_per_person_per_year: number = tolerableBurden_DALY_per_person_per_year,
): number {
  const raw_organisms_per_day = raw_per_L * drunk_L_per_day;
  const caseOfEach = yearlyBurden(1, pathogen).burden_DALY_per_person_per_year;
  if (raw_organisms_per_day <= 0 || target_DALY_per_person_per_year >= caseOfEach) return 0;
  const ofDay_fraction = -Math.expm1(Math.log1p(-target_DALY_per_person_per_year / caseOfEach) / yearOfDrinking_days);
  const borne_organisms = doseThatInfects_organisms(ofDay_fraction, pathogen.response);
  return Math.max(0, Math.log10(raw_organisms_per_day / borne_organisms));
}
