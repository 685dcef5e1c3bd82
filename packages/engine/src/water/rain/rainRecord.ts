import {
  type Checked,
  engineProblem,
  type GaugeFacts,
  isoDay,
  measured,
  type Place,
  type Problem,
  type RainRecord,
} from '../../kernel/index.ts';
import { morningEnds_h } from './constants.ts';
import { nearReadings } from './farReadings.ts';
import { placeReadings } from './placeReadings.ts';
import { repeatedRain } from './repeatedRain.ts';
import { runsOfDays } from './runsOfDays.ts';
import { unitMixUps } from './unitMixUps.ts';

/**
 * What rain did this gauge measure, day by day? Puts the readings on the calendar, moves a morning reading to the day
 * before, and leaves a day unknown where its reading cannot be believed. Nothing is filled here.
 *
 * @param gauge - the gauge and its readings as they came: day [day], rain_mm [mm] or null
 * @returns the record from its first to its last measured day: rain_mm [mm] by day, state by day; problems alone where no day is measured, or where it is not in mm
 * @problem rain.none - no reading can be used
 * @problem rain.shifted - readings before noon were moved to the day before
 * @problem rain.out_of_order - a reading's day is before that of the reading above it
 * @problem rain.day_twice_same - a day stands twice and nothing differs; kept once
 * @problem rain.day_twice_differs - a day stands twice with two values; the day is unknown
 * @problem rain.negative - rain under 0; the day is unknown
 * @problem rain.absurd - rain above 1828.8 mm in a day; the day is unknown
 * @problem rain.large - rain above 500 mm in a day; kept
 * @problem rain.day_far - a few days over five years from all others; not used
 * @problem rain.days_missing - days between the first and the last are not measured
 * @problem rain.same_for_days - seven days or more in a row with one rain, not 0; kept
 * @problem rain.month_twice - two months alike day by day; kept
 * @problem rain.in_inches - the numbers look like inches; no record
 * @problem rain.in_tenths - the numbers look like tenths of mm; no record
 * @law the order of readings changes no day
 * @source durre-2010, bounds check (from memory)
 */
export function rainRecord(gauge: GaugeFacts): Checked<RainRecord> {
  const place: Place = { file: gauge.file, gaugeId: gauge.gaugeId };
  const shift_days = isMorning(gauge.readingTime) ? 1 : 0;
  const near = nearReadings(gauge.readings, shift_days, place);
  const placed = placeReadings(near.readings, shift_days, place);
  const problems: Problem[] = [...near.problems, ...placed.problems];
  const from = placed.state.indexOf(measured);
  if (from < 0) return { ok: false, problems: [...problems, engineProblem('rain.none', place)] };
  if (shift_days > 0) {
    const facts = { readingTime: gauge.readingTime ?? '', count: gauge.readings.length };
    problems.push(engineProblem('rain.shifted', place, facts));
  }
  const to = placed.state.lastIndexOf(measured) + 1;
  const record: RainRecord = {
    gaugeId: gauge.gaugeId,
    firstDay: placed.firstDay + from,
    rain_mm: placed.rain_mm.slice(from, to),
    state: placed.state.slice(from, to),
  };
  problems.push(...repeatedRain(record, shift_days, place));
  const missing = missingDays(record, place);
  if (missing) problems.push(missing);
  const mixUps = unitMixUps(record, place);
  if (mixUps.length > 0) return { ok: false, problems: [...problems, ...mixUps] };
  return { ok: true, value: record, problems };
}

/** One problem for all holes of a record: how many days, in how many gaps, and the longest. */
function missingDays(record: RainRecord, place: Place): Problem | null {
  const gaps = runsOfDays(record.state.length, (day) => record.state[day] !== measured);
  const [first] = gaps;
  if (!first) return null;
  const longest = gaps.reduce((most, gap) => (gap.to - gap.from > most.to - most.from ? gap : most), first);
  const facts = {
    count: gaps.reduce((sum, gap) => sum + gap.to - gap.from, 0),
    gaps: gaps.length,
    longest_days: longest.to - longest.from,
    longestFrom: isoDay(record.firstDay + longest.from),
    longestTo: isoDay(record.firstDay + longest.to - 1),
  };
  return engineProblem('rain.days_missing', { ...place, day: isoDay(record.firstDay + first.from) }, facts);
}

function isMorning(readingTime: string | null): boolean {
  const hour = readingTime === null ? undefined : /^(\d{1,2}):\d{2}$/.exec(readingTime)?.[1];
  return hour !== undefined && Number(hour) < morningEnds_h;
}
