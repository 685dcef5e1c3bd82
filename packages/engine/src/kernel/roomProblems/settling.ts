/** What room settling can find, with its severity. */
export const settlingProblems = {
  'settling.diameter_unknown': 'warning',
} as const;
