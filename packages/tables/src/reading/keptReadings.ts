import { isoDay, type Place, type Problem, type RainReading } from '@eavewell/engine';
import { tableProblem } from './tableProblems.ts';

/** So many readings of one gauge are kept whatever they say: more than four for each day of the longest record. Ours. */
export const mostKept = 400_000;

const differs = Symbol('differs');

/**
 * The readings of one gauge, which cannot grow without end: there are only so many days. Beyond a number, a reading is left
 * out, and counted, where its day stood before and it says nothing new of it.
 */
export class KeptReadings {
  readonly readings: RainReading[] = [];
  private readonly most: number;
  /** What is known of each day, from when the number is reached. */
  private known: Map<number, number | null | typeof differs> | null = null;
  private left: { readonly day: number; readonly row: number; count: number; lastRow: number } | null = null;

  constructor(most: number = mostKept) {
    this.most = most;
  }

  add(reading: RainReading): void {
    if (this.readings.length < this.most) {
      this.readings.push(reading);
      return;
    }
    if (this.known === null) {
      this.known = new Map();
      for (const before of this.readings) this.isNews(before);
    }
    if (this.isNews(reading)) this.readings.push(reading);
    else if (this.left === null) this.left = { day: reading.day, row: reading.row, count: 1, lastRow: reading.row };
    else {
      this.left.count++;
      this.left.lastRow = reading.row;
    }
  }

  /** Does the reading change what is known of its day? A day with two values is unknown, and stays so. */
  private isNews({ day, rain_mm }: RainReading): boolean {
    const before = this.known!.get(day);
    if (before === differs || (before !== undefined && (rain_mm === null || rain_mm === before))) return false;
    this.known!.set(day, before === undefined || before === null ? rain_mm : differs);
    return true;
  }

  /** One problem for all that was left out, or none. */
  problems(place: Place): readonly Problem[] {
    if (this.left === null) return [];
    const { day, row, count, lastRow } = this.left;
    const facts = { value: isoDay(day), count, lastRow, expected: 'each day once' };
    return [tableProblem('rainFile.days_again', { ...place, row, column: 'date' }, facts)];
  }
}
