import type { Handle, Picture } from '@eavewell/drawing';
import { useRef } from 'react';
import { useMove } from 'react-aria';
import { draggedTo, nextStep } from './draggedTo.ts';
import type { MeasureLimits } from './measureEntry.ts';

/** What a handle of the drawing changes. */
export interface HandleMeasure {
  readonly label: string;
  readonly value: number;
  readonly limits: MeasureLimits;
  /** The value with its unit, as it is read out. */
  said(value: number): string;
  onPreview(value: number | null): void;
  onChange(value: number): void;
}

/**
 * What of a drawing can be taken hold of, by hand and by keys: a field over each place, invisible until it is pointed at or has
 * the focus. The drawing under it answers while it moves; letting go makes one step.
 */
export function Handles({
  picture,
  measures,
}: {
  readonly picture: Picture;
  readonly measures: ReadonlyMap<string, HandleMeasure>;
}) {
  return (
    <>
      {picture.handles.map((handle) => {
        const measure = measures.get(handle.name);
        return measure === undefined ? null : <OneHandle key={handle.name} {...{ picture, handle, measure }} />;
      })}
    </>
  );
}

function OneHandle({
  picture,
  handle,
  measure,
}: {
  readonly picture: Picture;
  readonly handle: Handle;
  readonly measure: HandleMeasure;
}) {
  const element = useRef<HTMLDivElement>(null);
  // A drag goes on through many drawings: what it began with stays.
  const drag = useRef({ from: 0, moved: 0, at: 0 });
  const { limits, label, value, said, onPreview, onChange } = measure;
  const { moveProps } = useMove({
    onMoveStart: () => {
      drag.current = { from: value, moved: 0, at: value };
    },
    onMove: ({ pointerType, deltaX, deltaY }) => {
      const now = drag.current;
      if (pointerType === 'keyboard') now.at = nextStep(now.at + (deltaX - deltaY) * limits.step, limits);
      else {
        const shown = element.current?.parentElement?.clientWidth ?? picture.width;
        now.moved += ((handle.along === 'y' ? -deltaY : deltaX) * picture.width) / shown;
        now.at = draggedTo(now.from, now.moved * handle.perPx, limits);
      }
      onPreview(now.at);
    },
    onMoveEnd: () => {
      const { at } = drag.current;
      if (at === value) onPreview(null);
      else onChange(at);
    },
  });
  const of = (length: number, whole: number) => `${(100 * length) / whole}%`;
  return (
    <div
      ref={element}
      {...moveProps}
      className={`handle along-${handle.along}`}
      role="slider"
      tabIndex={0}
      aria-label={label}
      aria-orientation={handle.along === 'y' ? 'vertical' : 'horizontal'}
      aria-valuemin={limits.least}
      aria-valuemax={limits.most}
      aria-valuenow={value}
      aria-valuetext={said(value)}
      style={{
        left: of(handle.x + handle.width / 2, picture.width),
        top: of(handle.y + handle.height / 2, picture.height),
        width: of(handle.width, picture.width),
        height: of(handle.height, picture.height),
      }}
    />
  );
}
