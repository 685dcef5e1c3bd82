import { type GermClass, germClasses, type Reductions } from '@eavewell/engine';
import { Lettering } from '../charts/lettering.ts';
import { letterWidth_px } from '../charts/letterWidth.ts';
import { across, down, fill, group, pen, rect, stroke } from '../charts/strokes.ts';
import type { Picture, Shape } from '../sheet/shapes.ts';
import { px } from '../sheet/svgOf.ts';
import { type WayStopKind, wayGlyph } from './wayGlyphs.ts';

/** One stop on the way of the water. */
export interface WayStop {
  readonly kind: WayStopKind;
  readonly name: string;
  /** Null: it takes nothing out, as where the water comes from and the cup. */
  readonly credited: Reductions | null;
  /** With one of its cartridges leaking; null where it has none. */
  readonly leaking: Reductions | null;
}

/** The way of the water, and how many tenfold steps are wanted of it. */
export interface WayInput {
  /** From where it comes to the cup. */
  readonly stops: readonly WayStop[];
  /** By class; null where it is not known. */
  readonly needed: Readonly<Record<GermClass, number | null>>;
}

/** The words of the way, in the reader's language. */
export interface WayWords {
  germs(germClass: GermClass): string;
  /** `4.2 steps` */
  steps(count: number): string;
  needed(count: number): string;
  /** What the dotted line is: `dotted: one cartridge leaks`. */
  readonly leaking: string;
}

/** Height of the strip with the signs, of a lane and of what stands over it [px]. */
const [strip_px, lane_px, laneHead_px, gap_px] = [78, 60, 24, 20] as const;
/** Free at both ends of a name that stands along an edge [px]. */
const edge_px = 14;
/** Below so much room for a stop its number stands for its name [px]. */
const nameRoom_px = 96;

interface Places {
  readonly width: number;
  readonly xs: readonly number[];
  readonly isNamed: boolean;
  readonly pxPerStep: number;
}

/**
 * The way of the water from roof to cup: its barriers as stops on a line, and under them, for each class of germs, a line that falls at
 * every barrier by the tenfold steps it is credited with, held against those that are wanted.
 *
 * @param input - the stops, and the steps wanted
 * @param words - its words
 * @param layout - width [px]
 * @returns the picture [px]
 * @definition ours: docs/decisions/0233-the-way-of-the-water.md
 */
export function wayPicture(input: WayInput, words: WayWords, { width }: { readonly width: number }): Picture {
  const { stops } = input;
  const places = placesOf(input, width);
  const hasLeak = stops.some(({ leaking }) => leaking !== null);
  const height = strip_px + germClasses.length * (laneHead_px + lane_px + gap_px) + (hasLeak ? 18 : 0);
  const lettering = new Lettering(width, height);
  const shapes: Shape[] = [stripOf(stops, places, lettering)];
  for (const [nth, germClass] of germClasses.entries()) {
    const top = strip_px + nth * (laneHead_px + lane_px + gap_px);
    shapes.push(laneOf(input, germClass, top, places, words, lettering));
  }
  if (hasLeak) lettering.set({ text: words.leaking, ink: 'second' }, { x: 1, y: height - 5 });
  return { width, height, pxPerM: null, shapes: [...shapes, ...lettering.letters], handles: [] };
}

function placesOf({ stops, needed }: WayInput, width: number): Places {
  const edge = Math.min(48, width * 0.07) + 14;
  const room = stops.length > 1 ? (width - 2 * edge) / (stops.length - 1) : 0;
  const isNamed =
    room >= nameRoom_px && stops.every(({ name }) => name.split(' ').every((word) => letterWidth_px(word) < room - 6));
  const most = Math.max(1, ...germClasses.flatMap((one) => [sumOf(stops, one, 'credited'), needed[one] ?? 0]));
  return {
    width,
    xs: stops.map((_, nth) => (stops.length === 1 ? width / 2 : edge + nth * room)),
    isNamed,
    pxPerStep: lane_px / most,
  };
}

const sumOf = (stops: readonly WayStop[], germClass: GermClass, of: 'credited' | 'leaking') =>
  stops.reduce((sum, stop) => sum + stepsOf(stop, germClass, of), 0);

/** A stop without cartridges takes out as much when one of another leaks. */
function stepsOf({ credited, leaking }: WayStop, germClass: GermClass, of: 'credited' | 'leaking'): number {
  const steps = (of === 'leaking' ? (leaking ?? credited) : credited)?.[`${germClass}_log10`] ?? 0;
  return Number.isFinite(steps) ? Math.max(0, steps) : 0;
}

