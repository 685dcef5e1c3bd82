import type { PlanePoint } from '../../map/index.ts';

/** Corners are cut where the line beside them would run far off [times the distance]. Ours. */
const sharpest = 2;

/**
 * A line that runs beside another, at its right as it is gone: so the way out and the way back lie beside each other, and crews on one
 * river too.
 *
 * @param line - points of the picture [px]
 * @param aside - how far to the right of it [px]
 */
export function beside(line: readonly PlanePoint[], aside: number): readonly PlanePoint[] {
  const points = line.filter(([x, y], i) => i === 0 || x !== line[i - 1]![0] || y !== line[i - 1]![1]);
  if (points.length < 2) return points;
  const rights = points.slice(1).map(([x, y], i): PlanePoint => {
    const [east, south] = [x - points[i]![0], y - points[i]![1]];
    const length = Math.hypot(east, south);
    return [-south / length, east / length];
  });
  return points.map(([x, y], i): PlanePoint => {
    const [a, b] = [rights[i - 1] ?? rights[i]!, rights[i] ?? rights[i - 1]!];
    const [east, south] = [a[0] + b[0], a[1] + b[1]];
    const square = (east * east + south * south) / 2;
    // Half the sum of two rights is shorter the sharper the corner is; where it turns round there is none.
    const times = square < 1e-9 ? 0 : Math.min(sharpest, 1 / Math.sqrt(square / 2));
    const length = Math.hypot(east, south) || 1;
    return [x + (aside * times * east) / length, y + (aside * times * south) / length];
  });
}
