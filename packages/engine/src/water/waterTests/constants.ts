/** Counts of E. coli are told for so much water [mL]. Source: who-gdwq-2017, table 7.10: must not be found in any 100 mL sample (from memory). */
export const told_mL = 100;

/** Where E. coli was found in every portion, at least one is taken to be in what counts are told for [per 100 mL]. Ours: docs/decisions/0215-half-open-bands.md, 0272-counts-that-cannot-be-told.md. */
export const foundAnyway_per_100mL = 1;

/** A tap sample that held E. coli so shortly before hand-over stands until one after it is clean [days]. Ours: docs/decisions/0271-samples-that-are-not-lost.md. */
export const standsBeforeHandOver_days = 30;

/** How much of the doubt the limits of a count hold [fraction]. Ours, the usual share: docs/decisions/0213-water-tests-by-likelihood.md. */
export const limitsHold_fraction = 0.95;

/** A pattern rarer than this is told, as it points to a slip or to germs in clumps [fraction]. Source: blodgett-2002, as used by jarvis-2010 (from memory: 0.05). */
export const rareBelow_fraction = 0.05;

/** Plates whose colonies scatter as rarely as this, were the germs spread evenly, are told [fraction]. Ours, the usual share: docs/decisions/0214-rare-patterns-and-scatter.md. */
export const scatterBelow_fraction = 0.05;

/** What a portion may hold [mL], and how much may be counted in it [count]. Ours: far beyond what laboratories use, and within what numbers carry. */
export const leastPortion_mL = 1e-6;
export const mostPortion_mL = 1e6;
export const mostCounted_count = 1e6;
export const mostUncountable_count = 1000;

/** Standard errors from a count to the limits that Jarvis and others print [number]. Source: jarvis-2010, tables 1 and 2: reproduced by 2, not by 1.96. */
export const jarvisErrors_factor = 2;

/** A claim on water is made at so much certainty, and of so small a share of bad samples [fraction]. Source: nz-moh-2008, table A1.3, the one for E. coli. */
export const claimCertainty_fraction = 0.95;
export const claimExceeded_fraction = 0.05;

/**
 * Where bands of E. coli end [per 100 mL]: less than 1, up to 10, up to 100, more. Source: who-gdwq-2017, table 5.4 (from memory); half-open, ours:
 * docs/decisions/0215-half-open-bands.md.
 */
export const bandEnds_per_100mL = { lowBelow: 1, intermediateUpTo: 10, highUpTo: 100 } as const;

/** Where the older classes end [per 100 mL]: A none, B to 10, C to 100, D to 1,000, E more. Source: lloyd-bartram-1991 (from memory). */
export const classEnds_per_100mL = { aBelow: 1, bUpTo: 10, cUpTo: 100, dUpTo: 1000 } as const;

/** Questions of an inspection, each a risk or none [count]. Source: who-sanitary-inspection, forms of ten questions (from memory). */
export const inspectionQuestions_count = 10;

/**
 * Up to which score an inspection falls into which band [count], by set. The older set prints its middle one as intermediate to high; the worse is taken.
 * Source: who-sanitary-inspection (from memory); lloyd-bartram-1991 (from memory).
 */
export const inspectionBands = {
  four: [
    { upTo_count: 2, band: 'low' },
    { upTo_count: 5, band: 'intermediate' },
    { upTo_count: 8, band: 'high' },
    { upTo_count: 10, band: 'veryHigh' },
  ],
  older: [
    { upTo_count: 3, band: 'low' },
    { upTo_count: 6, band: 'high' },
    { upTo_count: 10, band: 'veryHigh' },
  ],
} as const;
