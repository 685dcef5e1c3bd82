import { limb } from '../building/people.ts';
import { Lettering } from '../charts/lettering.ts';
import { letterWidth_px } from '../charts/letterWidth.ts';
import { across, down, fill, group, pen, rect, stroke } from '../charts/strokes.ts';
import type { Picture, Shape } from '../sheet/shapes.ts';
import { px } from '../sheet/svgOf.ts';
import { fitted } from './rangesPicture.ts';

/** What lies together in the boat: the parts of one stop, or of one load. */
export interface BoatBlock {
  readonly blockId: string;
  readonly label: string;
  /** `1` for the first stop; null: none. */
  readonly nth: string | null;
  readonly mass_kg: number;
  readonly said: string;
}

/** A boat with its load. */
export interface BoatInput {
  /** From the stern to the bow: what goes ashore last lies aft. */
  readonly blocks: readonly BoatBlock[];
  /** What it may carry [kg]; null: not stated. */
  readonly limit_kg: number | null;
  /** From the water to the edge with this load, as far as is known, and the least it goes with [cm]; null: not known. */
  readonly freeboard_cm: number | null;
  /** The same at its limit: what the hull is drawn by. */
  readonly atLimit_cm: number | null;
  readonly leastFreeboard_cm: number | null;
  /**
   * From end to end [m]: hull, water and people are then to scale, as far as the freeboard is known. Null: not known, and the picture says that it
   * is not to scale. Left out: nothing is said of it.
   */
  readonly length_m?: number | null;
}

/** The words of the picture. */
export interface BoatWords {
  freeboard(height_cm: number): string;
  mark(height_cm: number): string;
  /** Room of the limit that is not taken: `200 kg to spare`. */
  spare(mass_kg: number): string;
  /** `9.6 m`; null: the hull is a plain scheme, `not to scale`. */
  length?(length_m: number | null): string;
}

const [height_px, gunwale_px, hull_px, hold_px] = [188, 88, 62, 52] as const;

/** A label is not cut shorter than this [px]. */
const leastLabel_px = 130;

/**
 * A boat from the side, with what lies in it: each block as long as its share of what the boat may carry, the last stop aft. The water stands
 * at the freeboard it has with this load, as far as that is known; the mark under which it may not sink is drawn.
 *
 * @param input - blocks and limits
 * @param words - its words
 * @param layout - width [px]
 * @returns the picture; length of a block to scale of mass; hull, freeboard and people to scale where the length is known, else not [px]
 * @definition ours: docs/decisions/0287-kits-loads-and-costs-drawn.md
 */
