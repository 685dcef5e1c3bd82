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
