import type { LetterShape } from '../sheet/shapes.ts';

/** Heights of the look on screen [px]. On paper letters are smaller, so what fits here fits there. */
export const letterSizes_px = { lettering: 13, body: 16, figure: 22 } as const;

/** Widths of the letters from space to tilde in Andika, plain and strong [hundredths of an em], as a browser measures them. */
const plain_hundredths =
  '27 37 50 59 59 75 60 30 39 39 50 59 32 42 31 49 59 59 59 59 59 59 59 59 59 59 31 32 59 59 59 51 83 68 63 66 70 57 56 69 72 48 47 64 53 88 73 71 58 72 64 57 62 70 67 102 65 64 60 39 49 39 42 62 28 56 56 50 58 53 37 55 57 28 29 51 28 82 58 56 57 55 43 47 41 58 52 76 53 52 51 49 34 49 54'
    .split(' ')
    .map(Number);
const strong_hundredths =
  '27 38 53 61 61 76 66 31 42 42 51 59 32 44 35 53 61 61 61 61 61 61 61 61 61 61 35 35 59 59 59 53 85 73 68 68 73 59 59 72 74 51 50 70 55 91 75 73 62 75 67 61 62 73 72 104 67 67 61 42 53 42 43 63 31 61 59 50 62 54 39 58 60 31 33 56 31 86 61 57 60 59 49 51 43 61 54 77 58 54 52 51 34 51 54'
    .split(' ')
    .map(Number);
const firstCode = 32;
/** Other letters: those of Latin and Cyrillic are about so wide, those of the East fill their square [hundredths of an em]. */
const otherLetter_hundredths = 68;
/** Arabic letters are joined and narrow: as measured in the face paper has for them, spaces and figures among them [hundredths of an em]. */
const arabicLetter_hundredths = 52;
const arabicCodes = { from: 0x600, to: 0x6ff } as const;
const squareLetter_hundredths = 104;
const firstSquareCode = 0x2e80;

/**
 * How wide is a text? Near enough to keep letters apart, in a thread that has no page to measure on.
 *
 * @param text - what is lettered [text]
 * @param size - height of the look
 * @param isStrong - in the heavier face
 * @returns width [px]
 * @definition sum of the letters' widths in Andika
 */
export function letterWidth_px(text: string, size: LetterShape['size'] = 'lettering', isStrong = false): number {
  const widths = isStrong ? strong_hundredths : plain_hundredths;
  let sum = 0;
  for (const letter of text) {
    const code = letter.codePointAt(0)!;
    sum += widths[code - firstCode] ?? otherWidth_hundredths(code);
  }
  return (sum * letterSizes_px[size]) / 100;
}

function otherWidth_hundredths(code: number): number {
  if (code >= arabicCodes.from && code <= arabicCodes.to) return arabicLetter_hundredths;
  return code >= firstSquareCode ? squareLetter_hundredths : otherLetter_hundredths;
}
