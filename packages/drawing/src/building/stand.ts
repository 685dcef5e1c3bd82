import type { Shape } from '../sheet/shapes.ts';
import type { BuiltTank } from './building.ts';
import { area, type Brush, boxOf, isFine, line, type Point, plain, unmeasured, type View } from './view.ts';

const course_m = 0.15;
const block_m = 0.4;
const pad_m = 0.12;

/** How far a footing reaches beyond its stand [m]. */
const footOut_m = 0.1;
/** How far a stand with its footing reaches from its middle [m]. */
export const footOf = ({ stand: { base_m, pads } }: BuiltTank): number =>
  Math.max(base_m.value, pads?.side_m ?? 0) / 2 + (pads === null ? footOut_m : 0);

/** Masonry in courses on a concrete footing, or legs on pads where pads were counted, under a tank whose middle is x. */
export function stand(view: View, tank: BuiltTank, x: number): readonly Shape[] {
  if (tank.stand.pads !== null) return onPads(view, tank, tank.stand.pads, x);
  const { standHeight_m, stand: own } = tank;
  const height = standHeight_m.value;
  const brush = standHeight_m.how === 'usual' ? unmeasured : plain;
  const half = own.base_m.value / 2;
  const foot = boxOf(x - half - footOut_m, -pad_m - 0.06, 2 * half + 2 * footOut_m, pad_m + 0.06);
  const shapes: Shape[] = [area(view, 'concrete', ['edge', brush], foot)];
  if (height < 0.03) return shapes;
  shapes.push(area(view, 'paper', ['edge', brush], boxOf(x - half, 0, 2 * half, height)));
  if (isFine(view) || height > 0.6) shapes.push(courses(view, x - half, 2 * half, height));
  return shapes;
}

/** As many of square pads as are seen from one side. */
const padsAcross = (count: number): number => Math.ceil(Math.sqrt(count));

/** Where the middles of the pads stand to either side [m]: the outer edges of the outer ones are the base apart. */
function padsAt({ stand: { base_m } }: BuiltTank, { count, side_m }: Pads): readonly number[] {
  const across = padsAcross(count);
  const out = Math.max(0, base_m.value / 2 - side_m / 2);
  return across === 1 || out === 0
    ? [0]
    : Array.from({ length: across }, (_, nth) => -out + (2 * out * nth) / (across - 1));
}

/** The middles of all pads from above [m from the tank's middle]: as many across as deep, the last row as it comes. */
export function padPlaces(tank: BuiltTank): readonly Point[] {
  const { pads } = tank.stand;
  if (pads === null) return [];
  const across = padsAt(tank, pads);
  const rows = Math.ceil(pads.count / across.length);
  const out = Math.max(0, tank.stand.base_m.value / 2 - pads.side_m / 2);
  return Array.from({ length: pads.count }, (_, nth): Point => {
    const row = Math.floor(nth / across.length);
    return [across[nth % across.length]!, rows === 1 ? 0 : out - (2 * out * row) / (rows - 1)];
  });
}

type Pads = NonNullable<BuiltTank['stand']['pads']>;

/** Legs on pads of their true side, braced where they are tall, with a floor under the tank. The legs themselves nobody measured. */
function onPads(view: View, tank: BuiltTank, pads: Pads, x: number): readonly Shape[] {
  const { standHeight_m, diameter_m, stand: own } = tank;
  const height = standHeight_m.value;
  const brush = standHeight_m.how === 'usual' || own.base_m.how === 'usual' ? unmeasured : plain;
  const middles = padsAt(tank, pads);
  const { side_m } = pads;
  const shapes: Shape[] = [
    area(
      view,
      'concrete',
      ['edge', brush],
      ...middles.map((at) => boxOf(x + at - side_m / 2, -footing_m, side_m, footing_m)),
    ),
  ];
  if (height < 0.03) return shapes;
  const floor = Math.min(0.12, height / 2);
  const leg = Math.min(0.14, side_m * 0.5);
  shapes.push(
    ...braces(
      view,
      middles.map((at) => x + at),
      height - floor,
    ),
  );
  shapes.push(
    area(view, 'paper', ['thin', brush], ...middles.map((at) => boxOf(x + at - leg / 2, 0, leg, height - floor))),
  );
  const half = Math.max(diameter_m.value / 2 + 0.05, middles[middles.length - 1]! + leg / 2);
  shapes.push(area(view, 'concrete', ['edge', brush], boxOf(x - half, height - floor, 2 * half, floor)));
  return shapes;
}

/** Depth of a pad [m]. Ours. */
const footing_m = 0.18;

/** Crossed between the legs, a panel for each metre or so. */
function braces(view: View, legs: readonly number[], height: number): readonly Shape[] {
  if (height < 0.9 || legs.length < 2) return [];
  const panels = Math.min(8, Math.max(1, Math.round(height / 1.4)));
  const tall = height / panels;
  const lines = legs.slice(1).flatMap((right, nth) =>
    Array.from({ length: panels }, (_, panel): readonly (readonly Point[])[] => [
      [
        [legs[nth]!, panel * tall],
        [right, (panel + 1) * tall],
      ],
      [
        [legs[nth]!, (panel + 1) * tall],
        [right, panel * tall],
      ],
    ]).flat(),
  );
  return [line(view, 'thin', { ink: 'mark', dash: 'none' }, ...lines)];
}

/** The outline alone, for one that is proposed. */
export function proposedStand(view: View, { stand: own, standHeight_m }: BuiltTank, x: number, brush: Brush): Shape {
  const half = own.base_m.value / 2;
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
