import type { JobAround, Tasks } from '@eavewell/work';

/** A job that is loaded by the thread that does it: each has a thread of its own, which needs no more than its own job does. */
const later =
  <Given, Found>(load: () => Promise<(given: Given, around: JobAround) => Promise<Found>>) =>
  async (given: Given, around: JobAround): Promise<Found> =>
    (await load())(given, around);

/** The long jobs of the server, by name. */
export const tasks = {
  look: later(async () => (await import('./imports/lookTask.ts')).lookTask),
  design: later(async () => (await import('./designs/designTask.ts')).designTask),
  export: later(async () => (await import('./exportTask.ts')).exportTask),
  keepExport: later(async () => (await import('./keptExports.ts')).keepExportTask),
  kits: later(async () => (await import('./kits/kitsTask.ts')).kitsTask),
  kitSum: later(async () => (await import('./kits/kitSumTask.ts')).kitSumTask),
  kitWorkbook: later(async () => (await import('./kits/kitWorkbookTask.ts')).kitWorkbookTask),
  pack: later(async () => (await import('./kits/packTask.ts')).packTask),
  rolloutSearch: later(async () => (await import('./rollouts/rolloutSearchTask.ts')).rolloutSearchTask),
  rolloutDraw: later(async () => (await import('./rollouts/rolloutDrawTask.ts')).rolloutDrawTask),
  rolloutPaper: later(async () => (await import('./rollouts/rolloutPaperTask.ts')).rolloutPaperTask),
} satisfies Tasks;
