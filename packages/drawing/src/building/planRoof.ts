import type { GroupShape, Shape } from '../sheet/shapes.ts';
import type { BuiltGutter, BuiltRoof } from './building.ts';
import type { PlacedRoof } from './layout.ts';
import { group } from './sectionParts.ts';
import {
  area,
  at,
  type Brush,
  beyond,
  proposed as blue,
  boxOf,
  disc,
  isFine,
  line,
  type Point,
  plain,
  unmeasured,
  type View,
} from './view.ts';

export const hasTwoSlopes = ({ form }: BuiltRoof) => form === 'gable' || form === 'hip';

/** How much of the right and the left eave has a gutter, as shares of their length. */
export function gutteredEaves(roof: BuiltRoof): { readonly right: number; readonly left: number } {
  const share = roof.gutteredFraction.value;
  if (!hasTwoSlopes(roof)) return { right: share, left: 0 };
  return { right: Math.min(1, share * 2), left: Math.max(0, share * 2 - 1) };
}

export function roofPlan(view: View, { roof, proposed, x }: PlacedRoof): GroupShape {
  const local = at(view, x);
  const [width, half] = [roof.width_m.value, roof.length_m.value / 2];
  const isKnown = roof.width_m.how !== 'usual' && roof.length_m.how !== 'usual';
  const outline = area(local, 'paper', ['thin', isKnown ? plain : unmeasured], boxOf(0, -half, width, 2 * half));
  const shapes: Shape[] = [outline, ...sheets(local, roof), ...ridges(local, roof), ...arrows(local, roof)];
  if (proposed) shapes.push(...eaves(local, proposed, blue));
  shapes.push(...eaves(local, roof, roof.gutteredFraction.how === 'usual' ? unmeasured : plain));
  shapes.push(...downpipes(local, roof));
  shapes.push(...fallArrows(local, roof));
  return group(`roof:${roof.roofId}`, 'roof', shapes);
}

/** Lines of the sheets, down the slope. */
function sheets(view: View, roof: BuiltRoof): readonly Shape[] {
  if (!isFine(view) || roof.form === 'flat' || roof.form === 'hip') return [];
  const half = roof.length_m.value / 2;
  const count = Math.min(80, Math.round(roof.length_m.value / 0.8));
  const lines = Array.from({ length: Math.max(0, count - 1) }, (_, nth): readonly Point[] => {
    const y = -half + (roof.length_m.value * (nth + 1)) / count;
    return [
      [0, y],
      [roof.width_m.value, y],
    ];
  });
  return [line(view, 'hair', { ink: 'rule', dash: 'none' }, ...lines)];
}

function ridges(view: View, roof: BuiltRoof): readonly Shape[] {
  const [width, half] = [roof.width_m.value, roof.length_m.value / 2];
  const brush: Brush = roof.isFormKnown ? plain : unmeasured;
  const middle = width / 2;
  if (roof.form === 'gable')
    return [
      line(view, 'edge', brush, [
        [middle, -half],
        [middle, half],
      ]),
    ];
  if (roof.form !== 'hip') return [];
  const end = half - Math.min(half, middle);
  return [
    line(view, 'edge', brush, [
      [middle, -end],
      [middle, end],
    ]),
    line(
      view,
      'thin',
      brush,
      [
        [0, half],
        [middle, end],
        [width, half],
      ],
      [
        [0, -half],
        [middle, -end],
        [width, -half],
      ],
    ),
  ];
}

/** The way water runs. */
function arrows(view: View, roof: BuiltRoof): readonly Shape[] {
  const width = roof.width_m.value;
  const long = Math.min(1.4, width * 0.24);
  const head = Math.max(0.12, 4 / view.k);
  const arrow = (from: number, way: 1 | -1, y: number): readonly (readonly Point[])[] => {
    const to = from + way * long;
    return [
      [
        [from, y],
        [to, y],
      ],
      [
        [to - way * head, y + head * 0.6],
        [to, y],
        [to - way * head, y - head * 0.6],
      ],
    ];
  };
  const y = roof.length_m.value * 0.22;
  const ways = hasTwoSlopes(roof)
    ? [...arrow(width * 0.62, 1, y), ...arrow(width * 0.38, -1, y)]
    : arrow(width * 0.4, 1, y);
  return [line(view, 'thin', beyond, ...ways)];
}

