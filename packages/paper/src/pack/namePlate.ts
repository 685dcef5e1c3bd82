import { drawLines, type SetLines, type Setter } from '../document/setter.ts';
import { lines_pt, mm } from '../document/sheetSize.ts';
import { type Band, band } from '../flow/index.ts';

/** What a drawing is, in a frame: its name, and pairs of what and which. */
export function namePlate(
  setter: Setter,
  width: number,
  pairs: readonly (readonly [string, string])[],
  title: string,
): Band {
  const high = mm(11.5);
  const pad = mm(2.6);
  const most = (width * 0.76) / pairs.length - 2 * pad;
  const cells = pairs.map(([what, which]) => {
    const sets: readonly SetLines[] = [setter.lines(what, 'small', most), setter.lines(which, 10, most)];
    const own = Math.max(...sets.flatMap(({ lines }) => lines.map(({ width_pt }) => width_pt)));
    return { sets, width: own + 2 * pad, rows: Math.max(...sets.map(({ lines }) => lines.length)) };
  });
  const tall = high + (Math.max(...cells.map(({ rows }) => rows)) - 1) * 13;
  const own = setter.lines(title, 11, width * 0.24, 'strong');
  return band(
    tall,
    (canvas, under, { x, y }) => {
      const drawAll = () => {
        drawLines(canvas, setter, own, {
          x: setter.place(x, width, pad, width - 2 * pad),
          y: y + 3,
          width: width - 2 * pad,
        });
        let from = width;
        for (const cell of [...cells].reverse()) {
          from -= cell.width;
          let top = y + 2.5;
          for (const set of cell.sets) {
            const inner = cell.width - 2 * pad;
            drawLines(canvas, setter, set, { x: setter.place(x, width, from + pad, inner), y: top, width: inner });
            top += set.height_pt;
          }
        }
      };
      canvas.within(canvas.branch(under, 'P'), 'P', drawAll);
      canvas.unread(() => {
        canvas.box(x, y, width, tall, lines_pt.edge);
        let from = width;
        for (const cell of [...cells].reverse()) {
          from -= cell.width;
          canvas.fill(setter.place(x, width, from, lines_pt.edge), y, lines_pt.edge, tall, '#000');
        }
      });
    },
    { before_pt: 5 },
  );
}
