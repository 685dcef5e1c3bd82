/** A chain of dry and wet days: how likely a wet day is after a dry one and after a wet one. */
export interface WetChain {
  readonly wetAfterDry_fraction: number;
  readonly wetAfterWet_fraction: number;
}

/**
 * Which chain has this share of wet days, where nothing else is known? A wet day after a dry one is 0.75 as likely as a wet
 * day at all; after a wet one 0.25 likelier than after a dry one.
 *
 * @param wetDays_fraction - share of days that are wet [fraction], 0 to 1
 * @returns the chain, chances [fraction]
 * @law the chain's own share of wet days is the one asked for
 * @source geng-1986, chances of a wet day from the share of wet days (from memory)
 * @example
 * chainFromWetDays(0).wetAfterDry_fraction // → 0
 */
export function chainFromWetDays(wetDays_fraction: number): WetChain {
  if (!(wetDays_fraction >= 0 && wetDays_fraction <= 1))
    throw new RangeError('chainFromWetDays: needs a share, 0 to 1');
  const wetAfterDry_fraction = 0.75 * wetDays_fraction;
  return { wetAfterDry_fraction, wetAfterWet_fraction: 0.25 + wetAfterDry_fraction };
}

/** Pairs of days: how many days followed a dry and a wet one, and how many of each were wet. */
export interface PairCounts {
  readonly afterDry_count: number;
  readonly wetAfterDry_count: number;
  readonly afterWet_count: number;
  readonly wetAfterWet_count: number;
}

/**
 * Which chain do these counts of days show? A state that was never left has its chances from the other one.
 *
 * @param counts - days after a dry and after a wet one, and how many of each were wet [count], whole, 0 or more
 * @returns the chain, chances [fraction]; null where nothing was counted, or where dry and wet spells never end
 * @source gabriel-neumann-1962, chances as shares of the days counted (as tabulated in a textbook, from memory)
 * @example
 * chainFromCounts({ afterDry_count: 4, wetAfterDry_count: 1, afterWet_count: 2, wetAfterWet_count: 1 }) // → { wetAfterDry_fraction: 0.25, wetAfterWet_fraction: 0.5 }
 */
export function chainFromCounts(counts: PairCounts): WetChain | null {
  const { afterDry_count, wetAfterDry_count, afterWet_count, wetAfterWet_count } = counts;
  const dry = afterDry_count === 0 ? null : wetAfterDry_count / afterDry_count;
  const wet = afterWet_count === 0 ? null : wetAfterWet_count / afterWet_count;
  const wetAfterDry_fraction = dry ?? wet;
  const wetAfterWet_fraction = wet ?? dry;
  if (wetAfterDry_fraction === null || wetAfterWet_fraction === null) return null;
  return wetAfterDry_fraction === 0 && wetAfterWet_fraction === 1
    ? null
    : { wetAfterDry_fraction, wetAfterWet_fraction };
}

/**
 * Which share of its days is wet in the long run?
 *
 * @param chain - chances of a wet day after a dry and after a wet one [fraction], not 0 and 1 together
 * @returns the share [fraction], 0 to 1
 * @source gabriel-neumann-1962, wet days as a chain of two states (from memory)
 */
export function wetShare(chain: WetChain): number {
  const { wetAfterDry_fraction: p01, wetAfterWet_fraction: p11 } = chain;
  const isChance = (p: number) => p >= 0 && p <= 1;
  if (!isChance(p01) || !isChance(p11) || (p01 === 0 && p11 === 1)) {
    throw new RangeError('wetShare: needs two chances, not 0 and 1 together');
  }
  return p01 / (1 + p01 - p11);
}

/** Mean and standard deviation of a count of days. */
export interface DayMoments {
  readonly mean_days: number;
  readonly sd_days: number;
}

/**
 * How many of so many days are wet, and how much does that differ from one time to the next? Exact, for a chain that has run
 * for long.
 *
 * @param chain - chances of a wet day [fraction]
 * @param days - how many days are counted [day], whole, 1 or more
 * @returns mean and standard deviation [day]
 * @law with both chances alike it is the binomial distribution's
 * @source gabriel-neumann-1962, variance of the number of wet days (as quoted with katz-parlange-1998)
 */
export function wetDayMoments(chain: WetChain, days: number): DayMoments {
  const share = wetShare(chain);
  const d = chain.wetAfterWet_fraction - chain.wetAfterDry_fraction;
  const spread = share * (1 - share);
  // d = −1: wet and dry in turn; the sum below is then 0 for an even number of days and a quarter for an odd one.
  const variance = (days * spread * (1 + d)) / (1 - d) - (2 * spread * d * (1 - d ** days)) / (1 - d) ** 2;
  return { mean_days: days * share, sd_days: Math.sqrt(Math.max(0, variance)) };
}

/** Mean length of spells; Infinity where one never ends. */
export interface SpellLengths {
  readonly dry_days: number;
  readonly wet_days: number;
}

/**
 * How long do dry and wet spells last on the mean?
 *
 * @param chain - chances of a wet day [fraction]
 * @returns mean dry and mean wet spell [day], 1 or more
 * @source gabriel-neumann-1962, spells of a chain of two states (from memory)
 */
export function spellLengths(chain: WetChain): SpellLengths {
  return { dry_days: 1 / chain.wetAfterDry_fraction, wet_days: 1 / (1 - chain.wetAfterWet_fraction) };
}
