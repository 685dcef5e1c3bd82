import type { Shape } from '../sheet/shapes.ts';
import type { BuiltRoof } from './building.ts';
import { type RoofOutline, sheetAt } from './roofOutline.ts';
import { area, type Brush, beside, boxOf, isFine, line, type Point, plain, unmeasured, type View } from './view.ts';
import type { House } from './wall.ts';

const rafter_m = 0.12;
const purlin_m = 0.05;

/** The roof cut across its ridge: truss, rafters, purlins, sheet; or a slab. */
export function roofSection(view: View, roof: BuiltRoof, outline: RoofOutline, house: House): readonly Shape[] {
  const brush = isMeasured(roof) ? plain : unmeasured;
  if (roof.form === 'flat') return slab(view, outline, brush);
  const rafters = beside(outline.top, -(purlin_m + rafter_m));
  const shapes: Shape[] = [];
  if (roof.form !== 'oneSlope') shapes.push(...truss(view, outline, house));
  const under = beside(outline.top, -purlin_m);
  shapes.push(area(view, 'paper', ['thin', plain], [...under, ...[...rafters].reverse()]));
  if (isFine(view)) shapes.push(purlins(view, outline));
  shapes.push(line(view, 'cut', brush, withLap(outline.top)));
  if (roof.form !== 'oneSlope') shapes.push(ridgeCap(view, outline));
  return shapes;
}

/** Is what gives the roof its shape in section known? */
export function isMeasured({ width_m, pitch_deg, eaveHeight_m, form, isFormKnown }: BuiltRoof): boolean {
  return (
    isFormKnown && [width_m, eaveHeight_m, ...(form === 'flat' ? [] : [pitch_deg])].every(({ how }) => how !== 'usual')
  );
}

/** The top line of a roof alone, as it would be. */
export function proposedRoof(view: View, outline: RoofOutline, brush: Brush): Shape {
  return line(view, 'edge', brush, outline.top);
}

/** The sheet runs a little past its eave, so that water falls into the gutter. */
function withLap(top: readonly Point[]): readonly Point[] {
  const [first, second] = [top[0]!, top[1]!];
  const [before, last] = [top[top.length - 2]!, top[top.length - 1]!];
  const on = ([x0, y0]: Point, [x1, y1]: Point, by: number): Point => {
    const share = by / (Math.hypot(x1 - x0, y1 - y0) || 1);
    return [x1 + (x1 - x0) * share, y1 + (y1 - y0) * share];
  };
  return [on(second, first, 0.03), ...top.slice(1, -1), on(before, last, 0.03)];
}

function purlins(view: View, outline: RoofOutline): Shape {
  const outlines: (readonly Point[])[] = [];
  for (let index = 1; index < outline.top.length; index++) {
    const [[x0, y0], [x1, y1]] = [outline.top[index - 1]!, outline.top[index]!];
    const length = Math.hypot(x1 - x0, y1 - y0);
    const count = Math.min(60, Math.max(1, Math.round(length / 0.9)));
    const [ux, uy] = [(x1 - x0) / length, (y1 - y0) / length];
    for (let nth = 0; nth <= count; nth++) {
      const along = 0.1 + ((length - 0.2) * nth) / count;
      const [x, y] = [x0 + ux * along, y0 + uy * along];
      const [w, h] = [0.04, purlin_m];
      outlines.push([
        [x - ux * w, y - uy * w],
        [x + ux * w, y + uy * w],
        [x + ux * w + uy * h, y + uy * w - ux * h],
        [x - ux * w + uy * h, y - uy * w - ux * h],
      ]);
    }
  }
  return area(view, 'ink', null, ...outlines);
}

/** A tie from wall to wall, a post under the ridge, and struts where the span wants them. */
function truss(view: View, outline: RoofOutline, { left_m, right_m }: House): readonly Shape[] {
  const span = right_m - left_m;
  const tie = sheetAt(outline, left_m) - 0.22;
  const middle = (left_m + right_m) / 2;
  const depth = (x: number) => sheetAt(outline, x) - purlin_m - rafter_m;
  if (depth(middle) - tie < 0.25 || span < 2) return [];
  const bar = (from: Point, to: Point): Shape => {
    const axis = [from, to];
    const [a, b] = [beside(axis, 0.04), beside(axis, -0.04)];
    return area(view, 'paper', ['thin', plain], [...a, ...[...b].reverse()]);
  };
  const shapes: Shape[] = [];
  const panels = span < 4 || !isFine(view) ? 1 : Math.min(12, Math.max(2, Math.round(span / 4.5)));
  for (let nth = 1; nth < panels; nth++) {
    const out = (span / 2) * (nth / panels);
    const foot = (span / 2) * ((nth - 1) / panels);
    for (const side of [-1, 1]) {
      shapes.push(bar([middle + side * foot, tie + 0.04], [middle + side * out, depth(middle + side * out)]));
      if (nth > 1) shapes.push(bar([middle + side * foot, tie], [middle + side * foot, depth(middle + side * foot)]));
    }
  }
  shapes.push(bar([middle, tie], [middle, depth(middle)]));
  shapes.push(area(view, 'paper', ['thin', plain], boxOf(left_m, tie - 0.05, span, 0.1)));
  return shapes;
}

function ridgeCap(view: View, { top, tan }: RoofOutline): Shape {
  const [x, y] = top[1]!;
  const out = 0.16;
  const lift = 0.03;
  return line(view, 'edge', plain, [
    [x - out, y + lift - out * tan],
    [x, y + lift],
    [x + out, y + lift - out * tan],
  ]);
}

/** A slab of concrete with a kerb on its high side, in the fall it drains by. */
function slab(view: View, { top, width_m }: RoofOutline, brush: Brush): readonly Shape[] {
  const [[x0, y0], [x1, y1]] = [top[0]!, top[1]!];
  const kerb = 0.16;
  const outline: readonly Point[] = [
    [x0, y0 + kerb],
    [x0 + Math.min(0.15, width_m / 8), y0 + kerb],
    [x0 + Math.min(0.15, width_m / 8), y0],
    [x1, y1],
    [x1, y1 - 0.18],
    [x0, y1 - 0.18],
  ];
  return [area(view, 'concrete', ['edge', brush], outline)];
}
