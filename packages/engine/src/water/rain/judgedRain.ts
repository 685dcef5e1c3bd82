import {
  type Checked,
  type DesignSettings,
  dayIndexOf,
  engineProblem,
  filledDay,
  isoDay,
  type JudgedRain,
  madeDay,
  measured,
  neighbourDay,
  type Problem,
  type RainRecord,
  unknownDay,
  type WaterYear,
} from '../../kernel/index.ts';
import { wetDayFrom_mm } from './constants.ts';
import { fillFromNeighbours } from './fillFromNeighbours.ts';
import { fillGaps } from './fillGaps.ts';
import type { Neighbour } from './neighbours.ts';
import { waterYearStart, wholeWaterYears } from './waterYearStart.ts';

/** The settings that judge a record. */
export type RainSettings = Pick<
  DesignSettings,
  'seed' | 'missingDays_fraction' | 'leastYears' | 'waterYearStartMonth' | 'gapFilling'
>;

/**
 * Which years of this rain may a verdict rest on? Fills the gaps, cuts the part-years at both ends, and judges each whole
 * water year: not one with too many unmeasured days, nor one with a day that could not be filled.
 *
 * @param record - what the gauge measured, from rainRecord
 * @param settings - seed [number], missingDays_fraction [fraction] 0 to 1, leastYears [year], waterYearStartMonth [month] 1 to 12 or null, gapFilling
 * @param neighbours - the gauges near by, nearest first, with distance_km [km]; asked only where gapFilling says so
 * @returns whole water years with their rain [mm] by day, judged years [year], filled days [day] by what they were filled from, mean rain [mm/year], longest rainless run [day]; problems alone where no year can be judged
 * @problem rain.too_short - no whole water year, or none that can be judged
 * @problem rain.part_years_cut - days before the first and after the last whole year are not used
 * @problem rain.days_filled - days were filled from other years
 * @problem rain.days_filled_neighbours - days were filled from neighbouring gauges
 * @problem rain.no_neighbour - gaps were to be filled from neighbours, and none could fill them all
 * @problem rain.gap_not_filled - no year measured these calendar days; their years are not judged
 * @problem rain.year_not_judged - years with too many unmeasured days
 * @problem rain.few_years - fewer judged years than a firm verdict needs
 * @law the years' days and the cut days add up to the record's days
 * @definition ours
 */
export function judgedRain(
  record: RainRecord,
  settings: RainSettings,
  neighbours: readonly Neighbour[] = [],
): Checked<JudgedRain> {
  const startMonth = settings.waterYearStartMonth ?? waterYearStart(record);
  const whole = wholeWaterYears(record, startMonth);
  const place = { gaugeId: record.gaugeId };
  const tooShort = (facts: Record<string, number>) =>
    engineProblem('rain.too_short', place, {
      days: record.rain_mm.length,
      startMonth,
      wholeYears: whole.years,
      ...facts,
    });
  if (whole.years === 0) return { ok: false, problems: [tooShort({ judgedYears: 0 })] };
  const from = dayIndexOf(whole.firstYear, startMonth, 1) - record.firstDay;
  const to = dayIndexOf(whole.firstYear + whole.years, startMonth, 1) - record.firstDay;
  const { gapFilling, seed } = settings;
  const first = gapFilling === 'otherYears' ? record : fillFromNeighbours(record, neighbours, gapFilling);
  const trimmed = slice(fillGaps(first, seed), from, to);
  const years = waterYears(trimmed, startMonth, whole.firstYear, whole.years, settings.missingDays_fraction);
  const cutDays = record.rain_mm.length - (to - from);
  const problems = recordProblems(trimmed, years, cutDays, startMonth, settings);
  const judgedYears = years.filter((year) => year.judged).length;
  if (judgedYears === 0) return { ok: false, problems: [...problems, tooShort({ judgedYears })] };
  return { ok: true, value: rainOfYears(trimmed, startMonth, years, cutDays), problems };
}

/** Rain ready for the balance from a record of whole water years, one of them judged at least. */
export function rainOfYears(
  record: RainRecord,
  startMonth: number,
  years: readonly WaterYear[],
  cutDays: number,
): JudgedRain {
  const judgedYears = years.filter((year) => year.judged).length;
  const neighbourDays = count(record.state, neighbourDay);
  return {
    record,
    startMonth,
    years,
    judgedYears,
    filledDays: count(record.state, filledDay) + neighbourDays,
    neighbourDays,
    madeDays: count(record.state, madeDay),
    ...rainOfJudgedYears(record, years, judgedYears),
    cutDays,
  };
}

