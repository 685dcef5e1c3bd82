/** The steps of a working of room waterTests, in their order. */
export const waterTestsWorkings = [
  'waterTests.count',
  'waterTests.rarity',
  'waterTests.clean',
  'waterTests.cleanWanted',
  'waterTests.inspection',
  'waterTests.priority',
] as const;
