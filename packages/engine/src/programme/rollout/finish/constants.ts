/** Replicates where nobody says otherwise: the 95 % range of a P90 is then some 26 ranks either way. Source: common practice in such work, no source. */
export const usualReplicates_count = 2000;

/** The most replicates: days are counted in 16 bits. Ours. */
export const mostReplicates_count = 65_535;

/** How sure the ranges of ranks are. Source: common practice, no source. */
export const rankRange_fraction = 0.95;

/** The caller is asked once in so many replicates whether to go on. Ours. */
export const replicatesBetweenAsking_count = 50;

/** Years of record from which whole years are drawn. Ours: docs/methods/rollout.md, finish dates. */
export const yearsToDraw_count = 5;

/** A year of a record of weather counts where so much of it is known. Ours. */
export const knownOfYear_fraction = 0.9;

/** Days of a kind (open, closed) that a month needs for a chance of its own; under it the whole year's is taken. Ours. */
export const daysForMonth_count = 30;

/** Days of a rollout's year: each draws its weather anew. Ours. */
export const yearDrawn_days = 365;

/** The week of people served [day]. Source: calendar. */
export const week_days = 7;

/** Days looked at beyond the horizon for a first day of service: a wait is a year at the most. Ours. */
export const serviceBeyond_days = 366;
