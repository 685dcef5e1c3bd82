/** What room ways can find, with its severity. */
export const waysProblems = {
  'ways.ends_nowhere': 'warning',
  'ways.figure_unusable': 'warning',
  'ways.hours_contradict': 'warning',
  'ways.closure_unused': 'warning',
  'ways.carrier_unknown': 'warning',
  'ways.carrier_no_limit': 'warning',
  'ways.level_without_gauge': 'warning',
  'ways.levels_short': 'note',
  'ways.areas_many': 'warning',
  'ways.no_hours': 'warning',
  'ways.walking_assumed': 'note',
  'ways.fuel_unknown': 'note',
  'ways.periods_merged': 'note',
  'ways.stop_unknown': 'warning',
  'ways.closed_always': 'warning',
  'ways.in_pieces': 'warning',
} as const;
