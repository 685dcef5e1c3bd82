/** The steps of a working of room kit, in their order. */
export const kitWorkings = ['kit.needed', 'kit.bars', 'kit.rounded', 'kit.spare', 'kit.total'] as const;
