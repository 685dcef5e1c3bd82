/** A peak lasts so long [min]. Ours, docs/decisions/0204-peaks-at-the-taps.md. */
export const peak_min = 60;

/** Less than this is no line [L]: what the last bits of a number leave over. Ours. */
export const leastLine_L = 1e-9;

/** Up to this Reynolds number the flow in a cut fibre is smooth [number]. Source: common practice, 2,000 to 2,300 (from memory). */
export const smoothUpTo_factor = 2100;

/** Gas constant of dry air [J/kg/K], and what its viscosity follows: factor [Pa·s/√K] and Sutherland's temperature [K]. Source: us-standard-atmosphere-1976 (from memory). */
export const airGas_m2_per_s2 = 287.053;
export const sutherland_Pas = 1.458e-6;
export const sutherland_C = 110.4;
