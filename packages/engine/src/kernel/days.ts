/** A day as a whole number of days since 1970-01-01. No time zone ever enters: a day is a square on the calendar. */
export type DayIndex = number;

/** One day taken apart. `month` 1–12, `day` 1–31, `dayOfYear` 1–366. */
export interface CalendarDay {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

const monthStart = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];
/** Which day of a leap year 29 February is. */
const leapDay_dayOfYear = 60;
const isoForm = /^(\d{4})-(\d{2})-(\d{2})$/;

/**
 * Is this a year with a 29 February?
 *
 * @param year - year of the Gregorian calendar [year], whole
 * @returns true or false
 * @definition Gregorian calendar rule
 * @example
 * isLeapYear(2000) // → true
 * isLeapYear(1900) // → false
 */
export function isLeapYear(year: number): boolean {
  return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
}

/**
 * How many days has this month?
 *
 * @param year - year of the Gregorian calendar [year], whole
 * @param month - month [month], 1 to 12
 * @returns days in the month [day], 28 to 31
 * @definition Gregorian calendar rule
 * @example
 * daysInMonth(2024, 2) // → 29
 */
export function daysInMonth(year: number, month: number): number {
  if (month === 2) return isLeapYear(year) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

/**
 * Which day index is this date? Counts whole days from 1970-01-01 without passing through a clock or a time zone.
 *
 * @param year - year of the Gregorian calendar [year], whole
 * @param month - month [month], 1 to 12
 * @param day - day of the month [day], 1 to 31
 * @returns days since 1970-01-01 [day], whole, negative before it
 * @definition days since 1970-01-01
 * @example
 * dayIndexOf(1970, 1, 1) // → 0
 * dayIndexOf(2000, 3, 1) // → 11017
 */
export function dayIndexOf(year: number, month: number, day: number): DayIndex {
  const y = year - 1;
  const daysBefore = y * 365 + Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400);
  const leap = month > 2 && isLeapYear(year) ? 1 : 0;
  return daysBefore + monthStart[month - 1]! + leap + day - 1 - 719162;
}

/**
 * Which day does a clock show where it stands?
 *
 * @param clock - the clock of whoever asks: year, month from 0 on, day of the month
 * @returns days since 1970-01-01 of the local day [day]
 * @definition days since 1970-01-01
 */
export function dayOnClock(clock: Pick<Date, 'getFullYear' | 'getMonth' | 'getDate'>): DayIndex {
  return dayIndexOf(clock.getFullYear(), clock.getMonth() + 1, clock.getDate());
}

/**
 * Which date is this day index?
 *
 * @param index - days since 1970-01-01 [day], whole
 * @returns the date: year [year], month [month] 1 to 12, day [day] 1 to 31
 * @definition days since 1970-01-01
 * @example
 * calendarDay(11016) // → { year: 2000, month: 2, day: 29 }
 */
export function calendarDay(index: DayIndex): CalendarDay {
  // Days counted from 0000-03-01, so that the leap day is the last of its year.
  const shifted = index + 719468;
  const era = Math.floor(shifted / 146097);
  const dayOfEra = shifted - era * 146097;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36524) - Math.floor(dayOfEra / 146096)) / 365,
  );
  const dayOfMarchYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const marchMonth = Math.floor((5 * dayOfMarchYear + 2) / 153);
  const day = dayOfMarchYear - Math.floor((153 * marchMonth + 2) / 5) + 1;
  const month = marchMonth < 10 ? marchMonth + 3 : marchMonth - 9;
  return { year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0), month, day };
}

/**
 * Which day of a year without 29 February is this?
 *
 * @param month - month [month], 1 to 12
 * @param day - day of the month [day], 1 to 31; 29 February counts as 28 February
 * @returns day of the year [day], 1 to 365
 * @definition days from 1 January on, 29 February left out
 * @example
 * dayOfPlainYear(1, 1) // → 1
 * dayOfPlainYear(2, 29) // → 59
 * dayOfPlainYear(12, 31) // → 365
 */
export function dayOfPlainYear(month: number, day: number): number {
  return monthStart[month - 1]! + (month === 2 && day === 29 ? 28 : day);
}

/**
 * Which month is this day of a year without 29 February in?
 *
 * @param dayOfYear - day of the year [day], 1 to 365
 * @returns month [month], 1 to 12
 * @definition calendar months
 * @example
 * monthOfPlainYear(59) // → 2
 * monthOfPlainYear(60) // → 3
 */
export function monthOfPlainYear(dayOfYear: number): number {
  let month = 12;
  while (monthStart[month - 1]! >= dayOfYear) month--;
  return month;
}

/**
 * Which day of a year without 29 February is each of these days? 29 February counts as 28 February.
 *
 * @param firstDay - the first day [day]
 * @param count - how many days [day], whole
 * @returns days of the year [day], 1 to 365, one after another
 * @law equals `dayOfPlainYear` of each day's month and day
 * @definition calendar days
 * @example
 * Array.from(daysOfPlainYear(11015, 3)) // → [59, 59, 60]
 */
export function daysOfPlainYear(firstDay: DayIndex, count: number): Uint16Array {
  const found = new Uint16Array(count);
  let { year } = calendarDay(firstDay);
  // Year by year, since all but the leap day is counting on.
  for (let start = dayIndexOf(year, 1, 1) - firstDay; start < count; year++) {
    const days = isLeapYear(year) ? 366 : 365;
    const plain_days = isLeapYear(year) ? leapDay_dayOfYear - 1 : days;
    const end = Math.min(count, start + days);
    for (let i = Math.max(0, start); i < end; i++) {
      const dayOfYear = i - start + 1;
      found[i] = dayOfYear > plain_days ? dayOfYear - 1 : dayOfYear;
    }
    start += days;
  }
  return found;
}

/**
 * Reads a date written year-month-day.
 *
 * @param text - the date as written [text], `2026-11-25`
 * @returns days since 1970-01-01 [day], or null where the text is not such a date or names a day that does not exist
 * @definition ISO 8601 calendar date, extended form
 * @example
 * readIsoDay('2026-11-25') // → 20782
 * readIsoDay('2026-02-30') // → null
 */
export function readIsoDay(text: string): DayIndex | null {
  const found = isoForm.exec(text);
  if (!found) return null;
  const [year, month, day] = [Number(found[1]), Number(found[2]), Number(found[3])];
  if (month < 1 || month > 12 || day < 1 || day > daysInMonth(year, month)) return null;
  return dayIndexOf(year, month, day);
}

/**
 * Writes a day index as a date, year-month-day.
 *
 * @param index - days since 1970-01-01 [day], whole
 * @returns the date as written [text]
 * @definition ISO 8601 calendar date, extended form
 * @example
 * isoDay(0) // → '1970-01-01'
 */
export function isoDay(index: DayIndex): string {
  const { year, month, day } = calendarDay(index);
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
}
