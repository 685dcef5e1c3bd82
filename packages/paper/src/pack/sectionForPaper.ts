import { paperScale, type SectionInput, sectionOf } from '@eavewell/drawing';
import { bodyWidth_pt } from '../document/sheetSize.ts';
import { pt_per_px } from '../drawing/shapesOnPaper.ts';
import type { ScaledPicture } from './content.ts';

/** The scale sections are drawn at where the building fits the sheet, so that those of a programme can be laid beside each other. Ours: the look. */
const usualOneTo = 150;

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
