import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { inOneForm, messagesOf, textsOf } from './messages.ts';
import { textsToRead } from './reading.ts';

/** A text of English that is looked for. */
export interface Piece {
  readonly text: string;
  /** As it stands among other words; null: one word alone, found only where it is all that stands there. */
  readonly amongWords: string | null;
}

export const pieceOf = (text: string): Piece => ({
  text,
  amongWords: /\p{L}{2}\P{L}+\p{L}{2}/u.test(text) ? ` ${text} ` : null,
});

/** Texts of English messages that no Spanish message has, with a word of more than two letters in them. */
export function englishOnly(): readonly Piece[] {
  const spanish = new Set(messagesOf('es').flatMap(textsOf));
  const english = new Set(messagesOf('en').flatMap(textsOf));
  return [...english].filter((text) => !spanish.has(text) && /\p{L}{3}/u.test(text)).map(pieceOf);
}

/** The first of the pieces that stands in a text: thousands are looked for in every text of a page. */
export function pieceIn(pieces: readonly Piece[], text: string): Piece | undefined {
  const spaced = ` ${text} `;
  return pieces.find((piece) => (piece.amongWords === null ? text === piece.text : spaced.includes(piece.amongWords)));
}

/**
 * What is left of a text without what the server answered: names, and the sentences of a design, which are made in the languages
 * there are and in no other.
 */
export function withoutAnswers(text: string, answered: ReadonlySet<string>): string {
  if (answered.has(text)) return '';
  // A name that has no room in a picture is cut, and ends in dots.
  const cut = /^(.{6,})…$/.exec(text.trim())?.[1];
  if (cut !== undefined && [...answered].some((part) => part.startsWith(cut))) return '';
  const parts = [...answered].filter((part) => part.length > 2 && text.includes(part));
  return parts.sort((a, b) => b.length - a.length).reduce((left, part) => left.replaceAll(part, ' '), text);
}

/** English that is left on a page of somebody who speaks Spanish: the piece, and the text it stands in. */
export async function englishLeft(
  page: Page,
  names: ReadonlySet<string>,
  pieces: readonly Piece[],
): Promise<readonly string[]> {
  const texts = await textsToRead(page);
  expect(texts.length).toBeGreaterThan(3);
  return texts.flatMap((text) => {
    const left = inOneForm(withoutAnswers(text, names));
    const piece = pieceIn(pieces, left);
    return piece === undefined ? [] : [`"${piece.text}" in "${text}"`];
  });
}
