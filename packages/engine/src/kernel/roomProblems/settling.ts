/** What room settling can find, with its severity. */
export const settlingProblems = {
  'settling.none': 'warning',
  'settling.diameter_unknown': 'warning',
  'settling.draw_off_unknown': 'warning',
  'settling.draw_off_low': 'warning',
  'settling.inlet_unknown': 'warning',
  'settling.inlet_low': 'warning',
  'settling.no_roof': 'warning',
  'settling.storm_unknown': 'warning',
  'settling.temperature': 'warning',
  'settling.solids_unknown': 'note',
} as const;
