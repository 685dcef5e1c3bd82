/** What room head can find, with its severity. */
export const headProblems = {
  'head.pipe_not_measured': 'warning',
} as const;
