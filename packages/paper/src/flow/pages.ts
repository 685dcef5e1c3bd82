import type { Band } from './band.ts';

/** Bands that belong together, such as all of the kit. */
export interface Section {
  readonly bands: readonly Band[];
  /** It begins on a page of its own. */
  readonly startsPage: boolean;
}

/** A band where it stands. */
export interface Placed {
  readonly band: Band;
  readonly y: number;
  /** Which section it is of. */
  readonly section: number;
  /** A head that comes again. */
  readonly isAgain: boolean;
}

/** The body of pages: from where on the first and on later ones, and to where [pt]. */
export interface Body {
  readonly firstTop_pt: number;
  readonly top_pt: number;
  readonly end_pt: number;
}

/** Bands from one on that must stand on the same page: those that keep the next, and that next one. */
function chainFrom(bands: readonly Band[], from: number): number {
  let to = from;
  while (to < bands.length - 1 && bands[to]!.keepsNext) to++;
  return to;
}

const heightOf = (bands: readonly Band[], from: number, to: number): number =>
  bands.slice(from, to + 1).reduce((sum, one, nth) => sum + one.height_pt + (nth === 0 ? 0 : one.before_pt), 0);

/**
 * On which page does what stand? Bands go under each other; heads keep what follows; a table that runs on has its head again.
 *
 * @param sections - in order
 * @param body - the room of pages [pt]
 * @returns for each page its bands with their upper edges; a band that is taller than a page has one of its own
 * @law every band of every section stands on some page, in order
 */
export function pagesOf(
  sections: readonly Section[],
  { firstTop_pt, top_pt, end_pt }: Body,
): readonly (readonly Placed[])[] {
  const pages: Placed[][] = [[]];
  let y = firstTop_pt;
  const page = () => pages[pages.length - 1]!;
  const turn = () => {
    pages.push([]);
    y = top_pt;
  };
  sections.forEach(({ bands, startsPage }, section) => {
    if (startsPage && page().length > 0) turn();
    let kept = -1;
    bands.forEach((one, nth) => {
      let before = page().length === 0 ? 0 : one.before_pt;
      if (nth > kept) {
        const last = chainFrom(bands, nth);
        const isRoom = y + before + heightOf(bands, nth, last) <= end_pt;
        // A chain longer than a page breaks where it must.
        if (!isRoom && page().length > 0) {
          turn();
          before = 0;
          if (one.head !== null) {
            page().push({ band: one.head, y, section, isAgain: true });
            y += one.head.height_pt;
            before = one.before_pt;
          }
        }
        kept = y + before + heightOf(bands, nth, last) <= end_pt ? last : nth;
      }
      page().push({ band: one, y: y + before, section, isAgain: false });
      y += before + one.height_pt;
    });
  });
  return pages.filter((one, nth) => nth === 0 || one.length > 0);
}
