/** How the wear of a litre grows with its turbidity over the rated one: this power of their ratio [factor]. Ours: in proportion, docs/decisions/0207-what-wears-a-cartridge.md. */
export const turbidityPower_factor = 1;

/** How many values of the fouling are weighed, and how many spreads to either side of 1 [count]. Ours: finer than a reading tells. */
export const foulingGrid_count = 401;
export const foulingGridSpreads_count = 5;

/** Into how many equal stretches a range of turbidity is cut where readings weigh it [count]. Ours, docs/decisions/0208-fouling-learned-from-readings.md. */
export const turbidityStretches_count = 16;

/**
 * What a reading is the further out by where its pressure or its temperature was not taken: standard deviations of its logarithm [fraction]. Ours: a hand pump's pressure from one person
 * to the next, water some 5 °C warmer or colder; docs/decisions/0208-fouling-learned-from-readings.md.
 */
export const pressureNotRead_fraction = 0.25;
export const temperatureNotRead_fraction = 0.12;

/** A reading so many of its errors away from the middle of what is believed after it is told [count]. Ours: one in some four hundred is by chance. */
export const disagrees_count = 3;

/** So many futures say, in the mean, what passed till a day that is over, where no meter does [count]. Ours. */
export const pastFutures_count = 10;

/** How far ahead is looked first, and at most [year]. Ours: most sets are changed before the one, no cartridge is kept longer than the other. */
export const firstLook_years = 3;
export const lookAhead_years = 15;

/** The shares of futures that a range of ends leaves out on either side [fraction]. Ours: P10 and P90. */
export const earlyShare_fraction = 0.1;
export const lateShare_fraction = 0.9;

/** So many days of a future are led through at a time [day]. Ours: about a year. */
export const stretch_days = 365;

/** No rating is larger, or smaller without being 0 [any unit, as a count of it]. Ours: far outside anything that is built. */
export const largestFigure_count = 1e12;
export const smallestFigure_count = 1e-6;
