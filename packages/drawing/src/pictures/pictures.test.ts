import { describe, expect, it } from 'vitest';
import { fill, pen, stroke } from '../charts/strokes.ts';
import type { Shape } from '../sheet/shapes.ts';
import { carePicture, carePictureIds } from './index.ts';
import { closedShareOf, inkOf, outsideOf, pathsOf, shareOf, thinShareOf } from './raster.testing.ts';
import { box, not } from './signs.ts';

/** Units of the square that are 0.35 and 0.5 mm where it is printed 30 mm wide: the least line and the least gap. */
const [leastLine, leastGap] = [0.35 / 0.3, 0.5 / 0.3];
/** Of the ink: what tips of jaws and leaves, and corners where lines meet, come to. Ours. */
const [mostThin, mostClosed] = [0.012, 0.025];

const isOnlyPaths = (shapes: readonly Shape[]): boolean =>
  shapes.every((one) => (one.kind === 'group' ? isOnlyPaths(one.shapes) : one.kind === 'path'));

/** How x and y of the ink go together: near 1 down to the right, near -1 up to the right. */
function slantOf(dots: Uint8Array): number {
  const wide = Math.sqrt(dots.length);
  const inked = [...dots.keys()]
    .filter((at) => dots[at] === 1)
    .map((at) => [at % wide, Math.floor(at / wide)] as const);
  const mean = (of: (x: number, y: number) => number) =>
    inked.reduce((sum, [x, y]) => sum + of(x, y), 0) / inked.length;
  const [mx, my] = [mean((x) => x), mean((_, y) => y)];
  const [xx, yy] = [mean((x) => (x - mx) ** 2), mean((_, y) => (y - my) ** 2)];
  return mean((x, y) => (x - mx) * (y - my)) / Math.sqrt(xx * yy);
}

describe('the measures of a print', () => {
  const square = [fill(box(20, 20, 50, 40), 'ink')];

  it('tell ink of paper, and what stands outside', () => {
    expect(shareOf(inkOf(square))).toBeCloseTo(0.2, 3);
    expect(shareOf(inkOf([...square, fill(box(30, 30, 10, 10), 'paper')]))).toBeCloseTo(0.19, 3);
    expect(outsideOf(inkOf(square))).toBe(0);
    expect(outsideOf(inkOf([stroke('M50 50H99.9', pen('cut', 'ink'))]))).toBeGreaterThan(0);
  });

  it('see a line that is too thin and a gap that is too narrow', () => {
    expect(thinShareOf(inkOf([stroke('M10 50H90', pen('thin', 'ink'))]), leastLine)).toBeGreaterThan(0.9);
    expect(thinShareOf(inkOf([stroke('M10 50H90', pen('edge', 'ink'))]), leastLine)).toBeLessThan(mostThin);
    const pair = (apart: number) => inkOf([fill(box(10, 40, 80, 4), 'ink'), fill(box(10, 44 + apart, 80, 4), 'ink')]);
    expect(closedShareOf(pair(1.2), leastGap)).toBeGreaterThan(0.1);
    expect(closedShareOf(pair(2), leastGap)).toBe(0);
  });
});

describe('the care pictures', () => {
  for (const id of carePictureIds)
    it(`${id} is legible at 30 mm`, () => {
      const { shapes, width, height } = carePicture(id);
      expect([width, height]).toEqual([100, 100]);
      expect(isOnlyPaths(shapes)).toBe(true);
      for (const { d, pen: own, ground } of pathsOf(shapes)) {
        expect(d).not.toMatch(/NaN|Infinity|undefined/);
        expect(['ink', 'paper', 'none']).toContain(ground);
        if (own !== null) expect(['cut ink none', 'edge ink none']).toContain(`${own.weight} ${own.ink} ${own.dash}`);
      }
      const ink = inkOf(shapes);
      expect(outsideOf(ink)).toBe(0);
      expect(shareOf(ink)).toBeGreaterThan(0.08);
      expect(shareOf(ink)).toBeLessThan(0.22);
      expect(thinShareOf(ink, leastLine)).toBeLessThan(mostThin);
      expect(closedShareOf(ink, leastGap)).toBeLessThan(mostClosed);
    });

  it('what must not be has a stroke down to the right, across the whole or over the drop, and nothing else has one', () => {
    const strokes = carePictureIds.flatMap((id) =>
      carePicture(id).shapes.flatMap((one) =>
        one.kind === 'group' && one.part === 'not' ? [[id, one.shapes] as const] : [],
      ),
    );
    const whole = not();
    const drawn = JSON.stringify(whole.kind === 'group' ? whole.shapes : null);
    const across = strokes.filter(([, shapes]) => JSON.stringify(shapes) === drawn);
    expect(across.map(([id]) => id)).toEqual(['doNotDip', 'keepChlorineAway']);
    expect(strokes.map(([id]) => id)).toEqual(['doNotDip', 'closedTap', 'keepChlorineAway']);
    for (const [, shapes] of strokes) expect(slantOf(inkOf(shapes))).toBeGreaterThan(0.9);
  });

  it('no two are alike', () => {
    const drawn = carePictureIds.map((id) => JSON.stringify(carePicture(id).shapes));
    expect(new Set(drawn).size).toBe(carePictureIds.length);
    expect(carePictureIds.length).toBeGreaterThanOrEqual(12);
  });
});
