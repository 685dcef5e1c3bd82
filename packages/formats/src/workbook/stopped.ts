import type { Place, Problem } from '@eavewell/engine';
import { tableProblem } from '@eavewell/tables';
import { Unreadable, workbookLimits } from './workbookLimits.ts';

/**
 * The problem of a sheet, or of the whole workbook, from what stopped its reading. Any other error is our own and goes on.
 *
 * @param error - what was thrown
 * @param place - the sheet or the workbook
 * @param part - the part of the workbook; empty for a sheet [text]
 * @returns the problem
 * @definition ours
 */
export function stopped(error: unknown, place: Place, part: string): Problem {
  if (!(error instanceof Unreadable)) throw error;
  const value = place.file ?? '';
  const { limit, found, message: reason } = error;
  if (limit !== null) {
    const facts = { value, limit, found: found!, most: workbookLimits[limit], expected: 'a smaller workbook' };
    return tableProblem('workbook.over_limit', place, facts);
  }
  if (part === '') return tableProblem('sheet.unreadable', place, { value, reason, expected: 'a sheet of cells' });
  return tableProblem('workbook.damaged', place, { value, part, reason, expected: 'a whole workbook' });
}
