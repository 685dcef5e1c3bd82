/** Money of one day. */
export interface DatedAmount {
  readonly amount: number;
  /** From the start. */
  readonly after_years: number;
}

/** What is bought once and wears out. */
export interface Capital {
  readonly amount: number;
  readonly life_years: number;
}

/**
 * Which share of a sum is paid every year, at each year's end, so that after so many years it is paid back with its interest?
 *
 * @param interest_fraction_per_year - interest [fraction/year], above −1
 * @param years - how many years [year], above 0
 * @returns the share a year [fraction/year]; 1 ÷ years where there is no interest
 * @law tends to 1 ÷ years as the interest tends to 0
 * @source newnan-tables, capital recovery: i(1 + i)^n ÷ ((1 + i)^n − 1)
 * @example
 * capitalRecovery(0.1, 10) // → 0.162745
 * capitalRecovery(0, 8) // → 0.125
 */
export function capitalRecovery(interest_fraction_per_year: number, years: number): number {
  if (interest_fraction_per_year === 0) return 1 / years;
  return interest_fraction_per_year / -Math.expm1(-years * Math.log1p(interest_fraction_per_year));
}

/**
 * What is a level amount of 1 at the end of every year worth at the start?
 *
 * @param interest_fraction_per_year - interest [fraction/year], above −1
 * @param years - how many years [year], above 0
 * @returns its worth [factor]
 * @law one over capital recovery
 * @source newnan-tables, present worth of a uniform series
 * @example
 * levelPresentValue(0.0025, 24) // → 23.266
 */
export function levelPresentValue(interest_fraction_per_year: number, years: number): number {
  return 1 / capitalRecovery(interest_fraction_per_year, years);
}

/**
 * What is interest once money that loses its worth is left out?
 *
 * @param interest_fraction_per_year - interest as it is asked for [fraction/year]
 * @param inflation_fraction_per_year - what money buys less of in a year [fraction/year], above −1
 * @returns interest in money that keeps its worth [fraction/year]
 * @source fisher-1930, (1 + i) ÷ (1 + f) − 1 (from memory)
 * @example
 * realInterest(0.12, 0.05) // → 0.0666667
 */
export function realInterest(interest_fraction_per_year: number, inflation_fraction_per_year: number): number {
  return (1 + interest_fraction_per_year) / (1 + inflation_fraction_per_year) - 1;
}

/**
 * What are dated amounts worth at the start?
 *
 * @param flows - amounts [currency] and how long after the start [year]
 * @param interest_fraction_per_year - interest [fraction/year], above −1
 * @returns their worth at the start [currency]
 * @source newnan-tables, present worth: amount ÷ (1 + i)^t
 * @example
 * presentValue([{ amount: 110, after_years: 1 }, { amount: 50, after_years: 0 }], 0.1) // → 150
 */
export function presentValue(flows: readonly DatedAmount[], interest_fraction_per_year: number): number {
  return flows.reduce(
    (sum, { amount, after_years }) => sum + amount / (1 + interest_fraction_per_year) ** after_years,
    0,
  );
}

/**
 * What does it cost a year to have things that are bought again whenever they are worn out, and to run them?
 *
 * @param capital - each thing's price [currency] and life [year]
 * @param yearly_amount - what running them takes a year [currency/year]
 * @param interest_fraction_per_year - interest [fraction/year], above −1
 * @returns the cost a year [currency/year]
 * @law a level yearly amount costs itself
 * @source newnan-tables, equivalent uniform annual cost: sum of price × capital recovery, and what is yearly
 * @example
 * equivalentAnnualCost([{ amount: 1000, life_years: 8 }], 20, 0) // → 145
 */
export function equivalentAnnualCost(
  capital: readonly Capital[],
  yearly_amount: number,
  interest_fraction_per_year: number,
): number {
  return capital.reduce(
    (sum, { amount, life_years }) => sum + amount * capitalRecovery(interest_fraction_per_year, life_years),
    yearly_amount,
  );
}
