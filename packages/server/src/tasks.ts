import { designTask } from './designs/designTask.ts';
import { exportTask } from './exportTask.ts';
import { lookTask } from './imports/lookTask.ts';
import { keepExportTask } from './keptExports.ts';

/** The long jobs of the server, by name. */
export const tasks = { look: lookTask, design: designTask, export: exportTask, keepExport: keepExportTask };
