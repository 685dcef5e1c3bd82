/** The steps of a working of room settling, in their order. */
export const settlingWorkings = [
  'settling.area',
  'settling.sinks',
  'settling.flowByDay',
  'settling.flowInStorm',
  'settling.rateByDay',
  'settling.rateInStorm',
  'settling.settledByDay',
  'settling.settledInStorm',
  'settling.firstTenth',
  'settling.leavesByDay',
  'settling.leavesInStorm',
  'settling.sludge',
  'settling.cleanAfter',
  'settling.verdict',
] as const;
