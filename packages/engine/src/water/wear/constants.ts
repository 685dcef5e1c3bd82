/** How the wear of a litre grows with its turbidity over the rated one: this power of their ratio [factor]. Ours: in proportion, docs/decisions/0207-what-wears-a-cartridge.md. */
export const turbidityPower_factor = 1;

/** What the temperature of a rated flow is, where nothing else is said [C]. Common practice, no source; docs/decisions/0207-what-wears-a-cartridge.md. */
export const ratedTemperature_C = 20;

/**
 * How far the wear of a site may be from the rated one before anything is read: the standard deviation of its logarithm [ratio]. Ours: nine sites of ten between
 * 1 ÷ 2.7 and 2.7 times, docs/decisions/0208-wear-learned-from-readings.md.
 */
export const lnWearSpread_ratio = 0.6;

/** How many values of the wear are weighed, and how many spreads to either side of 1 [count]. Ours: finer than a reading tells. */
export const wearGrid_count = 801;
export const wearGridSpreads_count = 5;

/** Into how many equal stretches a range of turbidity is cut where readings weigh it [count]. Ours, docs/decisions/0208-wear-learned-from-readings.md. */
export const turbidityStretches_count = 16;

/** How far a reading of the flow may be off: the standard deviation of its logarithm [fraction]. Ours: a bucket and a watch, a gauge, a temperature taken to be so; docs/decisions/0208-wear-learned-from-readings.md. */
export const readingError_fraction = 0.15;

/** How often a set breaks, leaks at a seal or is spoilt in a year [count/year]. Ours, one in twenty: docs/decisions/0210-a-set-that-fails.md. */
export const failures_count_per_year = 0.05;

/** How many futures a set is led through [count]. Ours: the shares are then known to 2 or 3 in 100. */
export const futures_count = 200;

/** How far ahead is looked [year]. Ours: no cartridge is kept longer. */
export const lookAhead_years = 10;

/** The shares of futures that a range of ends leaves out on either side [fraction]. Ours: P10 and P90. */
export const earlyShare_fraction = 0.1;
export const lateShare_fraction = 0.9;
