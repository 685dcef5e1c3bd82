import type { GroupShape, Handle, LetterShape, Shape } from '../sheet/shapes.ts';
import { carriersOf } from './carrier.ts';
import type { Layout, PlacedRoof, PlacedTank } from './layout.ts';
import { gutteredEaves, hasTwoSlopes } from './planRoof.ts';
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
  return [...shares, ...north];
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
