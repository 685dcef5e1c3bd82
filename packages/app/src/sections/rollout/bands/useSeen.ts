import { type RefObject, useEffect, useState } from 'react';

/** The part of a long drawing that is on the page, and a little beside it. */
export interface Seen {
  readonly from: number;
  readonly to: number;
}

/** What is seen changes by steps of this, and as much is drawn beside it, so that scrolling draws seldom and shows no gap [px]. Ours. */
const step_px = 320;

const inSteps = (from: number, to: number, step: number): Seen => ({
  from: Math.floor(from / step) * step - step,
  to: Math.ceil(to / step) * step + step,
});

const isSame = (a: Seen, b: Seen) => a.from === b.from && a.to === b.to;

/** Calls at most once a frame, whatever happens how often. */
function oncePerFrame(look: () => void): { ask(): void; stop(): void } {
  let frame = 0;
  const ask = () => {
    if (frame === 0)
      frame = requestAnimationFrame(() => {
        frame = 0;
        look();
      });
  };
  return { ask, stop: () => cancelAnimationFrame(frame) };
}

/**
 * Which part of what is scrolled sideways is seen?
 *
 * @param scroller - it scrolls
 * @param beside_px - what stands still at its start and covers that much
 */
export function useSeenAcross(scroller: RefObject<HTMLElement | null>, beside_px: number): Seen {
  const [seen, setSeen] = useState<Seen>(inSteps(0, 1300, step_px));
  useEffect(() => {
    const at = scroller.current;
    if (at === null) return undefined;
    const look = () => {
      const next = inSteps(at.scrollLeft, at.scrollLeft + at.clientWidth - beside_px, step_px);
      setSeen((before) => (isSame(before, next) ? before : next));
    };
    const { ask, stop } = oncePerFrame(look);
    look();
    at.addEventListener('scroll', ask, { passive: true });
    const watcher = new ResizeObserver(ask);
    watcher.observe(at);
    return () => {
      stop();
      at.removeEventListener('scroll', ask);
      watcher.disconnect();
    };
  }, [scroller, beside_px]);
  return seen;
}

/** Which part of something tall is on the screen? */
export function useSeenDown(tall: RefObject<HTMLElement | null>): Seen {
  const [seen, setSeen] = useState<Seen>(inSteps(0, 1300, step_px));
  useEffect(() => {
    const at = tall.current;
    if (at === null) return undefined;
    const look = () => {
      const { top } = at.getBoundingClientRect();
      const next = inSteps(-top, window.innerHeight - top, step_px);
      setSeen((before) => (isSame(before, next) ? before : next));
    };
    const { ask, stop } = oncePerFrame(look);
    look();
    window.addEventListener('scroll', ask, { passive: true });
    window.addEventListener('resize', ask);
    // What opens or closes above it moves it without a scroll.
    const watcher = new ResizeObserver(ask);
    watcher.observe(document.body);
    return () => {
      stop();
      window.removeEventListener('scroll', ask);
      window.removeEventListener('resize', ask);
      watcher.disconnect();
    };
  }, [tall]);
  return seen;
}
