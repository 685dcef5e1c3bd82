import type { Picture, Shape } from '../sheet/shapes.ts';
import type { Building } from './building.ts';
import { greatestPxPerM } from './constants.ts';
import type { Dimension } from './dimensions.ts';
import { dimensionShapes } from './dimensions.ts';
import { layoutOf, type PlacedRoof, type PlacedTank } from './layout.ts';
import { type Box, boxOfLetter, Placer } from './placer.ts';
import { type PlanFrame, planHandles, planLetters, tankPlan, unitPlan, wayPlan } from './planParts.ts';
import { roofPlan } from './planRoof.ts';
import { scaleBar } from './scaleBar.ts';
import { group } from './sectionParts.ts';
import type { SectionWords } from './sectionTypes.ts';
import type { View } from './view.ts';

/** What a plan is drawn from. */
export interface PlanInput {
  readonly building: Building;
  readonly proposed?: Building | null;
  readonly words: SectionWords;
  /** Width of the picture [px]. */
  readonly width: number;
  readonly pxPerM?: number | null;
}

/** The tallest a plan may be, to its width. */
const tallest = 0.75;

/**
 * How does the building lie, seen from above? Roofs with ridge and falls, the guttered share of their eaves heavy, downpipes,
 * tanks as circles: in the order of the section, since nobody measured how they lie to each other, and north is not known.
 *
 * @param input - the building, words, width [px]
 * @returns the picture [px], to scale
 * @definition ours: docs/methods/drawing.md
 */
export function planOf({ building, proposed = null, words, width, pxPerM = null }: PlanInput): Picture {
  const isWide = width >= 560;
  const options = { width, hasDimensions: isWide };
  const fitted = layoutOf(building, proposed, { ...options, pxPerM: pxPerM ?? greatestPxPerM }).k;
  const longest = longest_m(building, proposed);
  const k = Math.min(fitted, (width * tallest) / longest);
  const layout = layoutOf(building, proposed, { ...options, pxPerM: k });
  const top = isWide ? 40 : 14;
  const middle = top + (longest / 2) * k;
  const height = Math.ceil(middle + (longest / 2) * k + (isWide ? 62 : 36));
  const view: View = { k, x0: 0, y0: middle };
  const roofs = layout.placed.filter((one): one is PlacedRoof => one.kind === 'roof');
  const tanks = layout.placed.filter((one): one is PlacedTank => one.kind === 'tank');
  const frame: PlanFrame = { view, width, height, layout, roofs, tanks };
  const placer = new Placer({ x: 0, y: 0, width, height }, obstacles(frame));
  const bar = scaleBar(view, width - 10, height - 6, words, placer);
  const isLettered = isWide && layout.hasRoomForLetters;
  const dimensions = isLettered ? dimensionShapes(planDimensions(frame, words), placer, 10).shapes : [];
  const letters: readonly Shape[] = isLettered
    ? planLetters(frame, words).filter((one) => placer.takeIfFree(boxOfLetter(one)))
    : [];
  return {
    width,
    height,
    pxPerM: k,
    shapes: [
      ...wayPlan(frame),
      ...roofs.map((one) => roofPlan(view, one)),
      ...tanks.flatMap((one) => tankPlan(view, one)),
      ...unitPlan(frame),
      group(null, null, [...dimensions, ...letters]),
      group(null, null, bar),
    ],
    handles: planHandles(frame),
  };
}

function longest_m(building: Building, proposed: Building | null): number {
  const all = [building, proposed].flatMap((one) => one?.bodies ?? []);
  const lengths = all.flatMap(({ roofs, tanks }) => [
    ...roofs.map(({ length_m }) => length_m.value),
    ...tanks.map(({ diameter_m }) => diameter_m.value + 0.5),
  ]);
  return Math.max(3, ...lengths);
}

function obstacles({ view, roofs, tanks }: PlanFrame): readonly Box[] {
  const { k, y0 } = view;
  return [
    ...roofs.map(({ roof, x }) => ({
      x,
      y: y0 - (roof.length_m.value / 2) * k,
      width: roof.width_m.value * k,
      height: roof.length_m.value * k,
    })),
    ...tanks.flatMap(({ tank, x }) => {
      const r = ((tank?.diameter_m.value ?? 0) / 2) * k;
      return tank ? [{ x: x - r, y: y0 - r, width: 2 * r, height: 2 * r }] : [];
    }),
  ];
}

function planDimensions({ view, height, roofs, tanks }: PlanFrame, words: SectionWords): readonly Dimension[] {
  const { k, y0 } = view;
  const row = height - 36;
  const wide = roofs.flatMap(({ roof, x, outline }, nth): readonly Dimension[] => {
    const half = (roof.length_m.value / 2) * k;
    const { length_m, width_m } = roof;
    return [
      {
        along: 'x',
        from: x,
        to: x + width_m.value * k,
        at: row,
        ends: [y0 + half, y0 + half],
        text: words.metres(width_m.value, width_m.how),
        how: width_m.how,
        canChange: false,
        rank: 2 + nth * 10,
      },
      {
        along: 'y',
        from: y0 + half,
        to: y0 - half,
        at: x - outline.leftOut_m * k - 12,
        ends: [x, x],
        text: words.metres(length_m.value, length_m.how),
        how: length_m.how,
        canChange: false,
        rank: 1 + nth * 10,
      },
    ];
  });
  const round = tanks.flatMap(({ tank, x }, nth): readonly Dimension[] => {
    if (!tank) return [];
    const r = (tank.diameter_m.value / 2) * k;
    return [
      {
        along: 'x',
        from: x - r,
        to: x + r,
        at: row,
        ends: [y0 + r, y0 + r],
        text: words.diameter(tank.diameter_m.value, tank.diameter_m.how),
        how: tank.diameter_m.how,
        canChange: true,
        rank: nth * 10,
      },
    ];
  });
  return [...wide, ...round];
}
