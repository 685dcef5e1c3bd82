/** Stated and measured volume further apart than this share of the stated one are worth a second look [fraction]. Ours. */
export const largestDifference_fraction = 0.1;

/** The shares of people of a site's tanks may miss a sum of 1 by so much: thirds are written 0.333 [fraction]. Ours: docs/decisions/0090. */
export const sharesSlack_fraction = 0.005;

/** How many dry runs a finding lists [count]. Ours: what a person reads. */
export const listedRuns_count = 10;

/** What a share of days or years may lack to the last bits of rounding: 0.8 of 15 years is 12, not 13 [count]. Ours. */
export const roundingSlack_count = 1e-9;

/** How closely the smallest tank that holds is found, as a share of it [fraction]. Ours: finer than any catalogue. */
export const holdPrecision_fraction = 0.02;

/** Tanks so many times larger than the one for the target are not looked at: none would hold [count]. Ours. */
export const mostTimesLarger_count = 16;

/** In search of the smallest tank that holds, tanks so many times larger than the first are tried in turn [count]. Ours. */
export const growth_count: readonly number[] = [1.25, 1.6, 2.5, 5, mostTimesLarger_count];

/** Litres count as met, and a tank as large enough, to this share of them: what sums in doubles may lose [fraction]. Ours. */
export const metSlack_fraction = 1e-9;

/**
 * The year drier than any on record is this many standard deviations of the years' rain beyond the driest, and the wettest
 * likewise [count]. Ours: about twice what a normal distribution has there in the mean, since seasons differ by more than
 * their sum; chosen by the coverage measured in docs/methods/storage.md.
 */
export const beyondExtreme_count = 0.8;

/** On every how many days a second pass is held against the first, to end where it can only repeat it [day]. Ours. */
export const reached_days = 128;

/** Sizes a band is drawn through, beside the tank there is [count]. Ours: a chart is some hundred px wide. */
export const bandSizes_count = 40;

/** How far beyond the largest size that is told of a band goes [count]. Ours. */
export const beyondSizes_count = 1.25;

/** In search of the first day of service so many days are run first [day]. Ours: most waits are shorter. */
export const firstRun_days = 64;

/** A year with a 29 February, for the days of a year in order, and how many these are [day]. Ours: any leap year would do. */
export const leapYear = 2000;
export const leapYear_days = 366;
