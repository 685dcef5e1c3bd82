/** A way gone faster than this was mistyped [km/h]. Ours: no road, boat or footpath to a village is gone faster. */
export const fastest_km_per_h = 150;

/** On foot with a load, where nobody states a speed [km/h]. Common practice, no source; 5 km/h without one (Naismith 1892, from memory). */
export const walking_km_per_h = 3;

/** Hours of a porter's day, for the share of a day that a stretch on foot is paid [h]. Ours. */
export const portersDay_h = 8;

/** Hours on a river that are no more than rounding [h]. Ours: what hours told in tenths add up to is off by less. */
export const riverSlack_h = 1e-9;

/** So many states of the ways follow each other at the most [count]. Ours: docs/decisions/0326-periods-of-the-ways.md. */
export const mostPeriods_count = 24;

/** Memory that all tables of legs may take together, and what one leg takes in one [byte]. Ours; five numbers of 4 bytes, one of 2 and one of 1. */
export const legMemory_count = 320e6;
export const legBytes_count = 23;

/** From so many years of levels a chance by week is told [year]. Ours, with docs/decisions/0327-river-levels-by-week.md. */
export const leastLevelYears_count = 5;

/** Days of a week, and weeks of a year: the last has the days that are left [count]. Ours, as weeks of the calendar wander through the year. */
export const weekDays_count = 7;
export const weeks_count = 52;

/** As many different limits as an index of 16 bits can tell apart [count]. Ours, by the width of the index. */
export const mostLimits_count = 65_535;

/** As many areas as an index of 8 bits can tell apart beside none [count]. Ours, by the width of the index. */
export const mostAreas_count = 255;

/** Limits whose pairs are looked up in a table, not in a map [count]. Ours: a table of 1 MB. */
export const quickLimits_count = 512;

/** Side of the square in which a table's rows and columns change places [count]. Ours: two squares fit in the nearest memory. */
export const square_count = 32;
