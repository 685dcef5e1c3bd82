/** What is so little under a whole step counts as it [ratio of a step]: the rounding of one sum, so that no time is told after its true one. Ours. */
export const stepSlack_ratio = 1e-10;

/** The same of shares of a trip's room [ratio of a share]: a trip has far fewer stops than would add up to a share. Ours. */
export const shareSlack_ratio = 1e-6;

/** Into so many steps a working day is cut [count]; the finest that there is time for. Ours: none so fine that rounding is below 0.1 %. */
export const stepsOfDay = [1, 2, 3, 4, 5, 6, 8, 10, 12, 16, 20, 24, 32, 40] as const;

/** The first prices are found with so many times fewer steps. Ours. */
export const coarser_ratio = 6;

/** Rounds without a better bound after which prices move by less [count], by how much less [ratio], and when they are left as they are. Ours. */
export const idleRounds_count = 8;
export const slower_ratio = 1.6;
export const leastPace = { coarse: 0.2, fine: 0.01 } as const;

/** So much of the last change goes on in the next [fraction]. Ours. */
export const momentum_fraction = 0.7;

/** At most so much of the budget is spent on the first prices. Ours. */
export const coarseShare_fraction = 0.35;

/** Shares of a trip's room at the most [count]; one more counts where it tells of a hundredth more trips. Ours. */
export const mostShares_count = 12;
export const worthMoreShares_ratio = 1.01;

/** Days looked at: to the end of the plan and so much longer. Ours: what ends later is priced all the same. */
export const beyondPlan = { ratio: 1.15, days: 5 } as const;
