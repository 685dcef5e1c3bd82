import { drawLines, type Setter } from '../document/setter.ts';
import { lines_pt, mm } from '../document/sheetSize.ts';
import { type Band, band } from '../flow/index.ts';

const [over_pt, gap_pt] = [mm(11), mm(6)] as const;

/** Lines side by side to be written on, what for under each. */
export function signatures(setter: Setter, width: number, labels: readonly string[]): Band {
  const own = (width - gap_pt * (labels.length - 1)) / labels.length;
  const sets = labels.map((label) => setter.lines(label, 9.5, own));
  const high = over_pt + 2 + Math.max(...sets.map(({ height_pt }) => height_pt));
  return band(high, (canvas, under, { x, y }) => {
    sets.forEach((set, nth) => {
      const left = setter.place(x, width, nth * (own + gap_pt), own);
      canvas.unread(() => canvas.rule(left, y + over_pt, own, lines_pt.edge));
      const room = { x: left, y: y + over_pt + 2, width: own };
      canvas.within(canvas.branch(under, 'P'), 'P', () => drawLines(canvas, setter, set, room));
    });
  });
}
