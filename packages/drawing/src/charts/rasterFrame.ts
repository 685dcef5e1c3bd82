import { calendarDay, type DayIndex, isLeapYear, type WaterYear } from '@eavewell/engine';
import { letterWidth_px } from './letterWidth.ts';
import { type RecordInput, startMonthOf } from './record.ts';

/** The words of the raster, in the reader's language. */
export interface RasterWords {
  year(year: number): string;
  /** `Jul`; one letter where the picture is narrow. */
  month(month: number, isNarrow: boolean): string;
  days(days: number): string;
  /** `longest dry run of the year`; short where the picture is narrow. */
  longestRun(isNarrow: boolean): string;
  readonly dry: string;
  readonly low: string;
  readonly full: string;
  readonly filled: string;
  readonly unknown: string;
  readonly made: string;
  /** `thin rows: not judged` */
  readonly thinRows: string;
  day(day: DayIndex, content_L: number, isDry: boolean): string;
}

/** Where the rows and cells of a raster stand [px]. */
export interface RasterFrame {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /** From one row to the next, and how much of it is drawn. */
  readonly pitch: number;
  readonly gap: number;
  readonly plotWidth: number;
  readonly pxPerSlot: number;
  readonly startMonth: number;
  readonly isNarrow: boolean;
}

/** Days of a leap year: so many places has a row, 29 February's taken by the 28th in other years [day]. */
export const slots_days = 366;

/** Lays the rows out. */
export function rasterFrame(input: RecordInput, words: RasterWords, width: number): RasterFrame {
  const isNarrow = width < 560;
  const rows = Math.max(1, input.years.length);
  const pitch = Math.min(16, Math.max(3, 272 / rows));
  const gap = pitch >= 5 ? 1 : pitch >= 4 ? 0.6 : 0.3;
  const left = Math.ceil(Math.max(...input.years.map(({ label }) => letterWidth_px(words.year(label))), 20)) + 7;
  const side = isNarrow ? 76 : 180;
  const plotWidth = Math.max(60, width - left - side);
  const top = 22;
  const height = Math.ceil(top + rows * pitch + 48);
  const startMonth = startMonthOf(input);
  return { left, top, width, height, pitch, gap, plotWidth, pxPerSlot: plotWidth / slots_days, startMonth, isNarrow };
}

const monthLengths = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** The place in a row of a day of the calendar, 0 to 365, rows beginning with the first of a month. */
export function slotOf(month: number, day: number, startMonth: number): number {
  let slot = day - 1;
  for (let own = startMonth; own !== month; own = own === 12 ? 1 : own + 1) slot += monthLengths[own - 1]!;
  return slot;
}

/** For a year's rows: places of its first day, and after which of its days 29 February is missing; Infinity where it is not. */
export function rowOf(year: WaterYear, firstDay: DayIndex, startMonth: number) {
  const first = calendarDay(firstDay + year.from);
  const firstSlot = slotOf(first.month, first.day, startMonth);
  const leapSlot = slotOf(2, 29, startMonth);
  // The February of this row: of the year it begins in where that is still to come, else of the next.
  const february = firstSlot <= leapSlot && startMonth > 2 && first.month >= startMonth ? first.year + 1 : first.year;
  const isMissing = firstSlot < leapSlot && !isLeapYear(february);
  const before28 = leapSlot - 1 - firstSlot;
  return { firstSlot, before28: isMissing ? before28 : Infinity };
}

/** Left end of a day's cell in slots: `offset` days into its year. One more after a 29 February that is missing. */
export function slotAt({ firstSlot, before28 }: ReturnType<typeof rowOf>, offset: number): number {
  return Math.min(slots_days, firstSlot + offset + (offset > before28 ? 1 : 0));
}
