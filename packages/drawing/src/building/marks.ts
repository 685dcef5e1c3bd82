import type { Station, StationVerdict } from '@eavewell/engine';
import type { Ink, LetterShape, Shape } from '../sheet/shapes.ts';
import { type Box, type Placer, widthOf } from './placer.ts';
import type { MarkWords } from './sectionTypes.ts';
import { disc, line, plain, type View } from './view.ts';

/** The mark of a station: the point it tells of, and the side it stands on if it can [px]. */
export interface Balloon {
  readonly station: Station;
  readonly verdict: StationVerdict;
  readonly words: MarkWords;
  readonly anchor: readonly [number, number];
  readonly side: readonly [number, number];
}

/** Room that the mark of a verdict takes over what it tells of [px]. */
export const markRoom = (verdict: StationVerdict): number => (isException(verdict) ? 56 : 34);

const flat: View = { k: 30, x0: 0, y0: 0 };
/** What a verdict is lettered in. */
export const verdictInks: Record<StationVerdict, Ink> = {
  holds: 'second',
  notJudged: 'second',
  tight: 'ochre',
  short: 'brick',
  unknown: 'ink',
};
/** Is it told in large? */
export const isException = (verdict: StationVerdict): boolean => verdict !== 'holds' && verdict !== 'notJudged';

/**
 * Marks as balloons: a dot at the station, a hair to the mark, its word beside it; what is an exception is large and bold,
 * its figure under the word. Exceptions choose their places first.
 */
export function markShapes(balloons: readonly Balloon[], placer: Placer, hasWords: boolean): readonly Shape[] {
  const order = [...balloons].sort((a, b) => Number(isException(b.verdict)) - Number(isException(a.verdict)));
  // A small picture without words has no room to say what was not judged.
  const shown = hasWords ? order : order.filter(({ verdict }) => verdict !== 'notJudged');
  return shown.map((balloon) => {
    const size = sizeOf(balloon, hasWords);
    let hasOwnWords = hasWords;
    // What was not judged is said where it is easily said; the stations of a page say it again.
    const isJudged = balloon.verdict !== 'notJudged';
    let box = placer.near(balloon.anchor, balloon.side, size, isJudged ? Infinity : nearby_px);
    if (!box && hasWords && isJudged) {
      hasOwnWords = false;
      box = placer.near(balloon.anchor, balloon.side, sizeOf(balloon, false));
    }
    const shapes = box ? drawn(balloon, box, hasOwnWords) : [];
    if (box) placer.avoid(...alongHair(balloon.anchor, box));
    return { kind: 'group', part: null, station: balloon.station, shapes };
  });
}

/** How far from its station a mark without a verdict may stand [px]. */
const nearby_px = 68;

const markHeight = (verdict: StationVerdict, hasWords: boolean) =>
  isException(verdict) ? (hasWords ? 28 : 24) : hasWords ? 13 : 10;

function sizeOf({ verdict, words }: Balloon, hasWords: boolean): { width: number; height: number } {
  const high = markHeight(verdict, hasWords);
  const mark = (high * 20) / 24;
  if (!hasWords) return { width: mark, height: high };
  if (!isException(verdict))
    return { width: mark + 5 + widthOf(words.word, 'lettering', false), height: Math.max(high, 14) };
  const figure = words.figure === null ? 0 : widthOf(words.figure, 'lettering', false);
  return {
    width: mark + 7 + Math.max(widthOf(words.word, 'body', true), figure),
    height: words.figure === null ? high : Math.max(high, 34),
  };
}

function drawn({ verdict, words, anchor }: Balloon, box: Box, hasWords: boolean): readonly Shape[] {
  const high = markHeight(verdict, hasWords);
  const wide = (high * 20) / 24;
  // The mark stands on the side of the words that is nearer to what it tells of, so that its hair does not run under them.
  const isMirrored = hasWords && anchor[0] > box.x + box.width / 2;
  const left = isMirrored ? box.x + box.width - wide : box.x;
  const shapes: Shape[] = [
    ...leader(anchor, { x: left, y: box.y, width: wide, height: high }),
    { kind: 'mark', verdict, x: left + wide / 2, y: box.y + high, height: high },
  ];
  if (!hasWords) return shapes;
  const gap = isException(verdict) ? 7 : 5;
  const letter = (text: string, y: number, size: LetterShape['size'], ink: Ink, isStrong: boolean): LetterShape => ({
    kind: 'letter',
    x: isMirrored ? left - gap : left + wide + gap,
    y,
    text,
    size,
    anchor: isMirrored ? 'end' : 'start',
    ink,
    isStrong,
    hasHalo: true,
    turn_deg: 0,
  });
  if (!isException(verdict))
    return [...shapes, letter(words.word, box.y + 11, 'lettering', verdictInks[verdict], false)];
  shapes.push(letter(words.word, box.y + (words.figure === null ? 19 : 13), 'body', verdictInks[verdict], true));
  if (words.figure !== null) shapes.push(letter(words.figure, box.y + 31, 'lettering', 'ink', false));
  return shapes;
}

/** Small boxes along the hair from a dot to its mark, so that the next words keep off it. */
export function alongHair([x, y]: readonly [number, number], box: Box): readonly Box[] {
  const [toX, toY] = [box.x + (x > box.x + box.width / 2 ? box.width - 8 : 8), box.y + (y > box.y ? box.height : 0)];
  return [0.15, 0.3, 0.45, 0.6, 0.75, 0.9].map((share) => ({
    x: x + (toX - x) * share - 5,
    y: y + (toY - y) * share - 5,
    width: 10,
    height: 10,
  }));
}

/** From the dot to the nearest side of the mark. */
export function leader([x, y]: readonly [number, number], mark: Box): readonly Shape[] {
  const to: readonly [number, number] = [
    Math.min(mark.x + mark.width, Math.max(mark.x, x)),
    Math.min(mark.y + mark.height, Math.max(mark.y, y)),
  ];
  const middle: readonly [number, number] =
    to[1] === y ? to : [Math.abs(to[0] - x) < 1 ? to[0] : mark.x + mark.width / 2, to[1]];
  const shapes: Shape[] = [disc(flat, 'ink', null, [x / flat.k, -y / flat.k], 2 / flat.k)];
  if (Math.hypot(middle[0] - x, middle[1] - y) < 4) return shapes;
  const points = [
    [x / flat.k, -y / flat.k],
    [middle[0] / flat.k, -middle[1] / flat.k],
  ] as const;
  return [line(flat, 'hair', plain, points), ...shapes];
}
