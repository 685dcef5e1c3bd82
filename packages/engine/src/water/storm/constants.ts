/** The storm that roof drainage is asked to carry lasts so long [min]. Source: msma-2011 and en-12056-3 (from memory). */
export const storm_min = 5;

/** How often a year's maximum is drawn again for the limits of a storm [count]. Ours: enough for the ends of nine in ten to a fiftieth or so. */
export const drawsOfLimits_count = 400;

/** A shape nearer to 0 than this is a Gumbel distribution [fraction]. Ours: nearer, the two differ by less than a double tells apart. */
export const gumbelShape_fraction = 1e-6;

/** Values a distribution of maxima needs, so that four L-moments can be taken [count]. Source: hosking-1990. */
export const leastValues_count = 4;

/**
 * A five-minute storm of once in years is hardly below the first or above the second of these [mm/h]. Ours: the least wet climates have some
 * 40 mm/h; the most known in five minutes are some 760 mm/h (from memory), and no table for design has as much.
 */
export const leastIntensity_mm_per_h = 20;
export const mostIntensity_mm_per_h = 600;

/** Return periods a set of coefficients is taken to be good for where it does not say [year]. Source: msma-2011, 2 to 100 years. */
export const leastPeriodOfSet_years = 2;
export const mostPeriodOfSet_years = 100;

/** Share of an interval by which the greatest fixed window falls short of the greatest one, on the mean [fraction]. Source: weiss-1964 (from memory). */
export const missedByFixedIntervals_fraction = 1 / 8;

/** A year with rain on less than this share of the middle year's days with rain was not measured throughout [fraction]. Ours. */
export const leastWetDays_fraction = 0.5;

/** A year counts from here on where its record begins by this day, and to its end where it ends so many days before it [day]. Ours: a month without rain is common. */
export const edgeOfYear_days = 31;

/** Fewer whole years are not compared with each other [count]. Ours. */
export const leastYearsToCompare_count = 3;

/** Minutes of an hour [min] and of a day [min]. Source: bipm-si-2019, table 8. */
export const minutes_per_h = 60;
export const minutesOfDay_min = 1440;

/** Euler's constant [number]. Source: dlmf, 5.2.3. */
export const euler_fraction = 0.5772156649015329;

/** Between these a shape is looked for by L-moments [number]: at −1 the mean is not finite. Ours. */
export const leastShape = -1;
export const mostShape = 40;

/** By likelihood it is looked for between this and its negative [number]: beyond, the likelihood grows without end. Source: coles-2001, section 3.3.1 (from memory). */
export const likelyShape = 1;

/** Steps of the simplex before it is given up [count], and how alike its values must be at the end [fraction]. Ours. */
export const mostSteps_count = 5000;
export const alike_fraction = 1e-13;

/** Return periods that a table of storms always shows [year]. Ours. */
export const shown_years = [2, 5, 10, 20, 50, 100];
