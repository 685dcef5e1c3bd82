/** What room stand can find, with its severity. */
export const standProblems = {
  'stand.not_signed': 'warning',
  'stand.not_measured': 'warning',
  'stand.ground_unknown': 'warning',
  'stand.ground_to_investigate': 'warning',
  'stand.wind_unknown': 'warning',
  'stand.wind_in_other_unit': 'warning',
  'stand.fastening_assumed': 'warning',
  'stand.consent_likely': 'note',
} as const;
