import type { Language } from '@eavewell/words';
import type { Branch, Canvas } from '../document/canvas.ts';
import { drawLines, type SetLines, type Setter } from '../document/setter.ts';
import { bodyWidth_pt, footLine_pt, headTop_pt, lines_pt, margin_pt, mm, type Size } from '../document/sheetSize.ts';
import type { SitePackContent, SitePackOptions } from './content.ts';

/** Where the body begins under the head, on the first page and on the others [pt]. */
export const firstTop_pt = headTop_pt + mm(20.5);
export const laterTop_pt = headTop_pt + mm(14);

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

const rightOf = ({ people, caretaker, trip }: SitePackContent, { say, numbers }: Language): readonly string[] => {
  const who = [
    people === null ? null : say('pack.people', { people: numbers.people(people) }),
    caretaker === null ? null : say('pack.caretaker', { name: caretaker }),
  ].filter((one) => one !== null);
  const when =
    trip === null ? null : say('pack.trip', { ...trip, from: numbers.date(trip.from), to: numbers.date(trip.to) });
  return [who.join(' '), ...(when === null ? [] : [when])].filter((one) => one !== '');
};

/**
 * Heads and feet of a pack.
 *
 * @param setter - lays their letters
 * @param content - whose pack it is
 * @param language - its words
 * @param options - when it is printed
 */
export function headsOf(setter: Setter, content: SitePackContent, language: Language, options: SitePackOptions): Heads {
  const { say, numbers } = language;
  const half = bodyWidth_pt / 2 - 6;
  const lines = rightOf(content, language);
  const laid = (page: number, pages: number): LaidHead => {
    const name = page === 1 ? content.name : `${content.name}, ${content.siteId}`;
    const size: Size = page === 1 ? 'title' : 'compact';
    const first = say('pack.page', { page, pages });
    const shown = page === 1 ? lines : lines.slice(0, 2);
    const smaller = page === 1 ? 'body' : 'small';
    return {
      number: setter.lines(first, smaller, half),
      name: setter.lines(name, size, bodyWidth_pt * (page === 1 ? 0.62 : 0.5), page === 1 ? 'plain' : 'strong'),
      right: shown.map((text) => setter.lines(text, smaller, half)),
    };
  };
  const day = numbers.date(options.printedOn);
  const printed = setter.lines(
    options.printedAt === null
      ? say('pack.printed', { programme: content.programme, day })
      : say('pack.printed_at', { programme: content.programme, day, time: options.printedAt }),
    'small',
    half,
  );
  const plans = setter.lines(say('pack.plans'), 'small', half);
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

/** Number over name at the beginning, two lines at the end, all standing on the ink line. A long name has its first line alone. */
function drawHead(canvas: Canvas, setter: Setter, { number, name, right }: LaidHead, end: number): void {
  const one = { ...name, lines: name.lines.slice(0, 1) };
  const nameTop = end - name.leading_pt - 1;
  drawLines(canvas, setter, number, { x: margin_pt, y: nameTop - number.leading_pt + 2, width: bodyWidth_pt });
  drawLines(canvas, setter, one, { x: margin_pt, y: nameTop, width: bodyWidth_pt });
  const high = right.reduce((sum, { leading_pt }) => sum + leading_pt, 0);
  let y = end - high - 3;
  for (const set of right) {
    drawLines(
      canvas,
      setter,
      { ...set, lines: set.lines.slice(0, 1) },
      { x: margin_pt, y, width: bodyWidth_pt },
      'end',
    );
    y += set.leading_pt;
  }
}
