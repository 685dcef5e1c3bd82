/** By so much a count may be over a whole number and still be that number, for sums of decimals [fraction]. Ours. */
export const roundingSlack_fraction = 1e-9;

/** The most of one thing, or metres of one run, a site can have [count]. Ours: more was mistyped. */
export const mostCounted_count = 100_000;

/** The most of a part for one thing or metre, of what is cut for one metre, and the largest spare share, a rule may ask for [count, fraction]. Ours: more was mistyped. */
export const mostEach_count = 100_000;
export const mostCutEach_count = 100;
export const mostSpare_fraction = 10;

/** The most outlets of a gutter that downpipes are taken from, where none was surveyed [count]. Ours: more were mistyped. */
export const mostOutlets_count = 100;
