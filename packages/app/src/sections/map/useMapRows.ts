import { useQuery } from '@tanstack/react-query';
import { useMemo } from 'react';
import { queries } from '../../api/queries.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { Plane } from './plane.ts';
import { type MapPlace, placesOf, type Row, type WaysDrawn, waysOf } from './ways.ts';

const none: readonly Row[] = [];

/** The programme's own ways and places, laid on a plane; none while they are read. */
export function useMapRows(
  programmeId: string,
  plane: Plane,
): { readonly ways: WaysDrawn; readonly places: readonly MapPlace[] } {
  const { numbers } = useLanguage();
  const ways = useQuery(queries.table(programmeId, 'ways')).data?.rows ?? none;
  const lines = useQuery(queries.table(programmeId, 'wayLines')).data?.rows ?? none;
  const places = useQuery(queries.table(programmeId, 'places')).data?.rows ?? none;
  return useMemo(
    () => ({
      ways: waysOf(ways, lines, plane),
      places: placesOf(places, plane, (cell) => degreesOf(cell ?? '', numbers.parse)),
    }),
    [ways, lines, places, plane, numbers],
  );
}

/** Degrees that were typed; of two readings the one that can be degrees. */
export function degreesOf(cell: string, parse: ReturnType<typeof useLanguage>['numbers']['parse']): number | null {
  const parsed = parse(cell);
  if (parsed.kind === 'number') return Math.abs(parsed.value) <= 180 ? parsed.value : null;
  if (parsed.kind !== 'ambiguous') return null;
  return parsed.readings.find((value) => Math.abs(value) <= 180) ?? null;
}
