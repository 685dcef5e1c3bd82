import { runTool } from './run.mjs';
import { build, install } from './setUp.mjs';

/** The data folder of `npm start`. It is kept from one start to the next: what is entered is not lost. */
const folder = 'demo-data';

install();
build();
console.log(
  '\nCtrl+C ends the program. What was entered is kept in the folder demo-data; delete it to begin afresh.\n',
);
// Ctrl+C goes to both; the program ends well by itself, and this waits for it.
process.on('SIGINT', () => {});
process.exit(runTool('eavewell', ['serve', '--data', folder, '--open', ...process.argv.slice(2)]));
