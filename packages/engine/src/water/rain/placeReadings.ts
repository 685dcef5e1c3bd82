import {
  type DayIndex,
  type EngineProblemCode,
  engineProblem,
  isoDay,
  measured,
  type Place,
  type Problem,
  type RainReading,
  unknownDay,
} from '../../kernel/index.ts';
import { daysNamed_count, largeRainInADay_mm, mostRainInADay_mm } from './constants.ts';

/** The readings on the calendar. */
export interface PlacedReadings {
  readonly firstDay: DayIndex;
  readonly rain_mm: Float64Array;
  /** `measured` or `unknownDay`. */
  readonly state: Uint8Array;
  /** One for each kind of fault that was met. */
  readonly problems: readonly Problem[];
}

/** The faults of one kind: how many, the first, and the first few by day. */
interface Faults {
  count: number;
  first: RainReading | null;
  readonly days: string[];
}

/** How a day was met so far. */
const notMet = 0;
const metEmpty = 1;
const metValue = 2;
const metDiffering = 3;

const kinds = ['out_of_order', 'day_twice_same', 'day_twice_differs', 'negative', 'absurd', 'large'] as const;
type Kind = (typeof kinds)[number];

/**
 * Which reading belongs to which day, and which cannot be believed? One pass over the readings.
 *
 * @param readings - the readings in the order of their file: day [day], rain_mm [mm] or null
 * @param shift_days - how many days earlier the rain fell than it was read [day], 0 or 1
 * @param place - file and gauge, for the places of problems
 * @returns the first day [day], rain by day [mm], state by day, and one problem for each kind of fault
 * @problem rain.out_of_order - a reading's day is before that of the reading above it
 * @problem rain.day_twice_same - a day stands twice and nothing differs; kept once
 * @problem rain.day_twice_differs - a day stands twice with two values; unknown
 * @problem rain.negative - under 0; unknown
 * @problem rain.absurd - above 1828.8 mm; unknown
 * @problem rain.large - above 500 mm; kept
 * @law the order of readings changes no day
 * @source durre-2010, bounds check (from memory)
 */
export function placeReadings(readings: readonly RainReading[], shift_days: number, place: Place): PlacedReadings {
  let firstDay = Infinity;
  let lastDay = -Infinity;
  for (const { day } of readings) {
    if (day < firstDay) firstDay = day;
    if (day > lastDay) lastDay = day;
  }
  const length = readings.length === 0 ? 0 : lastDay - firstDay + 1;
  const rain_mm = new Float64Array(length);
  const met = new Uint8Array(length);
  const faults = new Map<Kind, Faults>();
  const note = (kind: Kind, reading: RainReading) => addFault(faults, kind, reading, shift_days);
  let dayBefore = -Infinity;
  for (const reading of readings) {
    if (reading.day < dayBefore) note('out_of_order', reading);
    dayBefore = reading.day;
    const value = believed(reading, note);
    const at = reading.day - firstDay;
    const known = met[at]!;
    if (known === notMet || (known === metEmpty && value !== null)) {
      met[at] = value === null ? metEmpty : metValue;
      rain_mm[at] = value ?? 0;
    }
    if (known === notMet) continue;
    if (value === null || known === metEmpty || (known === metValue && rain_mm[at] === value)) {
      note('day_twice_same', reading);
    } else {
      note('day_twice_differs', reading);
      met[at] = metDiffering;
      rain_mm[at] = 0;
    }
  }
  const state = met.map((how) => (how === metValue ? measured : unknownDay));
  return { firstDay: firstDay - shift_days, rain_mm, state, problems: faultProblems(faults, place, shift_days) };
}

/** The reading's value, or null where there is none to be believed. */
function believed(reading: RainReading, note: (kind: Kind, reading: RainReading) => void): number | null {
  const value = reading.rain_mm;
  if (value === null || Number.isNaN(value)) return null;
  if (value < 0 || value > mostRainInADay_mm) {
    note(value < 0 ? 'negative' : 'absurd', reading);
    return null;
  }
  if (value > largeRainInADay_mm) note('large', reading);
  return value;
}

function addFault(faults: Map<Kind, Faults>, kind: Kind, reading: RainReading, shift_days: number): void {
  let found = faults.get(kind);
  if (!found) {
    found = { count: 0, first: reading, days: [] };
    faults.set(kind, found);
  }
  found.count++;
  if (found.days.length < daysNamed_count) found.days.push(isoDay(reading.day - shift_days));
}

function faultProblems(faults: Map<Kind, Faults>, place: Place, shift_days: number): Problem[] {
  const problems: Problem[] = [];
  for (const kind of kinds) {
    const found = faults.get(kind);
    if (!found?.first) continue;
    const { day, row, rain_mm } = found.first;
    const code: EngineProblemCode = `rain.${kind}`;
    const column = kind === 'out_of_order' || kind.startsWith('day_twice') ? 'date' : 'rain_mm';
    const facts = { count: found.count, days: found.days, ...(rain_mm === null ? {} : { value: rain_mm }) };
    problems.push(engineProblem(code, { ...place, row, column, day: isoDay(day - shift_days) }, facts));
  }
  return problems;
}
