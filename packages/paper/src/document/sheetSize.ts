/**
 * The sheet. Sizes of paper: iso-216, A4, 210 mm by 297 mm (from memory). Sizes of letters and lines: the look, 10 to 10.5 pt to
 * read, 19 pt for the title, nothing under 8.5 pt; lines of .13, .18, .35 and .50 mm.
 */

/** Points to the millimetre: 72 to the inch of 25.4 mm. */
export const pt_per_mm = 72 / 25.4;
export const mm = (length_mm: number): number => length_mm * pt_per_mm;

export const sheetWidth_pt = mm(210);
export const sheetHeight_pt = mm(297);
/** Ours: a hole punch and a thumb have room. */
export const margin_pt = mm(13);
export const bodyWidth_pt = sheetWidth_pt - 2 * margin_pt;
/** Where the head begins and the foot stands, from the upper and lower edge. */
export const headTop_pt = mm(11);
export const footLine_pt = sheetHeight_pt - mm(14.5);
/** The last place a band may end. */
export const bodyEnd_pt = footLine_pt - mm(3);

/** Heights of letters [pt]. */
export const sizes_pt = { title: 19, heading: 13, compact: 12, body: 10.5, small: 8.5 } as const;
export type Size = keyof typeof sizes_pt;

/** Thickness of lines [pt]: dimension and hatch, beyond the cut, edge, cut. */
export const lines_pt = { hair: mm(0.13), thin: mm(0.18), edge: mm(0.35), cut: mm(0.5) } as const;

/** From line to line, as a share of the letters' height; and from the upper end of a line to the foot of its letters. Ours. */
export const leading_share = 1.36;
export const baseline_share = 1.03;
