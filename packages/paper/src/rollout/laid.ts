import type { Language } from '@eavewell/words';
import { type Branch, Canvas } from '../document/canvas.ts';
import { firstTop_pt, type HeadSaid, headsSaying, laterTop_pt } from '../document/heads.ts';
import { Setter } from '../document/setter.ts';
import { bodyEnd_pt, bodyWidth_pt, margin_pt } from '../document/sheetSize.ts';
import { type Band, framed, type Placed, pagesOf } from '../flow/index.ts';
import type { MissingLetter, Text } from '../text/index.ts';
import type { PaperOptions } from './given.ts';

/** A paper that was made, or why none was. */
export type RolloutPaper =
  | { readonly kind: 'made'; readonly bytes: Uint8Array; readonly pages_count: number }
  | {
      readonly kind: 'lettersMissing';
      /** Each letter once, with the text it stands in. */
      readonly letters: readonly MissingLetter[];
      /** What is wrong and what to do, in the language of the paper. */
      readonly said: readonly string[];
    };

/** A part of a paper with pages, heads and page numbers of its own, such as the notice of one village. */
export interface PaperPart {
  readonly head: HeadSaid;
  /** Framed at the foot of every page of it. */
  readonly caution: Text;
  /** Bands of each section; those that begin a page are told. */
  sections(setter: Setter, width: number): readonly { readonly bands: readonly Band[]; readonly startsPage: boolean }[];
}

/** Letters of the frame [pt]: over the least of the look, under what is read first. Ours. */
const caution_pt = 9;
const overCaution_pt = 8;

interface LaidPart {
  readonly heads: ReturnType<typeof headsSaying>;
  readonly frame: readonly Band[];
  readonly frameTop_pt: number;
  readonly pages: readonly (readonly Placed[])[];
}

function layPart(setter: Setter, part: PaperPart): LaidPart {
  const heads = headsSaying(setter, part.head);
  const frame = part.caution.length === 0 ? [] : framed(setter, bodyWidth_pt, [part.caution], 0, caution_pt);
  const frameHigh_pt = frame.reduce((sum, { height_pt }) => sum + height_pt, 0);
  const frameTop_pt = bodyEnd_pt - frameHigh_pt;
  const end_pt = frame.length === 0 ? bodyEnd_pt : frameTop_pt - overCaution_pt;
  const pages = pagesOf(part.sections(setter, bodyWidth_pt), { firstTop_pt, top_pt: laterTop_pt, end_pt });
  heads.lay(pages.length);
  return { heads, frame, frameTop_pt, pages };
}

/**
 * A paper of the rollout as a file: parts one after the other, each with its own heads and, on every page, its caution.
 *
 * @param title - of the file
 * @param author - of the file: the programme
 * @param parts - in order
 * @param language - of the paper: from right to left it is mirrored, its drawings are not
 * @param options - when it is printed
 * @returns the file, or the letters that no face has
 * @law every page of a part has the caution of that part
 */
export function rolloutPaper(
  { title, author }: { readonly title: string; readonly author: string },
  parts: readonly PaperPart[],
  language: Language,
  { printedOn, printedAt }: PaperOptions,
): RolloutPaper {
  const setter = new Setter(language.direction);
  const laid = parts.map((part) => layPart(setter, part));
  if (setter.missing.length > 0) return missingIn(setter.missing, language);
  const canvas = new Canvas({
    ...{ title, author, language: language.code },
    madeAt_ms: Date.parse(`${printedOn}T${printedAt ?? '00:00'}:00Z`) || 0,
  });
  for (const part of laid) drawPart(canvas, part);
  const pages_count = laid.reduce((sum, { pages }) => sum + pages.length, 0);
  return { kind: 'made', bytes: canvas.finish(), pages_count };
}

function drawPart(canvas: Canvas, { heads, frame, frameTop_pt, pages }: LaidPart): void {
  const branches = new Map<number, Branch>();
  pages.forEach((placed, nth) => {
    canvas.addPage();
    heads.draw(canvas, canvas.root, nth + 1, pages.length);
    for (const { band, y, section, isAgain } of placed) {
      const under = branches.get(section) ?? canvas.branch(canvas.root, 'Sect');
      branches.set(section, under);
      band.draw(canvas, under, { x: margin_pt, y, width: bodyWidth_pt }, isAgain);
    }
    let y = frameTop_pt;
    for (const one of frame) {
      one.draw(canvas, canvas.root, { x: margin_pt, y, width: bodyWidth_pt }, false);
      y += one.height_pt;
    }
  });
}

function missingIn(all: readonly MissingLetter[], { say }: Language): RolloutPaper {
  const letters = [...new Map(all.map((one) => [one.codePoint, one])).values()];
  const said = letters.map(({ letter, codePoint, text }) =>
    say('pack.letter_missing', { letter, code: codePoint, text: text.slice(0, 80) }),
  );
  return { kind: 'lettersMissing', letters, said };
}
