import { alike_fraction, mostSteps_count } from './constants.ts';

/**
 * At which point is this function lowest? Nelder and Mead's downhill simplex: the highest corner is reflected through the others, stretched, drawn in, or all are drawn to the lowest.
 * `Infinity` stands for points that are not allowed.
 */
export function lowestPoint(
  valueAt: (point: readonly number[]) => number,
  start: readonly number[],
  steps: readonly number[],
): readonly number[] {
  const corner = (point: readonly number[]) => ({ point, value: valueAt(point) });
  const corners = [corner(start), ...steps.map((step, i) => corner(start.map((x, j) => (i === j ? x + step : x))))];
  for (let count = 0; count < mostSteps_count; count++) {
    corners.sort((a, b) => a.value - b.value);
    const [best, worst] = [corners[0]!, corners.at(-1)!];
    if (worst.value - best.value <= alike_fraction * (1 + Math.abs(best.value))) break;
    const others = corners.slice(0, -1);
    const middle = start.map((_, j) => others.reduce((sum, { point }) => sum + point[j]!, 0) / others.length);
    const along = (share: number) => corner(middle.map((x, j) => x + share * (worst.point[j]! - x)));
    const reflected = along(-1);
    const tried = nextCorner(reflected, best.value, others.at(-1)!.value, worst.value, along);
    if (tried) corners[corners.length - 1] = tried;
    else
      for (let i = 1; i < corners.length; i++)
        corners[i] = corner(corners[i]!.point.map((x, j) => (x + best.point[j]!) / 2));
  }
  return corners.reduce((a, b) => (b.value < a.value ? b : a)).point;
}

interface Corner {
  readonly point: readonly number[];
  readonly value: number;
}

/** What stands in the highest corner's stead; null where nothing on its line is lower. */
function nextCorner(
  reflected: Corner,
  lowest: number,
  nextHighest: number,
  highest: number,
  along: (share: number) => Corner,
): Corner | null {
  if (reflected.value < lowest) {
    const stretched = along(-2);
    return stretched.value < reflected.value ? stretched : reflected;
  }
  if (reflected.value < nextHighest) return reflected;
  const drawnIn = along(reflected.value < highest ? -0.5 : 0.5);
  return drawnIn.value < Math.min(reflected.value, highest) ? drawnIn : null;
}
