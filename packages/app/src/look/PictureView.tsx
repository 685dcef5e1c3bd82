import './picture.css';
import './verdictMark.css';
import { type Picture, type Shape, type SvgNode, svgOf } from '@eavewell/drawing';
import { createElement, memo, type PointerEvent, type ReactNode, useMemo } from 'react';

/** Where a pointer is on a picture: px of the picture, and the part it is on; null where it is on none. */
export interface PicturePoint {
  readonly x: number;
  readonly y: number;
  readonly part: string | null;
}

interface PictureViewProps {
  readonly picture: Pick<Picture, 'width' | 'height' | 'shapes' | 'isCutOut'>;
  /** What it is called by those who do not see it. */
  readonly name: string;
  /** Drawn over it: what lights up where one points. Cheap to change. */
  readonly overlay?: readonly Shape[];
  readonly onPoint?: (point: PicturePoint, event: PointerEvent<SVGSVGElement>) => void;
  readonly onPress?: (point: PicturePoint, event: PointerEvent<SVGSVGElement>) => void;
  readonly onLeave?: () => void;
  /** Fields that hand and keyboard take hold of, in px of the picture. */
  readonly children?: ReactNode;
}

/**
 * A drawing or a chart on the page. The shapes are laid once; what is pointed at is laid over them, so that a pointer that
 * moves costs a few lines alone.
 */
export function PictureView({ picture, name, overlay, onPoint, onPress, onLeave, children }: PictureViewProps) {
  const { width, height, isCutOut = false } = picture;
  const over = useMemo(() => (overlay === undefined ? [] : svgOf({ shapes: overlay })), [overlay]);
  return (
    <svg
      className={isCutOut ? 'picture cut-out' : 'picture'}
      role="img"
      aria-label={name}
      viewBox={`0 0 ${width} ${height}`}
      width={width}
      height={height}
      onPointerMove={onPoint && ((event) => onPoint(pointOf(event, width), event))}
      onPointerDown={onPress && ((event) => onPress(pointOf(event, width), event))}
      // A finger that is lifted points on: what it lit stays to be read.
      onPointerLeave={onLeave && (({ pointerType }) => pointerType !== 'touch' && onLeave())}
    >
      <Shapes shapes={picture.shapes} />
      {over.length > 0 && <g className="pointed">{over.map(elementOf)}</g>}
      {children}
    </svg>
  );
}

const Shapes = memo(function Shapes({ shapes }: Pick<Picture, 'shapes'>) {
  return <g>{svgOf({ shapes }).map(elementOf)}</g>;
});

/** A pointer's place in px of the picture, whatever its size on the page. */
function pointOf(event: PointerEvent<SVGSVGElement>, width: number): PicturePoint {
  const box = event.currentTarget.getBoundingClientRect();
  const scale = box.width > 0 ? width / box.width : 1;
  const on = event.target instanceof Element ? event.target.closest('[data-part]') : null;
  return {
    x: (event.clientX - box.left) * scale,
    y: (event.clientY - box.top) * scale,
    part: on?.getAttribute('data-part') ?? null,
  };
}

/** An element of a picture. */
export function elementOf({ tag, attributes, children }: SvgNode, key: number): ReactNode {
  const { class: className, 'text-anchor': textAnchor, ...others } = attributes;
  const own = { ...others, key, ...(className && { className }), ...(textAnchor && { textAnchor }) };
  return createElement(
    tag,
    own,
    ...children.map((child, index) => (typeof child === 'string' ? child : elementOf(child, index))),
  );
}

/** Lines to the 2.5 px of a hatch of water, by how full [px]. */
const fullness = [
  ['hatch-level2', 0.2],
  ['hatch-level3', 0.45],
  ['hatch-level4', 0.7],
  ['hatch-level5', 1],
  ['hatch-level6', 1.35],
] as const;

/** The hatches of the pictures: put on a page once. */
export function PictureHatches() {
  return (
    <svg className="hatch-defs" aria-hidden="true" focusable="false">
      <defs>
        <Hatch id="hatch-water" width={6} height={3} d="M0 1.5H6" />
        <Hatch id="hatch-low" width={6} height={6} d="M0 3H6" />
        {fullness.map(([id, thick]) => (
          <pattern key={id} id={id} width={3} height={2.5} patternUnits="userSpaceOnUse">
            <path className="hatch" d="M0 1.25H3" style={{ strokeWidth: thick }} />
          </pattern>
        ))}
        <Hatch id="hatch-likely" width={5} height={5} d="M1 1.5h.9M3.5 4h.9" />
        <Hatch id="hatch-doubt" width={4} height={4} d="M-1 1L1 -1M0 4L4 0M3 5L5 3" />
        <Hatch id="hatch-earth" width={8} height={8} d="M0 8L8 0" />
        <Hatch id="hatch-concrete" width={9} height={9} d="M2 2h.8M6 4h.8M3 7h.8" />
        <Hatch id="hatch-masonry" width={14} height={10} d="M0 0H14M0 5H14M3 0V5M10 5V10" />
      </defs>
    </svg>
  );
}

function Hatch({
  id,
  width,
  height,
  d,
}: {
  readonly id: string;
  readonly width: number;
  readonly height: number;
  readonly d: string;
}) {
  return (
    <pattern id={id} width={width} height={height} patternUnits="userSpaceOnUse">
      <path className="hatch" d={d} />
    </pattern>
  );
}
