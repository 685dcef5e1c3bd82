/** The steps of a working of room storm, in their order. */
export const stormWorkings = ['storm.intensity'] as const;
