/** Litres a person needs in a day, as a range or a level [L/person/day]. */
export interface LitresNeeded {
  readonly name: string;
  readonly low_L_per_person_per_day: number;
  readonly high_L_per_person_per_day: number;
}

/**
 * Basic survival water needs by purpose. Source: sphere-2018, water supply standard 2.1, table of simplified basic
 * survival needs (seen in open extractions). Their sum is 7.5 to 15 L a person a day.
 */
export const survivalNeeds: readonly LitresNeeded[] = [
  { name: 'drinking', low_L_per_person_per_day: 2.5, high_L_per_person_per_day: 3 },
  { name: 'hygiene', low_L_per_person_per_day: 2, high_L_per_person_per_day: 6 },
  { name: 'cooking', low_L_per_person_per_day: 3, high_L_per_person_per_day: 6 },
];

/** Levels of service by litres a person a day. Source: who-2020, summary table (seen in an open extraction). */
export const serviceLevels_L_per_person_per_day = { basic: 20, intermediate: 50, optimal: 100 } as const;

/** What the judged purpose is called where the programme's default stands for it. */
export const defaultPurpose = 'drinking and cooking';

/** Days of a calendar year without 29 February, which asks what 28 February does [count]. Source: the Gregorian calendar. */
export const daysOfYear_count = 365;

/** What people may be over a whole number by, to the last bits of rounding, before they are rounded up [count]. Ours. */
export const headcountSlack_count = 1e-9;

/** Months of a year [count]. Source: the Gregorian calendar. */
export const months_count = 12;
