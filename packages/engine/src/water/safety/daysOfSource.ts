import type { SecondSourceFacts, SiteFacts, SourceDays, SourceDaysOfBody } from '../../kernel/index.ts';
import { yearOfDrinking_days } from './constants.ts';
import { sourceDaysByYear } from './yearOfWaters.ts';

/** The second source of a site as it bears on what is drunk. */
export interface DaysOfSource {
  /** Null where there is none, or where the tanks left no day of the record to it. */
  readonly source: SecondSourceFacts | null;
  /** Null where its days are not known, or there are none. */
  readonly bodies: readonly SourceDaysOfBody[] | null;
  /** What is told of it; null where the site names no second source. */
  readonly told: SourceDays | null;
}

/** How often is the second source drunk from? A year has 365 days, also one of 366. */
export function daysOfSource(
  { secondSource }: Pick<SiteFacts, 'secondSource'>,
  given: readonly SourceDaysOfBody[] | null,
): DaysOfSource {
  if (secondSource === null) return { source: null, bodies: null, told: null };
  const { secondSourceId, name } = secondSource;
  const isKnown = given !== null && given.length > 0 && given.every(({ days_by_year }) => days_by_year.length > 0);
  if (!isKnown)
    return {
      source: secondSource,
      bodies: null,
      told: { secondSourceId, name, days_per_year: null, days_per_year_range: null },
    };
  const bodies = given.map(({ people, days_by_year }) => ({
    people,
    days_by_year: days_by_year.map((days) => Math.min(days, yearOfDrinking_days)),
  }));
  const byYear = sourceDaysByYear(bodies);
  const told = {
    ...{ secondSourceId, name, days_per_year: meanOf(byYear) },
    days_per_year_range: { low: Math.min(...byYear), high: Math.max(...byYear) },
  };
  const isDrunk = byYear.some((days) => days > 0);
  return isDrunk ? { source: secondSource, bodies, told } : { source: null, bodies: null, told };
}

/** The mean; 0 of none. */
export function meanOf(values: readonly number[]): number {
  return values.length === 0 ? 0 : values.reduce((sum, value) => sum + value, 0) / values.length;
}
