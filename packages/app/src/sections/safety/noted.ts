import type { AppLanguage } from '@eavewell/words/app';
import type { TableRow } from '../../offline/outbox.ts';

/** What was noted beside a sample, as words; empty where it was not. */
export interface Noted {
  readonly chlorine: string;
  readonly turbidity: string;
  readonly by: string;
}

/** The cells as they were written, with their unit. Digits alone are told as numbers: what cannot be read stands as it was written. */
export function notedOf(
  rows: readonly TableRow[],
  siteId: string,
  { numbers }: Pick<AppLanguage, 'numbers'>,
): (testId: string) => Noted {
  const cells = new Map(
    rows
      .filter(({ table, cells: own }) => table === 'waterTests' && (own['siteId'] ?? siteId) === siteId)
      .map(({ cells: own }) => [own['testId'], own]),
  );
  const amount = (written: string | undefined, unit: 'mg/L' | 'NTU') => {
    const text = written?.trim() ?? '';
    return /^\d+(?:\.\d+)?$/.test(text) ? numbers.given(Number(text), unit) : text;
  };
  return (testId) => {
    const own = cells.get(testId) ?? {};
    return {
      chlorine: amount(own['freeChlorine_mg_per_L'], 'mg/L'),
      turbidity: amount(own['turbidity_NTU'], 'NTU'),
      by: own['laboratory']?.trim() ?? '',
    };
  };
}
