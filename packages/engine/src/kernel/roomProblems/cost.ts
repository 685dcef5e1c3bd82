/** What room cost can find, with its severity. */
export const costProblems = {
  'cost.figure_unusable': 'warning',
  'cost.range_turned': 'warning',
  'cost.service_turned': 'warning',
  'cost.capital_stated': 'note',
} as const;
