/** The steps of a working of room head, in their order. */
export const headWorkings = ['head.verdict'] as const;
