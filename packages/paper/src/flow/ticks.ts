import { drawLines, type Setter } from '../document/setter.ts';
import { lines_pt, mm } from '../document/sheetSize.ts';
import type { Text } from '../text/index.ts';
import { type Band, band, branchOnce } from './band.ts';

const box_pt = mm(3.8);
const besideBox_pt = mm(6.3);

/** Things to do, each with a box to tick, a hairline under it. */
export function ticks(setter: Setter, width: number, texts: readonly Text[]): readonly Band[] {
  const list = branchOnce('L');
  return texts.map((text) => {
    const set = setter.lines(text, 'body', width - besideBox_pt);
    const high = set.height_pt + 4;
    return band(high, (canvas, under, { x, y }) => {
      const item = canvas.branch(canvas.branch(list(canvas, under), 'LI'), 'LBody');
      canvas.unread(() => {
        canvas.box(setter.place(x, width, 0, box_pt), y + 3.6, box_pt, box_pt, lines_pt.edge);
        canvas.rule(x, y + high, width, lines_pt.hair, '#444');
      });
      const room = {
        x: setter.place(x, width, besideBox_pt, width - besideBox_pt),
        y: y + 2,
        width: width - besideBox_pt,
      };
      canvas.within(item, 'LBody', () => drawLines(canvas, setter, set, room));
    });
  });
}

/** Steps in order, their numbers at the beginning. */
export function numbered(
  setter: Setter,
  width: number,
  steps: readonly { readonly number: string; readonly bands: (width: number) => readonly Band[] }[],
): readonly Band[] {
  const indent = mm(8);
  return steps.flatMap(({ number, bands }) => {
    const set = setter.lines(number, 'body', indent, 'strong');
    return bands(width - indent).map(
      (one, nth): Band => ({
        ...one,
        draw: (canvas, under, room, isAgain) => {
          if (nth === 0)
            canvas.within(canvas.branch(under, 'P'), 'P', () =>
              drawLines(canvas, setter, set, { x: setter.place(room.x, width, 0, indent), y: room.y, width: indent }),
            );
          const own = width - indent;
          one.draw(canvas, under, { x: setter.place(room.x, width, indent, own), y: room.y, width: own }, isAgain);
        },
      }),
    );
  });
}
