import { startTransition, useEffect, useState } from 'react';
import { type Frame, frameInSteps } from './frame.ts';
import type { MapSites } from './mapSites.ts';
import type { Laid } from './plane.ts';
import { inSlices } from './slices.ts';

/**
 * The sites laid on the map's plane, in slices. While newer facts of a programme are laid, the picture of before stays.
 *
 * @param programmeId - whose sites
 * @param sites - all of them
 * @param laid - how the earth is laid flat
 * @returns the picture; null where no site has a position, `laying` before it is there
 */
export function useFrame(programmeId: string, sites: MapSites, laid: Laid): Frame | null | 'laying' {
  const [found, setFound] = useState<{ readonly of: string; readonly frame: Frame | null } | null>(null);
  const of = `${programmeId} ${laid}`;
  useEffect(() => {
    let isWanted = true;
    void inSlices(frameInSteps(sites, laid), () => isWanted).then((frame) => {
      if (isWanted) startTransition(() => setFound({ of, frame }));
    });
    return () => {
      isWanted = false;
    };
  }, [of, sites, laid]);
  return found?.of === of ? found.frame : 'laying';
}
