/**
 * How likely is a storm of this return period to come so often in so many years? Years are taken to have nothing to do with each other.
 *
 * @param returnPeriod_years - one year in so many has it [year], 1 or more
 * @param years_count - years looked at [count], whole, 0 or more
 * @param times_count - years of them that have it [count], whole, 0 to years_count
 * @returns the chance [fraction], 0 to 1
 * @law over all times from 0 to the years it adds up to 1
 * @source punmia-pande-lal, Examples 4.37 and 4.69, binomial distribution
 * @example
 * chanceOfTimes_fraction(40, 10, 1) // → 0.199
 */
export function chanceOfTimes_fraction(returnPeriod_years: number, years_count: number, times_count: number): number {
  const p = 1 / returnPeriod_years;
  let ways = 1;
  for (let i = 1; i <= times_count; i++) ways = (ways * (years_count - times_count + i)) / i;
  return ways * p ** times_count * (1 - p) ** (years_count - times_count);
}

/**
 * How likely is a storm of this return period to come at least once in so many years?
 *
 * @param returnPeriod_years - one year in so many has it [year], 1 or more
 * @param years_count - years looked at [count], 0 or more
 * @returns the chance [fraction], 0 to 1
 * @law grows with the years, falls with the return period
 * @source punmia-pande-lal, Example 4.36: 1 − (1 − 1 ÷ T)^n
 * @example
 * risk_fraction(30, 6) // → 0.184
 */
export function risk_fraction(returnPeriod_years: number, years_count: number): number {
  if (returnPeriod_years === 1) return years_count > 0 ? 1 : 0;
  return -Math.expm1(years_count * Math.log1p(-1 / returnPeriod_years));
}

/**
 * Which return period has a storm that comes within so many years with just this chance?
 *
 * @param chance_fraction - chance that it comes [fraction], above 0, below 1
 * @param years_count - years looked at [count], above 0
 * @returns the return period [year], above 1
 * @law turns risk_fraction round
 * @source punmia-pande-lal, Example 4.36
 * @example
 * returnPeriodAtRisk_years(0.1, 6) // → 57.45
 */
export function returnPeriodAtRisk_years(chance_fraction: number, years_count: number): number {
  return -1 / Math.expm1(Math.log1p(-chance_fraction) / years_count);
}
