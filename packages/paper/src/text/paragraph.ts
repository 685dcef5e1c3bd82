import bidiFactory from 'bidi-js';
import type { Face, Weight } from './faces.ts';
import { keptTogether } from './keptTogether.ts';
import { facesFor, isUnseen, type MissingLetter, spansOf, type Text } from './letters.ts';

export type Direction = 'ltr' | 'rtl';

/** A text with everything that is known of each of its code units before it is broken into lines. */
export interface Paragraph {
  readonly text: string;
  readonly direction: Direction;
  /** Null: not drawn. */
  readonly faces: readonly (Face | null)[];
  /** Levels of embedding: odd ones run from right to left. */
  readonly levels: Uint8Array;
  /** Other letters to be drawn where a run goes from right to left: brackets. */
  readonly mirrored: ReadonlyMap<number, string>;
  readonly missing: readonly MissingLetter[];
}

// The package is of the older kind of module, whose one export is the factory.
const bidi = (bidiFactory as unknown as () => import('bidi-js').Bidi)();

/** Made once: the segments of a word that is too long for a line. */
const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** A letter with its marks, as a person counts letters. */
export const graphemesOf = (text: string): readonly string[] =>
  [...graphemes.segment(text)].map(({ segment }) => segment);

/**
 * What must be known of a text before it is broken into lines: faces, directions, and letters nobody has.
 *
 * @param text - of one weight, or spans of several
 * @param direction - of the language: where the paragraph begins
 * @param weight - where the text has none of its own
 * @source uax-9: levels of embedding, by the library
 */
export function paragraphOf(text: Text, direction: Direction, weight: Weight = 'plain'): Paragraph {
  const spans = spansOf(text, weight).map((span) => ({
    ...span,
    text: keptTogether(span.text.replace(/\s*\n\s*/g, ' ')),
  }));
  const whole = spans.map((span) => span.text).join('');
  const faces: (Face | null)[] = [];
  const missing: MissingLetter[] = [];
  for (const span of spans) {
    const found = facesFor(span.text, span.weight, null);
    faces.push(...found.faces);
    for (const letter of found.missing) missing.push({ letter, codePoint: codePointOf(letter), text: whole });
  }
  const levels = bidi.getEmbeddingLevels(whole, orderOf(whole, direction));
  const mirrored = bidi.getMirroredCharactersMap(whole, levels.levels);
  return { text: whole, direction, faces, levels: levels.levels, mirrored, missing };
}

/**
 * In which order a text is laid: that of its language, unless not a letter of it runs from right to left. `4.70 m` or a name in
 * Latin letters on a sheet from right to left is read as it is written.
 */
const orderOf = (text: string, direction: Direction): Direction =>
  /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc]/.test(text) ? direction : 'ltr';

export const codePointOf = (letter: string): string =>
  `U+${letter.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0')}`;

/** Without what is not seen. */
export const seenOf = (text: string): string => [...text].filter((letter) => !isUnseen(letter)).join('');
