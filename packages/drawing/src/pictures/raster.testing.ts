import type { PathShape, Shape } from '../sheet/shapes.ts';

/**
 * Pictures as dots, so that tests can measure what a printer would put down: how much ink, the thinnest line, the narrowest gap. Paths
 * are filled by the non-zero rule of SVG 2; pens are as thick as on paper, where a unit is 0.3 mm.
 */

/** Dots to the unit, and units free round the square, where nothing may stand. */
const perUnit = 6;
const free = 10;
const wide = (100 + 2 * free) * perUnit;

/** Half as thick as lines on paper [units]: 0.35 and 0.50 mm where 100 units are 30 mm. */
const halfOf = { hair: 0.13 / 0.6, thin: 0.18 / 0.6, edge: 0.35 / 0.6, cut: 0.5 / 0.6 } as const;

type Dots = Uint8Array;
type Spot = readonly [number, number];

export const pathsOf = (shapes: readonly Shape[]): readonly PathShape[] =>
  shapes.flatMap((one) => (one.kind === 'group' ? pathsOf(one.shapes) : one.kind === 'path' ? [one] : []));

/** The dots that are ink. */
export function inkOf(shapes: readonly Shape[]): Dots {
  const dots: Dots = new Uint8Array(wide * wide);
  for (const { d, pen, ground } of pathsOf(shapes)) {
    const lines = linesOf(d);
    if (ground !== 'none') fillIn(dots, lines, ground === 'paper' ? 0 : 1);
    if (pen !== null) for (const one of lines) strokeIn(dots, one, halfOf[pen.weight]);
  }
  return dots;
}

/** Share of the square that is ink. */
export const shareOf = (dots: Dots): number => dots.reduce((sum, dot) => sum + dot, 0) / (100 * perUnit) ** 2;

/** Dots of ink outside the square. */
export function outsideOf(dots: Dots): number {
  const isIn = (at: number) => at >= free * perUnit && at < (100 + free) * perUnit;
  return dots.reduce((sum, dot, at) => sum + (isIn(at % wide) && isIn(Math.floor(at / wide)) ? 0 : dot), 0);
}

/** Share of the ink that is lost where a line is thinner than so many units. */
export const thinShareOf = (dots: Dots, across: number): number => lostShare(dots, dots, across);

/** Share, to the ink, of the paper that is lost where a gap is narrower than so many units. */
export const closedShareOf = (dots: Dots, across: number): number =>
  lostShare(
    dots.map((dot) => 1 - dot),
    dots,
    across,
  );

function lostShare(of: Dots, ink: Dots, across: number): number {
  const opened = grown(grown(of, across / 2, 0), across / 2, 1);
  const lost = of.reduce((sum, dot, at) => sum + (dot === 1 && opened[at] === 0 ? 1 : 0), 0);
  return lost / ink.reduce((sum, dot) => sum + dot, 0);
}

/** Dots of one kind grown by a disc. */
function grown(dots: Dots, radius: number, kind: 0 | 1): Dots {
  const r = radius * perUnit - 0.5;
  const offsets: number[] = [];
  for (let dy = -Math.floor(r); dy <= r; dy += 1)
    for (let dx = -Math.floor(r); dx <= r; dx += 1) if (dx * dx + dy * dy <= r * r) offsets.push(dy * wide + dx);
  const result = dots.slice();
  for (let at = 0; at < dots.length; at += 1)
    if (dots[at] === kind) for (const by of offsets) if (at + by >= 0 && at + by < dots.length) result[at + by] = kind;
  return result;
}

/** The lines of a path, curves in short steps, in dots. */
function linesOf(d: string): readonly (readonly Spot[])[] {
  const lines: Spot[][] = [];
  let [x, y] = [0, 0];
  const to = (nextX: number, nextY: number) => {
    [x, y] = [nextX, nextY];
    lines.at(-1)!.push([(x + free) * perUnit, (y + free) * perUnit]);
  };
  const start = () => lines.at(-1)![0]!;
  for (const [, letter, text] of d.matchAll(/([a-zA-Z])([^a-zA-Z]*)/g)) {
    const given = (text!.match(/-?\d*\.?\d+(?:e-?\d+)?/g) ?? []).map(Number);
    const [kind, isBy] = [letter!.toUpperCase(), letter! === letter!.toLowerCase()];
    if (kind === 'Z') {
      lines.at(-1)!.push(start());
      [x, y] = [start()[0] / perUnit - free, start()[1] / perUnit - free];
    }
    const size = { M: 2, L: 2, H: 1, V: 1, Q: 4, A: 7, Z: 0 }[kind];
    if (size === undefined) throw new Error(`the path ${d} has ${letter}`);
    for (let nth = 0; size > 0 && nth < given.length; nth += size) {
      const own = given.slice(nth, nth + size);
      const [fromX, fromY] = isBy ? [x, y] : [0, 0];
      if (kind === 'M' && nth === 0) lines.push([]);
      if (kind === 'M' || kind === 'L') to(fromX + own[0]!, fromY + own[1]!);
      if (kind === 'H') to(fromX + own[0]!, y);
      if (kind === 'V') to(x, fromY + own[0]!);
      if (kind === 'Q') curve([x, y], [fromX + own[0]!, fromY + own[1]!], [fromX + own[2]!, fromY + own[3]!], to);
      if (kind === 'A') arcTo([x, y], own, [fromX + own[5]!, fromY + own[6]!], to);
    }
  }
  return lines;
}

