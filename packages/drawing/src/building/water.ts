import type { GroupShape, Shape } from '../sheet/shapes.ts';
import type { BuiltTank } from './building.ts';
import type { Level, Section, WaterPlace } from './sectionTypes.ts';
import { area, boxOf, curve, disc, isFine, line, type Point, pipe, plain, type View } from './view.ts';

const blue = { ink: 'waterline', dash: 'none' } as const;

/**
 * How high does the water stand in tanks that share one level? Each holds its litres evenly between its outlet and its
 * overflow, so the content rises in straight stretches between those heights.
 *
 * @param tanks - tanks joined at the foot [m, L]
 * @param content_L - litres over the outlets [L], 0 or more
 * @returns height over the ground [m], by tank: in one that is wholly under it the water stands at its overflow, in one wholly over it at its outlet
 * @law the litres of the heights sum to the content, as far as it fits
 * @definition ours
 */
export function waterHeights(tanks: readonly BuiltTank[], content_L: number): readonly number[] {
  const spans = tanks.map(({ role, standHeight_m, outletHeight_m, overflowHeight_m, usable_L }) => {
    const low = standHeight_m.value + outletHeight_m.value;
    const high = standHeight_m.value + overflowHeight_m.value;
    // Of a settling tank only what stands over a draw-off that is known is counted: never what is written on it.
    const isCounted = high > low && (role === 'storage' || usable_L.how === 'madeFrom');
    return { low, high, L_per_m: isCounted ? usable_L.value / (high - low) : 0 };
  });
  const marks = [...new Set(spans.flatMap(({ low, high }) => [low, high]))].sort((a, b) => a - b);
  let left_L = Math.max(0, content_L);
  let level = marks[0] ?? 0;
  for (let index = 1; index < marks.length && left_L > 0; index++) {
    const [from, to] = [marks[index - 1]!, marks[index]!];
    const L_per_m = spans.reduce((sum, span) => (span.low <= from && span.high >= to ? sum + span.L_per_m : sum), 0);
    const room_L = L_per_m * (to - from);
    level = room_L > left_L ? from + left_L / L_per_m : to;
    left_L -= room_L;
  }
  return spans.map(({ low, high }) => Math.min(high, Math.max(low, level)));
}

/**
 * What shows the level of the water in a section, and nothing else: one group for each tank, named `water:` and its id.
 *
 * @param section - the section they belong to
 * @param levels - content of each body of water [L]; null: no water is shown
 * @returns the groups to put in the place of those of the same name
 * @definition ours
 */
export function levelShapes(
  section: Pick<Section, 'waters' | 'pxPerM'>,
  levels: readonly Level[] | null,
): readonly GroupShape[] {
  return section.waters.flatMap((places) => {
    const ids = places.map(({ tank }) => tank.tankId);
    const level = levels?.find(({ tankIds }) => tankIds.some((id) => ids.includes(id))) ?? null;
    const heights =
      level &&
      waterHeights(
        places.map(({ tank }) => tank),
        level.content_L,
      );
    return places.map((place, index) => waterOf(place, heights?.[index] ?? null, section.pxPerM));
  });
}

function waterOf({ tank, x, foot }: WaterPlace, over_m: number | null, k: number): GroupShape {
  const view: View = { k, x0: x, y0: foot };
  const level_m = over_m === null ? null : over_m - tank.standHeight_m.value;
  const shapes = level_m === null ? [] : waterIn(view, tank, level_m);
  return { kind: 'group', part: `water:${tank.tankId}`, station: 'storage', shapes };
}

/** Fill, surface, level sign with three shortening lines, and the take-off that floats on it. */
function waterIn(view: View, tank: BuiltTank, level_m: number): readonly Shape[] {
  const width = tank.diameter_m.value;
  const shapes: Shape[] = [area(view, 'water', null, boxOf(0, 0, width, level_m))];
  shapes.push(
    line(view, 'edge', blue, [
      [0, level_m],
      [width, level_m],
    ]),
  );
  const wide_px = width * view.k;
  if (wide_px >= 26) shapes.push(levelSign(view, width * 0.74, level_m));
  if (isFine(view) && wide_px >= 40 && tank.role === 'storage') shapes.push(...takeOff(view, tank, level_m));
  return shapes;
}

function levelSign({ k, x0, y0 }: View, x_m: number, level_m: number): Shape {
  const [x, y] = [x0 + x_m * k, y0 - level_m * k];
  const size = Math.min(5, k * 0.11);
  const flat: View = { k: 1, x0: x, y0: y };
  const lines = [0, 1, 2].map((nth): readonly Point[] => {
    const half = size * (1.25 - nth * 0.4);
    return [
      [-half, -2.6 - nth * 2.2],
      [half, -2.6 - nth * 2.2],
    ];
  });
  return line(
    flat,
    'hair',
    plain,
    [
      [0, 0.8],
      [-size, 0.8 + size * 1.6],
      [size, 0.8 + size * 1.6],
      [0, 0.8],
    ],
    ...lines,
  );
}

/** A float at the surface and the hose under it, to the outlet. */
function takeOff(view: View, tank: BuiltTank, level_m: number): readonly Shape[] {
  const width = tank.diameter_m.value;
  const outlet = tank.outletHeight_m.value;
  const x = width * 0.52;
  const top = Math.max(level_m - 0.1, outlet * 0.6);
  const hose = curve([x, top], [x + width * 0.06, outlet + (top - outlet) * 0.05], [width * 0.82, outlet], 10);
  return [
    ...pipe(view, [...hose, [width - 0.02, outlet]], 0.04, plain, { weight: 'hair' }),
    disc(view, 'paper', ['edge', plain], [x, level_m], Math.max(0.055, 2.6 / view.k)),
  ];
}
