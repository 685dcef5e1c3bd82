import { runTool } from './run.mjs';
import { build, install } from './setUp.mjs';

install();
build();

// Folders and workbooks with many more random changes than on every test.
process.env['EAVEWELL_FUZZ'] ??= '5000';
process.exitCode = runTool('vitest', ['run', '--project', 'faults', '--testTimeout=3600000', 'utations']);
