/** What a share of litres may lack to the last bits of rounding [fraction]. Ours. */
export const roundingSlack_fraction = 1e-9;

/** To what share of their plan area roofs are guttered, one step after the other [fraction]. Ours. */
export const gutterSteps_fraction = [0.75, 1] as const;

/**
 * Litres a person a day that may still be promised for the judged purposes, the mildest cut first [L/person/day]. Ours,
 * through 20 (basic access, who-2020), 15 and 7.5 (the ends of the basic survival range, sphere-2018). The last step, below
 * which nothing is promised, is the low end of sphere-2018 for drinking and food, and is taken from the people room.
 */
export const promisedSteps_L_per_person_per_day = [20, 15, 10, 7.5, 6, 5, 4, 3] as const;

/** Share of the people who must stay, where others go to a site of their own [fraction]. Ours: else it is the other site that is wanted. */
export const stayingLeast_fraction = 0.5;

/** Of how many parts of the people the first step down is one, where the most who are carried are looked for [count]. Ours. */
export const firstStep_count = 16;

/** Of so many gutters of a roof, and pipes on one way, every choice is tried; of more, each by itself and all together [count]. Ours. */
export const mostVariedGutters_count = 5;
export const mostVariedPipes_count = 5;
