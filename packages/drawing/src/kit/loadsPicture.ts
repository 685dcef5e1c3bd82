import { person } from '../building/people.ts';
import { Lettering } from '../charts/lettering.ts';
import { letterWidth_px } from '../charts/letterWidth.ts';
import { across, fill, group, pen, rect, stroke } from '../charts/strokes.ts';
import type { Picture, Shape } from '../sheet/shapes.ts';

/** A load, as a box. */
export interface LoadBox {
  readonly mass_kg: number;
  readonly isFragile: boolean;
}

/** The words of the picture. */
export interface LoadsWords {
  mass(mass_kg: number): string;
  limit(mass_kg: number): string;
  /** `load 3`, told short: `3`. */
  nth(nth: number): string;
}

const [head_px, box_px, gap_px, foot_px, side_px] = [30, 62, 8, 22, 74] as const;

/** How many are drawn carrying. */
export type CarriedByDrawn = 'one' | 'two';

/**
 * The loads of people on foot as boxes in the order they go: as high as they weigh, against the line of what may be carried, beside the
 * people that carry them.
 *
 * @param loads - the loads [kg]
 * @param limit_kg - what may be carried at a time [kg]; null: not stated
 * @param by - one or two
 * @param words - its words
 * @param layout - width [px]
 * @returns the picture; height of a box to scale of mass [px]
 * @definition ours: docs/decisions/0287-kits-loads-and-costs-drawn.md
 */
export function loadsPicture(
  loads: readonly LoadBox[],
  limit_kg: number | null,
  by: CarriedByDrawn,
  words: LoadsWords,
  { width }: { readonly width: number },
): Picture {
  const widest = Math.max(24, ...loads.map(({ mass_kg }) => letterWidth_px(words.mass(mass_kg)) + 4));
  const inRow = Math.max(1, Math.floor((width - side_px - 4) / (widest + gap_px)));
  const rows = Math.max(1, Math.ceil(loads.length / inRow));
  const row_px = head_px + box_px + foot_px;
  const above_px = limit_kg === null ? 0 : 14;
  const height = above_px + rows * row_px + 2;
  const lettering = new Lettering(width, height);
  const most = Math.max(limit_kg ?? 0, ...loads.map(({ mass_kg }) => mass_kg), 1);
  const k = box_px / most;
  const shapes: Shape[] = [];
  for (let row = 0; row < rows; row++) {
    const base = above_px + row * row_px + head_px + box_px;
    const own = loads.slice(row * inRow, (row + 1) * inRow);
    const end = side_px + own.length * (widest + gap_px);
    if (row === 0) shapes.push(...carriersAt(by, base));
    if (limit_kg !== null) {
      const y = base - limit_kg * k;
      shapes.push(stroke(across(side_px - 4, y, end), pen('thin', 'ink', 'unknown')));
      if (row === 0) lettering.set(words.limit(limit_kg), { x: side_px - 4, y: 12 });
    }
    own.forEach(({ mass_kg, isFragile }, nth) => {
      const x = side_px + nth * (widest + gap_px);
      const tall = Math.max(2, mass_kg * k);
      const crossed = isFragile ? `M${x} ${base}L${x + widest} ${base - tall}` : '';
      shapes.push(
        group(`load:${row * inRow + nth + 1}`, [
          fill(rect(x, base - tall, widest, tall), 'figure', pen('edge', 'ink')),
          ...(crossed === '' ? [] : [stroke(crossed, pen('hair', 'ink'))]),
        ]),
      );
      lettering.set(
        words.mass(mass_kg),
        { x: x + widest / 2, y: base - tall - 4, anchor: 'middle' },
        { room: 0, hasHalo: true },
      );
      lettering.set(
        { text: words.nth(row * inRow + nth + 1), ink: 'second' },
        { x: x + widest / 2, y: base + 16, anchor: 'middle' },
      );
    });
    shapes.push(stroke(across(0, base, Math.max(end, side_px)), pen('cut', 'ink')));
  }
  return { width, height, pxPerM: null, shapes: [...shapes, ...lettering.letters], handles: [] };
}

/** Height of a grown-up beside the loads, so that box and body are seen together [px to the metre]. */
const body_pxPerM = 40;

function carriersAt(by: CarriedByDrawn, base: number): readonly Shape[] {
  const view = { k: body_pxPerM, x0: 0, y0: base };
  const waist = base - 1.05 * body_pxPerM;
  if (by === 'one')
    return [
      ...person({ ...view, x0: 22 }, 'stands', 0, 0),
      fill(rect(24, waist - 8, 22, 18), 'paper', pen('edge', 'ink')),
    ];
  return [
    ...person({ ...view, x0: 14 }, 'stands', 0, 0),
    ...person({ ...view, x0: 54 }, 'stands', 0, 0, -1),
    fill(rect(18, waist + 2, 32, 14), 'paper', pen('edge', 'ink')),
  ];
}
