import { readIsoDay } from '@eavewell/engine';

/** In which order day and month stand in a column of dates written as text. */
export type DateOrder = 'dayFirst' | 'monthFirst';

/** What the texts of a column show of their order. */
export type OrderShown =
  | { readonly is: 'none' }
  | { readonly is: 'proved'; readonly order: DateOrder; readonly proof: string }
  | { readonly is: 'unknown' };

const yearLast = /^(\d{1,2})([-/.])(\d{1,2})\2(\d{4})$/;
const mostMonths = 12;

function dayOf(text: string, order: DateOrder): string | null {
  const found = yearLast.exec(text.trim());
  if (!found) return null;
  const [day, month] = order === 'dayFirst' ? [found[1]!, found[3]!] : [found[3]!, found[1]!];
  const iso = `${found[4]}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  return readIsoDay(iso) === null ? null : iso;
}

/**
 * The day that a text with the year last means in an order.
 *
 * @param text - the cell [text]
 * @param order - day first or month first
 * @returns year-month-day; null where it is no such text, or no day in that order [text]
 * @definition ours: docs/decisions/0072-order-of-dates.md
 * @example
 * dayInOrder('13/02/2001', 'dayFirst') // → '2001-02-13'
 * dayInOrder('13/02/2001', 'monthFirst') // → null
 */
export function dayInOrder(text: string, order: DateOrder): string | null {
  return dayOf(text, order);
}

/**
 * In which order do the dates of a column stand? Only a value above 12 shows it, and only where none shows the other.
 *
 * @param texts - the cells of one column [text]
 * @returns the order and the text that proves it; unknown where none does, or two contradict; none where no text has its year last
 * @law never proved where a text shows the other order
 * @definition ours: docs/decisions/0072-order-of-dates.md
 * @example
 * dateOrder(['02/03/2001', '13/03/2001']) // → { is: 'proved', order: 'dayFirst', proof: '13/03/2001' }
 */
export function dateOrder(texts: Iterable<string>): OrderShown {
  const proofs: Record<DateOrder, string | null> = { dayFirst: null, monthFirst: null };
  let count = 0;
  for (const text of texts) {
    const found = yearLast.exec(text.trim());
    if (!found) continue;
    count++;
    if (Number(found[1]) > mostMonths) proofs.dayFirst ??= text.trim();
    if (Number(found[3]) > mostMonths) proofs.monthFirst ??= text.trim();
  }
  if (count === 0) return { is: 'none' };
  const { dayFirst, monthFirst } = proofs;
  if (dayFirst !== null && monthFirst === null) return { is: 'proved', order: 'dayFirst', proof: dayFirst };
  if (monthFirst !== null && dayFirst === null) return { is: 'proved', order: 'monthFirst', proof: monthFirst };
  return { is: 'unknown' };
}
