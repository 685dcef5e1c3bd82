/** What room stand can find, with its severity. */
export const standProblems = {
  'stand.not_signed': 'warning',
} as const;
