import type { Place } from '@eavewell/engine';
import { numbers } from './numbers.ts';

/** Where a problem was found: file, row and column first, then the site or gauge and the day. */
export function place(at: Place): string {
  const parts: string[] = [];
  if (at.file !== undefined) parts.push(at.file);
  if (at.row !== undefined) parts.push(`row ${at.row}`);
  const whose = [
    ...(at.siteId === undefined ? [] : [`site ${at.siteId}`]),
    ...(at.gaugeId === undefined || at.row !== undefined ? [] : [`gauge ${at.gaugeId}`]),
  ];
  const column = [
    ...(at.column === undefined ? [] : [at.column]),
    ...(at.cell === undefined ? [] : [`cell ${at.cell}`]),
  ];
  parts.push(...(at.file === undefined ? [...whose, ...column] : [...column, ...whose]));
  if (at.day !== undefined) parts.push(numbers.date(at.day));
  return parts.length === 0 ? 'the folder' : parts.join(', ');
}
