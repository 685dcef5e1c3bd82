import {
  calendarDay,
  dayIndexOf,
  type EngineProblemCode,
  engineProblem,
  measured,
  mm_per_in,
  type Place,
  type Problem,
  type RainRecord,
} from '../../kernel/index.ts';
import {
  inchesLargest_in,
  inchesMeanRainDay_in,
  inchesSecondDecimal_fraction,
  inchesYear_in,
  round_fraction,
  tellingMeasured_days,
  tellingRain_days,
  tellingRow_years,
  tellingYears_fraction,
  tenthsMeanRainDay_mm,
  tenthsYear_mm,
} from './constants.ts';

/** The numbers of a calendar year as they were written, whatever their unit. */
interface YearOfNumbers {
  readonly year: number;
  readonly measured_days: number;
  /** Numbers that are not 0. */
  readonly rain: readonly number[];
  readonly total: number;
}

const isRound = (value: number) => Math.abs(value - Math.round(value)) < round_fraction;

function yearsOf({ firstDay, rain_mm, state }: RainRecord): readonly YearOfNumbers[] {
  const years: YearOfNumbers[] = [];
  for (let from = 0; from < rain_mm.length; ) {
    const { year } = calendarDay(firstDay + from);
    const to = Math.min(dayIndexOf(year + 1, 1, 1) - firstDay, rain_mm.length);
    const rain: number[] = [];
    let measured_days = 0;
    let total = 0;
    for (let at = from; at < to; at++) {
      if (state[at] !== measured) continue;
      const value = rain_mm[at]!;
      measured_days++;
      total += value;
      if (value !== 0) rain.push(value);
    }
    years.push({ year, measured_days, rain, total });
    from = to;
  }
  return years;
}

function areInches({ rain, total }: YearOfNumbers): boolean {
  const largest = rain.reduce((most, value) => Math.max(most, value), 0);
  const small = total < inchesYear_in && largest < inchesLargest_in && total / rain.length < inchesMeanRainDay_in;
  if (!small || !rain.every((value) => isRound(value * 100))) return false;
  return rain.filter((value) => !isRound(value * 10)).length >= inchesSecondDecimal_fraction * rain.length;
}

function areTenths({ rain, total }: YearOfNumbers): boolean {
  const large = total / rain.length > tenthsMeanRainDay_mm || total > tenthsYear_mm;
  return large && rain.every(isRound);
}

/** The years that look so, where they are too many to be chance. */
function stretchOf(years: readonly YearOfNumbers[], looks: (year: YearOfNumbers) => boolean): readonly YearOfNumbers[] {
  const found = years.map(looks);
  let run = 0;
  let longest = 0;
  for (const one of found) {
    run = one ? run + 1 : 0;
    longest = Math.max(longest, run);
  }
  const alike = years.filter((_, i) => found[i]);
  return longest >= tellingRow_years || alike.length >= tellingYears_fraction * years.length ? alike : [];
}

/**
 * Is this rain in mm? Names a record, or years of it, whose numbers look like inches or like tenths of mm. Nothing is corrected.
 *
 * @param record - the record as it was measured, nothing filled: rain_mm [mm] as it was taken to be
 * @param place - file and gauge, for the places of problems
 * @returns the problems: likely unit, years, mean year as it stands [mm] and as it would be [mm]
 * @problem rain.in_inches - hundredths, and far too little rain for mm
 * @problem rain.in_tenths - whole numbers, and far too much rain for mm
 * @law a record whose numbers have one decimal, and not all of them none, is neither
 * @definition ours: docs/decisions/0016-units-mixed-up.md
 */
export function unitMixUps(record: RainRecord, place: Place): readonly Problem[] {
  const telling = yearsOf(record).filter(
    ({ measured_days, rain }) => measured_days >= tellingMeasured_days && rain.length >= tellingRain_days,
  );
  const problems: Problem[] = [];
  const look = (code: EngineProblemCode, looks: (year: YearOfNumbers) => boolean, times: number, likely: string) => {
    const years = stretchOf(telling, looks);
    if (years.length === 0) return;
    const meanYear_mm = years.reduce((sum, { total }) => sum + total, 0) / years.length;
    const labels = years.map(({ year }) => String(year));
    const facts = {
      value: meanYear_mm,
      likely,
      likely_mm: meanYear_mm * times,
      years: labels,
      telling: telling.length,
    };
    problems.push(engineProblem(code, { ...place, column: 'rain_mm' }, facts));
  };
  look('rain.in_inches', areInches, mm_per_in, 'in');
  look('rain.in_tenths', areTenths, 0.1, '0.1 mm');
  return problems;
}
