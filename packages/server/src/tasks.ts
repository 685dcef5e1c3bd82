import { designTask } from './designs/designTask.ts';
import { exportTask } from './exportTask.ts';
import { lookTask } from './imports/lookTask.ts';
import { keepExportTask } from './keptExports.ts';
import { kitSumTask } from './kits/kitSumTask.ts';
import { kitsTask } from './kits/kitsTask.ts';
import { kitWorkbookTask } from './kits/kitWorkbookTask.ts';
import { packTask } from './kits/packTask.ts';

/** The long jobs of the server, by name. */
export const tasks = {
  ...{ look: lookTask, design: designTask, export: exportTask, keepExport: keepExportTask },
  ...{ kits: kitsTask, kitSum: kitSumTask, kitWorkbook: kitWorkbookTask, pack: packTask },
};