// long: the hull from stern to bow
export function boatPicture(
  { blocks, limit_kg, freeboard_cm, atLimit_cm, leastFreeboard_cm, length_m }: BoatInput,
  words: BoatWords,
  { width }: { readonly width: number },
): Picture {
  const lettering = new Lettering(width, length_m === undefined ? height_px : height_px + lengthLine_px);
  const isNarrow = width < 480;
  const end = width - (isNarrow ? 10 : 150);
  const [stern, bow] = [14, end];
  const keel = gunwale_px + hull_px;
  const pxPerM = length_m == null || !(length_m > 0) ? null : (bow - stern) / length_m;
  const water =
    gunwale_px +
    (freeboard_cm === null
      ? 34
      : pxPerM === null
        ? drawnFreeboard_px(freeboard_cm, atLimit_cm)
        : Math.min((pxPerM * freeboard_cm) / 100, hull_px - leastDraught_px));
  const hold = { from: stern + 64, to: bow - (isNarrow ? 60 : 120) };
  const total = blocks.reduce((sum, { mass_kg }) => sum + mass_kg, 0);
  const k = (hold.to - hold.from) / Math.max(limit_kg ?? 0, total, 1);
  const hull =
    `M${px(stern)} ${px(gunwale_px - 4)}Q${px(stern + 4)} ${px(keel)} ${px(stern + 34)} ${px(keel)}` +
    `H${px(bow - 90)}Q${px(bow - 26)} ${px(keel)} ${px(bow)} ${px(gunwale_px - 20)}` +
    `Q${px((stern + bow) / 2)} ${px(gunwale_px + 12)} ${px(stern)} ${px(gunwale_px - 4)}Z`;
  const shapes: Shape[] = [
    fill(rect(0, water, width, height_px - water - 6), 'low'),
    stroke(across(0, water, width), pen('edge', 'waterline')),
    fill(hull, 'paper', pen('cut', 'ink')),
  ];
  for (const x of isNarrow ? [stern + 34] : [stern + 34, bow - 84])
    lettering.keepOff({ x: x - 10, y: gunwale_px - 54, width: 34, height: 52 });
  let at = hold.from;
  const narrow: { readonly text: string; readonly middle: number; readonly foot: number }[] = [];
  for (const { blockId, label, nth, mass_kg, said } of blocks) {
    const wide = mass_kg * k;
    const [top, foot] = [gunwale_px - 16, gunwale_px - 16 + hold_px];
    shapes.push(
      group(blockId, [
        fill(rect(at, top, wide, foot - top), 'paper', pen('edge', 'ink')),
        stroke(
          `M${px(at)} ${px(top)}L${px(at + wide)} ${px(foot)}M${px(at + wide)} ${px(top)}L${px(at)} ${px(foot)}`,
          pen('hair', 'mark'),
        ),
      ]),
    );
    const middle = at + wide / 2;
    const isNumbered =
      nth !== null &&
      wide > 14 &&
      lettering.set(
        { text: nth, isStrong: true },
        { x: middle, y: (top + foot) / 2 + 6, anchor: 'middle' },
        { size: 'body', hasHalo: true },
      );
    let isNamed = false;
    const room = Math.max(wide + 20, leastLabel_px);
    // Over each other where blocks are narrow, with a leader down to the block.
    for (const lift of [0, 36]) {
      const y = top - 8 - lift;
      const spots = [
        { x: middle, y, anchor: 'middle' as const },
        { x: at, y, anchor: 'start' as const },
      ];
      if (!lettering.set({ text: said, isStrong: true }, spots)) continue;
      lettering.set(fitted(label, room), [
        { x: middle, y: y - 16, anchor: 'middle' },
        { x: at, y: y - 16 },
      ]);
      if (lift > 0) shapes.push(stroke(down(middle, y + 4, top), pen('hair', 'ink')));
      isNamed = true;
      break;
    }
    if (!isNumbered && (nth !== null || !isNamed)) narrow.push({ text: nth ?? label, middle, foot });
    at += wide;
  }
  if (limit_kg !== null && limit_kg > total && hold.to - at > 4) {
    shapes.push(stroke(rect(at, gunwale_px - 16, hold.to - at, hold_px), pen('thin', 'second', 'unknown')));
    const spare = words.spare(limit_kg - total);
    if (letterWidth_px(spare) < hold.to - at - 8)
      lettering.set({ text: spare, ink: 'second' }, { x: (at + hold.to) / 2, y: gunwale_px + 20, anchor: 'middle' });
  }
  // Who sits is drawn as high as a person where the hull is to scale, and never so low that nobody is seen.
  const tall = pxPerM === null ? 1 : Math.min(1.3, Math.max(0.55, (sitting_m * pxPerM) / sitting_px));
  shapes.push(...sitting(stern + 34, gunwale_px, tall), ...(isNarrow ? [] : sitting(bow - 84, gunwale_px - 4, tall)));
  shapes.push(...freeboardOf({ freeboard_cm, leastFreeboard_cm, water, bow, hold, isNarrow, width }, words, lettering));
  // Once the mark it may not sink under has its place.
  for (const { text, middle, foot } of narrow) shapes.push(...underKeel(text, middle, foot, lettering));
  if (length_m !== undefined) shapes.push(...lengthOf(length_m, { stern, bow }, words, lettering));
  const height = length_m === undefined ? height_px : height_px + lengthLine_px;
  return { width, height, pxPerM, shapes: [...shapes, ...lettering.letters], handles: [] };
}

/** How far beside its block the number of a narrow one may stand, and on which lines under the keel [px]. */
const [beside_px, under_px] = [
  [0, -16, 16, -32, 32, -48, 48, -64, 64],
  [18, 34],
] as const;

/** A block too narrow to be lettered has its number under the keel, with a line to it: what it is stands in the list. */
function underKeel(text: string, middle: number, foot: number, lettering: Lettering): readonly Shape[] {
  const keel = gunwale_px + hull_px;
  for (const by of beside_px)
    for (const under of under_px) {
      const spot = { x: middle + by, y: keel + under, anchor: 'middle' } as const;
      if (!lettering.set({ text, isStrong: true }, spot, { hasHalo: true })) continue;
      const line = `M${px(middle)} ${px(foot)}L${px(middle + by)} ${px(keel + under - letterTop_px)}`;
      return [stroke(line, pen('hair', 'ink'))];
    }
  return [];
}

/** From the foot line of a letter to over it [px]. */
const letterTop_px = 13;

/** Room under the water for the length of the hull [px]. */
const lengthLine_px = 26;

