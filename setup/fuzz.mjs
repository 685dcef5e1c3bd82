import { runTool } from './run.mjs';
import { build, install } from './setUp.mjs';

install();
build();

// Folders, their columns.json, workbooks and maps with many more random changes than on every test.
process.env['EAVEWELL_FUZZ'] ??= '5000';
const files = ['utations', 'streamed', 'converting', 'folderAsRead'];
const suites = ['--project', 'faults', '--project', 'source'];
process.exitCode = runTool('vitest', ['run', ...suites, '--testTimeout=3600000', ...files]);
