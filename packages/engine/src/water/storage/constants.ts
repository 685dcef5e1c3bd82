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

/** Litres count as met, and a tank as large enough, to this share of them: what sums in doubles may lose [fraction]. Ours. */
export const metSlack_fraction = 1e-9;
