import type { Shape } from '../sheet/shapes.ts';
import type { BuiltTank } from './building.ts';
import { area, boxOf, isFine, line, type Point, plain, unmeasured, type View } from './view.ts';

/** How deep what settled is drawn where nobody says: in a settling tank, in another [m]. Ours. */
const usualDepth_m = { settling: 0.16, storage: 0.05 } as const;

/** What settles: a layer as deep as it is said to be; else a thin uneven one, deeper in a settling tank. */
export function sludge(view: View, tank: BuiltTank, x: number, depth_m: number | null): readonly Shape[] {
  const width = tank.diameter_m.value;
  const foot = tank.standHeight_m.value;
  if (depth_m !== null && depth_m > 0) return [layer(view, tank, x, Math.min(depth_m, tank.overflowHeight_m.value))];
  if (!isFine(view)) return [];
  const deep = usualDepth_m[tank.role];
  const count = Math.min(60, Math.round(width / 0.06));
  const dots = Array.from({ length: count }, (_, nth): readonly Point[] => {
    const at = x - width / 2 + 0.04 + ((width - 0.08) * (nth + 0.5)) / count;
    const up = deep * (0.25 + 0.6 * Math.abs(Math.sin(nth * 2.4)));
    return boxOf(at - 0.012, foot + up - 0.01, 0.024, 0.02);
  });
  return [area(view, 'ink', null, ...dots)];
}

const layer = (view: View, tank: BuiltTank, x: number, deep_m: number): Shape => {
  const width = tank.diameter_m.value;
  return area(view, 'mark', ['thin', plain], boxOf(x - width / 2, tank.standHeight_m.value, width, deep_m));
};

/**
 * The walls that water must pass around, one less than there are cells: over one, under the next. How far apart they stand
 * nobody measured.
 */
export function cellWalls(view: View, tank: BuiltTank, x: number): readonly Shape[] {
  const { cells_count, diameter_m, overflowHeight_m, standHeight_m, height_m } = tank;
  const foot = standHeight_m.value;
  const water = overflowHeight_m.value;
  return Array.from({ length: cells_count - 1 }, (_, nth): Shape => {
    const at = x - diameter_m.value / 2 + (diameter_m.value * (nth + 1)) / cells_count;
    const isOver = nth % 2 === 0;
    const [low, high] = isOver ? [0, water * 0.72] : [water * 0.28, height_m.value];
    return line(view, 'cut', unmeasured, [
      [at, foot + low],
      [at, foot + high],
    ]);
  });
}