/** The days of a record from one offset to another, the last not included. */
export function slice(record: RainRecord, from: number, to: number): RainRecord {
  const { gaugeId, firstDay, rain_mm, state } = record;
  return { gaugeId, firstDay: firstDay + from, rain_mm: rain_mm.slice(from, to), state: state.slice(from, to) };
}

function count(state: Uint8Array, wanted: number): number {
  let found = 0;
  for (const one of state) if (one === wanted) found++;
  return found;
}

function waterYears(
  record: RainRecord,
  startMonth: number,
  firstYear: number,
  years: number,
  missingDays_fraction: number,
): readonly WaterYear[] {
  return Array.from({ length: years }, (_, i) => {
    const from = dayIndexOf(firstYear + i, startMonth, 1) - record.firstDay;
    const to = dayIndexOf(firstYear + i + 1, startMonth, 1) - record.firstDay;
    const state = record.state.subarray(from, to);
    const missing_days = to - from - count(state, measured) - count(state, madeDay);
    const judged = missing_days <= missingDays_fraction * (to - from) && !state.includes(unknownDay);
    // A year that starts in January ends in the year it starts in.
    return { label: firstYear + i + (startMonth > 1 ? 1 : 0), from, to, missing_days, judged };
  });
}

/** Mean rain of the judged years, and the longest run of days under 1 mm in them; a year not judged breaks a run. */
function rainOfJudgedYears(
  record: RainRecord,
  years: readonly WaterYear[],
  judgedYears: number,
): Pick<JudgedRain, 'meanAnnualRain_mm' | 'longestRainlessRun_days'> {
  let total_mm = 0;
  let run_days = 0;
  let longestRainlessRun_days = 0;
  for (const year of years) {
    if (!year.judged) {
      run_days = 0;
      continue;
    }
    for (let day = year.from; day < year.to; day++) {
      const rain_mm = record.rain_mm[day]!;
      total_mm += rain_mm;
      run_days = rain_mm < wetDayFrom_mm ? run_days + 1 : 0;
      if (run_days > longestRainlessRun_days) longestRainlessRun_days = run_days;
    }
  }
  return { meanAnnualRain_mm: total_mm / judgedYears, longestRainlessRun_days };
}

function recordProblems(
  record: RainRecord,
  years: readonly WaterYear[],
  cutDays: number,
  startMonth: number,
  settings: RainSettings,
): Problem[] {
  const place = { gaugeId: record.gaugeId };
  const problems: Problem[] = [];
  if (cutDays > 0) problems.push(engineProblem('rain.part_years_cut', place, { days: cutDays, startMonth }));
  problems.push(...fillingProblems(record, settings));
  const notJudged = years.filter((year) => !year.judged);
  if (notJudged.length > 0) {
    const labels = notJudged.map((year) => String(year.label));
    const facts = { count: notJudged.length, years: labels, missingDays_fraction: settings.missingDays_fraction };
    problems.push(engineProblem('rain.year_not_judged', place, facts));
  }
  const judgedYears = years.length - notJudged.length;
  if (judgedYears > 0 && judgedYears < settings.leastYears) {
    problems.push(engineProblem('rain.few_years', place, { judgedYears, leastYears: settings.leastYears }));
  }
  return problems;
}

/** What became of the days nobody measured: filled from neighbours, from other years, or not at all. */
function fillingProblems(record: RainRecord, { seed, gapFilling }: RainSettings): readonly Problem[] {
  const { gaugeId, firstDay, state } = record;
  const problems: Problem[] = [];
  const [near, filled, unfilled] = [neighbourDay, filledDay, unknownDay].map((how) => count(state, how));
  if (near! > 0) {
    problems.push(engineProblem('rain.days_filled_neighbours', { gaugeId }, { count: near!, gapFilling }));
  }
  if (gapFilling !== 'otherYears' && filled! + unfilled! > 0) {
    problems.push(engineProblem('rain.no_neighbour', { gaugeId }, { count: filled! + unfilled!, gapFilling }));
  }
  if (filled! > 0) problems.push(engineProblem('rain.days_filled', { gaugeId }, { count: filled!, seed }));
  if (unfilled! > 0) {
    const day = isoDay(firstDay + state.indexOf(unknownDay));
    problems.push(engineProblem('rain.gap_not_filled', { gaugeId, day }, { count: unfilled! }));
  }
  return problems;
}
