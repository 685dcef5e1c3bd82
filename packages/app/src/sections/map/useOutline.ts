import type { GeoPosition } from '@eavewell/engine';
import { useQuery } from '@tanstack/react-query';
import type { Box } from './frame.ts';
import type { Outline } from './outline.ts';
import type { OutlineAsked, OutlineTold } from './outlineWorker.ts';
import type { Plane } from './plane.ts';

let worker: Worker | null = null;
let asked_count = 0;

/** Asks the thread that lays outlines on a plane. */
function drawnOutline(middle: GeoPosition, box: Box): Promise<Outline> {
  worker ??= new Worker(new URL('./outlineWorker.ts', import.meta.url), { type: 'module' });
  const thread = worker;
  const ask = ++asked_count;
  return new Promise((resolve, reject) => {
    const end = (outline: Outline | null) => {
      thread.removeEventListener('message', hear);
      thread.removeEventListener('error', fail);
      if (outline === null) reject(new Error('the outlines could not be had'));
      else resolve(outline);
    };
    const hear = ({ data }: MessageEvent<OutlineTold>) => {
      if (data.ask === ask) end(data.outline);
    };
    const fail = () => {
      worker = null;
      end(null);
    };
    thread.addEventListener('message', hear);
    thread.addEventListener('error', fail);
    thread.postMessage({ ask, middle, box } satisfies OutlineAsked);
  });
}

/** Coasts and borders round the sites; `failed` where their file could not be had. */
export function useOutline({ middle }: Plane, box: Box): Outline | 'reading' | 'failed' {
  const { data, isError } = useQuery({
    // Not under a programme: it never changes, and is not kept twice.
    queryKey: ['outline', middle, box],
    queryFn: () => drawnOutline(middle, box),
    structuralSharing: false,
    meta: { isNotKept: true },
  });
  return data ?? (isError ? 'failed' : 'reading');
}
