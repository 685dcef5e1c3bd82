/** What room wear can find, with its severity. */
export const wearProblems = {
  'wear.water_unknown': 'warning',
  'wear.set_day_unknown': 'warning',
  'wear.rating_unknown': 'warning',
  'wear.rated_turbidity_unknown': 'warning',
  'wear.turbidity_unknown': 'warning',
  'wear.source_turbidity_unknown': 'warning',
  'wear.too_turbid': 'warning',
  'wear.life_unknown': 'note',
  'wear.failures_unknown': 'note',
  'wear.meter_backwards': 'warning',
  'wear.readings_disagree': 'note',
  'wear.overdue': 'warning',
} as const;
