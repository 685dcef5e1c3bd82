/**
 * Usual sizes: what is drawn where nothing was measured, and the setting around the water's path, which is never measured.
 * They are for the eye alone; no figure of a design rests on them.
 */

/** Roof seen from above where no side is known [m]. Ours: a small house. */
export const usualRoofLength_m = 9;
export const usualRoofWidth_m = 6;
/** Pitch by form [degrees]. Common practice, no source: sheet metal on a gable, on one slope, and the fall of a concrete slab. */
export const usualPitch_deg = { gable: 20, hip: 20, oneSlope: 10, flat: 1 } as const;
/** A slope steeper than this is not drawn [degrees]. Ours: the tables end at 75. */
export const steepest_deg = 75;
/** Ground to the line of the gutter [m]. Common practice, no source. */
export const usualEaveHeight_m = 2.6;
/** The least a gutter that nobody measured is drawn over the overflow of its tank [m]. Ours. */
export const overTank_m = 0.3;
/** Roof beyond the wall [m], and the most of the roof's width that may be. Common practice, no source. */
export const overhang_m = 0.45;
export const overhangShare = 0.12;

/** Gutter, half round [m]. Common practice, no source: 125 mm across, half as deep. */
export const usualGutterWidth_m = 0.125;
export const usualGutterDepth_m = 0.0625;
/** Bore of a downpipe, and of the pipe that carries water to the tank [m]. Common practice, no source: 75 mm. */
export const usualBore_m = 0.075;
/** Bores of pipe a first-flush chamber is made of, the least first [m]. Common practice, no source. */
export const chamberBores_m = [0.1, 0.15, 0.2, 0.25, 0.3, 0.4, 0.6, 0.9, 1.2] as const;
/** Width of the sole of a trapezoidal gutter to that of its top. Common practice, no source. */
export const usualSoleShare = 0.6;
/** Bores of overflow, of the pipe to the treatment unit and of the pipe to the taps [m]. Common practice, no source. */
export const usualOverflowBore_m = 0.09;
export const usualLegBore_m = { tankToUnit: 0.06, unitToTap: 0.05 } as const;
/** Ground to the inlet of the treatment unit and to the mouth of the taps [m]; taps. Ours: a container of 0.4 m on a bench. */
export const usualUnitHeight_m = 0.3;
export const usualTapHeight_m = 0.87;
export const usualTaps_count = 3;
/** The most cells, overflows and taps that are drawn. Ours: more were mistyped or would close up. */
export const mostDrawn_count = 12;
/** First flush where a diverter is there and nothing is known of it [mm]. Source: msma-2011, ch. 6 (from memory). */
export const usualFirstFlush_mm = 0.5;
/** Gutter line down to the branch of the first flush, and the least it may be; least length of a chamber; room left under it [m]. Ours. */
export const branchDrop_m = 0.42;
export const leastDrop_m = 0.2;
export const leastChamber_m = 0.3;
export const chamberClearance_m = 0.25;

/** A tank of which nothing is known [L]. Ours. */
export const usualTank_L = 5000;
/** Height of the water between outlet and overflow, to the diameter. Common practice, no source: tanks about as tall as wide. */
export const usualSlenderness = 0.85;
/** Outlet above the floor, and wall above the overflow [m]. Common practice, no source. */
export const usualOutletHeight_m = 0.1;
export const usualFreeboard_m = 0.1;
/** Ground to the tank's foot [m]. Common practice, no source: a container of 0.4 m stands under a tap. */
export const usualStandHeight_m = 0.4;
/** Stand beyond its tank [m]. Ours. */
export const standBeyond_m = 0.12;
/** Height of a dome to the diameter, and the most it may be [m]. Ours. */
export const domeShare = 0.14;
export const greatestDome_m = 0.6;

/** People, crown to sole [m]. Common practice, no source: grown-up and a child of about eight. */
export const grownUp_m = 1.62;
export const child_m = 1.22;

/** px to the metre under which fine lines close up. Source: ours, docs/methods/drawing.md. */
export const finePxPerM = 25;
/** The least a pipe is drawn across [px]. Ours. */
export const leastPipe_px = 2.6;
/** The most px to the metre of a whole section. Ours: 1 : 63 on paper, a person 97 px tall. */
export const greatestPxPerM = 60;
/** The least px to the metre of a cut-out. Ours. */
export const detailPxPerM = 40;

/** px to the metre at 1 : 1, px being 1/96 inch. Source: css-values-4, absolute lengths (96 px to the inch of 0.0254 m; nist-sp811). */
export const pxPerM_full = 96 / 0.0254;
/** Scales of drawings on paper, 1 : so many. Source: iso-5455 from memory, with 1 : 75, 1 : 125, 1 : 150, 1 : 250 of building practice between them. */
export const paperScales = [20, 25, 50, 75, 100, 125, 150, 200, 250, 300, 400, 500, 750, 1000, 2000] as const;
