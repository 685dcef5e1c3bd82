const wide =
  /[\u1100-\u115f\u2e80-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6\u{1f300}-\u{1faff}\u{20000}-\u{3fffd}]/u;
const narrowless = /[\p{M}\u200b-\u200d\ufeff]/u;
/** Control characters and those that turn the direction of writing: a name must not steer the terminal. */
const unprintable = /[\p{Cc}\u2028-\u202e\u2066-\u2069]/gu;
/** A number and its unit stay on one line. */
const numberAndUnit = /(\d) (?=(?:L|mm|m²|m|days?|years?|people|person|sites?)\b|%)/g;
const share = /(\d) of (\d)/g;
const rowOrShare = /\b(of|row) (\d)/g;

/** How many columns of the terminal a text takes. */
export function columnsOf(text: string): number {
  let columns = 0;
  for (const letter of text) columns += narrowless.test(letter) ? 0 : wide.test(letter) ? 2 : 1;
  return columns;
}

/** The text without anything that could steer a terminal. */
export function printable(text: string): string {
  return text.replace(unprintable, ' ');
}

const plainLetters: Readonly<Record<string, string>> = {
  '×': 'x',
  '÷': '/',
  '−': '-',
  '²': '2',
  '³': '3',
  π: 'pi',
  '…': '~',
  '·': '.',
  '≤': '<=',
  '≥': '>=',
  '“': '"',
  '”': '"',
  '’': "'",
  '–': '-',
  '—': '-',
  ß: 'ss',
  ø: 'o',
  Ø: 'O',
  ł: 'l',
  Ł: 'L',
  æ: 'ae',
  Æ: 'AE',
  œ: 'oe',
  đ: 'd',
  ŋ: 'ng',
};

/** The text in ASCII, for a terminal that shows no more: letters without their marks, `?` where nothing is near. */
export function plainText(text: string): string {
  let plain = '';
  for (const letter of text.normalize('NFC')) {
    if (letter <= '~') plain += letter;
    else plain += plainLetters[letter] ?? (letter.normalize('NFKD').replace(/[^ -~]/g, '') || '?');
  }
  return plain;
}

/** Cuts a word that is wider than a line into pieces that fit. */
function piecesOf(word: string, width: number): string[] {
  const pieces: string[] = [];
  let piece = '';
  for (const letter of word) {
    if (piece !== '' && columnsOf(piece + letter) > width) {
      pieces.push(piece);
      piece = '';
    }
    piece += letter;
  }
  return [...pieces, piece];
}

/** Breaks a text into lines no wider than `width` columns. A number is not parted from its unit; a long word is cut. */
export function wrapped(text: string, width: number): string[] {
  const words = text
    .replace(numberAndUnit, '$1\u00a0')
    .replace(share, '$1\u00a0of\u00a0$2')
    .replace(rowOrShare, '$1\u00a0$2')
    .split(' ')
    .filter((word) => word !== '');
  const lines: string[] = [];
  let line = '';
  for (const piece of words.flatMap((word) => (columnsOf(word) > width ? piecesOf(word, width) : [word]))) {
    if (line === '') line = piece;
    else if (columnsOf(line) + 1 + columnsOf(piece) <= width) line += ` ${piece}`;
    else {
      lines.push(line);
      line = piece;
    }
  }
  lines.push(line);
  return lines.map((one) => one.replaceAll('\u00a0', ' '));
}

/** The text filled up with spaces to so many columns, at its right or at its left. */
export function filled(text: string, columns: number, side: 'left' | 'right' = 'right'): string {
  const gap = ' '.repeat(Math.max(0, columns - columnsOf(text)));
  return side === 'right' ? text + gap : gap + text;
}
