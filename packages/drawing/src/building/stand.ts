import type { Shape } from '../sheet/shapes.ts';
import type { BuiltTank } from './building.ts';
import { area, type Brush, boxOf, isFine, line, type Point, plain, unmeasured, type View } from './view.ts';

const course_m = 0.15;
const block_m = 0.4;
const out_m = 0.12;
const pad_m = 0.12;

/** How far a stand reaches beyond its tank, and its footing beyond the stand [m]. */
export const standOut_m = out_m + 0.1;

/** Masonry in courses on a concrete footing, under a tank whose middle is x. */
export function stand(view: View, { diameter_m, standHeight_m }: BuiltTank, x: number): readonly Shape[] {
  const height = standHeight_m.value;
  const brush = standHeight_m.how === 'usual' ? unmeasured : plain;
  const half = diameter_m.value / 2 + out_m;
  const foot = boxOf(x - half - 0.1, -pad_m - 0.06, 2 * half + 0.2, pad_m + 0.06);
  const shapes: Shape[] = [area(view, 'concrete', ['edge', brush], foot)];
  if (height < 0.03) return shapes;
  shapes.push(area(view, 'paper', ['edge', brush], boxOf(x - half, 0, 2 * half, height)));
  if (isFine(view) || height > 0.6) shapes.push(courses(view, x - half, 2 * half, height));
  return shapes;
}

/** The outline alone, for one that is proposed. */
export function proposedStand(view: View, { diameter_m, standHeight_m }: BuiltTank, x: number, brush: Brush): Shape {
  const half = diameter_m.value / 2 + out_m;
  return area(view, 'none', ['thin', brush], boxOf(x - half, 0, 2 * half, standHeight_m.value));
}

/** Courses with the joints of each second one moved by half a block. */
function courses(view: View, left: number, width: number, height: number): Shape {
  const count = Math.min(60, Math.max(1, Math.round(height / course_m)));
  const tall = height / count;
  const lines: (readonly Point[])[] = [];
  const blocks = Math.min(60, Math.max(1, Math.round(width / block_m)));
  for (let nth = 0; nth < count; nth++) {
    const y = nth * tall;
    if (nth > 0)
      lines.push([
        [left, y],
        [left + width, y],
      ]);
    for (let joint = nth % 2 === 0 ? 1 : 0.5; joint < blocks; joint++) {
      const x = left + (width * joint) / blocks;
      lines.push([
        [x, y],
        [x, y + tall],
      ]);
    }
  }
  return line(view, 'hair', plain, ...lines);
}
