import type { Face } from './faces.ts';

interface Shaped {
  /** In units of the face. */
  readonly advance: number;
  /** The text in the order a shaper has to be given it, so that its glyphs come out in the order wanted. */
  readonly given: string;
}

const shaped = new Map<string, Shaped>();
/** So many words are kept with their widths: a pack has some 2,000, of which most come again. Ours. */
const mostKept = 20_000;

/**
 * How wide is a text of one face and one direction?
 *
 * @param face - the face
 * @param text - of one direction, mirrored letters already changed
 * @param isRtl - whether its letters run from right to left
 * @returns its advance [units of the face], and the text as the shaper needs it: from right to left the shaper turns letters of
 *   such scripts by itself and leaves all others, so what it would turn the wrong way is turned before
 */
export function shape(face: Face, text: string, isRtl: boolean): Shaped {
  const key = `${face.name}|${isRtl ? 1 : 0}|${text}`;
  const known = shaped.get(key);
  if (known) return known;
  const run = face.font.layout(text);
  const isRight = (run.direction === 'rtl') === isRtl || [...text].length === 1;
  const given = isRight ? text : [...text].reverse().join('');
  const made = { advance: isRight ? run.advanceWidth : face.font.layout(given).advanceWidth, given };
  if (shaped.size >= mostKept) shaped.clear();
  shaped.set(key, made);
  return made;
}
