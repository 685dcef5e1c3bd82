import { engineProblem, type GaugeFacts, type GaugeNormal, type Problem } from '../../kernel/index.ts';
import { normalsCompared_years, normalsDiffer_fraction, wetDayFrom_mm } from './constants.ts';
import type { MonthlyNormal } from './monthlyNormals.ts';

/** What a calendar month usually brings; null where it is not known. */
export type MonthNormal = Pick<GaugeNormal, 'rain_mm' | 'wetDays'>;

/** Days of each month in a mean year of the calendar, January first. */
export const meanDays: readonly number[] = [31, 28.2425, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Why no days can be made from a month's normals. */
export type NormalFault = 'rainUnknown' | 'wetDaysUnknown' | 'tooManyWetDays' | 'rainWithoutWetDays' | 'wetDaysTooDry';

/**
 * What keeps days from being made with these normals? Rain needs wet days to fall on, a month has no more wet days than
 * days, and each wet day has more than 1 mm on the mean.
 *
 * @param normal - rain [mm] and days of 1 mm or more [day], or null
 * @param month - the month [month], 1 to 12
 * @returns the fault, or null where there is none
 * @definition ours; a wet day has 1 mm or more (etccdi)
 * @example
 * normalFault({ rain_mm: 80, wetDays: 9 }, 1) // → null
 * normalFault({ rain_mm: 80, wetDays: null }, 1) // → 'wetDaysUnknown'
 * normalFault({ rain_mm: 80, wetDays: 0 }, 1) // → 'rainWithoutWetDays'
 */
export function normalFault(normal: MonthNormal, month: number): NormalFault | null {
  const { rain_mm, wetDays } = normal;
  if (rain_mm === null || !Number.isFinite(rain_mm)) return 'rainUnknown';
  if (wetDays === null || !Number.isFinite(wetDays)) return 'wetDaysUnknown';
  if (wetDays > meanDays[month - 1]!) return 'tooManyWetDays';
  if (!(wetDays > 0)) return rain_mm === 0 && wetDays === 0 ? null : 'rainWithoutWetDays';
  return rain_mm > wetDays * wetDayFrom_mm ? null : 'wetDaysTooDry';
}

/**
 * The twelve months of a gauge's normals, January first; a month that is not there is not known.
 *
 * @param gauge - the gauge's normals: rain_mm [mm], wetDays [day] by month
 * @returns twelve months, rain [mm] and wet days [day] or null
 * @definition ours
 */
export function twelveNormals(gauge: Pick<GaugeFacts, 'normals'>): readonly MonthNormal[] {
  return Array.from({ length: 12 }, (_, i) => {
    const found = gauge.normals.find(({ month }) => month === i + 1);
    return { rain_mm: found?.rain_mm ?? null, wetDays: found?.wetDays ?? null };
  });
}

/**
 * Why can no rain be made from a gauge's normals?
 *
 * @param gauge - the gauge with its normals
 * @returns the problems: months by what they lack; none where days can be made
 * @problem rain.normals_incomplete - months without rain, or without wet days
 * @problem rain.normals_impossible - months whose rain and wet days cannot go together
 * @definition ours
 */
export function normalsProblems(gauge: Pick<GaugeFacts, 'gaugeId' | 'normals'>): readonly Problem[] {
  const place = { file: 'normals.csv', gaugeId: gauge.gaugeId };
  const faults = twelveNormals(gauge).map((normal, i) => ({ month: i + 1, fault: normalFault(normal, i + 1) }));
  const monthsWith = (fault: NormalFault) => faults.flatMap((one) => (one.fault === fault ? [String(one.month)] : []));
  const noRain = monthsWith('rainUnknown');
  const noWetDays = monthsWith('wetDaysUnknown');
  const tooManyWetDays = monthsWith('tooManyWetDays');
  const rainWithoutWetDays = monthsWith('rainWithoutWetDays');
  const wetDaysTooDry = monthsWith('wetDaysTooDry');
  const problems: Problem[] = [];
  if (noRain.length + noWetDays.length > 0)
    problems.push(engineProblem('rain.normals_incomplete', place, { noRain, noWetDays }));
  if (tooManyWetDays.length + rainWithoutWetDays.length + wetDaysTooDry.length > 0) {
    const facts = { tooManyWetDays, rainWithoutWetDays, wetDaysTooDry };
    problems.push(engineProblem('rain.normals_impossible', place, facts));
  }
  return problems;
}

/**
 * Do a gauge's normals say something else than its record? Compares a year's rain and its wet days, over the months that both
 * have and with ten years or more of the record.
 *
 * @param gauge - the gauge with its normals
 * @param own - the record's own normals, January first
 * @returns the problem, or none
 * @problem rain.normals_differ - rain or wet days of the months compared differ by more than a quarter
 * @definition ours: a quarter
 */
export function normalsBesideRecord(
  gauge: Pick<GaugeFacts, 'gaugeId' | 'normals'>,
  own: readonly MonthlyNormal[],
): readonly Problem[] {
  const given = twelveNormals(gauge);
  const sums = { months: 0, given_mm: 0, record_mm: 0, givenWetDays: 0, recordWetDays: 0 };
  for (const [i, { completeYears, meanTotal_mm, meanWetDays }] of own.entries()) {
    const { rain_mm, wetDays } = given[i]!;
    if (completeYears < normalsCompared_years || meanTotal_mm === null || meanWetDays === null) continue;
    if (rain_mm === null) continue;
    sums.months++;
    sums.given_mm += rain_mm;
    sums.record_mm += meanTotal_mm;
    if (wetDays === null) continue;
    sums.givenWetDays += wetDays;
    sums.recordWetDays += meanWetDays;
  }
  const isFar = (a: number, b: number) => Math.max(a, b) > (1 + normalsDiffer_fraction) * Math.min(a, b);
  if (!isFar(sums.given_mm, sums.record_mm) && !isFar(sums.givenWetDays, sums.recordWetDays)) return [];
  const place = { file: 'normals.csv', gaugeId: gauge.gaugeId };
  const { months, given_mm, record_mm, ...wetDays } = sums;
  const compared = wetDays.givenWetDays + wetDays.recordWetDays > 0 ? wetDays : {};
  const facts = { months, given_mm, record_mm, ...compared, limit_fraction: normalsDiffer_fraction };
  return [engineProblem('rain.normals_differ', place, facts)];
}
