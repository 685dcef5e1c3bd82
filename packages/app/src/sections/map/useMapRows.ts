import { useQuery } from '@tanstack/react-query';
import { useDeferredValue, useMemo } from 'react';
import { queries } from '../../api/queries.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { Plane } from './plane.ts';
import { groundDrawn, type MapGround, type MapPlace, placesOf, type Row, type WaysDrawn, waysOf } from './ways.ts';

const none: readonly Row[] = [];

/**
 * The programme's own ways and places, laid on a plane; none while they are read. They say which part of the plane is seen first.
 *
 * @param ground - ways and places that are drawn instead of those of the tables
 */
export function useMapRows(
  programmeId: string,
  plane: Plane,
  ground: MapGround | undefined,
): { readonly ways: WaysDrawn; readonly places: readonly MapPlace[]; readonly isRead: boolean } {
  const { numbers } = useLanguage();
  const enabled = ground === undefined;
  const asked = [
    useQuery({ ...queries.table(programmeId, 'ways'), enabled }),
    useQuery({ ...queries.table(programmeId, 'wayLines'), enabled }),
    useQuery({ ...queries.table(programmeId, 'places'), enabled }),
  ] as const;
  // What is drawn of them is a later rendering.
  const ways = useDeferredValue(asked[0].data?.rows ?? none);
  const lines = useDeferredValue(asked[1].data?.rows ?? none);
  const places = useDeferredValue(asked[2].data?.rows ?? none);
  const isRead = useDeferredValue(asked.every(({ isPending }) => !isPending));
  return useMemo(
    () =>
      ground === undefined
        ? {
            isRead,
            ways: waysOf(ways, lines, plane),
            places: placesOf(places, plane, (cell) => degreesOf(cell ?? '', numbers.parse)),
          }
        : { isRead: true, ...groundDrawn(ground, plane) },
    [isRead, ways, lines, places, plane, numbers, ground],
  );
}

/** Degrees that were typed; of two readings the one that can be degrees. */
export function degreesOf(cell: string, parse: ReturnType<typeof useLanguage>['numbers']['parse']): number | null {
  const parsed = parse(cell);
  if (parsed.kind === 'number') return Math.abs(parsed.value) <= 180 ? parsed.value : null;
  if (parsed.kind !== 'ambiguous') return null;
  return parsed.readings.find((value) => Math.abs(value) <= 180) ?? null;
}
