/** What room waterTests can find, with its severity. */
export const waterTestsProblems = {
  'waterTests.none': 'warning',
  'waterTests.before_handover': 'note',
  'waterTests.handover_unknown': 'note',
  'waterTests.found': 'warning',
  'waterTests.found_uncounted': 'warning',
  'waterTests.all_positive': 'warning',
  'waterTests.rare': 'warning',
  'waterTests.scatter': 'warning',
  'waterTests.portions_contradict': 'warning',
  'waterTests.few_clean': 'note',
  'waterTests.inspection_none': 'note',
  'waterTests.inspection_contradicts': 'warning',
} as const;
