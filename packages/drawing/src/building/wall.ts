import type { Shape } from '../sheet/shapes.ts';
import { person } from './people.ts';
import { type RoofOutline, sheetAt } from './roofOutline.ts';
import { area, beyond, boxOf, faint, isFine, line, type Point, plain, type View } from './view.ts';

/** Walls, floor and what is seen beyond the cut: the setting of the roof, which nobody measures. */
export interface House {
  /** Outer faces of the walls, and their thickness. */
  readonly left_m: number;
  readonly right_m: number;
  readonly wall_m: number;
  readonly floor_m: number;
  readonly isRaised: boolean;
  readonly posts_m: readonly number[];
}

const roofDepth_m = 0.2;

export function houseOf(outline: RoofOutline, isFlat: boolean): House {
  const { width_m, overhang_m, eaveHeight_m } = outline;
  const left_m = isFlat ? 0.05 : overhang_m;
  const right_m = width_m - left_m;
  const isRaised = !isFlat && eaveHeight_m >= 3.1 && eaveHeight_m <= 5;
  const floor_m = isRaised ? Math.min(0.75, eaveHeight_m - 2.4) : Math.min(0.15, eaveHeight_m * 0.1);
  const bays = Math.max(1, Math.round((right_m - left_m) / 2.6));
  const inner = right_m - left_m - 0.16;
  const posts_m = Array.from({ length: bays + 1 }, (_, index) => left_m + 0.08 + (inner * index) / bays);
  return { left_m, right_m, wall_m: isFlat ? 0.15 : 0.12, floor_m, isRaised, posts_m };
}

/** Height of the underside of the roof over a wall. */
const under = (outline: RoofOutline, x: number) => Math.max(sheetAt(outline, x) - roofDepth_m, 0.2);

/** The room beyond the cut: boards, windows, someone who stands there. */
export function roomBeyond(view: View, outline: RoofOutline, house: House, isGable: boolean): readonly Shape[] {
  const { left_m, right_m, floor_m } = house;
  const top = (x: number) => (isGable ? under(outline, x) : Math.min(under(outline, left_m), under(outline, right_m)));
  const middle = (left_m + right_m) / 2;
  const corners: readonly Point[] = [
    [left_m, floor_m],
    [left_m, top(left_m)],
    [middle, top(middle)],
    [right_m, top(right_m)],
    [right_m, floor_m],
  ];
  const shapes: Shape[] = [area(view, 'paper', null, corners)];
  const clear_m = Math.min(under(outline, left_m), under(outline, right_m)) - floor_m;
  if (isFine(view)) shapes.push(boards(view, house, top));
  if (clear_m >= 1.7 && right_m - left_m > 2) shapes.push(...windows(view, house, clear_m));
  if (clear_m >= 1.75 && right_m - left_m > 1.8) {
    const x = left_m + (right_m - left_m) * 0.62;
    shapes.push(...person(view, 'stands', x, floor_m));
  }
  return shapes;
}

function boards(view: View, { left_m, right_m, floor_m, wall_m }: House, top: (x: number) => number): Shape {
  const span = right_m - left_m - 2 * wall_m;
  const count = Math.min(120, Math.max(1, Math.round(span / 0.28)));
  const lines = Array.from({ length: count - 1 }, (_, index): readonly Point[] => {
    const x = left_m + wall_m + (span * (index + 1)) / count;
    return [
      [x, floor_m],
      [x, top(x)],
    ];
  });
  return line(view, 'hair', faint, ...lines);
}

/** A row of windows, and a second where the wall is tall. */
function windows(view: View, house: House, clear_m: number): readonly Shape[] {
  const rows = clear_m > 4.6 ? [0.95, clear_m - 1.9] : [0.95];
  return rows.flatMap((sill) => windowRow(view, house, sill, Math.min(1.05, clear_m - 1.25)));
}

function windowRow(view: View, { left_m, right_m, floor_m }: House, sill_m: number, height: number): readonly Shape[] {
  const span = right_m - left_m;
  const count = Math.min(14, Math.max(1, Math.floor(span / 2.4)));
  const sill = floor_m + sill_m;
  if (height < 0.3) return [];
  const shapes: Shape[] = [];
  for (let index = 0; index < count; index++) {
    const isBoard = count >= 3 && index % 3 === 1 && sill_m < 1;
    const wide = Math.min(isBoard ? 1.8 : 1.1, span / count - 0.4);
    const x = left_m + (span * (index + 0.5)) / count - wide / 2;
    shapes.push(area(view, 'paper', ['hair', beyond], boxOf(x, sill, wide, height)));
    if (isBoard)
      shapes.push(
        line(view, 'hair', beyond, [
          [x, sill + 0.06],
          [x + wide, sill + 0.06],
        ]),
      );
    else if (isFine(view)) shapes.push(louvres(view, x, sill, wide, height));
    else
      shapes.push(
        line(view, 'hair', beyond, [
          [x + wide / 2, sill],
          [x + wide / 2, sill + height],
        ]),
      );
  }
  return shapes;
}

function louvres(view: View, x: number, y: number, width: number, height: number): Shape {
  const lines: (readonly Point[])[] = [
    [
      [x + width / 2, y],
      [x + width / 2, y + height],
    ],
  ];
  const count = Math.floor(height / 0.14);
  for (let index = 1; index <= count; index++) {
    const at = y + (height * index) / (count + 1);
    for (const from of [x + 0.07, x + width / 2 + 0.07])
      lines.push([
        [from, at + 0.025],
        [from + width / 2 - 0.14, at - 0.025],
      ]);
  }
  return line(view, 'hair', beyond, ...lines);
}

/** Walls and floor that are cut through, and what they stand on. */
export function cutWalls(view: View, outline: RoofOutline, house: House, isFlat: boolean): readonly Shape[] {
  const { left_m, right_m, wall_m, floor_m, isRaised } = house;
  const wall = (x: number) => boxOf(x, floor_m, wall_m, under(outline, x + wall_m / 2) - floor_m);
  const walls = [wall(left_m), wall(right_m - wall_m)];
  const shapes: Shape[] = [
    isFlat ? area(view, 'masonry', ['thin', plain], ...walls) : area(view, 'ink', null, ...walls),
  ];
  if (isRaised) {
    shapes.push(
      line(view, 'cut', plain, [
        [left_m - 0.08, floor_m],
        [right_m + 0.08, floor_m],
      ]),
      area(view, 'paper', ['thin', plain], boxOf(left_m, floor_m - 0.22, right_m - left_m, 0.15)),
    );
  } else
    shapes.push(
      area(view, 'concrete', ['edge', plain], boxOf(left_m - 0.1, -0.08, right_m - left_m + 0.2, floor_m + 0.08)),
    );
  return shapes;
}

/** Posts and their footings, or the strip under a slab: what stands in the ground. */
export function footings(view: View, { posts_m, floor_m, isRaised, left_m, right_m, wall_m }: House): readonly Shape[] {
  if (!isRaised) {
    const strips = [left_m, right_m - wall_m].map((x) => boxOf(x - 0.12, -0.45, wall_m + 0.24, 0.4));
    return [area(view, 'concrete', ['thin', plain], ...strips)];
  }
  const posts = posts_m.map((x) => boxOf(x - 0.06, -0.3, 0.12, floor_m + 0.08));
  const feet = posts_m.map((x) => boxOf(x - 0.24, -0.48, 0.48, 0.2));
  return [area(view, 'concrete', ['edge', plain], ...feet), area(view, 'paper', ['thin', plain], ...posts)];
}
