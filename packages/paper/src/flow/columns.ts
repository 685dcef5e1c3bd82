import type { Setter } from '../document/setter.ts';
import { type Band, band } from './band.ts';

/** One of several columns: its share of the width, and what stands in it. */
export interface ColumnOf {
  readonly share: number;
  readonly bands: (width: number) => readonly Band[];
}

/** Columns side by side as one band: what is in them must fit a page. From right to left the first stands at the right. */
export function columns(setter: Setter, width: number, gap_pt: number, all: readonly ColumnOf[], before_pt = 0): Band {
  const shares = all.reduce((sum, { share }) => sum + share, 0);
  const room = width - gap_pt * (all.length - 1);
  let from = 0;
  const laid = all.map(({ share, bands }) => {
    const own = (room * share) / shares;
    const column = { from, width: own, bands: bands(own) };
    from += own + gap_pt;
    return column;
  });
  const heights = laid.map(({ bands }) => stackHeight(bands));
  return band(
    Math.max(0, ...heights),
    (canvas, under, { x, y }) => {
      for (const column of laid) {
        let top = y;
        column.bands.forEach((one, nth) => {
          top += nth === 0 ? 0 : one.before_pt;
          const left = setter.place(x, width, column.from, column.width);
          one.draw(canvas, under, { x: left, y: top, width: column.width }, false);
          top += one.height_pt;
        });
      }
    },
    { before_pt },
  );
}

/** How high bands under each other are [pt]. */
export const stackHeight = (bands: readonly Band[]): number =>
  bands.reduce((sum, { height_pt, before_pt }, nth) => sum + height_pt + (nth === 0 ? 0 : before_pt), 0);
