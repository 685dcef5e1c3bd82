import type { Severity } from '@eavewell/engine';

/** What can be found in a station file of GHCN-Daily, beside the faults of any rain file. */
export const stationProblems = {
  'station.file': 'note', // value: the station; a file was read as one of GHCN-Daily
  'station.several': 'blocker', // value: the file; stations: their ids; none is the gauge's
  'station.others_left': 'note', // value: the station used; stations: those left; count of lines
  'station.none': 'blocker', // value: the file; no line of rain
  'station.line_unreadable': 'warning', // value: the line
  'station.failed_check': 'warning', // value: the letter of the check failed; count, days
  'station.presumed_zero': 'warning', // value: P; count, days
  'station.trace': 'note', // value: T; count
  'station.from_synoptic': 'warning', // value: S; count
  'station.accumulated': 'warning', // value [mm]; days, from, to: one total over several days
  'station.accumulated_unsaid': 'warning', // value [mm]; a total over days not said
  'station.other_elements': 'note', // value: the elements; count of lines
} as const satisfies Readonly<Record<string, Severity>>;
