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

/** A calendar year tells the unit of its rain only with so many measured days [day] and so many days with rain [day]. Ours. */
export const tellingMeasured_days = 300;
export const tellingRain_days = 20;

/** A unit is named where so many telling years in a row look like it [year], or this share of them all [fraction]. Ours. */
export const tellingRow_years = 3;
export const tellingYears_fraction = 0.5;

/**
 * Numbers that are inches have a mean day with rain below this [in], a largest below this [in], a year below this [in/year], and at
 * least this share with a second decimal that is not 0 [fraction]. Ours: 25 mm, 635 mm and 6350 mm; nine in ten have such a decimal.
 */
export const inchesMeanRainDay_in = 1;
export const inchesLargest_in = 25;
export const inchesYear_in = 250;
export const inchesSecondDecimal_fraction = 0.5;

/** A number counts as round when it misses a whole one by less than this, for the last bits of a double [fraction]. Ours. */
export const round_fraction = 1e-6;

/**
 * Whole numbers that are tenths of mm have, taken for mm, a mean day with rain above this [mm], or a year above this [mm]. Ours: the mean
 * of a day with rain stays under 60 mm and a year's total under 12,000 mm at nearly every gauge of the world (from memory).
 */
export const tenthsMeanRainDay_mm = 60;
export const tenthsYear_mm = 12000;

/** So many days in a row with one rain, not 0, are not rain as it falls [day]. Source: ferrari-ozaki-2014, abstract. */
export const sameRain_days = 7;

/** Two months alike count as a copy with so many wet days [day]. Ours: fewer may be alike by chance in a dry place. */
export const copiedWetDays_days = 5;

/** Years a calendar month needs for an index of drought [count]. Source: wmo-1090, at least 20 to 30 years (from memory). */
export const leastSums_count = 20;

/** Of them, how many need some rain, so that a distribution can be fitted [count]. Ours. */
export const leastWetSums_count = 10;

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

/** A fit is done when a round makes an amount no likelier than by this, in the logarithm [fraction]; or after so many rounds [count]. Ours. */
export const likelihoodGain_fraction = 1e-9;
export const likelihoodRounds_count = 3000;

/** A year's rain or wet days in a table of normals that differ from the record's by more than this are named [fraction]. Ours. */
export const normalsDiffer_fraction = 0.25;

/** Years of a month that a record needs before normals are held against it [year]. Ours. */
export const normalsCompared_years = 10;

/** Readings over so many days from all others are looked at [day]: five years; no more than so many of them are set aside [count]. Ours. */
export const farFromOthers_days = 1826;
export const mostFar_count = 31;
