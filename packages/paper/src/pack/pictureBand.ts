import type { Setter } from '../document/setter.ts';
import { type PicturePlace, pt_per_px, setLetters, shapesOnPaper } from '../drawing/shapesOnPaper.ts';
import { type Band, band } from '../flow/index.ts';
import type { ScaledPicture } from './content.ts';

/** A picture of so many points at most is drawn so: true to its scale, or smaller where it has to be. */
export interface Fitted {
  readonly scale: number;
  readonly width_pt: number;
  readonly height_pt: number;
  /** It is not at the scale it was laid for. */
  readonly isReduced: boolean;
}

export function fitted(
  { width, height }: Pick<ScaledPicture['picture'], 'width' | 'height'>,
  most: { readonly width: number; readonly height: number },
): Fitted {
  const scale = Math.min(pt_per_px, most.width / Math.max(1, width), most.height / Math.max(1, height));
  // Half a thousandth is rounding of the px.
  return { scale, width_pt: width * scale, height_pt: height * scale, isReduced: scale < pt_per_px * 0.9995 };
}

/**
 * A picture in the middle of a room. It is never mirrored.
 *
 * @param setter - lays its letters
 * @param picture - shapes
 * @param size - how large it is drawn
 * @param says - what it shows, for those who do not see it
 */
export function pictureBand(
  setter: Setter,
  picture: ScaledPicture['picture'],
  { scale, width_pt, height_pt }: Fitted,
  says: string,
  before_pt = 4,
): Band {
  const letters = setLetters(setter, picture.shapes);
  return band(
    height_pt,
    (canvas, under, { x, y, width }) => {
      const place: PicturePlace = { x: x + (width - width_pt) / 2, y, scale };
      canvas.within(canvas.branch(under, 'Figure', says), 'Figure', () =>
        shapesOnPaper(canvas, picture, letters, place),
      );
    },
    { before_pt, keepsNext: true },
  );
}