/** The signs on their pipe, with their names or numbers. */
function stripOf(stops: readonly WayStop[], { xs, isNamed }: Places, lettering: Lettering): Shape {
  const y = 22;
  const first = xs[0] ?? 0;
  const last = xs.at(-1) ?? 0;
  const shapes: Shape[] = [
    fill(rect(first, y - 2, last - first, 4), 'water'),
    stroke(`${across(first, y - 2, last)}${across(first, y + 2, last)}`, pen('thin', 'waterline')),
  ];
  for (const [nth, { kind, name }] of stops.entries()) {
    const x = xs[nth]!;
    shapes.push(...wayGlyph(kind, x, y));
    for (const [row, text] of (isNamed ? wrapped(name, nameRoom_px) : [String(nth + 1)]).slice(0, 2).entries()) {
      const at = y + 32 + row * 16;
      // A long name at an edge stands along it.
      const spots = [
        { x, y: at, anchor: 'middle' },
        { x: 1, y: at },
        { x: last + edge_px, y: at, anchor: 'end' },
      ] as const;
      lettering.set({ text, isStrong: true }, spots);
    }
  }
  return group('way', shapes);
}

/** A name in lines that are not wider than so much [px]; a word is never broken. */
function wrapped(text: string, room: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const before = lines.at(-1);
    const longer = before === undefined ? word : `${before} ${word}`;
    if (before !== undefined && letterWidth_px(longer, 'lettering', true) <= room) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

/** One class of germs: its line falls at each barrier; the steps wanted are a dashed line. */
function laneOf(
  { stops, needed }: WayInput,
  germClass: GermClass,
  top: number,
  places: Places,
  words: WayWords,
  lettering: Lettering,
): Shape {
  const { width, pxPerStep } = places;
  const from = top + laneHead_px;
  const total = sumOf(stops, germClass, 'credited');
  const wanted = needed[germClass];
  const isMissed = wanted !== null && total < wanted;
  const sum = { text: words.steps(total), ink: isMissed ? 'brick' : 'second', isStrong: isMissed } as const;
  lettering.set([{ text: words.germs(germClass), isStrong: true }, sum], { x: 1, y: top + 12 });
  const credited = lineOf(stops, germClass, 'credited', from, places);
  const shapes: Shape[] = [fill(`${credited}V${px(from)}H0Z`, 'low')];
  if (wanted !== null && Number.isFinite(wanted) && wanted > 0) {
    const y = from + wanted * pxPerStep;
    shapes.push(stroke(across(0, y, width), pen('thin', 'ink', 'unknown')));
    const text = { text: words.needed(wanted), ink: isMissed ? 'brick' : 'ink', isStrong: isMissed } as const;
    const spots = [y + 15, top + 12].map((at) => ({ x: width - 2, y: at, anchor: 'end' as const }));
    lettering.set(text, spots, { hasHalo: true, room: 1 });
  }
  if (stops.some(({ leaking }) => leaking !== null))
    shapes.push(stroke(lineOf(stops, germClass, 'leaking', from, places), pen('edge', 'brick', 'dotted')));
  shapes.push(stroke(credited, pen('cut', 'ink')), ...fallsOf(stops, germClass, from, places, words, lettering));
  return group(`germs:${germClass}`, shapes);
}

/** The line of a class of germs from the left edge to the right: it falls at each stop. */
function lineOf(
  stops: readonly WayStop[],
  germClass: GermClass,
  of: 'credited' | 'leaking',
  from: number,
  { width, xs, pxPerStep }: Places,
): string {
  let y = from;
  let d = `M0 ${px(y)}`;
  for (const [nth, stop] of stops.entries()) {
    y += stepsOf(stop, germClass, of) * pxPerStep;
    d += `H${px(xs[nth]!)}V${px(y)}`;
  }
  return `${d}H${px(width)}`;
}

/** Beside each fall how many steps it is; over the line where it is too small to stand beside. */
function fallsOf(
  stops: readonly WayStop[],
  germClass: GermClass,
  from: number,
  { xs, pxPerStep }: Places,
  words: WayWords,
  lettering: Lettering,
): readonly Shape[] {
  const shapes: Shape[] = [];
  let y = from;
  for (const [nth, stop] of stops.entries()) {
    const steps = stepsOf(stop, germClass, 'credited');
    if (steps === 0) continue;
    const x = xs[nth]!;
    const fall = steps * pxPerStep;
    const at = fall < 16 ? y - 5 : y + fall / 2 + 4;
    const spots = [{ x: x + 6, y: at }, { x: x - 6, y: at, anchor: 'end' } as const];
    lettering.set({ text: words.steps(steps) }, spots, { hasHalo: true });
    shapes.push(stroke(down(x, from, y), pen('hair', 'rule')));
    y += fall;
  }
  return shapes;
}
