import type { Ink, LetterShape, Shape } from '../sheet/shapes.ts';
import type { How } from './building.ts';
import { type Box, boxOfLetter, type Placer, widthOf } from './placer.ts';
import { line, type Point, type View } from './view.ts';

/** A measure to be lettered: a line from one end to the other, at so much beside them [px]. */
export interface Dimension {
  readonly along: 'x' | 'y';
  readonly from: number;
  readonly to: number;
  readonly at: number;
  /** Where the lines to its ends begin, at either end [px]. */
  readonly ends: readonly [number, number];
  /** Nothing: the line stands without letters, its measure is told elsewhere. */
  readonly text: string;
  readonly how: How;
  /** May be changed by hand: blue. */
  readonly canChange: boolean;
  /** Letters that do not fit along it had better stand after it. */
  readonly isAfter?: boolean;
  /** The least comes first where there is not room for all. */
  readonly rank: number;
}

const flat: View = { k: 30, x0: 0, y0: 0 };

/** Points in px as the view of metres takes them. */
const inPx = (...points: readonly (readonly [number, number])[]): readonly Point[] =>
  points.map(([x, y]) => [x / flat.k, -y / flat.k]);

/**
 * Dimension lines with ticks at 45° and letters over them; as many as are asked for at most, those of the least rank first,
 * each only where its letters are free.
 */
export function dimensionShapes(
  dimensions: readonly Dimension[],
  placer: Placer,
  most: number,
): { readonly shapes: readonly Shape[]; readonly isAnyDashed: boolean } {
  const shapes: Shape[] = [];
  let left = most;
  let isAnyDashed = false;
  for (const dimension of [...dimensions].sort((a, b) => a.rank - b.rank)) {
    if (left === 0) break;
    if (dimension.text === '') {
      shapes.push(...lines(dimension));
      placer.avoid(...boxesOf(dimension));
      continue;
    }
    const letter = letterOf(dimension).find((one) => placer.takeIfFree(boxOfLetter(one)));
    if (!letter) continue;
    shapes.push(...lines(dimension), { kind: 'letter', ...letter });
    placer.avoid(...boxesOf(dimension));
    if (dimension.how === 'usual') isAnyDashed = true;
    left--;
  }
  return { shapes, isAnyDashed };
}

type Letter = Omit<LetterShape, 'kind'>;

/** Where its letters may stand: over the line; else beside its ends. */
function letterOf({ along, from, to, at, text, canChange, how, isAfter = canChange }: Dimension): readonly Letter[] {
  const ink: Ink = canChange ? 'water' : how === 'usual' ? 'second' : 'ink';
  const letter = (x: number, y: number, anchor: LetterShape['anchor'], turn_deg = 0): Letter => ({
    x,
    y,
    text,
    size: 'lettering',
    anchor,
    ink,
    isStrong: false,
    hasHalo: true,
    turn_deg,
  });
  const [low, high] = [Math.min(from, to), Math.max(from, to)];
  const middle = (low + high) / 2;
  const fits = widthOf(text, 'lettering', false) + 8 <= high - low;
  if (along === 'x')
    return [
      ...(fits ? [letter(middle, at - 5, 'middle')] : []),
      letter(high + 9, at + 4, 'start'),
      letter(low - 9, at + 4, 'end'),
      letter(middle, at + 15, 'middle'),
    ];
  return [
    ...(fits ? [letter(at - 5, middle, 'middle', 90)] : []),
    ...(isAfter ? [letter(at + 8, middle + 4, 'start')] : []),
    letter(at - 8, middle + 4, 'end'),
    ...(isAfter ? [] : [letter(at + 8, middle + 4, 'start')]),
    ...(fits ? [letter(at + 14, middle, 'middle', 90)] : []),
  ];
}

function lines({ along, from, to, at, ends, how }: Dimension): readonly Shape[] {
  const turned = (u: number, v: number): readonly [number, number] => (along === 'x' ? [u, v] : [v, u]);
  const [low, high] = [Math.min(from, to), Math.max(from, to)];
  const extension = [from, to].map((u, index) => {
    const start = ends[index]!;
    const way = Math.sign(at - start) || 1;
    return Math.abs(at - start) < 8 ? [] : inPx(turned(u, start + way * 4), turned(u, at + way * 5));
  });
  const tick = (u: number) => {
    const [x, y] = turned(u, at);
    return inPx([x - 4, y + 4], [x + 4, y - 4]);
  };
  const dash = how === 'usual' ? 'unknown' : 'none';
  return [
    line(flat, 'hair', { ink: 'ink', dash }, inPx(turned(low - 5, at), turned(high + 5, at))),
    line(flat, 'hair', { ink: 'mark', dash: 'none' }, ...extension.filter((points) => points.length > 0)),
    line(flat, 'edge', { ink: 'ink', dash: 'none' }, tick(from), tick(to)),
  ].filter(({ d }) => d !== '');
}

/** Where its lines run, a little widened: letters keep off them if they can. */
function boxesOf({ along, from, to, at, ends }: Dimension): readonly Box[] {
  const span = (a: number, b: number, c: number, d: number): Box => {
    const [x0, y0, x1, y1] = along === 'x' ? [a, c, b, d] : [c, a, d, b];
    const [x, y] = [Math.min(x0, x1) - 4, Math.min(y0, y1) - 4];
    return { x, y, width: Math.abs(x1 - x0) + 8, height: Math.abs(y1 - y0) + 8 };
  };
  return [span(from, to, at, at), span(from, from, ends[0], at), span(to, to, ends[1], at)];
}
