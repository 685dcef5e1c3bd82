/** What room storm can find, with its severity. */
export const stormProblems = {
  'storm.no_intensity': 'warning',
  'storm.period_not_stated': 'warning',
  'storm.intensity_unlikely': 'warning',
  'storm.range_reversed': 'warning',
  'storm.source_missing': 'note',
  'storm.coefficients_out_of_range': 'warning',
  'storm.record_too_coarse': 'warning',
  'storm.record_overlaps': 'warning',
  'storm.record_unlikely': 'warning',
  'storm.years_left_out': 'note',
  'storm.too_few_years': 'warning',
  'storm.not_fitted': 'warning',
  'storm.from_daily': 'warning',
  'storm.other_gauge': 'note',
} as const;
