/** The box a path lies in. */
export interface PathBox {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** How many numbers a command of a path takes. Source: svg2, paths. */
const counts: Readonly<Record<string, number>> = { M: 2, L: 2, T: 2, H: 1, V: 1, S: 4, Q: 4, C: 6, A: 7, Z: 0 };

/** Numbers as paths have them: flags of arcs stand apart in all paths of ours. */
const tokens = /([a-zA-Z])|(-?(?:\d+\.?\d*|\.\d+)(?:e-?\d+)?)/g;

interface Pen {
  x: number;
  y: number;
}

/** Points that one step of a path may reach: ends and what pulls at curves; arcs as far as their radius. */
function reachedBy(command: string, given: readonly number[], { x, y }: Pen): readonly (readonly [number, number])[] {
  const isOwn = command === command.toLowerCase();
  const [fromX, fromY] = isOwn ? [x, y] : [0, 0];
  const kind = command.toUpperCase();
  if (kind === 'H') return [[fromX + given[0]!, y]];
  if (kind === 'V') return [[x, fromY + given[0]!]];
  if (kind === 'A') {
    const [rx, ry, , , , toX, toY] = given as readonly [number, number, number, number, number, number, number];
    const end = [fromX + toX, fromY + toY] as const;
    const [midX, midY] = [(x + end[0]) / 2, (y + end[1]) / 2];
    return [[midX - 2 * rx, midY - 2 * ry], [midX + 2 * rx, midY + 2 * ry], end];
  }
  const points: (readonly [number, number])[] = [];
  for (let at = 0; at + 1 < given.length; at += 2) points.push([fromX + given[at]!, fromY + given[at + 1]!]);
  return points;
}

/**
 * Where does a path lie?
 *
 * @param d - a path of SVG 2
 * @returns a box that holds it, at times somewhat larger where it has arcs; null for a path without points
 */
export function pathBox(d: string): PathBox | null {
  const box = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };
  const pen: Pen = { x: 0, y: 0 };
  let start: Pen = { x: 0, y: 0 };
  let command = 'M';
  let given: number[] = [];
  for (const [, letter, number] of d.matchAll(tokens)) {
    if (letter !== undefined) {
      command = letter;
      given = [];
      if (letter.toUpperCase() === 'Z') Object.assign(pen, start);
      continue;
    }
    given.push(Number(number));
    if (given.length < (counts[command.toUpperCase()] ?? 2)) continue;
    const reached = reachedBy(command, given, pen);
    for (const [x, y] of reached) {
      box.left = Math.min(box.left, x);
      box.right = Math.max(box.right, x);
      box.top = Math.min(box.top, y);
      box.bottom = Math.max(box.bottom, y);
    }
    [pen.x, pen.y] = reached[reached.length - 1]!;
    if (command.toUpperCase() === 'M') {
      start = { ...pen };
      command = command === 'm' ? 'l' : 'L';
    }
    given = [];
  }
  return Number.isFinite(box.left) ? box : null;
}
