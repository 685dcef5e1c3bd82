import type { DayIndex } from '@eavewell/engine';
import type { DoubtKind } from './record.ts';

/** The words of the trace, in the reader's language. */
export interface TraceWords {
  /** `12,000 L` */
  litres(volume_L: number): string;
  readonly empty: string;
  /** `54 d` */
  days(days: number): string;
  /** `from 20 Jul 2010` */
  from(day: DayIndex): string;
  /** `runs over 7 d` */
  runsOver(days: number): string;
  year(year: number): string;
  /** `Jul`, and with its year where a year begins. */
  month(month: number, year: number | null): string;
  readonly notJudged: string;
  readonly filled: string;
  readonly unknown: string;
  readonly made: string;
  /** `rain of a day, most 64 mm` */
  rain(most_mm: number): string;
  /** What stands at the day pointed at: level and date, or that it is dry. */
  day(day: DayIndex, content_L: number, isDry: boolean): string;
}

/** One strip of the trace: days by their places in the record, end not in it, and its heights [px]. */
export interface Strip {
  readonly from: number;
  readonly to: number;
  readonly index: number;
  readonly y: number;
  readonly top: number;
  readonly base: number;
  readonly bottom: number;
}

/** What all strips go by. */
export interface TraceFrame {
  readonly strips: readonly Strip[];
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly pxPerDay: number;
  readonly pxPerRunDay: number;
  readonly isDaily: boolean;
  readonly isNarrow: boolean;
  readonly hasDoubt: boolean;
  readonly rainHeight: number;
  /** Kinds of doubt that have their word already: each is told once. */
  readonly told: Set<DoubtKind>;
}
