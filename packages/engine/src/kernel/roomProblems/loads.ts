/** What room loads can find, with its severity. */
export const loadsProblems = {
  'loads.no_limit': 'blocker',
  'loads.too_many': 'blocker',
  'loads.figure_unusable': 'warning',
  'loads.mass_unknown': 'warning',
  'loads.bulk_unknown': 'warning',
  'loads.length_unknown': 'warning',
  'loads.cannot_carry': 'warning',
  'loads.limit_over_lifting': 'warning',
  'loads.not_least': 'note',
  'loads.freeboard_short': 'warning',
  'loads.kit_kept_apart': 'warning',
} as const;
