import type { GroupShape, Handle, LetterShape, Shape } from '../sheet/shapes.ts';
import type { BuiltRoof } from './building.ts';
import { carriersOf } from './carrier.ts';
import type { Layout, PlacedRoof, PlacedTank } from './layout.ts';
import { group } from './sectionParts.ts';
import type { SectionWords } from './sectionTypes.ts';
import { standOut_m } from './stand.ts';
import { isTankDashed } from './tank.ts';
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
  pipe,
  plain,
  unmeasured,
  type View,
} from './view.ts';

/** A plan: x as in the section, y from the middle of the roofs, up the page [m]. */
export interface PlanFrame {
  readonly view: View;
  readonly width: number;
  readonly height: number;
  readonly layout: Layout;
  readonly roofs: readonly PlacedRoof[];
  readonly tanks: readonly PlacedTank[];
}

const hasTwoSlopes = ({ form }: BuiltRoof) => form === 'gable' || form === 'hip';

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

export function tankPlan(view: View, { tank, proposed, x }: PlacedTank): readonly GroupShape[] {
  const local = at(view, x);
  const groups: GroupShape[] = [];
  if (tank) {
    const radius = tank.diameter_m.value / 2;
    const standBrush = tank.standHeight_m.how === 'usual' ? unmeasured : plain;
    const lid = Math.min(0.25, radius * 0.3);
    groups.push(
      group(`stand:${tank.tankId}`, 'storage', [
        disc(local, 'none', ['thin', standBrush], [0, 0], radius + standOut_m),
      ]),
      group(`tank:${tank.tankId}`, 'storage', [
        disc(local, 'water', ['cut', isTankDashed(tank) ? unmeasured : plain], [0, 0], radius),
        disc(local, 'paper', ['thin', plain], [radius * 0.45, -radius * 0.3], lid),
        line(
          local,
          'hair',
          beyond,
          [
            [-radius - 0.3, 0],
            [radius + 0.3, 0],
          ],
          [
            [0, -radius - 0.3],
            [0, radius + 0.3],
          ],
        ),
      ]),
    );
  }
  if (proposed) {
    const radius = proposed.diameter_m.value / 2;
    groups.push(
      group(`proposed:tank:${proposed.tankId}`, 'storage', [disc(local, 'none', ['edge', blue], [0, 0], radius)]),
    );
  }
  return groups;
}

/** Pipes from the downpipe at the near end of each roof to its tank, and on to the treatment unit. */
export function wayPlan({ view, layout, tanks }: PlanFrame): readonly Shape[] {
  const carriers = carriersOf(layout).map(({ roof, tank }): Shape => {
    const { outline, x } = roof;
    const from: Point = [x / view.k + outline.rightPipe_m, -roof.roof.length_m.value / 2];
    const to: Point = [tank.x / view.k, 0];
    const turn = from[0] + Math.max(0.35, outline.rightOut_m);
    const axis: readonly Point[] = [from, [turn, from[1]], [turn, 0], to];
    return group(`carrier:${roof.roof.roofId}`, 'gutter', pipe(view, axis, roof.roof.bore_m.value, plain));
  });
  const unit = layout.placed.find(({ kind }) => kind === 'treatmentUnit');
  const first = tanks.find(({ tank }) => tank !== null);
  if (!unit || !first) return carriers;
  const feed = pipe(
    view,
    [
      [first.x / view.k, 0],
      [unit.x / view.k + 0.1, 0],
    ],
    0.06,
    plain,
  );
  return [...carriers, group('feed', 'treatmentUnit', feed)];
}

/** Treatment unit and taps: their slabs, cartridges and taps, dashed, since they are not measured. */
export function unitPlan({ view, layout }: PlanFrame): readonly Shape[] {
  const dashed: Brush = { ink: 'mark', dash: 'unknown' };
  return layout.placed.flatMap((one): readonly Shape[] => {
    if (one.kind !== 'treatmentUnit' && one.kind !== 'tap') return [];
    const local = at(view, one.x);
    if (one.kind === 'treatmentUnit') {
      const dots = [0.22, 0.5, 0.78].map((x) => disc(local, 'waterline', ['thin', plain], [x, 0], 0.075));
      const slab = area(local, 'paper', ['thin', dashed], boxOf(0, -0.6, 2.2, 1.2));
      return [
        group('treatmentUnit', 'treatmentUnit', [
          slab,
          ...pipe(
            local,
            [
              [0.06, 0],
              [1.3, 0],
            ],
            0.06,
            plain,
          ),
          ...dots,
        ]),
      ];
    }
    const taps = [0.55, 0.9, 1.25].map((x) => disc(local, 'ink', null, [x, 0], Math.max(0.04, 1.5 / view.k)));
    const slab = area(local, 'paper', ['thin', dashed], boxOf(0.1, -0.7, 2.3, 1.4));
    const soak = disc(local, 'paper', ['thin', dashed], [2.92, 0], 0.3);
    const feed = pipe(
      local,
      [
        [-1.5, 0],
        [1.4, 0],
      ],
      0.05,
      plain,
    );
    return [group('tap', 'tap', [slab, ...feed, ...taps, soak])];
  });
}

/** Over each roof: its guttered share, and how many downpipes where there are several. */
export function planLetters({ view, roofs }: PlanFrame, words: SectionWords): readonly LetterShape[] {
  return roofs.flatMap(({ roof, x }) => {
    const { value, how } = roof.gutteredFraction;
    const y = view.y0 - (roof.length_m.value / 2) * view.k - 8;
    const count = roof.downpipes_count;
    const texts = [
      words.guttered(value, how),
      ...(count.how === 'measured' && count.value > 1 ? [words.downpipes(count.value)] : []),
    ];
    return texts.map(
      (text, nth): LetterShape => ({
        kind: 'letter',
        x: x + roof.width_m.value * view.k,
        y: y - nth * 16,
        text,
        size: 'lettering',
        anchor: 'end',
        ink: how === 'usual' && nth === 0 ? 'second' : 'water',
        isStrong: false,
        hasHalo: true,
        turn_deg: 0,
      }),
    );
  });
}

/** The end of the gutter on the right eave of each roof, and the side of each tank. */
export function planHandles({ view, roofs, tanks, width }: PlanFrame): readonly Handle[] {
  const { k, y0 } = view;
  const ends = roofs.flatMap(({ roof, x }): readonly Handle[] => {
    if (roof.roofId === '') return [];
    const { right, left } = gutteredEaves(roof);
    const length = roof.length_m.value;
    const isLeft = left > 0;
    const y = y0 - (-length / 2 + length * (isLeft ? left : right)) * k;
    const edge = isLeft ? x : x + roof.width_m.value * k;
    const perPx = (hasTwoSlopes(roof) ? 0.5 : 1) / (length * k);
    return [
      {
        name: `roof:${roof.roofId}:gutter`,
        x: Math.max(0, edge - 16),
        y: Math.max(0, y - 12),
        width: 32,
        height: 24,
        along: 'y',
        perPx,
      },
    ];
  });
  const sides = tanks.flatMap(({ tank, x }): readonly Handle[] => {
    if (!tank || tank.tankId === '') return [];
    const r = (tank.diameter_m.value / 2) * k;
    const left = Math.min(width - 16, x + r - 8);
    return [
      { name: `tank:${tank.tankId}:diameter`, x: left, y: y0 - r, width: 16, height: 2 * r, along: 'x', perPx: 1 / k },
    ];
  });
  return [...ends, ...sides];
}
