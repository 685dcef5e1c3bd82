/** What room storm can find, with its severity. */
export const stormProblems = {
  'storm.no_intensity': 'warning',
} as const;
