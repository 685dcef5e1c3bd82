/** The steps of a working of room safety, in their order. */
export const safetyWorkings = [
  'safety.barrier',
  'safety.credited',
  'safety.leaking',
  'safety.effective',
  'safety.tier',
  'safety.sourceDays',
  'safety.raw',
  'safety.drinking',
  'safety.infectionYear',
  'safety.illness',
  'safety.daly',
  'safety.dalyRange',
  'safety.needed',
  'safety.boils',
  'safety.verdict',
] as const;
