import type { RolloutSheet } from '@eavewell/tables';
import { type PointerEvent, type RefObject, useEffect, useEffectEvent, useRef, useState } from 'react';
import type { HullsLaid } from '../bands/hulls.ts';
import type { Held, Place } from './places.ts';
import { pointerPlace } from './pointerPlace.ts';

/** A mouse that moves so far pulls; a finger that stays within it for so long takes up [px, ms]. Ours. */
const [pull_px, stay_px, stay_ms] = [5, 9, 400] as const;
/** So near to an edge the bands scroll, so far a frame [px]. Ours. */
const [edge_px, scroll_px] = [48, 14] as const;
/** The names of crews stand over the bands at their start: bands.css has the same [px]. */
const names_px = 190;

/** A place on the screen. */
export interface OnScreen {
  readonly x: number;
  readonly y: number;
}

/** What a pull does. */
export interface Pulling {
  takeUp(held: Held): void;
  moveTo(place: Place): void;
  letGo(): void;
  putBack(): void;
}

/** What is pulled, and from where. */
interface Pull {
  readonly held: Held;
  /** How far right of its trip's left end it was taken up [px]. */
  readonly grabbed_px: number;
  readonly from: OnScreen;
  readonly isTouch: boolean;
  /** It was in hand before. */
  readonly isHeld: boolean;
}

/**
 * Pulling with a pointer: a mouse at once, a finger after a long press, so that one can still scroll.
 *
 * @param sheet - as it is drawn
 * @param laid - where its hulls are drawn
 * @param layer - from its left and top the places are counted
 * @param pulling - what a pull does
 * @returns `begin` when a pointer goes down; `at` is where it is while something is pulled, else null
 */
// long: one gesture, from its beginning to its end
export function useDrag(
  sheet: RolloutSheet,
  laid: RefObject<HullsLaid | null>,
  layer: RefObject<HTMLElement | null>,
  pulling: Pulling,
): {
  readonly at: OnScreen | null;
  begin(event: PointerEvent<HTMLElement>, held: Held, grabbed_px: number, isHeld: boolean): void;
} {
  const [at, setAt] = useState<OnScreen | null>(null);
  const end = useRef<(() => void) | null>(null);
  useEffect(() => () => end.current?.(), []);
  const takeUp = useEffectEvent((held: Held) => pulling.takeUp(held));
  const finish = useEffectEvent((isLaid: boolean) => (isLaid ? pulling.letGo() : pulling.putBack()));
  const holdAt = useEffectEvent((pull: Pull, { x, y }: OnScreen) => {
    setAt({ x, y });
    const box = layer.current?.getBoundingClientRect();
    if (box === undefined || laid.current === null) return;
    const place = pointerPlace(sheet, laid.current, pull.held, x - box.left, y - box.top, pull.grabbed_px);
    if (place !== null) pulling.moveTo(place);
  });
  const follow = (pull: Pull): (() => void) => {
    let isTaken = false;
    let now = pull.from;
    let frame = 0;
    const take = () => {
      isTaken = true;
      if (!pull.isHeld) takeUp(pull.held);
      frame = requestAnimationFrame(each);
    };
    const each = () => {
      scrollAt(layer.current, now);
      holdAt(pull, now);
      frame = requestAnimationFrame(each);
    };
    const timer = pull.isTouch && !pull.isHeld ? setTimeout(take, stay_ms) : 0;
    const stop = () => {
      clearTimeout(timer);
      cancelAnimationFrame(frame);
      for (const [name, hear] of heard) window.removeEventListener(name, hear, true);
      end.current = null;
      setAt(null);
    };
    const done = (isLaid: boolean) => {
      const wasTaken = isTaken;
      stop();
      if (wasTaken) finish(isLaid);
      // The press that ends a pull opens nothing.
      if (wasTaken) swallowClick();
    };
    const move = ({ clientX: x, clientY: y }: MouseEvent) => {
      now = { x, y };
      if (isTaken) return;
      const far = Math.hypot(x - pull.from.x, y - pull.from.y);
      if (pull.isTouch && !pull.isHeld ? far > stay_px : far > pull_px) {
        if (pull.isTouch && !pull.isHeld) stop();
        else take();
      }
    };
    const heard: readonly (readonly [string, (event: Event) => void])[] = [
      ['pointermove', (event) => move(event as MouseEvent)],
      ['pointerup', () => done(true)],
      ['pointercancel', () => done(false)],
      ['keydown', (event) => ((event as KeyboardEvent).key === 'Escape' ? done(false) : undefined)],
      ['touchmove', (event) => (isTaken ? event.preventDefault() : undefined)],
      ['contextmenu', (event) => (isTaken || pull.isTouch ? event.preventDefault() : undefined)],
    ];
    for (const [name, hear] of heard) window.addEventListener(name, hear, { capture: true, passive: false });
    return stop;
  };
  const begin = (event: PointerEvent<HTMLElement>, held: Held, grabbed_px: number, isHeld: boolean) => {
    // Where no weeks are drawn there is nowhere to pull to.
    if (event.button !== 0 || !event.isPrimary || layer.current === null) return;
    end.current?.();
    const from = { x: event.clientX, y: event.clientY };
    end.current = follow({ held, grabbed_px, from, isTouch: event.pointerType !== 'mouse', isHeld });
  };
  return { at, begin };
}

function swallowClick(): void {
  const swallow = (event: Event) => {
    event.preventDefault();
    event.stopPropagation();
  };
  window.addEventListener('click', swallow, { capture: true, once: true });
  setTimeout(() => window.removeEventListener('click', swallow, true), 50);
}

/** Near an edge of the bands or of the page it scrolls on. */
function scrollAt(layer: HTMLElement | null, { x, y }: OnScreen): void {
  const scroller = layer?.closest<HTMLElement>('.bands-frame') ?? null;
  const box = scroller?.getBoundingClientRect();
  if (scroller !== null && box !== undefined) {
    if (x > box.right - edge_px) scroller.scrollLeft += scroll_px;
    else if (x < box.left + names_px + edge_px) scroller.scrollLeft -= scroll_px;
  }
  if (y > window.innerHeight - edge_px) window.scrollBy(0, scroll_px);
  else if (y < edge_px) window.scrollBy(0, -scroll_px);
}
