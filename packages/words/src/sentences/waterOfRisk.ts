import type { PathogenRisk, SafetyFinding } from '@eavewell/engine';
import type { NumberWords } from '../numberWords.ts';

/** Which second source is among the waters of a risk, and on how many days of a year; null days: as if it were drunk every day. */
export interface SourceOfRisk {
  readonly secondSourceId: string | null;
  /** What it is called; null where there is none. */
  readonly sourceName: string | null;
  readonly sourceDays_per_year: number | null;
}

/** A finding of safety, as far as its second source goes. */
export interface DaysSaid {
  readonly sourceDays: Pick<
    NonNullable<SafetyFinding['sourceDays']>,
    'secondSourceId' | 'name' | 'days_per_year'
  > | null;
}

/** The second source among the waters of a risk: one that is there alone and every day is so because its days are not known. */
export function sourceOfRisk({ waters }: Pick<PathogenRisk, 'waters'>, { sourceDays }: DaysSaid): SourceOfRisk {
  const isKnown = sourceDays !== null && sourceDays.days_per_year !== null;
  const source = waters.find(({ secondSourceId }) => secondSourceId !== null) ?? null;
  return {
    secondSourceId: source?.secondSourceId ?? null,
    sourceName: source === null ? null : nameOfSource(source.secondSourceId, { sourceDays }),
    sourceDays_per_year: isKnown ? (source?.days_per_year ?? null) : null,
  };
}

/** What a sentence wants that says whose water a risk is of: `source`, `isEvery`, `days`. */
export function waterOfRisk(
  { sourceName, sourceDays_per_year: days }: SourceOfRisk,
  { numbers }: { readonly numbers: Pick<NumberWords, 'daysAYear'> },
): { readonly source: string; readonly isEvery: 'yes' | 'no'; readonly days: string } {
  return {
    source: sourceName ?? 'none',
    isEvery: days === null ? 'yes' : 'no',
    days: days === null ? '' : numbers.daysAYear(days),
  };
}

/** What a second source is called: its name where the finding has it, else its id; null for the water of roofs. */
export function nameOfSource(secondSourceId: string | null, { sourceDays }: DaysSaid): string | null {
  return sourceDays?.secondSourceId === secondSourceId ? sourceDays.name : secondSourceId;
}
