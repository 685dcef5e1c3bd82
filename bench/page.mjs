import { join } from 'node:path';
import { root } from '../setup/run.mjs';
import { builtPages, pageFiles, sizeLines } from './pageSizes.mjs';

/** Every file of the built pages with its size: what may be loaded, largest first. Which of them the sites need is in checks/scale. */
for (const line of sizeLines(pageFiles(join(root, builtPages)))) console.log(line);
