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

/** A rated flow and the flow by area and permeability may differ by so much before it is told [fraction]. Ours, docs/decisions/0206-when-a-unit-keeps-up.md. */
export const ratingsDiffer_fraction = 0.15;

/** A reading of so much less resistance than a clean set has is no reading of it [ratio]. Ours: rated flows and readings may be out by a quarter or so. */
export const leastResistance_ratio = 0.7;

/** Strokes a minute that people keep up [1/min]. Source: lambert-faulkner-1991, abstract: 30 to 50 are preferred. */
export const strokes_per_min = 40;

/** Share of what a piston sweeps that comes out [fraction]. Common practice, no source. */
export const pistonFilled_fraction = 0.9;

/** What a vessel holds [L]. Ours, from sphere-2018: containers of 10 to 20 L. */
export const vessel_L = 20;

/** No line is followed for longer than this [min]. Ours: the next day's begins. */
export const longestWait_min = 1440;

/** The hole a test with air is to see [µm]: what Cryptosporidium passes. Source: epa-815-r-06-009, resolution of a direct integrity test. */
export const resolution_um = 3;

/** The atmosphere [kPa] where no height is reckoned with. Source: us-standard-atmosphere-1976 (from memory). */
export const atmosphere_kPa = 101.325;

/** What the widening of air takes off in a short hole: the cautious end [number]. Source: crane-tp410, expansion factors of 0.59 and more (from memory). */
export const leastExpansion_factor = 0.59;