/** The guttered share of an eave is heavy; the rest stays thin. */
function eaves(view: View, roof: BuiltRoof, brush: Brush): readonly Shape[] {
  const { right, left } = gutteredEaves(roof);
  const [width, half] = [roof.width_m.value, roof.length_m.value / 2];
  const out = roof.gutter.width_m.value / 2;
  const runs: (readonly Point[])[] = [];
  if (right > 0)
    runs.push([
      [width + out, -half],
      [width + out, -half + 2 * half * right],
    ]);
  if (left > 0)
    runs.push([
      [-out, -half],
      [-out, -half + 2 * half * left],
    ]);
  if (runs.length === 0) return [];
  return [group(`gutter:${roof.roofId}`, 'gutter', [line(view, 'cut', brush, ...runs)])];
}

/** A gutter along an eave whose fall is known: where its arrow and its letters stand, inside the eave [m], and which way. */
export interface Falling {
  readonly fall_mm_per_m: number;
  readonly x: number;
  readonly y: number;
  readonly side: 1 | -1;
}

/** The first gutter is that of the right eave, the second that of the left; each falls to the downpipe at its near end. */
export function fallingGutters(roof: BuiltRoof): readonly Falling[] {
  const { right, left } = gutteredEaves(roof);
  const length = roof.length_m.value;
  const of = (gutter: BuiltGutter | undefined, share: number, x: number, side: 1 | -1): readonly Falling[] => {
    const fall = gutter?.fall_mm_per_m ?? null;
    return fall === null || share <= 0
      ? []
      : [{ fall_mm_per_m: fall, x, y: length * (-0.5 + 0.62 * Math.min(1, share)), side }];
  };
  return [...of(roof.gutters[0], right, roof.width_m.value, 1), ...of(roof.gutters[1], left, 0, -1)];
}

/** Inside the eave, the way the water of its gutter runs; none where it is level. */
function fallArrows(view: View, roof: BuiltRoof): readonly Shape[] {
  const head = 5 / view.k;
  const long = Math.min(roof.length_m.value * 0.2, 44 / view.k);
  const arrows = fallingGutters(roof)
    .filter(({ fall_mm_per_m }) => fall_mm_per_m !== 0)
    .flatMap(({ x, y, side, fall_mm_per_m }): readonly (readonly Point[])[] => {
      const at = x - side * (7 / view.k);
      const way = fall_mm_per_m > 0 ? -1 : 1;
      const to = y + (way * long) / 2;
      return [
        [
          [at, y - (way * long) / 2],
          [at, to],
        ],
        [
          [at - head * 0.6, to - way * head],
          [at, to],
          [at + head * 0.6, to - way * head],
        ],
      ];
    });
  return arrows.length === 0 ? [] : [group(`fall:${roof.roofId}`, 'gutter', [line(view, 'thin', plain, ...arrows)])];
}

/** Downpipes along the right eave, the first at its near end. */
function downpipes(view: View, roof: BuiltRoof): readonly Shape[] {
  const { right, left } = gutteredEaves(roof);
  const [width, half] = [roof.width_m.value, roof.length_m.value / 2];
  const out = roof.gutter.width_m.value / 2;
  const count = Math.min(20, Math.max(1, Math.round(roof.downpipes_count.value)));
  const run = 2 * half * right;
  const points: Point[] = [];
  const onRight = left > 0 && count > 1 ? Math.ceil(count / 2) : count;
  if (right > 0)
    for (let nth = 0; nth < onRight; nth++) points.push([width + out, -half + pitchOf(onRight, nth) * run]);
  if (left > 0 && count > 1)
    for (let nth = 0; nth < count - onRight; nth++)
      points.push([-out, -half + pitchOf(count - onRight, nth) * 2 * half * left]);
  const radius = Math.max(roof.bore_m.value / 2, 3 / view.k);
  const shapes = points.map((point) => disc(view, 'ink', ['thin', plain], point, radius));
  return shapes.length === 0 ? [] : [group(`downpipe:${roof.roofId}`, 'gutter', shapes)];
}

const pitchOf = (count: number, nth: number): number => (count === 1 ? 0 : nth / (count - 1));
