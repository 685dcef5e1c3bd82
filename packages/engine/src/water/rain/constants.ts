/** A day with less rain than this is a dry day [mm]. Source: etccdi, wet-day definition (a wet day has 1 mm or more). */
export const wetDayFrom_mm = 1;

/** A day's rain above this is read as a mistake [mm]. Source: durre-2010, bounds check (from memory). */
export const mostRainInADay_mm = 1828.8;

/** A day's rain above this is kept and named [mm]. Ours: rare even in cyclones, so worth a second look. */
export const largeRainInADay_mm = 500;

/** A reading before this hour is the rain of the day before [hour]. Common practice, no source. */
export const morningEnds_h = 12;

/** Monthly mean: void from so many missing days, or from so many in a row [day]. Source: wmo-1203, 11-or-5 rule. */
export const voidFromMissing_days = 11;
export const voidFromConsecutive_days = 5;

/** Share of the years a month's normal needs [fraction]. Source: wmo-1203, 80 % of years, 24 of 30. */
export const normalNeedsYears_fraction = 0.8;

/** Days named in one problem before the rest are only counted [count]. Ours. */
export const daysNamed_count = 10;

/** Years a calendar month needs for an index of drought [count]. Source: wmo-1090, at least 20 to 30 years (from memory). */
export const leastSums_count = 20;

/** Of them, how many need some rain, so that a distribution can be fitted [count]. Ours. */
export const leastWetSums_count = 10;

/** Mean radius of the earth [km]. Source: IUGG 1980, from memory. */
export const earthRadius_km = 6371.0088;

/** How far away a neighbouring gauge may be [km]. Ours: further away, a day's rain has little to do with it. */
export const neighbourReach_km = 100;

/** How many neighbours are asked about one day [count]. Source: punmia-pande-lal, Example 4.3, which asks three. */
export const neighboursAsked_count = 3;

/** Days that two gauges must both have measured before one may fill the other [count]. Ours: three years. */
export const leastSharedDays_count = 1096;

/** A change of slope beside the neighbours above this is named [fraction]. Ours: chance alone seldom makes a fifth in ten years. */
export const doubleMassBend_fraction = 0.2;

/** Months that a gauge and its neighbours must share before their slopes are compared [month]. Ours: ten years. */
export const doubleMassNeeds_months = 120;

/** Scale of a gamma distribution of wet days' rain from their mean: 1.83 of it less 2.16 mm. Source: geng-1986 (from memory). */
export const gengScalePerMean_fraction = 1.83;
export const gengScaleAdded_mm = 2.16;

/** Days, each with the day before it, that a month needs to tell chances of rain [count]. Ours: five months' worth. */
export const leastPairs_count = 150;

/** Wet days that a month needs for a distribution of its own [count]. Ours. */
export const leastWetDays_count = 20;

/** What a day of just 1 mm has above it, so that a distribution can be fitted [mm]. Ours: half a tenth, the usual reading. */
export const smallestExcess_mm = 0.05;
