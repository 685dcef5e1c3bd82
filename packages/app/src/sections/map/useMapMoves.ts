import { type PointerEvent as ReactPointerEvent, type RefObject, useEffect, useRef } from 'react';
import type { PlanePoint } from './plane.ts';

/** What a hand does to a map. */
export interface MapMoves {
  /** Moves it by so many pixels. */
  move(right: number, down: number): void;
  /** Brings it nearer by a factor, about a point of the picture. */
  zoom(times: number, about: PlanePoint): void;
  /** Presses on a point of the picture. */
  press(at: PlanePoint): void;
  /** Points at a point of the picture, with a mouse; null: at nothing. */
  point(at: PlanePoint | null): void;
}

/** A pointer that moved less than this [px] pressed. Ours. */
const still = 5;

/** One turn of a wheel by 100 makes it nearer by so much. Ours. */
const nearerByWheel = 1.25;

/**
 * Lets a map be moved by a mouse, by fingers and by a wheel with Ctrl held; without it the wheel scrolls the page as ever.
 *
 * @param frame - the element that is touched
 * @param sheet - what is shifted while it is dragged, before it is drawn anew
 */
export function useMapMoves(
  frame: RefObject<HTMLElement | null>,
  sheet: RefObject<HTMLElement | null>,
  moves: MapMoves,
) {
  const latest = useRef(moves);
  latest.current = moves;
  useWheel(frame, latest);
  const hand = useRef(new Hand());
  const at = (event: ReactPointerEvent): PlanePoint => {
    const { left, top } = frame.current!.getBoundingClientRect();
    return [event.clientX - left, event.clientY - top];
  };
  const shift = ([right, down]: PlanePoint) => {
    if (sheet.current) sheet.current.style.translate = right === 0 && down === 0 ? '' : `${right}px ${down}px`;
  };
  const end = (event: ReactPointerEvent, isPress: boolean) => {
    const { dragged, wasTwo } = hand.current;
    if (!hand.current.lift(event.pointerId)) return;
    shift([0, 0]);
    if (wasTwo) return;
    if (Math.hypot(...dragged) >= still) latest.current.move(...dragged);
    else if (isPress) latest.current.press(at(event));
  };
  return {
    onPointerDown: (event: ReactPointerEvent) => {
      if (event.button !== 0 || (event.target as Element).closest('button, a')) return;
      frame.current?.setPointerCapture(event.pointerId);
      hand.current.lay(event.pointerId, at(event));
    },
    onPointerMove: (event: ReactPointerEvent) => {
      const pinch = hand.current.move(event.pointerId, at(event));
      if (pinch) latest.current.zoom(pinch.times, pinch.about);
      else if (hand.current.isDown) shift(Math.hypot(...hand.current.dragged) < still ? [0, 0] : hand.current.dragged);
      else if (event.pointerType === 'mouse') latest.current.point(at(event));
    },
    onPointerUp: (event: ReactPointerEvent) => end(event, true),
    onPointerCancel: (event: ReactPointerEvent) => end(event, false),
    onPointerLeave: () => latest.current.point(null),
  };
}

/** A wheel turned with Ctrl, which is also how two fingers on a laptop's pad are told. */
function useWheel(frame: RefObject<HTMLElement | null>, latest: RefObject<MapMoves>): void {
  useEffect(() => {
    const element = frame.current;
    if (element === null) return undefined;
    const turn = (event: WheelEvent) => {
      if (!event.ctrlKey) return;
      event.preventDefault();
      const { left, top } = element.getBoundingClientRect();
      const times = nearerByWheel ** (-event.deltaY / 100);
      latest.current.zoom(times, [event.clientX - left, event.clientY - top]);
    };
    element.addEventListener('wheel', turn, { passive: false });
    return () => element.removeEventListener('wheel', turn);
  }, [frame, latest]);
}

/** The pointers that are down, one or two. */
class Hand {
  dragged: PlanePoint = [0, 0];
  wasTwo = false;
  private readonly down = new Map<number, { readonly from: PlanePoint; readonly to: PlanePoint }>();

  get isDown(): boolean {
    return this.down.size > 0;
  }

  lay(id: number, at: PlanePoint): void {
    if (this.down.size === 0) [this.dragged, this.wasTwo] = [[0, 0], false];
    this.down.set(id, { from: at, to: at });
    if (this.down.size > 1) this.wasTwo = true;
  }

  /** Follows a pointer; with two down, by how much they spread and about which point. */
  move(id: number, to: PlanePoint): { readonly times: number; readonly about: PlanePoint } | null {
    const known = this.down.get(id);
    if (!known) return null;
    const other = [...this.down].find(([one]) => one !== id)?.[1].to;
    this.down.set(id, { from: known.from, to });
    if (!other) {
      this.dragged = [to[0] - known.from[0], to[1] - known.from[1]];
      return null;
    }
    const before = Math.hypot(known.to[0] - other[0], known.to[1] - other[1]);
    const now = Math.hypot(to[0] - other[0], to[1] - other[1]);
    const about: PlanePoint = [(to[0] + other[0]) / 2, (to[1] + other[1]) / 2];
    return { times: before > 10 ? now / before : 1, about };
  }

  /** Lets a pointer go; true where it was the last one down. */
  lift(id: number): boolean {
    return this.down.delete(id) && this.down.size === 0;
  }
}
