import type { BarrierKind } from '@eavewell/engine';
import { across, down, fill, pen, rect, ring, stroke } from '../charts/strokes.ts';
import type { Shape } from '../sheet/shapes.ts';
import { px } from '../sheet/svgOf.ts';

/** What stands on the way of the water: where it comes from, what is credited with taking germs out, the cup. */
export type WayStopKind = 'roof' | 'source' | 'membrane' | 'chlorine' | BarrierKind | 'cup';

/** Half as wide as a sign, and how far it reaches over and under the pipe it stands on [px]. */
const [half, over, under] = [13, 16, 14] as const;

const ink = pen('edge', 'ink');
const fine = pen('thin', 'ink');

/** The sign of a stop, its middle on the pipe at x, y: our own plain shapes, of no product. */
export function wayGlyph(kind: WayStopKind, x: number, y: number): readonly Shape[] {
  return drawn[kind](x, y);
}

const box = (x: number, y: number) => rect(x - half, y - over, 2 * half, over + under);

const roof = (x: number, y: number): readonly Shape[] => [
  stroke(`M${px(x - half - 3)} ${px(y)}L${px(x)} ${px(y - over)}L${px(x + half + 3)} ${px(y)}`, pen('cut', 'ink')),
  stroke(`M${px(x - 9)} ${px(y - 1)}V${px(y + under)}M${px(x + 9)} ${px(y - 1)}V${px(y + under)}`, fine),
];

/** Lines of water that flows by. */
const source = (x: number, y: number): readonly Shape[] =>
  [-6, 0, 6].map((by) =>
    stroke(
      `M${px(x - half)} ${px(y + by)}q${px(half / 2)} -5 ${px(half)} 0t${px(half)} 0`,
      pen(by === 0 ? 'edge' : 'thin', 'waterline'),
    ),
  );

/** A tank with water up to a share of its height. */
const tank = (x: number, y: number, full: number): readonly Shape[] => {
  const top = y + under - full * (over + under);
  return [
    fill(rect(x - half, top, 2 * half, y + under - top), 'water'),
    stroke(box(x, y), ink),
    stroke(across(x - half, top, x + half), pen('thin', 'waterline')),
  ];
};

const drawn: Readonly<Record<WayStopKind, (x: number, y: number) => readonly Shape[]>> = {
  roof,
  source,
  /** An upright pipe with its closed foot. */
  firstFlush: (x, y) => [
    fill(rect(x - 5, y - over, 10, over + under), 'paper', ink),
    fill(rect(x - 5, y + 2, 10, under - 2), 'water', fine),
    fill(rect(x - 7, y + under - 3, 14, 4), 'ink'),
  ],
  settling: (x, y) => [
    ...tank(x, y, 0.75),
    fill(rect(x - half, y + under - 5, 2 * half, 5), 'mark'),
    stroke(down(x, y - over, y + under - 9), fine),
  ],
  storageTime: (x, y) => [
    ...tank(x, y, 0.7),
    stroke(ring(x, y + 3, 6), fine),
    stroke(`M${px(x)} ${px(y - 1)}V${px(y + 3)}H${px(x + 4)}`, fine),
  ],
  /** Grains on a floor. */
  filter: (x, y) => [fill(box(x, y), 'concrete', ink), stroke(across(x - half, y + under - 5, x + half), fine)],
  /** A housing with its fibres. */
  membrane: (x, y) => [
    fill(rect(x - 8, y - over, 16, over + under), 'waterline', ink),
    ...[-3.5, 0, 3.5].map((by) => stroke(down(x + by, y - over + 4, y + under - 4), pen('thin', 'paper'))),
    fill(rect(x - 10, y - over - 2, 20, 4), 'ink'),
    fill(rect(x - 10, y + under - 2, 20, 4), 'ink'),
  ],
  /** A bottle with a scale. */
  chlorine: (x, y) => [
    fill(
      `M${px(x - 4)} ${px(y - over)}h8v6l5 5v${px(under + over - 11)}h-18v${px(-(under + over - 11))}l5 -5Z`,
      'paper',
      ink,
    ),
    stroke([2, 6, 10].map((by) => `M${px(x + 3)} ${px(y + by)}h6`).join(''), fine),
  ],
  /** A lamp and its rays. */
  ultraviolet: (x, y) => [
    fill(rect(x - 3, y - over + 3, 6, over + under - 6), 'paper', ink),
    stroke([-8, -1, 6].map((by) => `M${px(x - 6)} ${px(y + by)}h-6M${px(x + 6)} ${px(y + by)}h6`).join(''), fine),
  ],
  /** A pot on its flame. */
  boiling: (x, y) => [
    fill(rect(x - half, y - 6, 2 * half, 14), 'water', ink),
    stroke(across(x - half - 4, y - 6, x + half + 4), ink),
    stroke([-6, 0, 6].map((by) => `M${px(x + by)} ${px(y - 9)}q-3 -3 0 -6`).join(''), fine),
    stroke(`M${px(x - 7)} ${px(y + under)}l3 -4l4 4l4 -4l3 4`, fine),
  ],
  other: (x, y) => [fill(box(x, y), 'paper', ink)],
  cup: (x, y) => [
    fill(`M${px(x - 8)} ${px(y - 5)}h16l-2 ${px(under + 3)}h-12Z`, 'water'),
    stroke(
      `M${px(x - 9)} ${px(y - over + 2)}L${px(x - 6)} ${px(y + under)}H${px(x + 6)}L${px(x + 9)} ${px(y - over + 2)}`,
      ink,
    ),
    stroke(across(x - 8, y - 5, x + 8), pen('thin', 'waterline')),
  ],
};
