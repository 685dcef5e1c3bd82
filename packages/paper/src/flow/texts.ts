import { drawLines, type SetLines, type Setter } from '../document/setter.ts';
import { lines_pt, mm, type Size } from '../document/sheetSize.ts';
import type { Text, Weight } from '../text/index.ts';
import { type Band, band, branchOnce } from './band.ts';

/** White over a heading, a paragraph, a frame [pt]. Ours: the look keeps rows on 8 px. */
const spaces_pt = { heading: 12, paragraph: 4, frame: 10 } as const;

/** Lines of a text are kept together up to so many; longer ones may run on over a page. Ours. */
const mostKept = 12;

/** A heading keeps what stands under it. */
export function heading(setter: Setter, width: number, text: string, before_pt: number = spaces_pt.heading): Band {
  const set = setter.lines(text, 'heading', width, 'strong');
  return band(
    set.height_pt + 2,
    (canvas, under, room) =>
      canvas.within(canvas.branch(under, 'H2'), 'H2', () => drawLines(canvas, setter, set, room)),
    { before_pt, keepsNext: true },
  );
}

/** Lines in parts that are short enough to stand together. */
function partsOf(set: SetLines, most = mostKept): readonly SetLines[] {
  const parts: SetLines[] = [];
  for (let from = 0; from < set.lines.length; from += most) {
    const lines = set.lines.slice(from, from + most);
    parts.push({ ...set, lines, height_pt: lines.length * set.leading_pt });
  }
  return parts;
}

/** How a paragraph is set. */
interface Manner {
  readonly size?: Size | number;
  readonly weight?: Weight;
  readonly before_pt?: number;
  readonly keepsNext?: boolean;
}

/** A sentence or several. */
export function paragraph(setter: Setter, width: number, text: Text, manner: Manner = {}): readonly Band[] {
  const { size = 'body', weight = 'plain', before_pt = spaces_pt.paragraph, keepsNext = false } = manner;
  const branch = branchOnce('P');
  return partsOf(setter.lines(text, size, width, weight)).map((part, nth) =>
    band(
      part.height_pt,
      (canvas, under, room) => canvas.within(branch(canvas, under), 'P', () => drawLines(canvas, setter, part, room)),
      { before_pt: nth === 0 ? before_pt : 0, keepsNext },
    ),
  );
}

const inside_pt = mm(4);

/**
 * A caution in its frame. It is whole on its page; one that is longer than any page runs on in a second frame.
 *
 * @param setter - lays its lines
 * @param width - of the frame [pt]
 * @param texts - each begins a line
 * @param before_pt - white over it
 * @param size - of its letters
 */
export function framed(
  setter: Setter,
  width: number,
  texts: readonly Text[],
  before_pt: number = spaces_pt.frame,
  size: Size | number = 'body',
): readonly Band[] {
  const sets = texts.flatMap((text) => partsOf(setter.lines(text, size, width - 2 * inside_pt), 40));
  const heights = sets.map(({ height_pt }) => height_pt);
  // 40 lines fill a page: then each text has a frame of its own.
  const isOne = heights.reduce((sum, one) => sum + one, 0) < 40 * 15;
  return (isOne ? [sets] : sets.map((set) => [set])).map((group) => {
    const high = group.reduce((sum, { height_pt }) => sum + height_pt, 0) + 2 * mm(2.4) + (group.length - 1) * 3;
    return band(
      high,
      (canvas, under, { x, y }) => {
        canvas.unread(() => canvas.box(x, y, width, high, lines_pt.edge));
        const note = canvas.branch(under, 'Note');
        let top = y + mm(2.4);
        for (const set of group) {
          const room = { x: x + inside_pt, y: top, width: width - 2 * inside_pt };
          canvas.within(note, 'Note', () => drawLines(canvas, setter, set, room));
          top += set.height_pt + 3;
        }
      },
      { before_pt },
    );
  });
}
