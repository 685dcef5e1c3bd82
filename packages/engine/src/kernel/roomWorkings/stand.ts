/** The steps of a working of room stand, in their order. */
export const standWorkings = ['stand.verdict'] as const;
