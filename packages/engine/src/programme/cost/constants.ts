/** Warming a litre: heat capacity of water [kJ/L/K], and how warm it boils [C]. Source: ams-iii-av, equation 5 (quoted). */
export const waterHeat_kJ_per_L_per_K = 4.186;
export const boiling_C = 100;
/** How warm the water is before [C]. Source: ams-iii-av, equation 5 (quoted). */
export const beforeBoiling_C = 20;
/** What boiling away a litre takes [kJ/L], and the share that boils away. Source: ams-iii-av, equation 5 (quoted). */
export const evaporating_kJ_per_L = 2260;
export const evaporated_fraction = 0.01;

/** A megajoule, by definition of the prefixes [kJ]. Source: definition. */
export const kJ_per_MJ = 1000;

/** Renewals farther apart than this are capital maintenance, else running cost [year]. Source: washcost-heads (from memory); the line between them is ours, docs/decisions/0255-heads-of-cost.md. */
export const capitalMaintenanceOver_years = 1;

/** The shares of throws told as low, middle and high end [fraction]. Ours: as for cartridges. */
export const earlyShare_fraction = 0.1;
export const middleShare_fraction = 0.5;
export const lateShare_fraction = 0.9;

/** No life is told longer, and no analysis runs on for more [year]. Ours: longer than anybody answers for. */
export const longest_years = 200;
/** No life is shorter [year]. Ours: a day. */
export const shortest_years = 1 / 366;

/** No amount is larger [currency]. Ours: far outside any programme. */
export const largestAmount = 1e15;
/** Nor any interest a year or its fall [fraction]. Ours: beyond it nobody lends. */
export const mostInterest_fraction_per_year = 10;
export const leastInterest_fraction_per_year = -0.9;

/** A renewal that falls on the last day, but for the last bits of rounding, is none [fraction]. Ours. */
export const roundingSlack_fraction = 1e-9;
