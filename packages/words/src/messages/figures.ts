import type { NumberForm } from './numberForm.ts';

/** Numbers at the precision people read them with, in the marks of a language. */
export interface Figures {
  /** Whole from 100 up, at most three figures below. */
  figure(value: number): string;
  /** As it was given: nothing rounded that a survey could hold. */
  exact(value: number): string;
  /** Days to a tenth. */
  days(value: number): string;
  /** So many decimals, zeros at the end kept, so that columns stand under each other. */
  fixed(value: number, decimals: number): string;
  /** The nearest whole number. */
  whole(value: number): string;
}

/** A number cut to so many decimals, without zeros at the end, as a plain decimal; nothing is "-0". */
function cut(value: number, decimals: number): string {
  const [whole = '0', part = ''] = Math.abs(value).toFixed(decimals).split('.');
  const rest = part.replace(/0+$/, '');
  const body = rest === '' ? whole : `${whole}.${rest}`;
  return value < 0 && /[1-9]/.test(body) ? `-${body}` : body;
}

/** A number as people read it, as a plain decimal: whole from 100 up, at most three figures below. */
export function plainFigure(value: number): string {
  const size = Math.abs(value);
  if (size >= 99.95 || size === 0) return cut(value, 0);
  if (size >= 10) return cut(value, 1);
  if (size >= 1) return cut(value, 2);
  return cut(value, Math.min(6, 2 - Math.floor(Math.log10(size))));
}

/** A number as it was given, as a plain decimal. */
export function plainExact(value: number): string {
  const size = Math.abs(value);
  return cut(value, size >= 1000 ? 1 : size >= 10 ? 3 : 6);
}

/** Days to a tenth, as a plain decimal. */
export function plainDays(value: number): string {
  return Math.abs(value) >= 99.95 ? cut(value, 0) : cut(value, 1);
}

function plainFixed(value: number, decimals: number): string {
  const body = Math.abs(value).toFixed(decimals);
  return value < 0 && /[1-9]/.test(body) ? `-${body}` : body;
}

/** The nearest whole number, as a plain decimal. */
export const plainWhole = (value: number): string => cut(Math.round(value), 0);

/**
 * Numbers as they are read in a language.
 *
 * @param form - its marks
 * @param notKnown - what is read in place of a number that is none
 * @param under - "under {amount}", for what is too little to show and not nothing
 */
export function figuresIn(form: NumberForm, notKnown: string, under: (amount: string) => string): Figures {
  const shown = (plain: (value: number) => string) => (value: number) =>
    Number.isFinite(value) ? form.marked(plain(value)) : notKnown;
  const days = shown(plainDays);
  const figure = shown(plainFigure);
  return {
    figure: (value) => (value > 0 && plainFigure(value) === '0' ? under(form.marked('0.000001')) : figure(value)),
    exact: shown(plainExact),
    days: (value) => (value > 0 && value < 0.05 ? under(form.marked('0.1')) : days(value)),
    fixed: (value, decimals) => shown((one) => plainFixed(one, decimals))(value),
    whole: shown(plainWhole),
  };
}
