import type { Face } from './faces.ts';
import { graphemesOf, type Paragraph, seenOf } from './paragraph.ts';
import { shape } from './shape.ts';

/** Letters of one face and one direction, as they are drawn one after another from the left. */
export interface Run {
  readonly face: Face;
  readonly text: string;
  readonly width_pt: number;
}

/** One line of a text. */
export interface Line {
  readonly runs: readonly Run[];
  readonly width_pt: number;
  /** What it says, in the order it is read. */
  readonly says: string;
  /** What is drawn is not in the order it is read: some of it runs from right to left, or has vowels drawn before their consonant. */
  readonly isTurned: boolean;
}

interface Part {
  readonly from: number;
  readonly to: number;
  readonly level: number;
  readonly face: Face;
}

/** Parts of a line of one face and one level, in the order they are read. */
function partsOf({ faces, levels }: Paragraph, from: number, to: number): readonly Part[] {
  const parts: Part[] = [];
  let open: { from: number; level: number; face: Face } | null = null;
  for (let at = from; at <= to; at++) {
    const face = at < to ? (faces[at] ?? null) : null;
    const isOn = open !== null && (face === open.face || (face === null && at < to)) && levels[at] === open.level;
    if (open !== null && !isOn) {
      parts.push({ ...open, to: at });
      open = null;
    }
    if (open === null && face !== null) open = { from: at, level: levels[at]!, face };
  }
  return parts;
}

/** Parts in the order they stand on the page, from the left. Source: uax-9, rule L2. */
function inSight(parts: readonly Part[]): readonly Part[] {
  const turned = [...parts];
  const highest = Math.max(0, ...parts.map(({ level }) => level));
  for (let level = highest; level >= 1; level--)
    for (let from = 0; from < turned.length; from++) {
      let to = from;
      while (to < turned.length && turned[to]!.level >= level) to++;
      if (to - from > 1) turned.splice(from, to - from, ...turned.slice(from, to).reverse());
      if (to > from) from = to;
    }
  return turned;
}

function runOf({ text, mirrored }: Paragraph, { from, to, level, face }: Part, size_pt: number): Run {
  const isRtl = level % 2 === 1;
  let drawn = '';
  for (let at = from; at < to; at++) drawn += (isRtl ? mirrored.get(at) : undefined) ?? text[at]!;
  const { advance, given } = shape(face, seenOf(drawn), isRtl);
  return { face, text: given, width_pt: (advance * size_pt) / face.font.unitsPerEm };
}

/** Scripts of the Brahmi family. */
const vowelsBefore = /[\u0900-\u0dff]/;

function lineOf(paragraph: Paragraph, from: number, to: number, size_pt: number): Line {
  const parts = partsOf(paragraph, from, to);
  const runs = inSight(parts).map((part) => runOf(paragraph, part, size_pt));
  return {
    runs,
    width_pt: runs.reduce((sum, { width_pt }) => sum + width_pt, 0),
    says: seenOf(paragraph.text.slice(from, to)),
    isTurned: parts.some(({ level }) => level % 2 === 1) || vowelsBefore.test(paragraph.text.slice(from, to)),
  };
}

/** Places where a line may end, each with where the next begins: after spaces, hyphens between letters, and marked places. */
function breaksOf(text: string): readonly { readonly end: number; readonly next: number }[] {
  const found: { end: number; next: number }[] = [];
  for (const { 0: gap, index } of text.matchAll(/[ \t]+|\u200b|(?<=\p{L})[-–/](?=\p{L})/gu)) {
    const isSpace = /[ \t\u200b]/.test(gap);
    found.push({ end: isSpace ? index : index + gap.length, next: index + gap.length });
  }
  return [...found, { end: text.length, next: text.length }];
}

/** A word, or a part of one that is longer than a line. */
interface Word {
  readonly from: number;
  readonly end: number;
  readonly width_pt: number;
  /** Of the gap that follows, where the line does not break there. */
  readonly gap_pt: number;
}

function wordsOf(paragraph: Paragraph, size_pt: number, width_pt: number): readonly Word[] {
  const measured = (from: number, to: number) => (to > from ? lineOf(paragraph, from, to, size_pt).width_pt : 0);
  const words: Word[] = [];
  let from = 0;
  for (const { end, next } of breaksOf(paragraph.text)) {
    const gap_pt = measured(end, next);
    const whole_pt = measured(from, end);
    const cuts = whole_pt > width_pt ? cutsOf(paragraph, from, end, size_pt, width_pt) : [end];
    let at = from;
    for (const cut of cuts) {
      const isLast = cut === end;
      const own_pt = cuts.length === 1 ? whole_pt : measured(at, cut);
      words.push({ from: at, end: cut, width_pt: own_pt, gap_pt: isLast ? gap_pt : 0 });
      at = cut;
    }
    from = next;
  }
  return words;
}

/** Where a word that is too long for a line is cut: after as many whole letters as fit, one at least. */
function cutsOf(paragraph: Paragraph, from: number, to: number, size_pt: number, width_pt: number): readonly number[] {
  const cuts: number[] = [];
  let [start, at] = [from, from];
  for (const letter of graphemesOf(paragraph.text.slice(from, to))) {
    if (at > start && lineOf(paragraph, start, at + letter.length, size_pt).width_pt > width_pt) {
      cuts.push(at);
      start = at;
    }
    at += letter.length;
  }
  return [...cuts, to];
}

/** Widths may differ in the last binary digits when they are added up in another order. */
const slack_pt = 0.01;

/**
 * A text in lines.
 *
 * @param paragraph - the text
 * @param size_pt - height of its letters [pt]
 * @param width_pt - the longest a line may be [pt]
 * @returns its lines, one at least; a word that is longer than a line is cut between letters
 */
export function linesOf(paragraph: Paragraph, size_pt: number, width_pt: number): readonly Line[] {
  const lines: Line[] = [];
  let [from, end, long_pt, gap_pt] = [0, 0, 0, 0];
  for (const word of wordsOf(paragraph, size_pt, width_pt)) {
    if (end > from && long_pt + gap_pt + word.width_pt > width_pt + slack_pt) {
      lines.push(lineOf(paragraph, from, end, size_pt));
      [from, long_pt, gap_pt] = [word.from, 0, 0];
    }
    // A line does not begin with a gap.
    if (end <= from) [from, long_pt, gap_pt] = [word.from, 0, 0];
    [end, long_pt, gap_pt] = [word.end, long_pt + gap_pt + word.width_pt, word.gap_pt];
  }
  if (end > from || lines.length === 0) lines.push(lineOf(paragraph, from, end, size_pt));
  return lines;
}
