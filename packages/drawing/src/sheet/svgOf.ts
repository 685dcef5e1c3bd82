import type { GroupShape, LetterShape, MarkShape, PathShape, Picture, Shape } from './shapes.ts';

/** An element of SVG as plain data: the page and a file make the same of it. */
export interface SvgNode {
  readonly tag: 'g' | 'path' | 'text';
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly (SvgNode | string)[];
}

/**
 * Which elements of SVG does a picture come to? Lines and grounds are named by class, so that screen, dark, and paper dress
 * the same shapes each in their own way.
 *
 * @param picture - shapes in px
 * @returns the elements, in the order they are drawn
 * @definition SVG 2, W3C: path data, text, groups; classes ours
 */
export function svgOf({ shapes }: Pick<Picture, 'shapes'>): readonly SvgNode[] {
  return shapes.map(nodeOf);
}

function nodeOf(shape: Shape): SvgNode {
  if (shape.kind === 'group') return groupOf(shape);
  if (shape.kind === 'letter') return letterOf(shape);
  return shape.kind === 'mark' ? markOf(shape) : pathOf(shape);
}

function groupOf({ part, station, shapes }: GroupShape): SvgNode {
  const attributes = {
    ...(part === null ? {} : { 'data-part': part }),
    ...(station === null ? {} : { 'data-station': station }),
  };
  return { tag: 'g', attributes, children: shapes.map(nodeOf) };
}

function pathOf({ d, pen, ground }: PathShape): SvgNode {
  const line = pen === null ? 'p-none' : `p-${pen.weight} i-${pen.ink} d-${pen.dash}`;
  return { tag: 'path', attributes: { d, class: `${line} g-${ground}` }, children: [] };
}

const anchors = { start: 'start', middle: 'middle', end: 'end' } as const;

function letterOf({ x, y, text, size, anchor, ink, isStrong, hasHalo, turn_deg }: LetterShape): SvgNode {
  const kinds = [`t-${size}`, `f-${ink}`, ...(isStrong ? ['strong'] : []), ...(hasHalo ? ['halo'] : [])];
  const attributes = {
    x: px(x),
    y: px(y),
    class: kinds.join(' '),
    'text-anchor': anchors[anchor],
    ...(turn_deg === 0 ? {} : { transform: `rotate(${px(-turn_deg)} ${px(x)} ${px(y)})` }),
  };
  return { tag: 'text', attributes, children: [text] };
}

/** The tank of the look, 20 by 24: a slightly domed lid, straight walls, a square foot. */
const tank = 'M2.5 22.5V5.5Q10 .5 17.5 5.5V22.5Z';

function markOf({ verdict, x, y, height }: MarkShape): SvgNode {
  const scale = height / 24;
  const place = `translate(${px(x - 10 * scale)} ${px(y - 24 * scale)}) scale(${px(scale)})`;
  const path = (d: string, kind: string): SvgNode => ({ tag: 'path', attributes: { d, class: kind }, children: [] });
  const drawn: Record<MarkShape['verdict'], readonly SvgNode[]> = {
    holds: [path(tank, 'm-full')],
    tight: [path(tank, 'm-line'), path('M2.5 13H17.5V22.5H2.5Z', 'm-full')],
    short: [path(tank, 'm-heavy')],
    unknown: [path(tank, 'm-dashed')],
    notJudged: [path('M8 14a2 2 0 1 0 4 0a2 2 0 1 0-4 0Z', 'm-full')],
  };
  return { tag: 'g', attributes: { class: `v-${verdict}`, transform: place }, children: drawn[verdict] };
}

/** A length as SVG writes it: hundredths of a px are as fine as any printer. */
export function px(value: number): string {
  return String(Math.round(value * 100) / 100);
}
