import type { Branch, Canvas } from './canvas.ts';
import { drawLines, type SetLines, type Setter } from './setter.ts';
import { bodyWidth_pt, footLine_pt, headTop_pt, lines_pt, margin_pt, mm, type Size } from './sheetSize.ts';

/** Where the body begins under the head, on the first page and on the others [pt]. */
export const firstTop_pt = headTop_pt + mm(20.5);
export const laterTop_pt = headTop_pt + mm(14);

/** What is said at the upper and lower edge of the pages of a paper. */
export interface HeadSaid {
  /** Over the name: what it is, and which page of how many. */
  number(page: number, pages: number): string;
  /** On the first page, large; and on those that follow. */
  readonly name: string;
  readonly laterName: string;
  /** At the end of the first page's head, under each other; the first two on those that follow. */
  readonly right: readonly string[];
  /** At the foot: of what, and when it was printed; and what it is not. */
  readonly printed: string;
  readonly plans: string;
  /** Share of the width the first page's name may take; the rest is for what stands at the end. */
  readonly name_fraction?: number;
}

/** What is said at the upper and lower edge of every page. */
export interface Heads {
  /** The number stands over the name. Called when the count of pages is known. */
  draw(canvas: Canvas, under: Branch, page: number, pages: number): void;
  /** Every text of them is laid once, so that letters no face has are told before anything is drawn. */
  lay(pages: number): void;
}

interface LaidHead {
  readonly number: SetLines;
  readonly name: SetLines;
  readonly right: readonly SetLines[];
}

/**
 * Heads and feet of a paper.
 *
 * @param setter - lays their letters
 * @param said - what they say
 */
export function headsSaying(setter: Setter, said: HeadSaid): Heads {
  const half = bodyWidth_pt / 2 - 6;
  const laid = (page: number, pages: number): LaidHead => {
    const isFirst = page === 1;
    const size: Size = isFirst ? 'title' : 'compact';
    const smaller = isFirst ? 'body' : 'small';
    const share = isFirst ? (said.name_fraction ?? 0.62) : 0.5;
    const name = isFirst ? said.name : said.laterName;
    const whole = setter.lines(name, size, bodyWidth_pt * share, isFirst ? 'plain' : 'strong');
    // A name that is longer than a line is set smaller, on two lines where it must.
    const isLong = isFirst && whole.lines.length > 1;
    // What stands at the end keeps to the width the name leaves.
    const rest = isFirst ? bodyWidth_pt * (1 - share) - 8 : half;
    return {
      number: setter.lines(said.number(page, pages), smaller, half),
      name: isLong ? setter.lines(name, 'compact', bodyWidth_pt * share, 'strong') : whole,
      right: (isFirst ? said.right : said.right.slice(0, 2)).map((text) =>
        setter.lines(text, isFirst ? 'small' : smaller, rest),
      ),
    };
  };
  const printed = setter.lines(said.printed, 'small', bodyWidth_pt * 0.64);
  const plans = setter.lines(said.plans, 'small', bodyWidth_pt * 0.34);
  return {
    lay: (pages) => {
      for (let page = 1; page <= Math.min(2, pages); page++) laid(page, pages);
    },
    draw: (canvas, under, page, pages) => {
      const head = laid(page, pages);
      const end = (page === 1 ? firstTop_pt : laterTop_pt) - mm(page === 1 ? 3.4 : 4);
      const draw = () => drawHead(canvas, setter, head, end);
      if (page === 1) canvas.within(canvas.branch(under, 'H1'), 'H1', draw);
      else canvas.unread(draw);
      canvas.unread(() => {
        canvas.rule(margin_pt, end, bodyWidth_pt, lines_pt.edge);
        canvas.rule(margin_pt, footLine_pt, bodyWidth_pt, lines_pt.hair, '#444');
        const foot = { x: margin_pt, y: footLine_pt + 3, width: bodyWidth_pt };
        drawLines(canvas, setter, printed, foot);
        drawLines(canvas, setter, plans, foot, 'end');
      });
    },
  };
}

/** Number over name at the beginning, what stands at the end under each other, all standing on the ink line. A name has two lines at the most. */
function drawHead(canvas: Canvas, setter: Setter, { number, name, right }: LaidHead, end: number): void {
  const one = { ...name, lines: name.lines.slice(0, 2) };
  const nameTop = end - name.leading_pt * one.lines.length - 1;
  drawLines(canvas, setter, number, { x: margin_pt, y: nameTop - number.leading_pt + 2, width: bodyWidth_pt });
  drawLines(canvas, setter, one, { x: margin_pt, y: nameTop, width: bodyWidth_pt });
  const high = right.reduce((sum, { leading_pt, lines }) => sum + leading_pt * lines.length, 0);
  let y = end - high - 3;
  for (const set of right) {
    drawLines(canvas, setter, set, { x: margin_pt, y, width: bodyWidth_pt }, 'end');
    y += set.leading_pt * set.lines.length;
  }
}
