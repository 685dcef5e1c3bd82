import { type KeyboardEvent, useMemo, useState } from 'react';
import type { Near } from './frame.ts';
import type { MapView } from './useMapView.ts';

/** How far an arrow key moves the map [px], and how much a press brings it nearer. Ours. */
const step = 60;
/** One press of a button or key brings the map nearer by so much. Ours. */
export const nearerByPress = 1.6;

/**
 * The keys of a map: arrows move it, plus and minus bring it nearer and farther, 0 shows all; Page Down and Page Up go from
 * site to site, those that need her most first, and Enter chooses.
 *
 * @param near - the sites with a place on the map, in that order
 */
export function useSteps(near: Near, view: MapView, onSelect: (key: string) => void) {
  const [toldKey, setTold] = useState<string | null>(null);
  const place = toldKey === null ? -1 : near.indexOf(toldKey);
  const told = useMemo(() => near.at(place), [near, place]);
  const go = (by: 1 | -1) => {
    const next = near.at((place === -1 && by === -1 ? 0 : place + by + near.count) % near.count);
    if (!next) return;
    setTold(next.key);
    view.show(next.point);
  };
  // About the site that was told, so that it stays in the picture.
  const zoom = (times: number) => view.zoom(times, told ? view.at(told.point) : undefined);
  const does = new Map<string, () => void>([
    ['ArrowLeft', () => view.move(step, 0)],
    ['ArrowRight', () => view.move(-step, 0)],
    ['ArrowUp', () => view.move(0, step)],
    ['ArrowDown', () => view.move(0, -step)],
    ['+', () => zoom(nearerByPress)],
    ['=', () => zoom(nearerByPress)],
    ['-', () => zoom(1 / nearerByPress)],
    ['0', view.showAll],
    ['PageDown', () => go(1)],
    ['PageUp', () => go(-1)],
    ['Escape', () => setTold(null)],
  ]);
  if (told) does.set('Enter', () => onSelect(told.key));
  const onKeyDown = (event: KeyboardEvent) => {
    // Keys of the buttons within are theirs.
    if (event.target !== event.currentTarget || event.ctrlKey || event.metaKey || event.altKey) return;
    const act = does.get(event.key);
    if (!act) return;
    event.preventDefault();
    act();
  };
  return { told, place, onKeyDown };
}
