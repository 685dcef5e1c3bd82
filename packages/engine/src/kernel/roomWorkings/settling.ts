/** The steps of a working of room settling, in their order. */
export const settlingWorkings = ['settling.verdict'] as const;
