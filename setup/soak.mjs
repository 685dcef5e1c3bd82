import { runTool } from './run.mjs';
import { build, install } from './setUp.mjs';

install();
build();

// Laws, twins and faults with many more random cases than on every test.
process.env['EAVEWELL_SOAK'] = '1';
process.exitCode = runTool('vitest', ['run', '--project', 'twins', '--project', 'laws', '--project', 'faults']);