/** How long it is, under it; or that nobody measured it, so that the picture is a scheme. */
function lengthOf(
  length_m: number | null,
  { stern, bow }: { readonly stern: number; readonly bow: number },
  words: BoatWords,
  lettering: Lettering,
): readonly Shape[] {
  const said = words.length?.(length_m) ?? '';
  const y = height_px + 8;
  lettering.set({ text: said, ink: 'second' }, { x: (stern + bow) / 2, y: y + 5, anchor: 'middle' }, { hasHalo: true });
  if (length_m === null) return [];
  return [
    stroke(
      `${across(stern, y, bow)}M${px(stern - 4)} ${px(y + 4)}l8 -8M${px(bow - 4)} ${px(y + 4)}l8 -8`,
      pen('thin', 'ink'),
    ),
  ];
}

/** Freeboard at the limit is drawn as high as this, and never less than a hand over the keel [px]. */
const [atLimit_px, leastDraught_px] = [30, 10] as const;

function drawnFreeboard_px(freeboard_cm: number, atLimit_cm: number | null): number {
  if (atLimit_cm === null || !(atLimit_cm > 0)) return atLimit_px;
  return Math.min((atLimit_px * freeboard_cm) / atLimit_cm, hull_px - leastDraught_px);
}

interface FreeboardPlace extends Pick<BoatInput, 'freeboard_cm' | 'leastFreeboard_cm'> {
  readonly water: number;
  readonly bow: number;
  readonly hold: { readonly to: number };
  readonly isNarrow: boolean;
  readonly width: number;
}

/** The height of the edge over the water, and the mark that must stay clear of it. */
function freeboardOf(
  { freeboard_cm, leastFreeboard_cm, water, bow, hold, isNarrow, width }: FreeboardPlace,
  words: BoatWords,
  lettering: Lettering,
): readonly Shape[] {
  const shapes: Shape[] = [];
  const edge = gunwale_px + 2;
  if (freeboard_cm !== null && !isNarrow) {
    const x = bow + 22;
    shapes.push(
      stroke(
        `${across(bow - 20, edge, x + 8)}${down(x, edge, water)}M${px(x - 4)} ${px(edge + 4)}l8 -8M${px(x - 4)} ${px(water + 4)}l8 -8`,
        pen('thin', 'ink'),
      ),
    );
    const places = [
      { x: x + 12, y: (edge + water) / 2 + 5 },
      { x: width - 2, y: edge - 8, anchor: 'end' },
    ] as const;
    // The second may lie over the bow.
    lettering.set({ text: words.freeboard(freeboard_cm) }, places, { hasHalo: true });
  }
  if (leastFreeboard_cm !== null && freeboard_cm !== null && freeboard_cm > 0) {
    const y = edge + ((water - edge) * leastFreeboard_cm) / freeboard_cm;
    const x = hold.to + 10;
    shapes.push(stroke(across(x, y, x + 34), pen('cut', 'ink')));
    const foot = { x: width - 4, y: height_px - 12, anchor: 'end' } as const;
    const beside = { x: bow + 8, y: water + 34 } as const;
    const mark = { text: words.mark(leastFreeboard_cm), isStrong: true } as const;
    const isBeside = !isNarrow && lettering.set(mark, beside, { hasHalo: true });
    // What must not be missing finds a place under the water where there is none beside the bow.
    if (!isBeside) lettering.set(mark, [foot, { ...foot, x: bow - 40 }], { hasHalo: true });
    const end = isBeside ? { x: beside.x - 4, y: beside.y - 4 } : { x: foot.x - 20, y: foot.y - 14 };
    shapes.push(stroke(`M${px(x + 34)} ${px(y)}L${px(end.x)} ${px(end.y)}`, pen('hair', 'ink')));
  }
  return shapes;
}

/** Someone who sits, from the seat to the crown: as drawn [px], and of a grown person [m]. Ours: a little under half of a standing height. */
const [sitting_px, sitting_m] = [45, 0.85] as const;

/** Someone who sits, low in the boat: outline alone. */
function sitting(x: number, floor: number, k: number): readonly Shape[] {
  const d =
    limb(x, floor - 38 * k, 7 * k, x, floor - 37 * k, 6.5 * k) +
    limb(x, floor - 24 * k, 8 * k, x - k, floor - 4 * k, 9 * k) +
    limb(x, floor - 2 * k, 6 * k, x + 16 * k, floor - k, 5 * k);
  return [group('person', [fill(d, 'figure', pen('edge', 'mark')), fill(d, 'figure')])];
}
