/** Under this Reynolds number the flow in a pipe is smooth [number]; over it the greater loss of a stirred one is taken. Source: common practice, 2,000 to 2,300 (from memory); docs/decisions/0182-head.md. */
export const laminarUpTo_factor = 2000;

/**
 * Roughness of the wall of a pipe [mm].
 * Source: engineering-roughness: plastic as drawn tubing, commercial steel, galvanised iron, cast iron.
 */
export const roughness_mm = { plastic: 0.0015, steel: 0.045, galvanised: 0.15, castIron: 0.26 } as const;

/**
 * What a fitting takes, in velocity heads: the upper end of what is printed, so that a loss is not made too small.
 * - entrance: a pipe that projects into the tank, 0.8 to 1.0; exit: 1.0; elbow: threaded, of 90°, 0.75 to 0.9; tee: run through, 0.9; valve:
 *   gate or ball, open, 0.05 to 0.3. Source: salvato, table 6-4, page 127; crane-tp410 as quoted by others.
 * - meter: of the piston kind, the greatest of the usual ones, 6 to 15. From memory.
 */
export const fittingLoss_factor = { entrance: 1, exit: 1, elbow: 0.9, tee: 0.9, valve: 0.3, meter: 15 } as const;

/** A pump is not to draw water up further than this, losses included [m]. Source: common practice, 6 to 7 m at sea level (from memory); docs/decisions/0182-head.md. */
export const mostSuction_m = 6;

/** The narrowest and the widest bore looked through for the least one that holds [m]. Ours. */
export const leastBore_m = 0.001;
export const mostBore_m = 1;

/** Horsepower of Britain and America [W]. Source: nist-sp811, appendix B.8, 550 foot pound-force per second (from memory). */
export const horsepower_W = 745.69987;

/** A trained labourer of 35: horsepower kept up for a minute, and how much less for ten times as long [hp]. Source: belonio, human power. */
export const labourerMinute_factor = 0.35;
export const labourerTenfold_factor = 0.092;
