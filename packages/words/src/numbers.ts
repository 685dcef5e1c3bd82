import { calendarDay, type DayIndex } from '@eavewell/engine';

/** Groups the digits of a whole number in threes, with commas. */
function grouped(digits: string): string {
  return digits.replace(/\B(?=(\d{3})+$)/g, ',');
}

/** A number cut to so many decimals, without trailing zeros, thousands grouped, a true minus sign kept plain for terminals. */
function written(value: number, decimals: number): string {
  const [whole = '0', part = ''] = Math.abs(value).toFixed(decimals).split('.');
  const rest = part.replace(/0+$/, '');
  const body = rest === '' ? grouped(whole) : `${grouped(whole)}.${rest}`;
  return value < 0 && /[1-9]/.test(body) ? `-${body}` : body;
}

/** A number as people read it: whole from 100 up, at most three figures below. Not a number at all reads "not known". */
export function figure(value: number): string {
  if (!Number.isFinite(value)) return 'not known';
  const size = Math.abs(value);
  if (size >= 99.95 || size === 0) return written(value, 0);
  if (size >= 10) return written(value, 1);
  if (size >= 1) return written(value, 2);
  return written(value, Math.min(6, 2 - Math.floor(Math.log10(size))));
}

/** A number as it was given, for inputs: nothing rounded that a survey could hold. */
export function exactFigure(value: number): string {
  if (!Number.isFinite(value)) return 'not known';
  const size = Math.abs(value);
  return written(value, size >= 1000 ? 1 : size >= 10 ? 3 : 6);
}

/** Days to a tenth; what is less than that is not called none. */
export function dayFigure(value: number): string {
  if (!Number.isFinite(value)) return 'not known';
  if (value > 0 && value < 0.05) return 'under 0.1';
  return Math.abs(value) >= 99.95 ? written(value, 0) : written(value, 1);
}

/** A number with so many decimals, zeros at the end kept, so that columns stand under each other. */
export function fixedFigure(value: number, decimals: number): string {
  if (!Number.isFinite(value)) return 'not known';
  const [whole = '0', part] = Math.abs(value).toFixed(decimals).split('.');
  const body = part === undefined ? grouped(whole) : `${grouped(whole)}.${part}`;
  return value < 0 && /[1-9]/.test(body) ? `-${body}` : body;
}

/** Whole number, nearest. */
export function wholeFigure(value: number): string {
  return Number.isFinite(value) ? written(Math.round(value), 0) : 'not known';
}

/** A size of tank that is enough: rounded up, never down, to 10 L below 1,000 L and to 100 L above. */
export function enoughLitres(volume_L: number): number {
  const step = volume_L <= 1000 ? 10 : 100;
  return Math.ceil(volume_L / step - 1e-9) * step;
}

/** A day of the calendar as year, month and day, from an index or an ISO text; null where the text is no date. */
export function dateParts(day: DayIndex | string): { year: number; month: number; day: number } | null {
  if (typeof day === 'number') return Number.isFinite(day) ? calendarDay(day) : null;
  const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(day);
  return found ? { year: Number(found[1]), month: Number(found[2]), day: Number(found[3]) } : null;
}
