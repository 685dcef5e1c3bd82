import type { SheetStrip } from '@eavewell/tables';
import { dateOf, dayOf } from './axis.ts';

type Span = SheetStrip['spans'][number];

/** So long after a last day that somebody guessed a way is drawn as perhaps still closed [day]. Ours. */
const unsure_days = 14;

/** The days after a guessed last day of which nobody knows: at most until it is closed again; null where the last day is known. */
export function unsureAfter(
  { isToGuessed, to, kind }: Span,
  { spans }: Pick<SheetStrip, 'spans'>,
): { readonly from: string; readonly to: string } | null {
  const last = dayOf(to);
  if (!isToGuessed || last === null) return null;
  const next = spans.reduce((least, { from, kind: other }) => {
    const begins = dayOf(from) ?? last;
    // What is closed as guessed may be closed still where it is known to be slower.
    const isNoLess = other !== 'slower' || kind === 'slower';
    return begins > last && isNoLess ? Math.min(least, begins) : least;
  }, Infinity);
  const until = Math.min(last + unsure_days, next - 1);
  return until > last ? { from: dateOf(last + 1), to: dateOf(until) } : null;
}
