import type { PathogenRisk, SafetyFinding } from '@eavewell/engine';
import type { NumberWords } from '../numberWords.ts';

/** Which second source is among the waters of a risk, and on how many days of a year; null days: as if it were drunk every day. */
export interface SourceOfRisk {
  readonly secondSourceId: string | null;
  readonly sourceDays_per_year: number | null;
}

/** The second source among the waters of a risk: one that is there alone and every day is so because its days are not known. */
export function sourceOfRisk({ waters }: Pick<PathogenRisk, 'waters'>, isKnown: boolean): SourceOfRisk {
  const source = waters.find(({ secondSourceId }) => secondSourceId !== null) ?? null;
  return {
    secondSourceId: source?.secondSourceId ?? null,
    sourceDays_per_year: isKnown ? (source?.days_per_year ?? null) : null,
  };
}

/** What a sentence wants that says whose water a risk is of: `source`, `isEvery`, `days`. */
export function waterOfRisk(
  { secondSourceId, sourceDays_per_year: days }: SourceOfRisk,
  { numbers }: { readonly numbers: Pick<NumberWords, 'daysAYear'> },
): { readonly source: string; readonly isEvery: 'yes' | 'no'; readonly days: string } {
  return {
    source: secondSourceId ?? 'none',
    isEvery: days === null ? 'yes' : 'no',
    days: days === null ? '' : numbers.daysAYear(days),
  };
}

/** Are the days of its second source known? */
export function isSourceKnown({
  sourceDays,
}: {
  readonly sourceDays: Pick<NonNullable<SafetyFinding['sourceDays']>, 'days_per_year'> | null;
}): boolean {
  return sourceDays !== null && sourceDays.days_per_year !== null;
}
