/** What room head can find, with its severity. */
export const headProblems = {
  'head.none': 'warning',
  'head.pipe_not_measured': 'warning',
  'head.pipe_tank_unknown': 'warning',
  'head.leg_missing': 'warning',
  'head.outlet_unknown': 'warning',
  'head.stand_unknown': 'warning',
  'head.overflow_unknown': 'note',
  'head.taps_unknown': 'warning',
  'head.tap_height_unknown': 'warning',
  'head.unit_height_unknown': 'warning',
  'head.unit_head_unknown': 'warning',
  'head.temperature': 'warning',
  'head.hand_pump_assumed': 'warning',
  'head.tap_above': 'warning',
  'head.unit_above': 'warning',
  'head.suction': 'warning',
} as const;
