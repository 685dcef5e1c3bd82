import type { ParsedNumber } from '@eavewell/words/app';

/** Between what a measure may lie, and how it is stepped through by keys. */
export interface MeasureLimits {
  readonly least: number;
  readonly most: number;
  readonly step: number;
  readonly decimals: number;
  /** Of what is counted there are no parts: people. */
  readonly isWhole?: boolean;
}

/** What was typed for a measure. */
export type MeasureEntry =
  | { readonly kind: 'empty' }
  | { readonly kind: 'value'; readonly value: number }
  | { readonly kind: 'wrong'; readonly why: 'number' | 'range' | 'whole' }
  | { readonly kind: 'wrong'; readonly why: 'either'; readonly readings: readonly number[] };

/**
 * What was typed into the field of a measure? A number that may be two (1,500) is the one that lies between the limits; where both
 * do, neither is guessed at.
 *
 * @param typed - as typed, with comma or point
 * @param limits - least and most, and whether it is counted whole
 * @param parse - the numbers of the page's language
 */
export function measureEntry(
  typed: string,
  { least, most, isWhole = false }: MeasureLimits,
  parse: (text: string) => ParsedNumber,
): MeasureEntry {
  const parsed = parse(typed);
  const isCounted = (value: number) => !isWhole || Number.isInteger(value);
  const isWithin = (value: number) => value >= least && value <= most && isCounted(value);
  if (parsed.kind === 'empty') return { kind: 'empty' };
  if (parsed.kind === 'notANumber') return { kind: 'wrong', why: 'number' };
  if (parsed.kind === 'ambiguous') {
    const fitting = parsed.readings.filter(isWithin);
    if (fitting.length === 1) return { kind: 'value', value: fitting[0]! };
    return fitting.length === 0
      ? { kind: 'wrong', why: 'range' }
      : { kind: 'wrong', why: 'either', readings: [...fitting].sort((a, b) => b - a) };
  }
  if (!isCounted(parsed.value)) return { kind: 'wrong', why: 'whole' };
  return isWithin(parsed.value) ? { kind: 'value', value: parsed.value } : { kind: 'wrong', why: 'range' };
}
