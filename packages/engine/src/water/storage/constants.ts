/** Stated and measured volume further apart than this share of the stated one are worth a second look [fraction]. Ours. */
export const largestDifference_fraction = 0.1;

/** How many dry runs a finding lists [count]. Ours: what a person reads. */
export const listedRuns_count = 10;
