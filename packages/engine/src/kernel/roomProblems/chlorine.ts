/** What room chlorine can find, with its severity. */
export const chlorineProblems = {
  'chlorine.residual_unknown': 'warning',
  'chlorine.contact_unknown': 'warning',
  'chlorine.contact_short': 'warning',
  'chlorine.ph_unknown': 'warning',
  'chlorine.temperature_unknown': 'note',
  'chlorine.outside_table': 'warning',
  'chlorine.residual_low': 'warning',
  'chlorine.residual_high': 'warning',
  'chlorine.residual_over_dose': 'warning',
  'chlorine.ph_high': 'warning',
  'chlorine.too_turbid': 'warning',
  'chlorine.turbidity_unknown': 'note',
  'chlorine.stock_differs': 'warning',
  'chlorine.stock_recipe': 'note',
} as const;
