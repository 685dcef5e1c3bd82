/** Who is to be served. */
export interface PeopleServedGiven {
  /** At the start. */
  readonly people: number;
  readonly growth_fraction_per_year: number;
  readonly years_count: number;
}

/**
 * How many people have working water in the mean of the years? The people of each year as they are at its beginning, times the share of the year and of them for which the service works.
 *
 * @param given - the people at the start [person], their growth [fraction/year] and the years [year]
 * @param workingService_fraction - share for which the service works [fraction]
 * @returns people-years of working service ÷ years [person]
 * @source washcost-heads, cost per person served (from memory); growth by years is ours: docs/decisions/0258-people-years-of-working-service.md
 * @example
 * servedPeople({ people: 100, growth_fraction_per_year: 0, years_count: 20 }, 0.8) // → 80
 * servedPeople({ people: 100, growth_fraction_per_year: 0.1, years_count: 2 }, 1) // → 105
 */
export function servedPeople(given: PeopleServedGiven, workingService_fraction: number): number {
  const { people, growth_fraction_per_year, years_count } = given;
  let personYears = 0;
  for (let year = 0; year < years_count; year++) personYears += people * (1 + growth_fraction_per_year) ** year;
  return (personYears * workingService_fraction) / years_count;
}
