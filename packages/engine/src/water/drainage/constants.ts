/** Seconds in an hour, for flow from rain in an hour [s]. Definition: 60 × 60, bipm-si-2019, table 8; ours to write down. */
export const secondsInHour_s = 3600;

/** Rain is taken to drive in at 1 across for 2 down [m_per_m]. Source: adh-2015, Table 1 (1.29, 1.50, 1.87 at 30, 45, 60°); msma-2011, chapter 4. */
export const windDrift_factor = 0.5;

/** Steeper than this a roof is a wall to the rain, and its rule is another [deg]. Source: adh-2015, Table 1. */
export const steepestRoof_deg = 70;

/**
 * Pitch taken where none was measured [deg]. Ours: as steep as roofs usually are, docs/decisions/0175-what-the-storm-brings.md.
 */
export const pitchWhereUnknown_deg = 45;

/** Share of a wall above a roof that sheds rain on it [fraction]. Source: ipc-2012, 1106.4. */
export const wallShare_fraction = 0.5;

/**
 * Flow of a short, level gutter with free outfall: factor × waterway^1.25, mm² and L/s. `halfRound`: half round and like sections; `square`:
 * rectangular with depth and width alike. Source: en-12056-3, 5.1 (from memory; half round checked against adh-2015, Table 2).
 */
export const gutterFlow = { halfRound_factor: 2.78e-5, square_factor: 3.48e-5, exponent: 1.25 } as const;

/** What a gutter is designed for, of what it could carry [fraction]. Source: en-12056-3, 5.1 (from memory; checked against adh-2015, Table 2). */
export const gutterDesign_fraction = 0.9;

/** How far the longer of depth and width may go beyond the shorter for a rectangle to be called square [fraction]. Ours: 5 % of it moves the flow by 1.3 %. */
export const squareWithin_fraction = 0.05;

/**
 * Flow by the standard's constants over that of a level gutter without friction [fraction]. Ours: 0.8014 for every half round and 0.8011 for the
 * square, worked out in checks/twins/levelGutter.test.ts; rounded up.
 */
export const shareOfIdeal_fraction = 0.8015;

/**
 * What is left of a gutter's flow by how many times its depth water runs along it; straight between the rows. Source: uk-gutter-note, notes 2 to 5,
 * quoting en-12056-3 (50 to 200); en-12056-3, Table 6 (250 to 500, from memory).
 */
export const longGutters: readonly { readonly depths_count: number; readonly long_factor: number }[] = [
  { depths_count: 50, long_factor: 1 },
  { depths_count: 100, long_factor: 0.93 },
  { depths_count: 150, long_factor: 0.86 },
  { depths_count: 200, long_factor: 0.8 },
  { depths_count: 250, long_factor: 0.77 },
  { depths_count: 300, long_factor: 0.73 },
  { depths_count: 350, long_factor: 0.7 },
  { depths_count: 400, long_factor: 0.67 },
  { depths_count: 450, long_factor: 0.63 },
  { depths_count: 500, long_factor: 0.6 },
];

/** What a bend of more than 10° leaves of a gutter's flow [fraction]. Source: en-12056-3, 5.1 (from memory); uk-gutter-note (15 % off). */
export const bend_factor = 0.85;

/** A gutter that falls less counts as level, and a steeper one is given no more [mm_per_m]. Source: en-12056-3, 5.1 (from memory). */
export const levelBelow_mm_per_m = 3;

/**
 * Roughness of a gutter in Manning's formula, the worse end of 0.010 to 0.015 [s_per_m]. Source: warwick-dtu, gutter page.
 */
export const gutterRoughness_factor = 0.015;

/**
 * Round outlet in a sole, mm and L/s: as a weir bore × head^1.5 ÷ 7500 up to half its bore, as a hole bore² × √head ÷ 15000 above; a grate lets through
 * half. Source: en-12056-3, Table 7 (from memory).
 */
export const outletFlow = { weir_factor: 1 / 7500, hole_factor: 1 / 15000, grate_fraction: 0.5 } as const;

/**
 * Downpipe running partly full, mm and L/s: factor × roughness^−0.167 × bore^2.667 × fill^1.667. Fill is the share of the pipe that is water, roughness
 * 0.25 mm. Source: en-12056-3, Table 8 and its formula (wyly-eaton-1961), as printed with decimals in sri-lanka-sheet.
 */
export const downpipeFlow = {
  flow_factor: 2.5e-4,
  roughness_mm: 0.25,
  roughness_exponent: -0.167,
  bore_exponent: 2.667,
  fill_exponent: 1.667,
  fill_fraction: 0.33,
} as const;

/**
 * Loss at the mouth of a pipe that stands a little into its tank, in heads of its own speed. Source: handbook lists give 0.8 to 1.0 for a projecting
 * entrance, 0.5 for a flush one (crane-tp410, quoted); the harder end is taken, which is ours.
 */
export const overflowEntrance_factor = 1;

/** What a screen over an overflow lets through once half of it is blocked [fraction]. Common practice, no source. */
export const screened_fraction = 0.5;

/** How much a stated run may be beyond what the gutter allows, as both were measured with a tape [fraction]. Ours. */
export const runSlack_fraction = 0.05;

/** From this share of the rain on, what runs over the gutters is warned of [fraction]. Ours. */
export const rainLostFrom_fraction = 0.01;
