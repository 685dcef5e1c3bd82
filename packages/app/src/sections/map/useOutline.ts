import { useQuery } from '@tanstack/react-query';
import { useMemo } from 'react';
import type { Box } from './frame.ts';
import { loadWorld, type Outline, outlineOf } from './outline.ts';
import type { Plane } from './plane.ts';

/** Coasts and borders round the sites; `failed` where their file could not be had. */
export function useOutline(plane: Plane, box: Box): Outline | 'reading' | 'failed' {
  const { data, isError } = useQuery({
    // Not under a programme: it never changes, and is not kept twice.
    queryKey: ['outlines'],
    queryFn: loadWorld,
    structuralSharing: false,
    meta: { isNotKept: true },
  });
  const outline = useMemo(() => (data ? outlineOf(data, plane, box) : null), [data, plane, box]);
  return outline ?? (isError ? 'failed' : 'reading');
}
