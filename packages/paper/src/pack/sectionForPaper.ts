import { paperScale, type SectionInput, sectionOf } from '@eavewell/drawing';
import { bodyWidth_pt } from '../document/sheetSize.ts';
import { pt_per_px } from '../drawing/shapesOnPaper.ts';
import type { ScaledPicture } from './content.ts';
import { columnGap_pt, detailShare } from './overview.ts';

/** The scale sections are drawn at where the building fits the sheet, so that those of a programme can be laid beside each other. Ours: the look. */
const usualOneTo = 150;

/** Width of the column a detail stands in [pt]. */
const detailWidth_pt = ((bodyWidth_pt - columnGap_pt) * detailShare) / 100;

/**
 * The section of a building as wide as the sheet, at 1 : 150 or the next smaller scale it fits.
 *
 * @param input - building, verdicts and words, as for the screen
 * @param most - the largest scale, one to so many
 * @returns the picture, true to scale when drawn at its own size, and its scale
 */
export function sectionForPaper(
  input: Omit<SectionInput, 'width' | 'pxPerM'>,
  most: number = usualOneTo,
): ScaledPicture & { readonly oneTo: number } {
  const width = Math.floor(bodyWidth_pt / pt_per_px);
  const fits = paperScale(input.building, width, input.proposed ?? null);
  const oneTo = Math.max(most, fits.oneTo);
  return { picture: sectionOf({ ...input, width, pxPerM: (fits.pxPerM * fits.oneTo) / oneTo }), oneTo };
}

/** Scales of what is to be built, the larger where it shows all of it. Ours: the look, with the next of the ladder. */
const detailScales = [75, 100] as const;

/**
 * A cut-out of what is to be built, as wide as its column on the first page, at 1 : 75, or 1 : 100 where that is too narrow.
 *
 * @param input - as for a section, with the station it is cut out at
 * @returns the picture and its scale
 */
export function detailForPaper(
  input: Omit<SectionInput, 'width' | 'pxPerM'>,
): ScaledPicture & { readonly oneTo: number } {
  const width = Math.floor(detailWidth_pt / pt_per_px);
  const { pxPerM, oneTo } = paperScale(input.building, width);
  const shows = sectionOf({ ...input, width }).pxPerM;
  const scale = detailScales.find((one) => (pxPerM * oneTo) / one <= shows) ?? detailScales[1];
  return { picture: sectionOf({ ...input, width, pxPerM: (pxPerM * oneTo) / scale }), oneTo: scale };
}