const steps = 16;

function curve([ax, ay]: Spot, [bx, by]: Spot, [cx, cy]: Spot, to: (x: number, y: number) => void): void {
  for (let nth = 1; nth <= steps; nth += 1) {
    const t = nth / steps;
    const [p, q, r] = [(1 - t) ** 2, 2 * t * (1 - t), t * t];
    to(p * ax + q * bx + r * cx, p * ay + q * by + r * cy);
  }
}

/** An arc by its ends, as SVG 2 (appendix B.2) turns it into one by its middle; never turned. */
function arcTo([ax, ay]: Spot, own: readonly number[], [bx, by]: Spot, to: (x: number, y: number) => void): void {
  const [large, sweep] = [own[3] === 1, own[4] === 1];
  const [hx, hy] = [(ax - bx) / 2, (ay - by) / 2];
  const grow = Math.max(1, Math.sqrt((hx / own[0]!) ** 2 + (hy / own[1]!) ** 2));
  const [rx, ry] = [own[0]! * grow, own[1]! * grow];
  const under = (rx * hy) ** 2 + (ry * hx) ** 2;
  const root = (large === sweep ? -1 : 1) * Math.sqrt(Math.max(0, ((rx * ry) ** 2 - under) / (under || 1)));
  const [mx, my] = [(root * rx * hy) / ry, (-root * ry * hx) / rx];
  const from = Math.atan2((hy - my) / ry, (hx - mx) / rx);
  let turn = Math.atan2((-hy - my) / ry, (-hx - mx) / rx) - from;
  if (sweep && turn < 0) turn += 2 * Math.PI;
  if (!sweep && turn > 0) turn -= 2 * Math.PI;
  for (let nth = 1; nth <= steps; nth += 1) {
    const angle = from + (turn * nth) / steps;
    to((ax + bx) / 2 + mx + rx * Math.cos(angle), (ay + by) / 2 + my + ry * Math.sin(angle));
  }
}

function fillIn(dots: Dots, lines: readonly (readonly Spot[])[], kind: 0 | 1): void {
  for (let row = 0; row < wide; row += 1) {
    const y = row + 0.5;
    const crossings: [number, number][] = [];
    for (const line of lines)
      for (const [nth, [ax, ay]] of line.entries()) {
        const [bx, by] = line[(nth + 1) % line.length]!;
        if (ay <= y === by <= y) continue;
        crossings.push([ax + ((y - ay) / (by - ay)) * (bx - ax), by > ay ? 1 : -1]);
      }
    crossings.sort(([a], [b]) => a - b);
    let winding = 0;
    for (const [nth, [x, way]] of crossings.entries()) {
      winding += way;
      if (winding !== 0)
        dots.fill(kind, row * wide + clamped(Math.round(x)), row * wide + clamped(Math.round(crossings[nth + 1]![0])));
    }
  }
}

const clamped = (at: number) => Math.max(0, Math.min(wide, at));

function strokeIn(dots: Dots, line: readonly Spot[], half: number): void {
  const r = half * perUnit;
  for (const [nth, [ax, ay]] of line.slice(0, -1).entries()) {
    const [bx, by] = line[nth + 1]!;
    const square = (bx - ax) ** 2 + (by - ay) ** 2 || 1;
    for (let y = clamped(Math.floor(Math.min(ay, by) - r)); y < clamped(Math.max(ay, by) + r + 1); y += 1)
      for (let x = clamped(Math.floor(Math.min(ax, bx) - r)); x < clamped(Math.max(ax, bx) + r + 1); x += 1) {
        const t = Math.max(0, Math.min(1, ((x + 0.5 - ax) * (bx - ax) + (y + 0.5 - ay) * (by - ay)) / square));
        if (Math.hypot(x + 0.5 - ax - t * (bx - ax), y + 0.5 - ay - t * (by - ay)) <= r) dots[y * wide + x] = 1;
      }
  }
}
