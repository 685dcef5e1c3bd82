import type { NumberForm } from './numberForm.ts';

/** A number as somebody typed it: one value, or none, or two that it may mean. */
export type ParsedNumber =
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'empty' }
  | { readonly kind: 'notANumber' }
  | { readonly kind: 'ambiguous'; readonly readings: readonly [number, number] };

const spaces = /[\s\u00a0\u202f\u2009'’]/g;
const marksDecimal = /^([+-]?)(\d*)[.,](\d+)$/;

/** The zeros of scripts whose figures are taken: 0, Arabic, Persian, Devanagari, Bengali, Burmese, Khmer, Thai, Lao. */
const zeros = [0x30, 0x660, 0x6f0, 0x966, 0x9e6, 0x1040, 0x17e0, 0xe50, 0xed0];

function asciiFigure(figure: string): string {
  const code = figure.codePointAt(0) ?? 0;
  const zero = zeros.find((one) => code >= one && code < one + 10);
  return zero === undefined ? figure : String(code - zero);
}

/** Figures of other scripts and true minus signs, as plain ones; marks of direction and isolation fall away. */
function plainText(text: string): string {
  return text
    .replace(/[\u200e\u200f\u061c\u2066-\u2069]/g, '')
    .replace(/\p{Nd}/gu, asciiFigure)
    .replaceAll('\u066b', ',')
    .replace(/\u2212/g, '-')
    .trim();
}

/**
 * What number was typed? A comma and a point are both taken as the decimal mark, as people of one programme write both.
 * One mark with exactly three figures behind it and one to three before it (1,234 or 1.234) may mean either, so both
 * readings are given and nothing is chosen; a 0 before it, or a second mark, settles it.
 *
 * @param text - as typed
 * @param form - the language it was typed in
 */
export function parseNumber(text: string, form: Pick<NumberForm, 'decimalMark'>): ParsedNumber {
  const typed = plainText(text).replace(spaces, ' ').trim();
  if (typed === '') return { kind: 'empty' };
  const closed = closedUp(typed);
  if (closed === null) return { kind: 'notANumber' };
  const decimal = marksDecimal.exec(closed);
  if (/^[+-]?\d+$/.test(closed)) return numberOf(closed);
  if (decimal) {
    const [, sign = '', before = '', behind = ''] = decimal;
    const grouped = behind.length === 3 && /^[1-9]\d{0,2}$/.test(before) && closed === typed;
    if (!grouped) return numberOf(`${sign}${before === '' ? '0' : before}.${behind}`);
    const readings = [Number(`${sign}${before}.${behind}`), Number(`${sign}${before}${behind}`)] as const;
    return { kind: 'ambiguous', readings: form.decimalMark === closed.at(-4) ? readings : [readings[1], readings[0]] };
  }
  return manyMarks(closed);
}

/** The text without the spaces between its thousands; null where a space stands elsewhere. */
function closedUp(typed: string): string | null {
  if (!typed.includes(' ')) return typed;
  return /^[+-]?\d{1,3}(?: \d{3})+(?:[.,]\d+)?$/.test(typed) ? typed.replaceAll(' ', '') : null;
}

/** Several marks: those of thousands are alike, and the last may be another, the decimal mark. */
function manyMarks(text: string): ParsedNumber {
  const found = /^([+-]?\d{1,3})((?:,\d{2,3})*,\d{3}|(?:\.\d{3})+)(?:([.,])(\d+))?$/.exec(text);
  if (!found) return { kind: 'notANumber' };
  const [, first = '', thousands = '', mark, behind] = found;
  if (mark !== undefined && mark === thousands[0]) return { kind: 'notANumber' };
  const whole = `${first}${thousands.replace(/[.,]/g, '')}`;
  return numberOf(behind === undefined ? whole : `${whole}.${behind}`);
}

function numberOf(plain: string): ParsedNumber {
  const value = Number(plain);
  return Number.isFinite(value) ? { kind: 'number', value } : { kind: 'notANumber' };
}
