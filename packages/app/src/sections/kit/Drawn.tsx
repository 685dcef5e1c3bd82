import type { Picture } from '@eavewell/drawing';
import { useRef } from 'react';
import { PictureView } from '../../look/PictureView.tsx';
import { useWidth } from '../../look/useWidth.ts';

/** A picture as wide as there is room for, and never wider than it reads well. */
export function Drawn({
  draw,
  name,
  most_px = 980,
}: {
  draw(width: number): Picture;
  readonly name: string;
  readonly most_px?: number;
}) {
  const room = useRef<HTMLDivElement>(null);
  const { width } = useWidth(room);
  return (
    <div ref={room} className="kit-picture" style={{ maxInlineSize: most_px }} dir="ltr">
      {width === null || width < 100 ? null : <PictureView picture={draw(Math.min(most_px, width))} name={name} />}
    </div>
  );
}
