import type { Picture, Shape } from '../sheet/shapes.ts';
import { callForHelp, cleanContainer, keepChlorineAway, washHands, washTank } from './carePictures.ts';
import { clearScreen, emptyFirstFlush, ladderWithHelper, sweepRoof } from './roofPictures.ts';
import { side } from './signs.ts';
import { backwash, closedTap, doNotDip, pump, test } from './waterPictures.ts';

/** In the order in which water runs from roof to cup, and then what people do for themselves. */
const drawn = {
  sweepRoof,
  ladderWithHelper,
  clearScreen,
  emptyFirstFlush,
  washTank,
  doNotDip,
  pump,
  backwash,
  closedTap,
  cleanContainer,
  washHands,
  keepChlorineAway,
  test,
  callForHelp,
} as const satisfies Readonly<Record<string, () => readonly Shape[]>>;

/** A thing a caretaker does or leaves. What it is called stands in the words, under `pictures`. */
export type CarePictureId = keyof typeof drawn;

/** Every care picture, from roof to cup. */
export const carePictureIds = Object.keys(drawn) as readonly CarePictureId[];

/**
 * A picture of something to do or to leave, for a sheet that needs no words: ink and paper alone, an arrow where something moves, a
 * drop where there is water, a heavy stroke across for what must not be.
 *
 * @param id - what it is of
 * @returns the picture, a square of 100 by 100 [px]; it is made to be printed 30 mm wide
 * @definition ours: docs/decisions/0265-pictures-without-words.md
 */
export function carePicture(id: CarePictureId): Picture {
  return { width: side, height: side, pxPerM: null, shapes: drawn[id](), handles: [] };
}
