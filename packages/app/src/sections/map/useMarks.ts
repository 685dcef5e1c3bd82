import { startTransition, useEffect, useMemo, useRef, useState } from 'react';
import type { Near } from './frame.ts';
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
interface Made {
  readonly near: Near | null;
  readonly large: ReadonlySet<number>;
  readonly view: View;
  readonly size: Size;
  readonly drawn: MarksDrawn;
}

/**
 * The marks of the picture. Those that follow a hand are made at once. The first, and those that are another size as the list shows
 * other sites, are made in slices; those of before stay until then.
 *
 * @param near - the sites with their points, those that need her most first; null: no marks are drawn
 * @param large - places of those the list shows
 * @param size - of the picture; null before it is laid out
 */
export function useMarks(near: Near | null, large: ReadonlySet<number>, view: View, size: Size | null): MarksDrawn {
  const [sliced, setSliced] = useState<Made | null>(null);
  const shown = useRef<Made | null>(null);
  const made = useMemo(() => {
    const isOfPicture = (one: Made | null) => one?.near === near && one.view === view && one.size === size;
    if (isOfPicture(sliced) && sliced?.large === large) return sliced;
    if (near === null || size === null || sliced === null) return null;
    if (isOfPicture(shown.current)) return shown.current;
    return { near, large, view, size, drawn: marksOf(near, large, view, size) };
  }, [near, large, view, size, sliced]);
  useEffect(() => {
    shown.current = made;
    if (near === null || size === null || made?.large === large) return undefined;
    let isWanted = true;
    void inSlices(marksInSteps(near, large, view, size), () => isWanted).then((drawn) => {
      if (drawn !== null && isWanted) startTransition(() => setSliced({ near, large, view, size, drawn }));
    });
    return () => {
      isWanted = false;
    };
  }, [near, large, view, size, made]);
  return made?.drawn ?? nothingDrawn;
}
