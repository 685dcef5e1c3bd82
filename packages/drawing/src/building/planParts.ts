import type { GroupShape, Handle, LetterShape, Shape } from '../sheet/shapes.ts';
import type { BuiltLeg, BuiltTank } from './building.ts';
import { carriersOf } from './carrier.ts';
import type { Layout, PlacedRoof, PlacedStop, PlacedTank } from './layout.ts';
import { fallingGutters, gutteredEaves, hasTwoSlopes } from './planRoof.ts';
import { group } from './sectionParts.ts';
import type { SectionWords } from './sectionTypes.ts';
import { footOf, padPlaces } from './stand.ts';
import { isTankDashed } from './tank.ts';
import { tapsAt } from './tapStand.ts';
import {
  area,
  at,
  type Brush,
  beyond,
  proposed as blue,
  boxOf,
  disc,
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

export function tankPlan(view: View, { tank, proposed, x }: PlacedTank): readonly GroupShape[] {
  const local = at(view, x);
  const groups: GroupShape[] = [];
  if (tank) {
    const radius = tank.diameter_m.value / 2;
    const lid = Math.min(0.25, radius * 0.3);
    groups.push(
      group(`stand:${tank.tankId}`, 'stand', [...standPlan(local, tank)]),
      group(`tank:${tank.tankId}`, 'storage', [
        disc(local, 'water', ['cut', isTankDashed(tank) ? unmeasured : plain], [0, 0], radius),
        ...cellsPlan(local, tank),
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

/** The outline of its footing; its pads, where they were counted. */
function standPlan(local: View, tank: BuiltTank): readonly Shape[] {
  const { stand: own, standHeight_m } = tank;
  const brush = standHeight_m.how === 'usual' || own.base_m.how === 'usual' ? unmeasured : plain;
  if (own.pads === null) return [disc(local, 'none', ['thin', brush], [0, 0], footOf(tank))];
  const { side_m } = own.pads;
  const boxes = padPlaces(tank).map(([x, y]) => boxOf(x - side_m / 2, y - side_m / 2, side_m, side_m));
  return [area(local, 'concrete', ['thin', brush], ...boxes)];
}

/** The walls between its cells; how far apart they stand nobody measured. */
function cellsPlan(local: View, { cells_count, diameter_m }: BuiltTank): readonly Shape[] {
  const radius = diameter_m.value / 2;
  const walls = Array.from({ length: cells_count - 1 }, (_, nth): readonly Point[] => {
    const x = -radius + (2 * radius * (nth + 1)) / cells_count;
    const half = Math.sqrt(Math.max(0, radius * radius - x * x));
    return [
      [x, -half],
      [x, half],
    ];
  });
  return walls.length === 0 ? [] : [line(local, 'edge', unmeasured, ...walls)];
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
  const unit = layout.placed.find((one): one is PlacedStop => one.kind === 'treatmentUnit');
  const first = tanks.find(({ tank }) => tank !== null);
  if (!unit || !first) return carriers;
  const feed = pipe(
    view,
    [
      [first.x / view.k, 0],
      [unit.x / view.k + 0.1, 0],
    ],
    ...boreOf(unit.stops.legs.tankToUnit),
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
            ...boreOf(one.stops.legs.tankToUnit),
          ),
          ...dots,
        ]),
      ];
    }
    const taps = tapsAt(one.stops).map((x) => disc(local, 'ink', null, [x, 0], Math.max(0.04, 1.5 / view.k)));
    const slab = area(local, 'paper', ['thin', dashed], boxOf(0.1, -0.7, 2.3, 1.4));
    const soak = disc(local, 'paper', ['thin', dashed], [2.92, 0], 0.3);
    const feed = pipe(
      local,
      [
        [-1.5, 0],
        [1.4, 0],
      ],
      ...boreOf(one.stops.legs.unitToTap),
    );
    return [group('tap', 'tap', [slab, ...feed, ...taps, soak])];
  });
}

const boreOf = ({ bore_m: { value, how } }: BuiltLeg): readonly [number, Brush] => [
  value,
  how === 'usual' ? unmeasured : plain,
];

/** Over each roof: its guttered share, and how many downpipes where there are several. */
export function planLetters({ view, roofs, height }: PlanFrame, words: SectionWords): readonly LetterShape[] {
  const { northNotKnown } = words;
  const north = northNotKnown ? [planLetter(12, height - 6, northNotKnown, 'start', 'second')] : [];
  const shares = roofs.flatMap(({ roof, x }) => {
    const { value, how } = roof.gutteredFraction;
    const y = view.y0 - (roof.length_m.value / 2) * view.k - 8;
    const count = roof.downpipes_count;
    const texts = [
      words.guttered(value, how),
      ...(count.how === 'measured' && count.value > 1 ? [words.downpipes(count.value)] : []),
    ];
    const right = x + roof.width_m.value * view.k;
    return texts.map((text, nth) =>
      planLetter(right, y - nth * 16, text, 'end', how === 'usual' && nth === 0 ? 'second' : 'water'),
    );
  });
  return [...shares, ...north, ...roofs.flatMap((one) => fallLetters(view, one, words))];
}

/** Along each eave the fall of its gutter, and the bore at the near end of the right one, where it was measured. */
function fallLetters(view: View, { roof, x }: PlacedRoof, words: SectionWords): readonly LetterShape[] {
  const falls = fallingGutters(roof).map(({ fall_mm_per_m, x: edge, y, side }): LetterShape => {
    const isOdd = fall_mm_per_m <= 0;
    const at = x + edge * view.k - (side === 1 ? 14 : -24);
    const letter = planLetter(at, view.y0 - y * view.k, words.fall(fall_mm_per_m), 'middle', isOdd ? 'ink' : 'second');
    return { ...letter, turn_deg: 90, isStrong: isOdd };
  });
  if (roof.bore_m.how !== 'measured' || gutteredEaves(roof).right <= 0) return falls;
  const foot = view.y0 + (roof.length_m.value / 2) * view.k - 8;
  const edge = x + roof.width_m.value * view.k - 10;
  return [...falls, planLetter(edge, foot, words.bore(roof.bore_m.value, roof.bore_m.how), 'end', 'second')];
}

function planLetter(
  x: number,
  y: number,
  text: string,
  anchor: LetterShape['anchor'],
  ink: LetterShape['ink'],
): LetterShape {
  return { kind: 'letter', x, y, text, size: 'lettering', anchor, ink, isStrong: false, hasHalo: true, turn_deg: 0 };
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
