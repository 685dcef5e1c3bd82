/// <reference lib="webworker" />
import type { GeoPosition } from '@eavewell/engine';
import type { Box } from './frame.ts';
import { loadWorld, type Outline, outlineOf } from './outline.ts';
import { planeAt } from './plane.ts';

// The outlines of the whole earth are laid on the map's plane here, so that the page does not wait for it.
declare const self: DedicatedWorkerGlobalScope;

/** What is asked: where the plane touches the earth, and the box the sites lie in [km]. */
export interface OutlineAsked {
  readonly ask: number;
  readonly middle: GeoPosition;
  readonly box: Box;
}

/** What is answered; null where the file of the outlines could not be had. */
export interface OutlineTold {
  readonly ask: number;
  readonly outline: Outline | null;
}

let world: ReturnType<typeof loadWorld> | null = null;

self.addEventListener('message', async ({ data: { ask, middle, box } }: MessageEvent<OutlineAsked>) => {
  try {
    world ??= loadWorld();
    const outline = outlineOf(await world, planeAt(middle), box);
    self.postMessage({ ask, outline } satisfies OutlineTold);
  } catch {
    world = null;
    self.postMessage({ ask, outline: null } satisfies OutlineTold);
  }
});
