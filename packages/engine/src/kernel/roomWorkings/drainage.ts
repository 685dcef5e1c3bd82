/** The steps of a working of room drainage, in their order. */
export const drainageWorkings = ['drainage.verdict'] as const;
