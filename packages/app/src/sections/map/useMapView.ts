import { useCallback, useMemo, useState } from 'react';
import { boxOf, type Frame } from './frame.ts';
import type { PlanePoint } from './plane.ts';
import { centred, fitted, moved, onPicture, type Size, type View, zoomed } from './view.ts';

/** The part of the map that is seen, and how it is changed. */
export interface MapView {
  readonly view: View;
  move(right: number, down: number): void;
  zoom(times: number, about?: PlanePoint): void;
  showAll(): void;
  /** Where a point falls in the picture [px]. */
  at(point: PlanePoint): PlanePoint;
  /** Brings a point into the picture, where it is not in it. */
  show(point: PlanePoint): void;
}

/** Stores and landings are in the picture where they lie within three times the reach of the sites, or of this [km]. Ours. */
const leastReach_km = 5;

const noSize: Size = { wide: 400, high: 400 };

/** What is seen of a map: all of it, until somebody moves it. */
export function useMapView(frame: Frame, places: readonly PlanePoint[], size: Size | null): MapView {
  const [own, setOwn] = useState<{ readonly frame: Frame; readonly view: View } | null>(null);
  const box = useMemo(() => {
    const farthest_km = 3 * Math.max(leastReach_km, frame.reach_km);
    return boxOf(
      places.filter(([x, y]) => Math.hypot(x, y) < farthest_km),
      frame.bounds,
    );
  }, [frame, places]);
  const seen = size ?? noSize;
  const fit = useMemo(() => fitted(box, seen), [box, seen]);
  // Whoever moved the map keeps her place while facts change, unless the sites lie elsewhere now.
  const isOwn = own !== null && own.frame.plane.middle.latitude_deg === frame.plane.middle.latitude_deg;
  const view = isOwn ? own.view : fit;
  const change = useCallback(
    (work: (view: View) => View) =>
      setOwn((known) => ({ frame, view: work(known?.frame.plane === frame.plane ? known.view : view) })),
    [frame, view],
  );
  return {
    view,
    move: (right, down) => change((now) => moved(now, box, right, down)),
    zoom: (times, about) => change((now) => zoomed(now, seen, box, times, about)),
    showAll: () => setOwn(null),
    at: (point) => onPicture(view, seen, point),
    show: (point) => {
      const [x, y] = onPicture(view, seen, point);
      const isSeen = x > 20 && y > 20 && x < seen.wide - 20 && y < seen.high - 20;
      if (!isSeen) change((now) => centred(now, point));
    },
  };
}
