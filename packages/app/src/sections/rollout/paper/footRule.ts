/** What stands at the foot of every sheet of paper: where reading begins what it is of, at the other end which sheet of how many. */
export interface Foot {
  readonly said: string;
  /** Before, between and after the number of the sheet and of all sheets. */
  readonly numbered: readonly [before: string, between: string, after: string];
  readonly font: string;
  readonly direction: 'ltr' | 'rtl';
}

/** A text as a style sheet quotes it. */
const quoted = (text: string): string =>
  `"${text.replaceAll(/[^\p{L}\p{N} .,;:!?()/–’-]/gu, (one) => `\\${one.codePointAt(0)!.toString(16)} `)}"`;

/**
 * The rule that puts a foot on every sheet of paper.
 *
 * @param foot - what stands there
 * @returns a style sheet
 */
export function footRule({ said, numbered: [before, between, after], font, direction }: Foot): string {
  const look = `font: 8.5pt ${font}; color: #000; vertical-align: middle; direction: ${direction};`;
  const number = `${quoted(before)} counter(page) ${quoted(between)} counter(pages) ${quoted(after)}`;
  const [near, far] = direction === 'ltr' ? ['left', 'right'] : ['right', 'left'];
  return `@page { @bottom-${near} { content: ${quoted(said)}; ${look} } @bottom-${far} { content: ${number}; ${look} text-align: ${far}; white-space: nowrap; } }`;
}
