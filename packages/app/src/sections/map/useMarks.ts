import { startTransition, useEffect, useMemo, useState } from 'react';
import type { SitePoint } from './frame.ts';
import { type MarksDrawn, marksInSteps, marksOf } from './marks.ts';
import { inSlices } from './slices.ts';
import type { Size, View } from './view.ts';

const nothingDrawn: MarksDrawn = {
  marks: [],
  specks: '',
  under: { short: '', tight: '', unknown: '' },
  underCount: 0,
};

/** What marks were made from, and what they are. */
type Made = readonly [sites: readonly SitePoint[], large: ReadonlySet<string>, view: View, size: Size, MarksDrawn];

/**
 * The marks of the picture. The first are made in slices, as a browser takes long for what it never did before; those that follow
 * a hand are made at once.
 *
 * @param sites - with their points, those that need her most first
 * @param large - those the list shows
 * @param size - of the picture; null before it is laid out
 */
export function useMarks(
  sites: readonly SitePoint[],
  large: ReadonlySet<string>,
  view: View,
  size: Size | null,
): MarksDrawn {
  const [first, setFirst] = useState<Made | null>(null);
  useEffect(() => {
    if (size === null || first !== null) return undefined;
    let isWanted = true;
    void inSlices(marksInSteps(sites, large, view, size), () => isWanted).then((drawn) => {
      if (drawn !== null && isWanted) startTransition(() => setFirst([sites, large, view, size, drawn]));
    });
    return () => {
      isWanted = false;
    };
  }, [sites, large, view, size, first]);
  return useMemo(() => {
    if (size === null || first === null) return nothingDrawn;
    const isFirst = [sites, large, view, size].every((one, i) => one === first[i]);
    return isFirst ? first[4] : marksOf(sites, large, view, size);
  }, [sites, large, view, size, first]);
}
