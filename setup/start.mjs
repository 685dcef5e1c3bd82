import { existsSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { root, runTool } from './run.mjs';
import { build, install } from './setUp.mjs';

const folder = 'demo-programme';
const results = 'out/demo';

install();
build();
makeDemo();
design();

/** Makes the demo programme once. A folder that is there is used as it is: it may hold somebody's changes. */
function makeDemo() {
  const path = join(root, folder);
  if (existsSync(path)) {
    console.log(`\nUsing the folder ${folder} as it is. Delete it to have the demo made afresh.\n`);
    return;
  }
  const code = runTool('eavewell', ['demo', folder]);
  if (code === 0) return;
  rmSync(path, { recursive: true, force: true });
  console.error(`\nThe demo programme could not be made (exit ${code}).`);
  process.exit(1);
}

/** Designs it. The demo has faults planted in it, so that 1 (a blocker was met) is a good end here. */
function design() {
  const code = runTool('eavewell', ['design', folder, '--out', results]);
  if (code !== 0 && code !== 1) {
    console.error(`\nThe design did not run to its end (exit ${code}).`);
    process.exit(1);
  }
  console.log(`
The programme:  ${join(root, folder)}
The results:    ${join(root, results)}

Next:  npx eavewell check ${folder}
       npx eavewell design ${folder} --site ID
       npx eavewell --help`);
}
