/** Two times are the same where they differ by no more than this [day]. Ours: far above the rounding of sums of a few hundred legs, far below a second. */
export const timeSlack_days = 1e-9;

/** A load is no heavier than its limit where it is over by no more than this [kg, L, m]. Ours: the rounding of sums of masses. */
export const loadSlack_kg = 1e-6;

/** Days of a leap year, 29 February among them. Source: Gregorian calendar rule. */
export const leapYear_days = 366;

/** Of so few jobs [count] the search begins anew twice, from the best there is. Ours: it is through long before its budget is. */
export const fewJobs_count = 12;

/** Of few jobs places are passed over with this chance. Ours: the cheapest first is seldom the best together. */
export const fewBlinks_fraction = 0.15;

/** A day over the time a site was promised for counts as so many days of waiting [ratio]. Ours: docs/decisions/0336. */
export const lateFactor = 10;

/**
 * So much more waiting, as a share, is had for a cheaper plan where a plan is made for people: below what any finish date can tell apart. Ours: docs/decisions/0358.
 *
 * @definition ours: docs/decisions/0358
 */
export const costWithin_fraction = 0.005;

/** The share of a budget in which waiting is searched for, where cost is searched for after it. Ours: docs/decisions/0358. */
export const timeShare_fraction = 0.75;
