/** What room drainage can find, with its severity. */
export const drainageProblems = {
  'drainage.gutter_level': 'warning',
} as const;
