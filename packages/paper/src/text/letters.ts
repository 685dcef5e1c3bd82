import { type Face, facesOf, type Weight } from './faces.ts';

/** A piece of a text in one weight. */
export interface Span {
  readonly text: string;
  readonly weight: Weight;
}

/** A text of one weight or of several. */
export type Text = string | readonly Span[];

export const spansOf = (text: Text, weight: Weight = 'plain'): readonly Span[] =>
  typeof text === 'string' ? [{ text, weight }] : text;

/** A letter that no face has, and the text it stands in. */
export interface MissingLetter {
  readonly letter: string;
  /** `U+1F6B0`. */
  readonly codePoint: string;
  readonly text: string;
}

/** What has no shape of its own: marks of direction, soft hyphens, places where a line may break. */
export const isUnseen = (letter: string): boolean =>
  /[\u00ad\u200b\u200e\u200f\u202a-\u202e\u2060-\u2069\ufeff]/.test(letter);

/** Joiners shape their neighbours where a face knows them and are left out where it does not. */
const isJoiner = (letter: string): boolean => letter === '\u200c' || letter === '\u200d';

/** Has it a script of its own? Digits, spaces and points go with what stands before them. */
const hasScript = (letter: string): boolean => /[\p{L}\p{M}]/u.test(letter);

const has = ({ font }: Face, letter: string) => font.hasGlyphForCodePoint(letter.codePointAt(0)!);

/**
 * Which face has which letter of a text? A letter keeps to the face of the word before it where it can, so that a space
 * does not tear a word of one script from the next.
 *
 * @param text - in one weight
 * @param weight - of it
 * @param before - the face of the letters before it; null where there are none
 * @returns a face for each code unit of the text, null where the unit is not drawn; and the letters no face has
 */
export function facesFor(
  text: string,
  weight: Weight,
  before: Face | null,
): { readonly faces: readonly (Face | null)[]; readonly missing: readonly string[] } {
  const all = facesOf(weight);
  const first = [...text].find(hasScript);
  let own = before ?? all.find((face) => first !== undefined && has(face, first)) ?? all[0]!;
  const faces: (Face | null)[] = [];
  const missing: string[] = [];
  for (const letter of text) {
    const isOwnScript = hasScript(letter);
    const asked = isOwnScript && !/\p{M}/u.test(letter) ? all : [own, ...all];
    const face = isUnseen(letter) ? null : (asked.find((one) => has(one, letter)) ?? null);
    if (face === null && !isUnseen(letter) && !isJoiner(letter)) missing.push(letter);
    if (face !== null && isOwnScript) own = face;
    for (let unit = 0; unit < letter.length; unit++) faces.push(face);
  }
  return { faces, missing };
}
