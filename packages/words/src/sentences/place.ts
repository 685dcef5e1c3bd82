import type { Place } from '@eavewell/engine';
import type { Speech } from '../problems.ts';

/** A place as the engine or as a report has it. */
export type PlaceSaid = { readonly [K in keyof Place]?: Place[K] | undefined };

/** Where a problem was found: file, row and column first, then the site or gauge and the day. */
export const placeIn =
  ({ say, numbers }: Speech) =>
  (at: PlaceSaid): string => {
    const parts: string[] = [];
    if (at.file !== undefined) parts.push(at.file);
    if (at.row !== undefined) parts.push(say('places.row', { row: String(at.row) }));
    const whose = [
      ...(at.siteId === undefined ? [] : [say('places.site', { site: at.siteId })]),
      ...(at.gaugeId === undefined || at.row !== undefined ? [] : [say('places.gauge', { gauge: at.gaugeId })]),
    ];
    const column = [
      ...(at.column === undefined ? [] : [at.column]),
      ...(at.cell === undefined ? [] : [say('places.cell', { cell: at.cell })]),
    ];
    parts.push(...(at.file === undefined ? [...whose, ...column] : [...column, ...whose]));
    if (at.day !== undefined) parts.push(numbers.date(at.day));
    return parts.length === 0 ? say('places.folder') : parts.join(', ');
  };
