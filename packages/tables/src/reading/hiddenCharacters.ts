/**
 * Characters that cannot be seen: spaces that do not break, soft hyphens, joiners, marks of direction, byte order marks.
 * Source: The Unicode Standard, general categories Cf and Zs (from memory).
 */
function isUnseen(code: number): boolean {
  if (code < 0x80) return false;
  if (code === 0xa0 || code === 0xad || code === 0xfeff) return true;
  if (code < 0x200b || code > 0x2069) return false;
  return code <= 0x200f || (code >= 0x202a && code <= 0x202e) || (code >= 0x2060 && code <= 0x2064) || code >= 0x2066;
}

/** Control characters other than tab and the line ends, which a quoted text may hold. */
function isControl(code: number): boolean {
  if (code < 0x20) return code !== 0x09 && code !== 0x0a && code !== 0x0d;
  return code >= 0x7f && code <= 0x9f;
}

function isSpace(code: number): boolean {
  return code === 0x20 || (code >= 0x09 && code <= 0x0d) || (code > 0x9f && /\s/.test(String.fromCharCode(code)));
}

/**
 * What stands in a cell, without the spaces and the characters that cannot be seen at its ends?
 *
 * @param text - the cell as it stands [text]
 * @returns the cell without them [text]
 * @definition ours: docs/decisions/0083-characters-not-seen.md
 * @example
 * bare(' S001\u200b') // → 'S001'
 */
export function bare(text: string): string {
  let [from, to] = [0, text.length];
  const isLeft = (code: number) => isSpace(code) || isUnseen(code);
  while (from < to && isLeft(text.charCodeAt(from))) from++;
  while (to > from && isLeft(text.charCodeAt(to - 1))) to--;
  return from === 0 && to === text.length ? text : text.slice(from, to);
}

/** Are all these characters plain ASCII that can be seen, or spaces? A quick answer for nearly every cell. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: finding them is what it is for
const mayHide = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u00ad\u200b-\u2069\ufeff]/;

/** How many different characters are named. */
const named = 5;

/**
 * Which characters that cannot be seen stand in a text?
 *
 * @param text - the text [text]
 * @returns their code points, each once, the first five [text]
 * @source The Unicode Standard, appendix A: the form U+200B
 * @example
 * hiddenIn('S0\u200b01') // → ['U+200B']
 * hiddenIn('S001') // → []
 */
export function hiddenIn(text: string): readonly string[] {
  if (!mayHide.test(text)) return [];
  const points = new Set<string>();
  for (let i = 0; i < text.length && points.size < named; i++) {
    const code = text.charCodeAt(i);
    if (isUnseen(code) || isControl(code)) points.add(`U+${code.toString(16).toUpperCase().padStart(4, '0')}`);
  }
  return [...points];
}

/**
 * What is left of a text without the characters that cannot be seen?
 *
 * @param text - the text [text]
 * @returns the text without them [text]
 * @definition ours
 * @example
 * withoutHidden('S0\u200b01') // → 'S001'
 */
export function withoutHidden(text: string): string {
  if (hiddenIn(text).length === 0) return text;
  return [...text].filter((one) => !isUnseen(one.charCodeAt(0)) && !isControl(one.charCodeAt(0))).join('');
}
